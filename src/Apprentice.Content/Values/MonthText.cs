using Apprentice.Engine.Quantities;

namespace Apprentice.Content.Values;

/// <summary>Months and ranges of months as the files write them.</summary>
static class MonthText
{
    /// <summary>What would do for a month, for a sentence.</summary>
    public const string Forms = "write 2014-06 or 2014";

    /// <summary>What would do for a range, for a sentence.</summary>
    public const string RangeForms = "write 2012, 2008 to 2020-06, from 2014 or to 2016";

    const int FirstYear = 1850;
    const int LastYear = 2150;

    /// <summary>Reads a month; a year alone is its January.</summary>
    public static bool TryParse(string text, out Month month) => Month.TryParse(text, out month) && month.Year is >= FirstYear and <= LastYear;

    /// <summary>Reads the last month meant; a year alone is its December.</summary>
    public static bool TryParseEnd(string text, out Month month)
    {
        if (!TryParse(text, out month)) return false;
        if (!text.Contains('-')) month = Month.Of(month.Year, 12);
        return true;
    }

    /// <summary>Reads <c>2012</c>, <c>2014-06</c>, <c>2008 to 2020-06</c>, <c>from 2014</c> or <c>to 2016</c> as first and last month, null where open.</summary>
    public static bool TryParseRange(string text, out Month? from, out Month? to)
    {
        (from, to) = (null, null);
        var trimmed = text.Trim();
        if (trimmed.StartsWith("from ", StringComparison.OrdinalIgnoreCase)) return First(trimmed[5..], out from);
        if (trimmed.StartsWith("to ", StringComparison.OrdinalIgnoreCase)) return Last(trimmed[3..], out to);
        var ends = trimmed.Split(" to ", StringSplitOptions.TrimEntries);
        return ends.Length <= 2 && First(ends[0], out from) && Last(ends[^1], out to) && !(from > to);
    }

    static bool First(string text, out Month? month)
    {
        var read = TryParse(text, out var first);
        month = read ? first : null;
        return read;
    }

    static bool Last(string text, out Month? month)
    {
        var read = TryParseEnd(text, out var last);
        month = read ? last : null;
        return read;
    }
}
