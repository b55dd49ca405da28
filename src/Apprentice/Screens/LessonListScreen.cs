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
            new Block.Table([new(""), new("")], Rows(Lessons(world).Select(l => (string[])[l.Title, When(world, l)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lessons(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => LessonScreen.Open(world, Lessons(world)[line], 0, this);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<Lesson> Lessons(World world) => [.. world.Library.Of(Topic)];

    static string When(World world, Lesson lesson) =>
        world.History.Read(world.Person, lesson.Path) is { } at ? Words.Of("lessons.read-on", ("day", at.ToString("d MMM yyyy"))) : "";
}
