using Apprentice.Content;
using Apprentice.Drills;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Which skill is drilled for three minutes; last the real parts in the hand.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record DrillsScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("drill.choose"),
        world.Who,
        [
            new Block.Text(Words.Of("drill.ask")),
            new Block.Gap(Drop: true),
            new Block.Table(
                [new(""), new("", Drop: true), new(Words.Of("drill.state-head")) { Said = "drill.state-said" }],
                Rows(
                [
                    .. Skills(world).Select(s => (string[])[Words.Of(s.Name), Words.Of(s.Note), DrillRun.Say(DrillPlan.State(world.History.DrillAnswers(world.Person, s.Id)))]),
                    [Words.Of("drill.real"), Words.Of("drill.real-note"), ""],
                ])),
            new Block.Gap(),
            new Block.Text(Words.Of("drill.how")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Skills(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) =>
        line < Skills(world).Count ? DrillRun.Start(world, Skills(world)[line], this) : Turn.To(new RealSetsScreen(this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static List<DrillSkill> Skills(World world) => [.. DrillSkill.All.Where(s => s.Families(world.Practised).Count > 0)];
}
