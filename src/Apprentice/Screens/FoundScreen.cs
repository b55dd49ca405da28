using Apprentice.Content;
using Apprentice.Content.Lessons;

namespace Apprentice.Screens;

/// <summary>What a search found: words first, then places in lessons.</summary>
/// <param name="Text">What was searched for.</param>
/// <param name="Found">Words of the glossary.</param>
/// <param name="Hits">Places in lessons.</param>
/// <param name="Below">The search.</param>
sealed record FoundScreen(string Text, IReadOnlyList<GlossaryWord> Found, IReadOnlyList<Hit> Hits, SearchScreen Below) : ChoiceScreen
{
    /// <summary>True for words that are nearly what was typed.</summary>
    public bool IsNear { get; init; }

    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        IsNear ? Words.Of("search.title") : Words.Of("search.found", ("text", Text)),
        world.Who,
        [
            .. IsNear ? [new Block.Text(Words.Of("search.near", ("text", Text))), new Block.Gap()] : Array.Empty<Block>(),
            new Block.Table([new(""), new("")],
                Rows(
                [
                    .. Found.Select(w => (string[])[w.Name, w.Meaning]),
                    .. Hits.Select(h => (string[])[$"{NameOf(world, h.Lesson)}: {h.Lesson.Sections[h.Section].Heading}", h.Excerpt]),
                ])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Found.Count + Hits.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line < Found.Count
        ? Turn.To(new WordScreen(Found[line], this))
        : LessonScreen.Open(world, Hits[line - Found.Count].Lesson, Hits[line - Found.Count].Section, this);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    // Lessons of several topics share a title, such as "What sort of bike": then the topic stands behind it.
    static string NameOf(World world, Lesson lesson) => world.Library.Lessons.Count(l => string.Equals(l.Title, lesson.Title, StringComparison.Ordinal)) > 1
        ? Words.Of("search.title-of", ("lesson", lesson.Title), ("topic", TopicsScreen.Title(world, lesson.Topic)))
        : lesson.Title;
}
