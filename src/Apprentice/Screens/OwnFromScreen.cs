using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Own bike: where it comes from.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record OwnFromScreen(OwnBike Bike, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Bike.Topic.Title,
        [
            new Block.Text(Words.Of("own.from")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Bike.Topic.Provenances.Select(p => (string[])[Spoken.Capital(p.Card)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Bike.Topic.Provenances.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) =>
        Turn.To(new OwnToolsScreen(Bike with { Provenance = Bike.Topic.Provenances[line].Id }, this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
