using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Drills;

/// <summary>Rule and tape on the measured clues of the topics: from where to where first, then the reading.</summary>
sealed record DatumDrill() : DrillSkill("datum", "drill.datum", "drill.datum-note")
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches) =>
        Clues(benches, c => c.Shows is Shows.Measured { Slips.Count: > 0 } && Scale.Of(c.Tool) is Scale.Ruled);

    /// <inheritdoc/>
    public override DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed)
    {
        var (bench, id) = Of(benches, family);
        var clue = bench.Topic.Clues.First(c => string.Equals(c.Id, id, StringComparison.Ordinal));
        var measured = (Shows.Measured)clue.Shows;
        var made = Bike(bench, seed);
        double Edge(int datum) => Math.Clamp(bench.EdgeOf(made, clue.Id, 0, datum), measured.Low, measured.High);
        return new DrillItem.OnScale
        {
            Prompt = clue.Name,
            Scale = Scale.Of(clue.Tool) is not Scale.Ruled ruled ? new Scale.Ruled(Tape: true, Inches: false) : Math.Abs(measured.Scale - Math.PI) < 1e-6 ? ruled.LaidRound(seed) : ruled,
            Tool = clue.Tool,
            Datums = [clue.Datum.Length > 0 ? clue.Datum : clue.FromTo, .. measured.Slips.Select(s => s.Name)],
            ExactFor = Edge,
            Step = measured.Step,
            Range = (measured.Low, measured.High),
            Seed = seed,
            Drawn = DrawnDatums.Of(bench.Topic, clue, made.Truth, seed),
            Judge = own => Judge(own, clue, measured, Edge(own.Datum)),
        };
    }

    // Three quarters of a step: the nearest mark, or the next one where the edge is nearly half-way (judgement).
    static DrillVerdict Judge(OwnReading own, Clue clue, Shows.Measured measured, double edge)
    {
        var read = Math.Abs(own.Millimetres - edge) <= 0.75 * measured.Step;
        var why = Words.Of("drill.datum-edge", ("edge", edge.ToString("0.#")), ("step", measured.Step.ToString("0.###")));
        var datum = own.Datum == 0
            ? Words.Of("drill.datum-from", ("fromto", clue.FromTo.TrimEnd('.')))
            : Words.Of("drill.datum-slip", ("slip", measured.Slips[own.Datum - 1].Name.TrimEnd('.')), ("fromto", clue.FromTo.TrimEnd('.')));
        return new DrillVerdict(read && own.Datum == 0, $"{datum} {why}");
    }
}
