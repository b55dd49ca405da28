using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>A scale of a drill was left: end the drill, or go on with another item.</summary>
/// <param name="Run">The drill.</param>
sealed record DrillLeaveScreen(DrillRun Run) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Run.Title,
        world.Who,
        [
            new Block.Gap(),
            new Block.Text(Words.Of("drill.leave")),
            new Block.Gap(),
            new Block.Table([new("")], Rows([[Words.Of("drill.leave-on")], [Words.Of("drill.leave-end")]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("drill.key-end"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0 ? Run.Next(world) : Run.End();

    /// <inheritdoc/>
    protected override Turn Back(World world) => Run.End();
}
