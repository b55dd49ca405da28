using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The cards of the checks of a job, to choose one.</summary>
/// <param name="Below">The grade.</param>
sealed record CardsScreen(GradeScreen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("card.title"),
        world.Who,
        [
            new Block.Text(Words.Of("card.list")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Below.On.Topic.Clues.Select(c => (string[])[c.Name]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Below.On.Topic.Clues.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new CardScreen(this, Below.On.Topic, Below.On.Topic.Clues[line].Id));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
