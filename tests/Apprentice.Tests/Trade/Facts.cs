using System.Globalization;
using System.Text.RegularExpressions;

namespace Apprentice.Tests.Trade;

/// <summary>The tables of published values and the map from them to the topics.</summary>
/// <remarks>
/// Data/facts: two tables with a source in every row; "seen" says whether the value was read in that source (yes) or comes from memory, practice or a sum (no).
/// Map.csv names, per row and in the order of its numbers, what of a topic must agree; "-" leaves a number out; "#2" means the second row of that name.
/// </remarks>
static class Facts
{
    static readonly string Folder = Path.Combine(Corpus.Root, "tests/Apprentice.Tests/Data/facts");

    /// <summary>All rows of both tables.</summary>
    public static IReadOnlyList<FactRow> Rows { get; } =
    [
        .. new[] { "wheels-drivetrain-checks.csv", "frame-steering-crank-checks.csv" }
            .SelectMany(f => Csv(f, ["topic", "quantity", "value", "unit", "source", "source_kind", "seen"]))
            .Select(c => new FactRow(c[0], c[1], c[2], c[3], c[4], c[6] == "yes")),
    ];

    /// <summary>The map.</summary>
    public static IReadOnlyList<MapRow> Map { get; } =
        [.. Csv("map.csv", ["section", "quantity", "topic", "target"]).Select(c => new MapRow(c[0], c[1], c[2], [.. c[3].Split("; ")]))];

    /// <summary>The fact of a mapped row.</summary>
    public static FactRow Of(MapRow mapped)
    {
        var cut = mapped.Quantity.Split('#');
        var rows = Rows.Where(r => r.Section == mapped.Section && r.Quantity == cut[0]).ToList();
        var nth = cut.Length > 1 ? int.Parse(cut[1], CultureInfo.InvariantCulture) : 1;
        Assert.True(cut.Length > 1 ? nth <= rows.Count : rows.Count == 1, $"{mapped}: {rows.Count} rows of that name");
        return rows[nth - 1];
    }

    static IEnumerable<string[]> Csv(string file, string[] header)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder, file)).Select(Cells).ToList();
        Assert.Equal(header, lines[0]);
        Assert.All(lines, l => Assert.Equal(header.Length, l.Length));
        return lines.Skip(1);
    }

    static string[] Cells(string line)
    {
        var quoted = line.Split('"');
        var marked = string.Concat(quoted.Select((part, i) => i % 2 == 1 ? part : part.Replace(',', '\n')));
        return marked.Split('\n');
    }
}

/// <summary>What of a topic must agree with a published row.</summary>
/// <param name="Section">Section of the fact base.</param>
/// <param name="Quantity">Name of the row there.</param>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Targets">A target per number of the row.</param>
sealed record MapRow(string Section, string Quantity, string Topic, IReadOnlyList<string> Targets);

/// <summary>A published row.</summary>
/// <param name="Section">Section of the fact base: T1, U5, ….</param>
/// <param name="Quantity">What it is.</param>
/// <param name="Value">As printed: "622", "39-49", "3/8 in x 26 tpi".</param>
/// <param name="Unit">Unit of the numbers that carry none of their own.</param>
/// <param name="Source">Where it was published.</param>
/// <param name="Seen">True when the value was read in that source.</param>
sealed partial record FactRow(string Section, string Quantity, string Value, string Unit, string Source, bool Seen)
{
    /// <summary>The numbers of the value, in order.</summary>
    public IReadOnlyList<Given> Numbers => [.. Pattern().Matches(Value).Select(Read)];

    /// <summary>The same row with two more, or two less, in the last digit of one number.</summary>
    public FactRow Altered(int number)
    {
        var match = Pattern().Matches(Value)[number];
        var at = match.Index + (match.Groups["of"].Success ? match.Groups["of"].Index - match.Index - 2 : match.Length - 1);
        var digit = Value[at] - '0';
        return this with { Value = $"{Value[..at]}{(digit < 8 ? digit + 2 : digit - 2)}{Value[(at + 1)..]}" };
    }

    Given Read(Match match)
    {
        double Of(string name) => match.Groups[name].Success ? double.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture) : 0;
        var fraction = match.Groups["of"].Success;
        var value = fraction ? Of("whole") + (Of("top") / Of("of")) : double.Parse(match.Value, CultureInfo.InvariantCulture);
        var decimals = match.Value.Contains('.', StringComparison.Ordinal) ? match.Length - match.Value.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        var half = fraction ? 0.001 : 0.5 * Math.Pow(10, -decimals);
        var own = OwnUnit().Match(Value, match.Index + match.Length);
        var (unit, factor) = BaseOf(own.Success ? own.Groups["unit"].Value : Unit);
        return new Given(value * factor, half * factor, unit);
    }

    static (string Unit, double Factor) BaseOf(string unit) => unit switch
    {
        "mm" or "thread" => ("mm", 1),
        "in" or "inch" => ("mm", 25.4),
        "kPa" => ("bar", 0.01),
        "N m" or "N.m" => ("Nm", 1),
        "deg" => ("degrees", 1),
        "percent" or "%" or "% above recommended" => ("of 100", 1),
        "tpi" or "teeth" or "bar" or "N" => (unit, 1),
        "count" or "ratio" or "factor" or "gauge" or "year" or "month" or "date" or "degC" or "x diameter" or "xP" or "bolts" or "years" => ("", 1),
        _ => throw new InvalidDataException($"unit {unit}"),
    };

    [GeneratedRegex(@"((?<whole>\d+) )?(?<top>\d+)/(?<of>\d+)|\d+(\.\d+)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pattern();

    [GeneratedRegex(@"\G ?(?<unit>mm|in|tpi|bolts)\b", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OwnUnit();
}

/// <summary>A number as published.</summary>
/// <param name="Value">In mm, tpi, bar, … or bare.</param>
/// <param name="Half">Half of the last digit given; 0.001 of the unit for a fraction.</param>
/// <param name="Unit">The unit of the value; empty for a bare number.</param>
sealed record Given(double Value, double Half, string Unit);
