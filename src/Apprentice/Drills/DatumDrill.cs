using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Drills;

/// <summary>Rule and tape on the measured clues of the topics: from where to where first, then the reading.</summary>
sealed record DatumDrill() : DrillSkill("datum", "drill.datum", "drill.datum-note")
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches) =>
        [.. benches.SelectMany(b => b.Topic.Clues.Where(IsRead).Select(c => $"{b.Topic.Id}:{c.Id}"))];

    /// <inheritdoc/>
    public override DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed)
    {
        var bench = benches.First(b => family.StartsWith($"{b.Topic.Id}:", StringComparison.Ordinal));
        var clue = bench.Topic.Clues.First(c => string.Equals(family, $"{bench.Topic.Id}:{c.Id}", StringComparison.Ordinal));
        var measured = (Shows.Measured)clue.Shows;
        var made = bench.Make(new CaseRequest(bench.Topic.Provenances[0].Id, bench.Topic.Wants[0].Id, null, Selection.AsTheyCome, Channel.Bench), seed)
            ?? throw new InvalidOperationException($"The topic {bench.Topic.Id} makes no bikes.");
        double Edge(int datum) => Math.Clamp(bench.EdgeOf(made, clue.Id, 0, datum), measured.Low, measured.High);
        return new DrillItem.OnScale
        {
            Prompt = clue.Name,
            Scale = Scale.Of(clue.Tool) is Scale.Ruled ruled ? ruled with { Around = Math.Abs(measured.Scale - Math.PI) < 1e-6 } : new Scale.Ruled(Tape: true, Inches: false),
            Tool = clue.Tool,
            Datums = [clue.FromTo, .. measured.Slips.Select(s => s.Name)],
            ExactFor = Edge,
            Step = measured.Step,
            Range = (measured.Low, measured.High),
            Seed = seed,
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

    static bool IsRead(Clue clue) => clue.Shows is Shows.Measured { Slips.Count: > 0 } && Scale.Of(clue.Tool) is Scale.Ruled
        && clue.Channels.Any(c => c.Channel == Channel.Bench);
}
