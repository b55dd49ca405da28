namespace Apprentice.Content.Values;

/// <summary>Lengths as people write them, in mm.</summary>
public static class LengthText
{
    /// <summary>What would do, for a sentence.</summary>
    public const string Forms = "write 310 mm, 12.7 or 27 1/4 in";

    const double Inch = 25.4;

    static readonly (string Unit, double Millimetres)[] Units =
        [("mm", 1), ("cm", 10), ("inches", Inch), ("inch", Inch), ("in", Inch), ("\"", Inch), ("”", Inch), ("″", Inch)];

    /// <summary>Reads <c>310 mm</c>, <c>12.7</c> (mm), <c>1/2 in</c>, <c>27 1/4 in</c>, with a minus in front for an offset.</summary>
    /// <param name="text">The text.</param>
    /// <param name="millimetres">The length in mm, at most 1e9 away from 0.</param>
    public static bool TryParse(string text, out double millimetres)
    {
        var (number, unit) = Parted(text);
        var minus = number.StartsWith('-') || number.StartsWith('−');
        var size = Number(minus ? number[1..].Trim() : number) * (unit ?? 1);
        millimetres = minus ? -size : size;
        return double.IsFinite(millimetres);
    }

    /// <summary>Reads a length as a person types a reading: as <see cref="TryParse"/>, and <c>27,2</c> with a decimal comma.</summary>
    /// <remarks>A comma and three figures (<c>1,953</c>) may part thousands, and is refused. Source of the comma: ISO 80000-1, decimal sign.</remarks>
    /// <param name="text">The text.</param>
    /// <param name="millimetres">The length in mm, at most 1e9 away from 0.</param>
    public static bool TryParseTyped(string text, out double millimetres)
    {
        var comma = text.IndexOf(',');
        var figures = comma < 0 ? 0 : text[(comma + 1)..].TakeWhile(char.IsAsciiDigit).Count();
        return TryParse(figures is 1 or 2 ? $"{text[..comma]}.{text[(comma + 1)..]}" : text, out millimetres);
    }

    /// <summary>Reads <c>60 to 180 mm</c>: the unit at the end holds for both ends unless the first has its own.</summary>
    internal static bool TryParseRange(string text, out double low, out double high)
    {
        low = high = double.NaN;
        var ends = text.Split(" to ", StringSplitOptions.TrimEntries);
        if (ends.Length != 2 || !TryParse(ends[1], out high)) return false;
        var first = Parted(ends[0]).Unit is null ? $"{ends[0]} {Suffix(ends[1])}" : ends[0];
        return TryParse(first, out low) && low < high;
    }

    static string Suffix(string text)
    {
        var number = Parted(text).Number;
        return text.Trim()[number.Length..];
    }

    static (string Number, double? Unit) Parted(string text)
    {
        var trimmed = text.Trim();
        foreach (var (unit, millimetres) in Units)
        {
            if (trimmed.EndsWith(unit, StringComparison.OrdinalIgnoreCase)) return (trimmed[..^unit.Length].TrimEnd(), millimetres);
        }

        return (trimmed, null);
    }

    static double Number(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length switch
        {
            1 => words[0].Contains('/') ? Fraction(words[0]) : ShareText.Plain(words[0]),
            2 when !words[0].Contains('.') => ShareText.Plain(words[0]) + Fraction(words[1]),
            _ => double.NaN,
        };
    }

    static double Fraction(string text)
    {
        var parts = text.Split('/');
        return parts.Length == 2 && ShareText.Plain(parts[1]) > 0 ? ShareText.Plain(parts[0]) / ShareText.Plain(parts[1]) : double.NaN;
    }
}
