using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Help, from anywhere.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record HelpScreen(Screen Below) : Screen
{
    static readonly string[] Parts = ["what", "fair", "not-settled", "first", "keys", "data", "part"];

    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("help.title"),
        "",
        [.. Parts.Select(p => world.Plain && p is "keys" ? "plain" : p).SelectMany(p => new Block[] { new Block.Text(Words.Of($"help.{p}")), new Block.Gap() })],
        [Words.Of("key.enter-ok"), Words.Of("key.back")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}
