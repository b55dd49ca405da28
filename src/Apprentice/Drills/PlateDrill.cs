using Apprentice.Content;
using Apprentice.Drawing.Plates;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Drills;

/// <summary>The writings of the topics on their drawn surfaces: which one to go by, then what it says.</summary>
sealed record PlateDrill() : DrillSkill("plates", "drill.plates", "drill.plates-note")
{
    const int MostBikes = 200;

    /// <inheritdoc/>
    public override bool SameAgain => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches) => Clues(benches, c => c.Plate is not null);

    /// <inheritdoc/>
    public override DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed)
    {
        var (bench, id) = Of(benches, family);
        var clue = bench.Topic.Clues.First(c => string.Equals(c.Id, id, StringComparison.Ordinal));
        var plate = clue.Plate ?? throw new InvalidOperationException($"{family} has no plate.");
        var made = Seen(bench, id, seed);
        var view = PlateView.Of(clue, plate, w => made.Written(id, 0, w), seed);
        return new DrillItem.OnPlate
        {
            Prompt = clue.Name,
            Beside = clue.Lies,
            Clue = clue,
            View = view,
            Judge = own => Judge(own, clue, plate, view, made.Written(id, 0, 0) ?? ""),
        };
    }

    // A bike on which the writing is not hidden.
    static Case Seen(Workbench bench, string clue, ulong seed) =>
        Enumerable.Range(0, MostBikes).Select(n => Bike(bench, unchecked(seed + ((ulong)n * 0x9E3779B97F4A7C15UL)) >> 1)).First(m => m.Written(clue, 0, 0) is not null);

    static DrillVerdict Judge(OwnLook own, Clue clue, Plate plate, PlateView view, string shown)
    {
        var one = plate.Writings[0];
        var label = LabelOf(view, 0);
        var text = LookTask.FindingsOf(clue).First(f => string.Equals(f.Id, shown, StringComparison.Ordinal)).Text;
        var why = label == 0
            ? Words.Of("drill.plates-gone", ("is", one.Is))
            : Words.Of("drill.plates-one", ("n", label), ("is", one.Is), ("text", text), ("says", one.Says.TrimEnd('.')));
        if (own.Writing is { } taken and > 0)
        {
            var other = plate.Writings[taken];
            why = Words.Of("drill.plates-other", ("n", LabelOf(view, taken)), ("is", other.Is), ("says", other.Says.TrimEnd('.'))) + " " + why;
        }
        return new DrillVerdict(own.Writing == 0 && string.Equals(own.Finding, shown, StringComparison.Ordinal), why);
    }

    // The number that stands beside a writing; 0 when it is not there.
    static int LabelOf(PlateView view, int writing) => view.Markings.ToList().FindIndex(m => m.Writing == writing) + 1;
}
