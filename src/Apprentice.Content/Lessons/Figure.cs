using System.Globalization;
using System.Text.RegularExpressions;

namespace Apprentice.Content.Lessons;

/// <summary>A figure as it stands in a text.</summary>
/// <param name="Value">Its value: a length with a unit in mm, a share 0 to 1, or the bare number.</param>
/// <param name="Within">How far the true value may lie away for the figure to be rightly rounded.</param>
sealed partial record Figure(double Value, double Within)
{
    const double Inch = 25.4;

    /// <summary>True when the value, rounded as this figure is written, is this figure.</summary>
    public bool Agrees(double value) => Math.Abs(value - Value) <= Within + 1e-9;

    /// <summary>The first figure of a text, or null.</summary>
    public static Figure? In(string text)
    {
        if (Share().Match(text) is { Success: true } share)
        {
            var (part, whole) = (Number(share.Groups["part"].Value), Number(share.Groups["whole"].Value));
            return whole <= 0 ? null : new Figure(part / whole, part == 1 ? Math.Max(1 / (whole - 0.5) - (1 / whole), 0) : 0.5 / whole);
        }

        if (Plain().Match(text) is not { Success: true } match) return null;
        var unit = match.Groups["unit"].Value switch
        {
            "cm" => 10,
            "in" or "inch" or "inches" => Inch,
            _ => 1.0,
        };
        var whole2 = match.Groups["whole"].Success ? Number(match.Groups["whole"].Value) : 0;
        if (!match.Groups["over"].Success)
        {
            var digits = match.Groups["whole"].Value;
            var decimals = digits.Contains('.', StringComparison.Ordinal) ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
            return new Figure(whole2 * unit, 0.5 * Math.Pow(10, -decimals) * unit);
        }

        var under = Number(match.Groups["under"].Value);
        return under <= 0 ? null : new Figure((whole2 + (Number(match.Groups["over"].Value) / under)) * unit, 0.5 / under * unit);
    }

    /// <summary>Figures with a unit that stand in a text: what has to be linked.</summary>
    public static IEnumerable<string> WithUnits(string text) => Unit().Matches(text).Select(m => m.Value);

    static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<![\d.])(?<part>\d{1,4}) (?:in|of) (?<whole>\d{1,5})(?![\d.]| ?mm)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Share();

    [GeneratedRegex(@"(?:(?<over>\d{1,3})/(?<under>\d{1,3})|(?<whole>\d{1,6}(?:\.\d{1,6})?)(?: (?<over>\d{1,3})/(?<under>\d{1,3}))?) ?(?<unit>mm|cm|inches|inch|in)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Plain();

    [GeneratedRegex(@"\d[\d.]*(?: \d+/\d+|/\d+)? ?(?:mm|cm|tpi|degrees?|°|minutes?|min|Nm|bar|inches|kN)\b|(?<![\d./-])\d{1,3} in \d{1,4}\b", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Unit();
}
