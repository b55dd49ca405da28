using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The sources of the figures of a section.</summary>
/// <param name="Below">The lesson.</param>
sealed record LessonSourcesScreen(LessonScreen Below) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("lesson.sources-title"), world.Who, [.. Sentences(world).SelectMany(s => new Block[] { new Block.Text(s), new Block.Gap(Drop: true) })],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press is Screens.Press.Enter or Screens.Press.Left ? Below : this);

    List<string> Sentences(World world)
    {
        var figures = Below.Lesson.Sections[Below.Section].Blocks.SelectMany(b => b.AllSpans).Where(s => s.Link is not null && s.Link.Contains(':')).ToList();
        var sentences = figures.Select(s => (s.Text, Link: s.Link ?? "")).Where(s => !s.Link.StartsWith("word:", StringComparison.Ordinal))
            .Select(s => Words.Of("lesson.source-line", ("figure", s.Text), ("source", SourceWords.Of(world, Below.Lesson.Topic, s.Link)))).Distinct(StringComparer.Ordinal).ToList();
        return sentences.Count == 0 ? [Words.Of("lesson.no-sources")] : sentences;
    }
}
