using System.Globalization;
using System.Text.RegularExpressions;
using Apprentice.Content.Lessons;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Trade;

/// <summary>Published values against what the topics hold. The source of each stands in its row of Data/facts.</summary>
public sealed partial class PublishedValueTests
{
    static readonly Dictionary<string, Topic> Topics = Corpus.Shipped.ToDictionary(id => id, Corpus.Topic, StringComparer.Ordinal);

    /// <summary>Sections of the two tables.</summary>
    public static TheoryData<string> Sections() => [.. Facts.Map.Select(m => m.Section).Distinct()];

    [Theory]
    [MemberData(nameof(Sections))]
    public void What_is_mapped_agrees(string section)
    {
        var faults = Facts.Map.Where(m => m.Section == section).SelectMany(m => FaultsOf(m, Facts.Of(m))).ToList();
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Theory]
    [MemberData(nameof(Sections))]
    public void A_digit_altered_anywhere_is_noticed(string section)
    {
        foreach (var mapped in Facts.Map.Where(m => m.Section == section))
        {
            for (var i = 0; i < mapped.Targets.Count; i++)
            {
                var altered = Facts.Of(mapped).Altered(i);
                if (mapped.Targets[i] != "-") Assert.True(FaultsOf(mapped, altered).Any(), $"{mapped.Quantity}: {altered.Value} passes for {mapped.Targets[i]}");
            }
        }
    }

    [Fact]
    public void A_value_from_memory_is_refused()
    {
        Assert.All(Facts.Map, m => Assert.NotEmpty(FaultsOf(m, Facts.Of(m) with { Seen = false })));
        Assert.Contains(Facts.Rows, r => !r.Seen);
    }

    [Fact]
    public void A_target_that_is_not_there_is_told()
    {
        var mapped = Facts.Map[0];
        Assert.NotEmpty(FaultsOf(mapped with { Targets = ["size:bead-seat/636"] }, Facts.Of(mapped)));
        Assert.NotEmpty(FaultsOf(mapped with { Targets = ["published:no such name"] }, Facts.Of(mapped)));
        Assert.NotEmpty(FaultsOf(mapped with { Targets = ["sum:635"] }, Facts.Of(mapped)));
    }

    [Fact]
    public void The_map_is_wide()
    {
        var rows = Facts.Map.Select(Facts.Of).Distinct().ToList();
        var believed = Facts.Map.Where(m => m.Targets.Any(t => t.Contains("size:", StringComparison.Ordinal))).Select(Facts.Of).Distinct().Count();
        Assert.True(rows.Count >= 300, $"{rows.Count} rows");
        Assert.True(believed >= 120, $"{believed} rows of sizes that belief uses");
        Assert.Equal(14, Facts.Map.Select(m => m.Section).Distinct().Count());
    }

    /// <summary>Names of published sizes are unique in a topic, so that a lesson's link means one of them.</summary>
    [Fact]
    public void No_name_stands_twice() =>
        Assert.All(Topics.Values, t => Assert.Empty(t.Published.GroupBy(p => p.Name, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key)));

    static IEnumerable<string> FaultsOf(MapRow mapped, FactRow row)
    {
        var numbers = row.Numbers;
        if (!row.Seen) yield return $"{row.Quantity}: not read in a source";
        if (numbers.Count != mapped.Targets.Count) yield return $"{row.Quantity}: {numbers.Count} numbers, {mapped.Targets.Count} targets";
        foreach (var (given, target) in numbers.Zip(mapped.Targets).Where(p => p.Second != "-"))
        {
            if (ValueOf(Topics[mapped.Topic], target, given.Unit) is not { } held) yield return $"{row.Quantity}: {mapped.Topic} has no {target}";
            else if (held.Unit != given.Unit) yield return $"{row.Quantity}: {target} is in \"{held.Unit}\", published in \"{given.Unit}\"";
            else if (Math.Abs(held.Value - given.Value) > given.Half + 1e-9)
                yield return string.Create(CultureInfo.InvariantCulture, $"{row.Quantity}: {mapped.Topic} {target} is {held.Value}, published {given.Value} ({row.Source})");
        }
    }

    static (double Value, string Unit)? ValueOf(Topic topic, string target, string unit)
    {
        var (kind, rest) = (target[..target.IndexOf(':', StringComparison.Ordinal)], target[(target.IndexOf(':', StringComparison.Ordinal) + 1)..]);
        return kind switch
        {
            "size" => SizeOf(topic, rest) is { } mm ? (mm, "mm") : null,
            "published" => topic.Published.FirstOrDefault(p => p.Name == rest) is { } p ? p.Unit == "in" ? (p.Value * 25.4, "mm") : (p.Value, p.Unit) : null,
            "sum" => SumOf(topic, rest) is { } sum ? (sum, unit) : null,
            _ => null,
        };
    }

    static double? SizeOf(Topic topic, string path)
    {
        if (path.Split('/') is not [var id, var kind] || topic.Dimensions.FirstOrDefault(d => d.Id == id) is not { } size) return null;
        var at = topic.Parts.First(p => p.Id == size.Part).Kinds.ToList().FindIndex(k => k.Id == kind);
        return at < 0 ? null : size.Nominals[at];
    }

    // A sum must hold a figure of the topic: arithmetic alone checks nothing.
    static double? SumOf(Topic topic, string sum)
    {
        if (!Reference().IsMatch(sum)) return null;
        return Sum.Of(Reference().Replace(sum, m => ValueOf(topic, m.Groups["to"].Value, "") is { } v ? v.Value.ToString("0.##########", CultureInfo.InvariantCulture) : "?"));
    }

    [GeneratedRegex(@"\[(?<to>[^\]]+)\]", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Reference();
}
