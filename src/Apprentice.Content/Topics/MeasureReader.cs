using Apprentice.Content.Pages;
using Apprentice.Content.Values;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads how a size is measured, and the slips to a wrong datum.</summary>
static class MeasureReader
{
    const int MostSteps = 10_000;
    const double Tolerance = 1e-6;
    const string Form = "write step 1 mm, limit 1 mm, from 60 to 180 mm";

    /// <summary>Reads <c>rim-diameter x pi plus 2 mm</c>: the size, the factor and what is added in mm.</summary>
    public static (string Dimension, double Scale, double Offset) Measures(Draft draft, Cell cell)
    {
        if (cell.IsBlank) return ("", 1, 0);
        var minus = cell.Text.Contains(" minus ", StringComparison.Ordinal);
        var (scaled, added) = cell.Cut(minus ? " minus " : " plus ");
        var (name, factor) = new Cell(scaled.Text.Replace(" × ", " x ", StringComparison.Ordinal), cell.Line).Cut(" x ");
        _ = draft.Dimensions.Known(name, draft.Faults);
        var offset = added.IsBlank ? 0 : draft.Cells.Length(added);
        return (name.Text, factor.IsBlank ? 1 : Factor(draft, factor), minus ? -offset : offset);
    }

    /// <summary>Reads <c>step 1 mm, limit 1 mm, from 60 to 180 mm, blunders 1 in 500</c>, or <c>uncertainty 1 mm</c> in place of the limit.</summary>
    public static Shows.Measured Reading(Draft draft, Cell cell)
    {
        var before = draft.Faults.Count;
        Cell? step = null, limit = null, uncertainty = null, range = null, blunders = null;
        foreach (var piece in cell.Split(','))
        {
            var (word, value) = piece.Cut(" ");
            if (word.Is("step")) step = value;
            else if (word.Is("limit")) limit = value;
            else if (word.Is("uncertainty")) uncertainty = value;
            else if (word.Is("from")) range = value;
            else if (word.Is("blunders")) blunders = value;
            else draft.Faults.Add(piece, $"\"{piece.Text}\" is not understood: {Form}.");
        }

        if (!cell.IsBlank && draft.Faults.Count == before && (step is null || range is null || (limit is null) == (uncertainty is null)))
            draft.Faults.Add(cell, $"The reading needs a step, a range, and either a limit or an uncertainty: {Form}.");
        var measured = new Shows.Measured
        {
            Dimension = "",
            Step = step is { } written ? draft.Cells.Length(written) : 1,
            Uncertainty = 1,
            Blunder = blunders is { } share ? draft.Cells.Share(share) : 0.002,
            Low = 0,
            High = 1,
        };
        var (low, high) = range is { } ends ? draft.Cells.Lengths(ends) : (0, measured.Step);
        measured = measured with { Low = low, High = high, Uncertainty = Uncertainty(draft, limit, uncertainty, measured.Step) };
        if (step is not null && range is not null) Check(draft, cell, measured);
        return measured;
    }

    /// <summary>Slips of a clue, in the order of its table.</summary>
    public static IReadOnlyList<Slip> Slips(Draft draft, Passage entry) =>
    [
        .. draft.Rows(entry, new Shape(["slip", "share"], "factor", "offset", "pitfall"), needed: false).Select(row => new Slip(
            draft.Cells.Needed(row, "slip"),
            draft.Cells.Share(row["share"]),
            row["factor"].IsBlank ? 1 : Factor(draft, row["factor"]),
            row["offset"].IsBlank ? 0 : draft.Cells.Length(row["offset"]),
            draft.Cells.Name(row["pitfall"], draft.Pitfalls))),
    ];

    static void Check(Draft draft, Cell cell, Shows.Measured measured)
    {
        if (measured.Step <= 0) draft.Faults.Add(cell, "The step must be greater than 0.");
        else if (!double.IsFinite(measured.Low) || !double.IsFinite(measured.High)) return;
        else if ((measured.High - measured.Low) / measured.Step > MostSteps)
            draft.Faults.Add(cell, $"The range has more than {MostSteps} steps: take a coarser step or a shorter range.");
        else if (!Whole(measured.Low / measured.Step) || !Whole(measured.High / measured.Step))
            draft.Faults.Add(cell, $"The range from {measured.Low:0.###} to {measured.High:0.###} mm must begin and end on whole steps of {measured.Step:0.###} mm.");
        if (measured.Uncertainty <= 0) draft.Faults.Add(cell, "The uncertainty must be greater than 0.");
    }

    static bool Whole(double steps) => Math.Abs(steps - Math.Round(steps)) < Tolerance;

    /// <summary>Instrument limit and half a step as rectangular, root sum of squares. Source: JCGM 100:2008, 4.3.7 and 5.1.2.</summary>
    static double Uncertainty(Draft draft, Cell? limit, Cell? given, double step)
    {
        if (given is { } standard) return draft.Cells.Length(standard);
        var half = limit is { } written ? draft.Cells.Length(written) : 1;
        return Math.Sqrt(((half * half) + (step * step / 4)) / 3);
    }

    /// <summary>A factor: a number, pi, or sin(pi/5).</summary>
    static double Factor(Draft draft, Cell cell)
    {
        var text = cell.Text.Replace("π", "pi", StringComparison.Ordinal);
        var factor = text switch
        {
            "pi" => Math.PI,
            _ when text.StartsWith("sin(pi/", StringComparison.Ordinal) && text.EndsWith(')') => Math.Sin(Math.PI / ShareText.Plain(text[7..^1])),
            _ => ShareText.Plain(text),
        };
        if (factor > 0) return factor;
        draft.Faults.Add(cell, $"\"{cell.Text}\" is not a factor: write 0.5, pi or sin(pi/5).");
        return 1;
    }
}
