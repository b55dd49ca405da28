using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>From an answer: what was told and found so far. Any way back leads to the same question.</summary>
/// <param name="Below">The answer.</param>
sealed record NotedScreen(AnswerScreen Below) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("noted.title", ("job", Below.Form.On.Number)),
        JobCardBlocks.Right(Below.Form.On, world.Who),
        [.. JobCardBlocks.Of(Below.Form.On), new Block.Rule(Drop: true), Noted.Of(Below.Form.On) ?? (Block)new Block.Text(Words.Of("noted.nothing"))],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter || key.Letter is 'F' or '*' ? Below : this);
}
