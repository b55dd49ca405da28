namespace Apprentice.Engine.Topics;

/// <summary>A tool with a scale or with gauges to try, by the words of a clue's "Tool".</summary>
/// <param name="Sort">What it is.</param>
/// <param name="Inches">True for a scale in inches and sixteenths.</param>
/// <param name="Inside">True for the inside jaws of a caliper.</param>
/// <param name="Pins">True for a rule laid along the pins of a chain.</param>
public sealed record Instrument(InstrumentSort Sort, bool Inches = false, bool Inside = false, bool Pins = false)
{
    /// <summary>An inch in mm, exactly. Source: international yard and pound agreement, 1959.</summary>
    public const double Inch = 25.4;

    /// <summary>Lines of a caliper's vernier: 0.05 mm each. Source: facts U7.1.</summary>
    public const int VernierLines = 20;

    // The first word that is found counts: "pitch gauge, rule" is a pitch gauge.
    static readonly (string Word, InstrumentSort Sort)[] Names =
    [
        ("pitch gauge", InstrumentSort.PitchGauge), ("chain gauge", InstrumentSort.ChainGauge),
        ("caliper", InstrumentSort.Caliper), ("tape", InstrumentSort.Tape), ("rule", InstrumentSort.Rule),
    ];

    /// <summary>Distance of neighbouring marks of the main scale, mm.</summary>
    public double Pitch => Inches ? Inch / 16 : 1;

    /// <summary>The smallest division that can be read by a mark, mm.</summary>
    public double Division => Sort == InstrumentSort.Caliper ? Pitch / VernierLines : Pitch;

    /// <summary>Distance of neighbouring figures, mm.</summary>
    public double Figure => Inches ? Inch : 10;

    /// <summary>True for a rule, a tape or a caliper.</summary>
    public bool HasScale => Sort is InstrumentSort.Rule or InstrumentSort.Tape or InstrumentSort.Caliper;

    /// <summary>The tool of a topic's words: "rule", "eyes, tape", "caliper, inside", "rule, inches", "rule, inches, pins", "pitch gauge", "chain gauge"; null when there is none to read.</summary>
    public static Instrument? Of(string tool)
    {
        var index = Array.FindIndex(Names, n => Has(tool, n.Word));
        if (index < 0) return null;
        var sort = Names[index].Sort;
        var ruled = sort is InstrumentSort.Rule or InstrumentSort.Tape;
        return new Instrument(sort, ruled && Has(tool, "inches"), sort == InstrumentSort.Caliper && Has(tool, "inside"), sort == InstrumentSort.Rule && Has(tool, "pins"));
    }

    static bool Has(string tool, string word) => tool.Contains(word, StringComparison.OrdinalIgnoreCase);
}

/// <summary>Sorts of tools.</summary>
public enum InstrumentSort
{
    /// <summary>A steel rule.</summary>
    Rule,

    /// <summary>A tape.</summary>
    Tape,

    /// <summary>A vernier caliper 0.05 mm, always in millimetres.</summary>
    Caliper,

    /// <summary>A thread pitch gauge: leaves, one of which fits.</summary>
    PitchGauge,

    /// <summary>A drop-in gauge for chains.</summary>
    ChainGauge,
}
