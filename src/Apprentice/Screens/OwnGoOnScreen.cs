using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>A walk round a real bike that is not over: gone on with, kept in the notebook, or let go before another one.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record OwnGoOnScreen(OwnBike Bike, Screen Below) : ChoiceScreen
{
    static readonly string[] Choices = ["own.go-on", "own.go-on-keep", "own.go-on-drop"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <summary>The question about a walk that is not over, or where there is none what is to be bought.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="below">The screen to go back to.</param>
    public static Screen Of(World world, Screen below) => OwnBike.Open(world) is { } bike ? new OwnGoOnScreen(bike, below) : OwnTopicScreen.Of(world, below);

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Bike.Topic.Title,
        [
            new Block.Text(Words.Of("own.open-walk", ("want", Bike.Want.Name), ("n", Bike.Number - 1))),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Choices.Select(c => (string[])[Words.Of(c)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Turn.To(Bike.Screen(Below)),
        1 => Turn.To(OwnTopicScreen.Of(world, Below), Bike.Kept(world)),
        _ => Turn.To(OwnTopicScreen.Of(world, Below), new LogEntry.WalkEnded(world.Person)),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
