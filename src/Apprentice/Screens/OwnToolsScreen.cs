using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Own bike: what is at hand.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record OwnToolsScreen(OwnBike Bike, Screen Below) : ChoiceScreen
{
    static readonly string[] Choices = ["eyes", "rule", "caliper"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Bike.Topic.Title,
        [
            new Block.Text(Words.Of("own.tools")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Choices.Select(c => (string[])[Words.Of($"own.{c}")]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var bike = Bike with { Tools = line + 1 };
        return Turn.To(bike.Screen(this), new LogEntry.WalkBegun(world.Person, bike.Topic.Id, bike.Topic.Version, bike.Want.Id, bike.Provenance, bike.Tools));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
