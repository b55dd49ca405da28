using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>All words of the trade, by alphabet.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record GlossaryScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("words.title"),
        world.Who,
        [new Block.Table([new(""), new("", Drop: true)], Rows(world.Library.Glossary.Words.Select(w => (string[])[w.Name, string.Join(", ", w.Also)])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("lessons.key-search"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Library.Glossary.Words.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new WordScreen(world.Library.Glossary.Words[line], this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'S' ? Turn.To(new SearchScreen(this)) : null;
}
