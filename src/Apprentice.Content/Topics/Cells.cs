using Apprentice.Content.Pages;
using Apprentice.Content.Values;
using Apprentice.Engine.Quantities;

namespace Apprentice.Content.Topics;

/// <summary>Reads single values; notes a fault and returns a stand-in where one cannot be read.</summary>
sealed class Cells(Faults faults)
{
    const double Tolerance = 1e-9;

    /// <summary>A text that must be there.</summary>
    public string Needed(Row row, string column) => Needed(row[column], $"The {column} is missing.");

    /// <summary>A text that must be there.</summary>
    public string Needed(Cell cell, string message)
    {
        if (cell.IsBlank) faults.Add(cell, message);
        return cell.Text;
    }

    /// <summary>A share, 0 to 1.</summary>
    public double Share(Cell cell)
    {
        if (ShareText.TryParse(cell.Text, out var share)) return share;
        faults.Add(cell, cell.IsBlank ? "A share is missing: write 0 for never." : $"\"{cell.Text}\" is not a share: {ShareText.Forms}.");
        return 0;
    }

    /// <summary>A share, or another value when blank.</summary>
    public double Share(Cell cell, double blank) => cell.IsBlank ? blank : Share(cell);

    /// <summary>Shares that add up to 1; one of them may be "rest".</summary>
    /// <param name="cells">The shares as written.</param>
    /// <param name="line">Line for a fault of the sum.</param>
    /// <param name="what">What adds up: "The column own".</param>
    public IReadOnlyList<double> Whole(IReadOnlyList<Cell> cells, int line, string what)
    {
        if (cells.Any(cell => cell.IsAbsent)) return new double[cells.Count];
        var before = faults.Count;
        var rests = cells.Count(cell => cell.Is("rest"));
        var sum = 0.0;
        var shares = new double[cells.Count];
        for (var at = 0; at < shares.Length; at++)
        {
            shares[at] = cells[at].Is("rest") ? 0 : Share(cells[at]);
            sum += shares[at];
        }

        if (faults.Count > before) return shares;
        if (rests > 1) faults.Add(line, $"{what} says \"rest\" {rests} times: once is enough.");
        else if (rests == 0 && Math.Abs(sum - 1) > Tolerance) faults.Add(line, $"{what} adds up to {sum:0.####}, not 1: write \"rest\" in one place.");
        else if (sum > 1 + Tolerance) faults.Add(line, $"{what} adds up to {sum:0.####} before \"rest\": nothing is left.");
        for (var at = 0; at < shares.Length; at++)
        {
            if (cells[at].Is("rest")) shares[at] = Math.Max(0, 1 - sum);
        }

        return shares;
    }

    /// <summary>A length in mm.</summary>
    public double Length(Cell cell)
    {
        if (LengthText.TryParse(cell.Text, out var length)) return length;
        faults.Add(cell, $"\"{cell.Text}\" is not a length: {LengthText.Forms}.");
        return 0;
    }

    /// <summary>A range of lengths in mm.</summary>
    public (double Low, double High) Lengths(Cell cell)
    {
        if (LengthText.TryParseRange(cell.Text, out var low, out var high)) return (low, high);
        faults.Add(cell, $"\"{cell.Text}\" is not a range of lengths: write 60 to 180 mm.");
        return (double.NegativeInfinity, double.PositiveInfinity);
    }

    /// <summary>A number, 0 or more.</summary>
    public double Number(Cell cell, string what)
    {
        var number = ShareText.Plain(cell.Text);
        if (double.IsFinite(number)) return number;
        faults.Add(cell, $"{what}: \"{cell.Text}\" is not a number: write 2 or 2.5.");
        return 0;
    }

    /// <summary>A month, null when blank or not to be read.</summary>
    public Month? Month(Cell cell)
    {
        if (cell.IsBlank) return null;
        if (MonthText.TryParse(cell.Text, out var month)) return month;
        faults.Add(cell, $"\"{cell.Text}\" is not a month: {MonthText.Forms}.");
        return null;
    }

    /// <summary>First and last month of a range, null where open; both null when blank.</summary>
    public (Month? From, Month? To) Months(Cell cell)
    {
        if (!MonthText.TryParseRange(cell.Text, out var from, out var to) && !cell.IsBlank)
            faults.Add(cell, $"\"{cell.Text}\" is not a range of months: {MonthText.RangeForms}.");
        return (from, to);
    }

    /// <summary>Yes or no; no when blank.</summary>
    public bool YesNo(Cell cell)
    {
        if (!cell.IsBlank && !cell.Is("yes") && !cell.Is("no")) faults.Add(cell, $"\"{cell.Text}\" should be yes or no.");
        return cell.Is("yes");
    }

    /// <summary>A name of a sort, or null when blank or unknown.</summary>
    public string? Name(Cell cell, Names names) => !cell.IsBlank && names.Known(cell, faults) ? cell.Text : null;

    /// <summary>Names of a sort, separated by commas; unknown ones left out.</summary>
    public IReadOnlyList<string> List(Cell cell, Names names) =>
        [.. cell.Split(',').Where(piece => names.Known(piece, faults)).Select(piece => piece.Text).Distinct(StringComparer.Ordinal)];
}
