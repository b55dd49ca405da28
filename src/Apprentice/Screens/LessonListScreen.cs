using Apprentice.Content;
using Apprentice.Content.Lessons;

namespace Apprentice.Screens;

/// <summary>The lessons of a topic, with the day on which each was read.</summary>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record LessonListScreen(string Topic, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Spoken.Capital(TopicsScreen.Title(world, Topic)),
        world.Who,
        [
            new Block.Text(Words.Of("lessons.which")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], Rows([.. Lessons(world).Select(l => (string[])[l.Title, When(world, l)]), .. HasSizes(world) ? [[Words.Of("published.title"), ""]] : Array.Empty<string[]>()])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lessons(world).Count + (HasSizes(world) ? 1 : 0);

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line < Lessons(world).Count
        ? LessonScreen.Open(world, Lessons(world)[line], 0, this)
        : Turn.To(new PublishedScreen(Topic, this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<Lesson> Lessons(World world) => [.. world.Library.Of(Topic)];

    bool HasSizes(World world) => world.Bench(Topic)?.Topic.Published.Count > 0;

    static string When(World world, Lesson lesson) =>
        world.History.Read(world.Person, lesson.Path) is { } at ? Words.Of("lessons.read-on", ("day", at.ToString("d MMM yyyy"))) : "";
}
