using Apprentice.Content;
using Apprentice.Content.Lessons;
using Apprentice.Engine.Grading;

namespace Apprentice.Screens;

/// <summary>A paragraph that explains a mark of a grade.</summary>
/// <param name="Why">The mark: "Reading, not yet".</param>
/// <param name="What">The lesson and its section.</param>
/// <param name="Lesson">The lesson.</param>
/// <param name="Section">Index of the section.</param>
sealed record GradeLesson(string Why, string What, Lesson Lesson, int Section)
{
    /// <summary>The paragraphs for the marks that are not good, in the grade's order.</summary>
    public static List<GradeLesson> Of(World world, GradeScreen grade) =>
        [.. grade.Grade.Parts.Where(p => p.Word != MarkWord.Good).Select(p => Of(world, grade, p)).OfType<GradeLesson>()];

    static GradeLesson? Of(World world, GradeScreen grade, GradePart part)
    {
        var (id, anchor) = part.Aspect switch
        {
            Aspect.Reading => (ClueOf(part), "how-it-lies"),
            Aspect.Identification => ("overview", "the-kinds"),
            Aspect.Decision => ("decision", "order-now-two-kinds-wait-or-ask"),
            Aspect.Stopping => ("overview", "when-it-is-not-settled"),
            _ => ("weighing", "two-that-do-not-go-together"),
        };
        if (id is null || world.Library.OfClue(grade.On.Topic.Id, id) is not { } lesson) return null;
        var section = lesson.SectionOf(anchor);
        var why = Words.Of("card.why", ("aspect", Words.Of($"aspect.{part.Aspect}")), ("mark", Words.Of($"mark.{part.Word}")));
        return new GradeLesson(why, $"{lesson.Title}: {lesson.Sections[section].Heading}", lesson, section);
    }

    static string? ClueOf(GradePart part) => part.Remark.Values.Values.OfType<Value.OfClue>().FirstOrDefault()?.Id;
}
