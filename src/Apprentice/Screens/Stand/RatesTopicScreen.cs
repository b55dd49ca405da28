using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Figures learned from the workshop's bikes: of which topic.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record RatesTopicScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-rates"),
        "",
        [new Block.Text(Words.Of("stand.rates-topic")), new Block.Gap(Drop: true), new Block.Table([new("")], Rows(world.Practised.Select(b => (string[])[b.Topic.Title])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Practised.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new RatesScreen(this, world.Practised[line].Topic.Id));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
