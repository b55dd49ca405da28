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
    /// <summary>The paragraphs for safety looks left out of an order, then for the marks that are not good, in the grade's order.</summary>
    public static List<GradeLesson> Of(World world, GradeScreen grade) =>
    [
        .. grade.Grade.SafetyLeft.Where(_ => grade.Given.With([]).Ordered).Select(c => Of(world, grade, Words.Of("card.left-out"), c, "safety")).OfType<GradeLesson>(),
        .. grade.Grade.Parts.Where(p => p.Word != MarkWord.Good).Select(p => Of(world, grade, p)).OfType<GradeLesson>(),
    ];

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
        var why = Words.Of("card.why", ("aspect", Words.Of($"aspect.{part.Aspect}")), ("mark", Words.Of($"mark.{part.Word}")));
        return id is null ? null : Of(world, grade, why, id, anchor);
    }

    static GradeLesson? Of(World world, GradeScreen grade, string why, string id, string anchor)
    {
        if (world.Library.OfClue(grade.On.Topic.Id, id) is not { } lesson) return null;
        var section = lesson.SectionOf(anchor);
        return new GradeLesson(why, $"{lesson.Title}: {lesson.Sections[section].Heading}", lesson, section);
    }

    static string? ClueOf(GradePart part) => part.Remark.Values.Values.OfType<Value.OfClue>().FirstOrDefault()?.Id;
}
