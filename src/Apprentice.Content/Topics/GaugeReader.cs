using Apprentice.Content.Pages;
using Apprentice.Content.Values;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the column <c>gauge</c>: the leaf of a pitch gauge that fits, or the largest end of a chain gauge that drops in.</summary>
static class GaugeReader
{
    const double LargestStretch = 5;

    /// <summary>The leaf of a finding; null when the cell is blank.</summary>
    /// <param name="draft">Where faults go.</param>
    /// <param name="cell">The cell: <c>1.25 mm</c>, <c>24 tpi</c>; for a chain <c>0.75</c>, or <c>none</c>.</param>
    /// <param name="tool">The clue's tool.</param>
    public static Leaf? Leaf(Draft draft, Cell cell, string tool)
    {
        if (cell.IsBlank) return null;
        var sort = Instrument.Of(tool)?.Sort;
        if (sort is not (InstrumentSort.PitchGauge or InstrumentSort.ChainGauge))
        {
            draft.Faults.Add(cell, "\"gauge\" is only for clues whose tool is a pitch gauge or a chain gauge.");
            return null;
        }
        var pitch = sort == InstrumentSort.PitchGauge;
        var size = pitch ? Pitch(cell) : Stretch(cell);
        if (!double.IsNaN(size)) return new Leaf(cell.Text, size);
        draft.Faults.Add(cell, pitch
            ? $"\"{cell.Text}\" is not a leaf of a pitch gauge: write 1.25 mm or 24 tpi, or leave it blank where none fits."
            : $"\"{cell.Text}\" is not an end of a chain gauge: write none, 0.5, 0.75 or 1.0.");
        return null;
    }

    static double Pitch(Cell cell)
    {
        var (number, unit) = cell.Cut(" ");
        if (unit.Is("tpi")) return ShareText.Plain(number.Text) is > 0 and var turns ? Instrument.Inch / turns : double.NaN;
        return LengthText.TryParse(cell.Text, out var pitch) && pitch > 0 ? pitch : double.NaN;
    }

    static double Stretch(Cell cell)
    {
        if (cell.Is("none")) return 0;
        return ShareText.Plain(cell.Text) is > 0 and <= LargestStretch and var stretch ? stretch : double.NaN;
    }
}
