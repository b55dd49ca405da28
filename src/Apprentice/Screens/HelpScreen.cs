using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Help, from anywhere.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record HelpScreen(Screen Below) : Screen
{
    /// <summary>Help while jobs are practised.</summary>
    public static readonly IReadOnlyList<string> Practice = ["what", "fair", "not-settled", "first", "keys", "data", "part"];

    /// <summary>Help beside a real bike: nothing is marked.</summary>
    public static readonly IReadOnlyList<string> RealBike = ["real", "real-hidden", "real-open", "real-first", "keys", "data", "part"];

    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("help.title"),
        "",
        [.. Below.HelpParts.Select(p => world.Plain && p is "keys" ? "plain" : p).SelectMany(p => new Block[] { new Block.Text(Words.Of($"help.{p}")), new Block.Gap() })],
        [Words.Of("key.enter-ok"), Words.Of("key.back")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}
