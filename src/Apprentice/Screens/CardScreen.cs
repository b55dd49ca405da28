using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>The card of a check: from where to where, with what, how it misleads.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Topic">The topic.</param>
/// <param name="Clue">Short name of the clue.</param>
sealed record CardScreen(Screen Below, Topic Topic, string Clue) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <summary>The lesson of a check, which begins with its card; a card from the topic's own data where there is no lesson.</summary>
    public static Turn Open(World world, Screen below, Topic topic, string clue) => world.Library.OfClue(topic.Id, clue) is { } lesson
        ? LessonScreen.Open(world, lesson, 0, below)
        : Turn.To(new CardScreen(below, topic, clue));

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var clue = Topic.Clues.First(c => string.Equals(c.Id, Clue, StringComparison.Ordinal));
        return new Page(
            Words.Of("card.title"),
            world.Who,
            [
                new Block.Text(Spoken.Capital(clue.Name)),
                new Block.Gap(),
                .. Sentences(clue).SelectMany(s => new Block[] { new Block.Text(s), new Block.Gap() }),
                new Block.Text(Words.Of("card.safety")),
                new Block.Gap(),
                new Block.Text(Words.Of("card.decides")),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press is Screens.Press.Enter or Screens.Press.Left ? Below : this);

    IEnumerable<string> Sentences(Clue clue)
    {
        yield return ClueWhere.Of(clue, "card.fromto");
        yield return Words.Of("card.tool", ("tool", clue.Tool), ("minutes", Spoken.Minutes(clue.Minutes)));
        if (clue.Access is { } id && Topic.Accesses.First(a => string.Equals(a.Id, id, StringComparison.Ordinal)) is var access)
            yield return Words.Of("card.access", ("access", access.Name), ("minutes", Spoken.Minutes(access.Minutes)));
        if (clue.Caution.Length > 0) yield return Words.Of("card.caution", ("text", clue.Caution));
        if (clue.Lies.Length > 0) yield return Words.Of("card.lies", ("text", clue.Lies));
        yield return Words.Of("card.source", ("source", Source(clue.Source)));
    }

    string Source(string key) => Topic.Sources.FirstOrDefault(s => string.Equals(s.Key, key, StringComparison.Ordinal))?.Text.TrimEnd('.')
        ?? (key.StartsWith("common", StringComparison.Ordinal) ? Words.Of("card.common") : Words.Of("card.judgement"));
}
