using Apprentice.Content;
using Apprentice.Content.Lessons;

namespace Apprentice.Screens;

/// <summary>Search over lessons and words: what is typed, then what was found.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record SearchScreen(Screen Below) : FieldScreen
{
    const int MostHits = 30;
    const int MostNear = 6;

    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("search.title"),
        world.Who,
        [new Block.Gap(), new Block.Text(Words.Of("search.ask")), new Block.Gap(), .. Field(Words.Of("search.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length == 0) return Turn.To(this with { Wrong = Words.Of("search.empty") });
        var words = LessonSearch.Words(world.Library, text);
        var hits = LessonSearch.Sections(world.Library, text, MostHits);
        if (words.Count + hits.Count > 0) return Turn.To(new FoundScreen(text, words, hits, this with { Typed = "", Wrong = "" }));
        return LessonSearch.Near(world.Library, text, MostNear) is [_, ..] near
            ? Turn.To(new FoundScreen(text, near, [], this with { Typed = "", Wrong = "" }) { IsNear = true })
            : Turn.To(this with { Wrong = Words.Of("search.none", ("text", text)) });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
