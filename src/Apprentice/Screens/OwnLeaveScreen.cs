using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Leaving a walk round a real bike: what was found is kept in the notebook, or let go.</summary>
/// <param name="Below">The end of the walk.</param>
sealed record OwnLeaveScreen(OwnEndScreen Below) : ChoiceScreen
{
    static readonly string[] Choices = ["own.leave-keep", "own.leave-go"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Below.Bike.Topic.Title,
        [
            new Block.Text(Words.Of("own.leave")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Choices.Select(c => (string[])[Words.Of(c)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0 ? Below.Keep(world) : OwnEndScreen.LetGo(world);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
