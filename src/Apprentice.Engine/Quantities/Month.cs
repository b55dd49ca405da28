namespace Apprentice.Engine.Quantities;

/// <summary>A calendar month, counted from January of year 0; the default value is that month.</summary>
/// <param name="Index">Months since January of year 0: 12 × year + month − 1.</param>
public readonly record struct Month(int Index) : IComparable<Month>
{
    /// <summary>The month of a calendar year.</summary>
    /// <param name="year">Calendar year.</param>
    /// <param name="month">1 to 12.</param>
    public static Month Of(int year, int month) => new((12 * year) + month - 1);

    /// <summary>Calendar year.</summary>
    public int Year => Index / 12;

    /// <summary>Month of the year, 1 to 12.</summary>
    public int OfYear => (Index % 12) + 1;

    /// <summary>Reads <c>YYYY-MM</c>, or <c>YYYY</c> as the January of that year.</summary>
    public static bool TryParse(string text, out Month month)
    {
        month = default;
        var parts = text.Trim().Split('-');
        if (parts.Length is < 1 or > 2 || parts[0].Length != 4 || !TryDigits(parts[0], out var year)) return false;
        var ofYear = 1;
        if (parts.Length == 2 && (!TryDigits(parts[1], out ofYear) || ofYear is < 1 or > 12)) return false;
        month = Of(year, ofYear);
        return true;
    }

    static bool TryDigits(string text, out int number) => int.TryParse(text, System.Globalization.NumberStyles.None, null, out number);

    /// <summary>This month moved by a number of months.</summary>
    public Month Plus(int months) => new(Index + months);

    /// <inheritdoc/>
    public int CompareTo(Month other) => Index.CompareTo(other.Index);

    /// <summary>True when the left month comes first.</summary>
    public static bool operator <(Month left, Month right) => left.Index < right.Index;

    /// <summary>True when the left month comes later.</summary>
    public static bool operator >(Month left, Month right) => left.Index > right.Index;

    /// <summary>True when the left month does not come later.</summary>
    public static bool operator <=(Month left, Month right) => left.Index <= right.Index;

    /// <summary>True when the left month does not come first.</summary>
    public static bool operator >=(Month left, Month right) => left.Index >= right.Index;

    /// <summary>The month as <c>YYYY-MM</c>.</summary>
    public override string ToString() => $"{Year:0000}-{OfYear:00}";
}
