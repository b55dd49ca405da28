using System.Globalization;
using Apprentice.Content.Values;

namespace Apprentice.Content.Lessons;

/// <summary>A size in a query, under its names in inches and in millimetres: who asks for 1/2 in finds 12.7 mm, and the other way round.</summary>
static class SizeNames
{
    const double Inch = 25.4;
    const double Within = 0.03;
    const int Finest = 64;
    const int MostWords = 3;
    static readonly string[] MetricForms = ["0.#", "0.##", "0.###"];
    static readonly string[] InchUnits = [" in", " inch", "\"", " x "];

    /// <summary>What is asked, a list of names each: sizes of up to three words together, all other words alone.</summary>
    /// <param name="words">Words of the query.</param>
    public static IEnumerable<IReadOnlyList<string>> Grouped(IReadOnlyList<string> words)
    {
        for (var i = 0; i < words.Count;)
        {
            var taken = Enumerable.Range(1, MostWords).Reverse().FirstOrDefault(n => i + n <= words.Count && SizeOf(string.Join(' ', words.Skip(i).Take(n))) is not null);
            var text = string.Join(' ', words.Skip(i).Take(Math.Max(1, taken)));
            yield return SizeOf(text) is { } mm ? [text, .. Names(mm)] : [text];
            i += Math.Max(1, taken);
        }
    }

    // A bare whole number is a name or a count; a fraction without a unit is in inches, a decimal number in mm.
    static double? SizeOf(string text)
    {
        var bare = text.All(c => char.IsDigit(c) || c is '/' or '.' or ' ');
        if (bare && !text.Contains('/') && !text.Contains('.')) return null;
        return char.IsDigit(text[0]) && LengthText.TryParseTyped(bare && text.Contains('/') ? $"{text} in" : text, out var mm) && mm > 0 ? mm : null;
    }

    static IEnumerable<string> Names(double mm)
    {
        foreach (var form in MetricForms) yield return mm.ToString(form, CultureInfo.InvariantCulture);
        for (var parts = 1; parts <= Finest; parts *= 2)
        {
            var count = (int)Math.Floor((mm / Inch * parts) + 0.5);
            if (count == 0 || Math.Abs((count * Inch / parts) - mm) > Within) continue;
            var (whole, rest) = (count / parts, count % parts);
            var inches = rest == 0 ? $"{whole}" : whole == 0 ? $"{rest}/{parts}" : $"{whole} {rest}/{parts}";
            foreach (var unit in InchUnits) yield return inches + unit;
            yield break;
        }
    }
}
