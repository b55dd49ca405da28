using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>A gauge to be tried: all that its screens need, and what follows.</summary>
/// <param name="Title">Top line.</param>
/// <param name="Sort">Pitch gauge or chain gauge.</param>
/// <param name="Findings">What can be said, in the clue's order; those with a leaf can be tried.</param>
/// <param name="Exact">Pitch of the thread in mm, or how much longer the chain is than new, of 100.</param>
sealed record GaugeTask(string Title, InstrumentSort Sort, IReadOnlyList<TableFinding> Findings, double Exact)
{
    const double FurtherStretch = 0.3;

    /// <summary>From where to where, or where to look.</summary>
    public required string FromTo { get; init; }

    /// <summary>The leaf or end that is tried first: an index into <see cref="Leaves"/>.</summary>
    public required int First { get; init; }

    /// <summary>The screen to go back to.</summary>
    public required Screen Below { get; init; }

    /// <summary>What follows, given the short name of the finding.</summary>
    public required Func<World, string, Turn> Done { get; init; }

    /// <summary>Sentences that stand above the gauge.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Number of the job, or null.</summary>
    public int? Job { get; init; }

    /// <summary>Findings that can be tried, by size; for a pitch gauge at the end those that say that none fits.</summary>
    public IReadOnlyList<TableFinding> Leaves =>
    [
        .. Findings.Where(f => f.Gauge is { Size: > 0 }).OrderBy(f => f.Gauge?.Size),
        .. Sort == InstrumentSort.PitchGauge ? Findings.Where(f => f.Gauge is null) : [],
    ];

    /// <summary>The first screen.</summary>
    public Screen Start() => new GaugeScreen(this, First);

    /// <summary>The task of a clue, or null when its tool is no gauge or nothing on it says what the gauge is.</summary>
    /// <param name="title">Top line.</param>
    /// <param name="clue">The clue.</param>
    /// <param name="shown">Short name of the finding that the case shows: the picture shows exactly that, never the truth behind it.</param>
    /// <param name="seed">Draws what the finding leaves open, and the leaf that is tried first.</param>
    /// <param name="below">The screen to go back to.</param>
    /// <param name="done">What follows once it is said.</param>
    public static GaugeTask? Of(string title, Clue clue, string shown, ulong seed, Screen below, Func<World, string, Turn> done)
    {
        if (Instrument.Of(clue.Tool) is not { HasScale: false } tool || clue.Shows is not Shows.Table table) return null;
        var finding = table.Findings.FirstOrDefault(f => string.Equals(f.Id, shown, StringComparison.Ordinal));
        var sizes = table.Findings.Select(f => f.Gauge?.Size ?? 0).Where(s => s > 0).Order().ToList();
        if (finding is null || sizes.Count < 2 || (finding.Gauge is null && tool.Sort == InstrumentSort.ChainGauge)) return null;
        // Where several findings have no leaf, a thread that none fits would not tell which of them it is.
        if (finding.Gauge is null && table.Findings.Count(f => f.Gauge is null) > 1) return null;
        var rng = new Rng(unchecked((seed + 1) * 0x9E3779B97F4A7C15UL), stream: 5);
        for (var i = 0; i < 8; i++) rng.Next();
        var task = new GaugeTask(title, tool.Sort, table.Findings, tool.Sort == InstrumentSort.PitchGauge ? Pitch(finding, sizes) : Stretch(finding, sizes, rng.Unit()))
        {
            FromTo = clue.FromTo,
            First = 0,
            Below = below,
            Done = done,
        };
        return task with { First = rng.Below(task.Leaves.Count) };
    }

    // No leaf fits a thread that lies between the two that are furthest apart.
    static double Pitch(TableFinding finding, List<double> sizes)
    {
        if (finding.Gauge is { } gauge) return gauge.Size;
        var gap = Enumerable.Range(1, sizes.Count - 1).MaxBy(i => sizes[i] / sizes[i - 1]);
        return Math.Sqrt(sizes[gap] * sizes[gap - 1]);
    }

    // At least what the largest end that drops in says, and clearly less than the next.
    static double Stretch(TableFinding finding, List<double> sizes, double luck)
    {
        var low = finding.Gauge?.Size ?? 0;
        var high = sizes.Where(s => s > low).DefaultIfEmpty(low + FurtherStretch).Min();
        return low + ((high - low) * (0.1 + (0.8 * luck)));
    }
}
