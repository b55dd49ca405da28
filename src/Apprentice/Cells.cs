using System.Globalization;
using Wcwidth;

namespace Apprentice;

/// <summary>Text as a terminal sets it: in cells, not in letters. A letter of Chinese or an emoji takes two, a mark that stands on another letter none.</summary>
/// <remarks>The width of a sign is that of Unicode Standard Annex 11, by the library that the toolkit uses too; what is read as one sign (UAX 29) is never split.</remarks>
static class Cells
{
    const int Widest = 2;

    /// <summary>The cells that a text takes.</summary>
    public static int Width(string text) => text.All(IsPlainLetter) ? text.Length : Signs(text).Sum(WidthOf);

    /// <summary>The longest start of a text that fits; one sign at least, so that whoever cuts again and again comes to an end.</summary>
    /// <param name="text">The text.</param>
    /// <param name="cells">Cells at hand.</param>
    public static string Cut(string text, int cells)
    {
        var (taken, length) = (0, 0);
        foreach (var sign in Signs(text))
        {
            taken += WidthOf(sign);
            if (taken > cells && length > 0) break;
            length += sign.Length;
        }
        return text[..length];
    }

    /// <summary>A text with spaces behind it, so that it takes so many cells.</summary>
    public static string PadRight(string text, int cells) => text + Spaces(text, cells);

    /// <summary>A text with spaces before it, so that it takes so many cells.</summary>
    public static string PadLeft(string text, int cells) => Spaces(text, cells) + text;

    /// <summary>A text without its last sign.</summary>
    public static string WithoutLast(string text) => text.Length == 0 ? "" : text[..^Signs(text).Last().Length];

    /// <summary>False for signs that steer a terminal or turn the direction of writing.</summary>
    public static bool IsPlain(char c) =>
        !char.IsControl(c) && c is not ((>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200B' or '\u200E' or '\u200F');

    static string Spaces(string text, int cells) => new(' ', Math.Max(0, cells - Width(text)));

    static bool IsPlainLetter(char c) => c is >= ' ' and <= '~';

    static IEnumerable<string> Signs(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            var length = StringInfo.GetNextTextElementLength(text, at);
            yield return text.Substring(at, length);
            at += length;
        }
    }

    static int WidthOf(string sign) => Math.Min(Widest, sign.EnumerateRunes().Sum(r => Math.Max(0, UnicodeCalculator.GetWidth(r))));
}
