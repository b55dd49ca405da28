using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>"This is wrong" in a lesson: one line for the lead.</summary>
/// <param name="Below">The lesson.</param>
sealed record LessonWrongScreen(LessonScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    protected override int Longest => 160;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Below.Lesson.Title,
        world.Who,
        [new Block.Gap(), new Block.Text(Words.Of("lesson.wrong-ask", ("section", Below.Lesson.Sections[Below.Section].Heading))), new Block.Gap(), .. Field(Words.Of("wrong.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("wrong.empty") })
        : Turn.To(
            Below with { Note = Words.Of("wrong.kept") },
            new LogEntry.LessonQuestioned(world.Person, Below.Lesson.Path, Below.Lesson.Sections[Below.Section].Anchor, text));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
