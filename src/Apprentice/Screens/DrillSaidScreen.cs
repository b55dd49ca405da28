using Apprentice.Content;
using Apprentice.Drills;

namespace Apprentice.Screens;

/// <summary>After an item: right or not, and how one sees it.</summary>
/// <param name="Run">The drill.</param>
/// <param name="Prompt">What was asked.</param>
/// <param name="Given">What was given.</param>
/// <param name="Verdict">How it was judged.</param>
sealed record DrillSaidScreen(DrillRun Run, string Prompt, string Given, DrillVerdict Verdict) : Screen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>True when the picture of what is right is said in words.</summary>
    public bool InWords { get; init; }

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Run.Title,
        world.Who,
        [
            new Block.Text(Prompt),
            new Block.Text(Words.Of("drill.given", ("given", Given)), 2),
            new Block.Gap(),
            new Block.Text(Words.Of(Verdict.Right ? "drill.right" : "drill.not-yet")),
            new Block.Text(Verdict.Why, 2),
            .. Picture(world),
            new Block.Gap(Drop: Verdict.Shown is not null),
            new Block.Text(DrillRun.Say(Run.State(world))),
            .. Run.Of(world).IsUp ? [new Block.Text(Words.Of("drill.up"))] : Array.Empty<Block>(),
        ],
        [
            Words.Of(Run.Of(world).IsUp ? "drill.key-finish" : "drill.key-next"),
            Verdict.Shown is null || world.Plain ? "" : Words.Of(InWords ? "scale.key-picture" : "scale.key-words"), Words.Of("drill.key-end"), Words.Of("key.pause"), Words.Of("key.help"),
        ]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => key switch
    {
        { Press: Screens.Press.Enter } => Run.Next(world),
        { IsBack: true } => Run.End(),
        { Letter: 'W' } when Verdict.Shown is not null => Turn.To(this with { InWords = !InWords }),
        _ => Turn.To(this),
    };

    IEnumerable<Block> Picture(World world) => Verdict.Shown switch
    {
        null => [],
        var picture when InWords || world.Plain => picture.Words.Select(w => new Block.Text(w, 2)),
        var picture => [new Block.Picture(picture.Draw)],
    };
}
