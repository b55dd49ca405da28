using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Own bike: where it comes from.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record OwnFromScreen(OwnBike Bike, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Bike.Topic.Title,
        [
            new Block.Text(Words.Of("own.from")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Bike.Topic.Provenances.Select(p => (string[])[From(p)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Bike.Topic.Provenances.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) =>
        Turn.To(new OwnToolsScreen(Bike with { Provenance = Bike.Topic.Provenances[line].Id }, this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    // The topic speaks of customers; for the sorts that most topics have, the owner is spoken to.
    static string From(Provenance provenance) => provenance.Id switch
    {
        "own" => Words.Of("own.from-own"),
        "lot" => Words.Of("own.from-lot"),
        "shed" => Words.Of("own.from-shed"),
        _ => Spoken.Capital(provenance.Card),
    };
}
