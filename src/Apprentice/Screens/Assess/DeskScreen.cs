using Apprentice.Content;

namespace Apprentice.Screens.Assess;

/// <summary>The lead's desk: plans, papers, sittings, results. Only making and collecting papers asks for the passphrase.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record DeskScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var all = world.History.Assessments;
        return new Page(
            Words.Of("desk.title"),
            Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
            [
                new Block.Text(Words.Of("desk.text")),
                new Block.Gap(Drop: true),
                new Block.Table([new(""), new("")], Rows(DeskWays.All(world).Select(w => (string[])[w.Name, w.Note]))),
                new Block.Gap(Drop: true),
                new Block.Text(Words.Of(all.Desk is null ? "desk.no-key" : world.DeskKey is null ? "desk.closed" : "desk.open")),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => DeskWays.All(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => DeskWays.All(world)[line].Go(world, this);

    /// <summary>Leaving the desk closes it.</summary>
    protected override Turn Back(World world) => Turn.To(Below) with { Keeps = w => w with { DeskKey = null } };
}

/// <summary>A way from the desk.</summary>
/// <param name="Name">Its line.</param>
/// <param name="Note">What stands beside it.</param>
/// <param name="Go">Where it leads, given the desk to come back to.</param>
sealed record DeskWay(string Name, string Note, Func<World, DeskScreen, Turn> Go);

/// <summary>All ways from the desk, in order.</summary>
static class DeskWays
{
    /// <summary>The ways.</summary>
    public static IReadOnlyList<DeskWay> All(World world) =>
    [
        new(Words.Of("desk.plans"), Words.Of("desk.plans-note", ("n", world.History.Assessments.Plans.Count)), (_, desk) => Turn.To(new PlansScreen(desk))),
        new(Words.Of("desk.make"), Words.Of("desk.make-note", ("n", world.History.Assessments.Papers.Count)), (_, desk) => Turn.To(new MakePlanScreen(desk))),
        new(Words.Of("desk.sit"), Words.Of("desk.sit-note"), (_, desk) => SitPickScreen.Open(desk)),
        new(Words.Of("desk.collect"), Words.Of("desk.collect-note", ("n", world.History.Assessments.Results.Count)), (_, desk) => CollectScreen.Open(desk)),
        .. ReportWays.All(world),
        new(Words.Of("desk.passphrase"), Words.Of("desk.passphrase-note"), (w, desk) => Changed(w, desk)),
    ];

    // A new passphrase needs the old one, or the recovery code; the key stays, so that papers made before still open.
    static Turn Changed(World world, DeskScreen desk) => world.History.Assessments.Desk is null
        ? Turn.To(new DeskSetScreen(desk, _ => Turn.To(desk)))
        : Turn.To(new DeskOpenScreen(desk, _ => Turn.To(new DeskSetScreen(desk, _ => Turn.To(desk)))));
}
