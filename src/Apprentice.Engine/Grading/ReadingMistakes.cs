using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Names what went wrong with a reading.</summary>
/// <param name="Tool">The tool, or null for one without a scale.</param>
/// <param name="Step">How fine it is read, mm.</param>
/// <param name="Allowed">What the tool is good to, mm: a reading this near the true size is right.</param>
/// <param name="True">What a reading without error would be, mm.</param>
/// <param name="Edges">Where the edge lay for each datum, mm: the right one first, then the slips.</param>
/// <param name="Datum">The datum chosen, or null when it is not known.</param>
/// <param name="ZeroError">What the caliper reads with its jaws closed, mm.</param>
/// <remarks>
/// Priority: the enumeration's order. Tolerance: the tool's. A datum is told apart as well as the tool is good; what was misread on the scale, as well as
/// the scale can be read: at least half a division, at most one; what stands on the vernier to half a line, since a line meets or it does not.
/// </remarks>
sealed record ReadingMistakes(
    Instrument? Tool, double Step, double Allowed, double True, IReadOnlyList<double> Edges, int? Datum, double ZeroError)
{
    const double Tiny = 1e-6;
    const double LeastUnit = 0.5;
    const double Hundredth = 0.005;

    double Division => Math.Max(Step, Tool?.Division ?? 0);

    double Near => Math.Max(Division / 2, Math.Min(Allowed, Division)) + Tiny;

    double HalfLine => Division / 2;

    bool IsCaliper => Tool?.Sort == InstrumentSort.Caliper;

    /// <summary>The mistake, and the datum it was taken from: 0 for the right one, n for the n-th slip.</summary>
    /// <param name="read">What the learner says they read, mm, zero error taken off.</param>
    public (Mistake Mistake, int Datum) Of(double read)
    {
        if (Math.Abs(read - True) <= Allowed + Tiny || (Datum is null or 0 && Math.Abs(read - Edges[0]) <= (Division / 2) + Tiny)) return (Mistake.None, 0);
        var from = Datum ?? 0;
        for (var d = Datum ?? 1; d > 0 && d < (Datum is null ? Edges.Count : from + 1); d++)
        {
            if (Math.Abs(read - Edges[d]) <= Math.Max(Allowed, Near) + Tiny) return (Mistake.Datum, d);
        }
        var found = Zero(read, Edges[from]) ?? Unit(read, Edges[from]) ?? Round(read, Edges[from]) ?? Vernier(read, Edges[from]) ?? Marks(read, Edges[from]);
        return (found ?? (from > 0 ? Mistake.Datum : Mistake.Off), from);
    }

    Mistake? Zero(double read, double edge)
    {
        if (!IsCaliper || Math.Abs(ZeroError) < Tiny) return null;
        return Math.Abs(read - (edge + ZeroError)) <= HalfLine + Tiny ? Mistake.ZeroForgotten
            : Math.Abs(read - (edge + (2 * ZeroError))) <= HalfLine + Tiny ? Mistake.ZeroWrongWay : null;
    }

    // A figure typed in the wrong unit is rounded in that unit: to a sixteenth, to half a millimetre.
    Mistake? Unit(double read, double edge)
    {
        var unit = Math.Max(Near, LeastUnit);
        if (Math.Abs((read * Instrument.Inch) - edge) <= (Instrument.Inch / 16) + Near) return Mistake.InchesAsMillimetres;
        if (Math.Abs((read / Instrument.Inch) - edge) <= unit) return Mistake.MillimetresAsInches;
        if (Math.Abs((read * 10) - edge) <= unit) return Mistake.CentimetresAsMillimetres;
        return Math.Abs((read / 10) - edge) <= unit ? Mistake.TenTimes : null;
    }

    Mistake? Round(double read, double edge)
    {
        if (Math.Abs((read / Math.PI) - edge) <= Near) return Mistake.RoundForAcross;
        return Math.Abs((read * Math.PI) - edge) <= Math.PI * Near ? Mistake.AcrossForRound : null;
    }

    // The vernier as it stands on the scale, zero error and all; the learner may have taken that off or not.
    Mistake? Vernier(double read, double edge)
    {
        if (!IsCaliper) return null;
        var steps = (int)Math.Floor(((edge + ZeroError) * Instrument.VernierLines) + 0.5);
        var whole = Math.Floor((double)steps / Instrument.VernierLines);
        var line = steps - (whole * Instrument.VernierLines);
        var part = line / Instrument.VernierLines;
        if (line > 0 && IsOrCorrected(read, whole + (line / 10), HalfLine)) return Mistake.VernierTenths;
        if (line > 0 && IsOrCorrected(read, whole, Hundredth / 2)) return Mistake.VernierLeftOut;
        if (line > 0 && (IsOrCorrected(read, whole + (10 * part), HalfLine) || IsOrCorrected(read, whole + (part / 10), Hundredth))) return Mistake.VernierPlace;
        return IsOrCorrected(read, whole + part + Instrument.VernierLines - 1, HalfLine) ? Mistake.VernierEnd : null;
    }

    Mistake? Marks(double read, double edge)
    {
        if (Tool is not { HasScale: true } tool) return null;
        var off = Math.Abs(read - edge);
        if (IsCaliper && Is(off, tool.Division)) return Mistake.VernierDivision;
        return Is(off, tool.Pitch) ? Mistake.MainDivision : Is(off, tool.Figure) ? Mistake.Figure : null;
    }

    bool IsOrCorrected(double read, double seen, double by) => Math.Abs(read - (seen - ZeroError)) <= by + Tiny || Math.Abs(read - seen) <= by + Tiny;

    bool Is(double read, double value) => Math.Abs(read - value) <= Near;
}
