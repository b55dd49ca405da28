using System.Globalization;

namespace Apprentice.Content.Values;

/// <summary>Shares and rates as people write them.</summary>
public static class ShareText
{
    /// <summary>What would do, for a sentence.</summary>
    public const string Forms = "write 1 in 20, 0.05, rare, sometimes, often or mostly";

    /// <summary>Reads <c>1 in 20</c>, <c>0.05</c>, or a word: rare (1 in 50), sometimes (1 in 10), often (1 in 3), mostly (4 in 5).</summary>
    /// <param name="text">The text.</param>
    /// <param name="share">The share, 0 to 1.</param>
    public static bool TryParse(string text, out double share)
    {
        share = text.Trim().ToLowerInvariant() switch
        {
            "rare" => 1.0 / 50,
            "sometimes" => 1.0 / 10,
            "often" => 1.0 / 3,
            "mostly" => 4.0 / 5,
            var other => Number(other),
        };
        return share is >= 0 and <= 1;
    }

    /// <summary>A number as the files write them: digits and a point, no sign, no comma, at most 1e9; NaN for anything else.</summary>
    internal static double Plain(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number <= 1e9 ? number : double.NaN;

    static double Number(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 3 && string.Equals(words[1], "in", StringComparison.Ordinal) && Plain(words[2]) > 0
            ? Plain(words[0]) / Plain(words[2])
            : Plain(text);
    }
}
