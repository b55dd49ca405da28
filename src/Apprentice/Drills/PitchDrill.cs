using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine;
using Apprentice.Engine.Topics;

namespace Apprentice.Drills;

/// <summary>A thread and a pitch gauge: which leaf fits. From the gauges of the topics, and from free threads.</summary>
sealed record PitchDrill() : DrillSkill("pitch", "drill.pitch", "drill.pitch-note")
{
    const double Inch = 25.4;
    const int Turns = 10;

    /// <summary>Free threads by family: leaves of which one fits. Source: facts U6 (S94: metric coarse and fine pitches; S95: threads on bicycles; S95b: pitch = 25.4 / threads to the inch).</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<Leaf>> Free { get; } = new Dictionary<string, IReadOnlyList<Leaf>>(StringComparer.Ordinal)
    {
        ["metric"] = [Metric(0.75), Metric(0.8), Metric(1), Metric(1.25), Metric(1.5)],
        ["inch"] = [Inches(32), Inches(26), Inches(24), Inches(20)],
        ["neighbours"] = [Inches(26), Metric(1), Inches(24), Metric(1.25), Inches(20)],
    };

    /// <inheritdoc/>
    public override IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches) => [.. Free.Keys, .. Clues(benches, IsGauge)];

    /// <inheritdoc/>
    public override DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed)
    {
        if (Free.TryGetValue(family, out var leaves))
            return Item([.. leaves.Select(l => new TableFinding(l.Name, l.Name) { Gauge = l })], Words.Of("drill.pitch-where"), seed);
        var (bench, id) = Of(benches, family);
        var clue = bench.Topic.Clues.First(c => string.Equals(c.Id, id, StringComparison.Ordinal));
        return Item(((Shows.Table)clue.Shows).Findings, clue.FromTo, seed);
    }

    static DrillItem.OnGauge Item(IReadOnlyList<TableFinding> findings, string fromTo, ulong seed)
    {
        var rng = Luck.Of(seed);
        var fitting = findings.Where(x => x.Gauge is { Size: > 0 }).ToList();
        var shown = fitting[rng.Below(fitting.Count)];
        return new DrillItem.OnGauge
        {
            Prompt = Words.Of("drill.pitch-ask"),
            Beside = Words.Of("drill.pitch-beside"),
            Leaves = findings,
            Pitch = shown.Gauge?.Size ?? 0,
            First = rng.Below(findings.Count),
            FromTo = fromTo,
            Judge = id => Judge(findings.First(f => string.Equals(f.Id, id, StringComparison.Ordinal)).Gauge, shown.Gauge ?? throw new InvalidOperationException(shown.Id)),
        };
    }

    static DrillVerdict Judge(Leaf? own, Leaf fits)
    {
        var why = Words.Of("drill.pitch-fits", ("leaf", fits.Name), ("pitch", Mm(fits.Size)), ("turns", Turns), ("ten", Mm(Turns * fits.Size)));
        if (own is not null && own != fits)
            why += " " + Words.Of("drill.pitch-other", ("leaf", own.Name), ("turns", Turns), ("ten", Mm(Turns * own.Size)), ("apart", Mm(Turns * Math.Abs(own.Size - fits.Size))));
        return new DrillVerdict(own == fits, why)
        {
            Shown = new DrillPicture(
                room => GaugeDrawing.Thread(fits.Size, fits.Size, fits.Name, (room.Columns, room.Rows), ThreadView.Turns.Count - 1), GaugeWords.Thread(fits.Size, fits.Size, fits.Name)),
        };
    }

    static bool IsGauge(Clue clue) => Instrument.Of(clue.Tool) is { Sort: InstrumentSort.PitchGauge } && clue.Shows is Shows.Table table && table.Findings.Count(f => f.Gauge is { Size: > 0 }) > 1;

    static Leaf Metric(double pitch) => new(Words.Of("spoken.mm", ("n", pitch.ToString("0.##"))), pitch);

    static Leaf Inches(int threads) => new(Words.Of("drill.pitch-tpi", ("n", threads)), Inch / threads);

    static string Mm(double size) => size.ToString("0.0#");
}
