using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Judges the learner's own readings and findings, once: readings against the true size and what the tool is good for.</summary>
static class ReadingGrades
{
    /// <summary>The mark of the worst own reading, or null when the learner read nothing themselves.</summary>
    public static GradePart? Of(Workbench bench, Case made, Answer answer)
    {
        var grades = answer.Looks.Select(l => made.Look(l.Clue, l.Nth).Seen is Seen.Reading ? Grade(bench, made, l) : MarkingGrades.Of(bench, made, l)).OfType<GradePart>().ToList();
        return grades.Count == 0 ? null : grades.MinBy(g => g.Mark);
    }

    static GradePart? Grade(Workbench bench, Case made, Look look)
    {
        var scene = bench.SceneOf(made.Job.Request.Provenance);
        if (scene.Table.Names.ClueOf(look.Clue).Shows is not Shows.Measured measured || look.OwnReading is not { } read) return null;
        var size = made.Truth.Sizes[scene.Table.Names.Dimension(measured.Dimension)];
        var model = scene.Reader.ModelOf(look.Clue, made.Job.Request.Offer, null);
        var right = Error(model.Ways[0], size, read);
        var allowed = Math.Max(model.Step, 2 * model.Ways[0].Uncertainty);
        var mark = right <= allowed ? 1 : right <= 2 * allowed ? 0.5 : 0;
        var slip = Enumerable.Range(1, model.Ways.Count - 1).FirstOrDefault(w => Error(model.Ways[w], size, read) <= allowed);
        var shows = new Value.Length((model.Ways[0].Slope * size) + model.Ways[0].Intercept);
        var values = new (string, Value)[] { ("check", new Value.OfClue(look.Clue)), ("read", new Value.Length(read)), ("right", shows), ("good", new Value.Length(allowed)) };
        var remark = mark >= 1 ? Remark.Of("grade.reading.good", values)
            : slip > 0 ? Remark.Of("grade.reading.datum", [.. values, ("datum", new Value.Text(measured.Slips[slip - 1].Name))])
            : Remark.Of("grade.reading.off", values);
        return new GradePart(Aspect.Reading, mark, remark, Remark.Of("grade.rule.reading", [.. values, ("mark", new Value.Mark(mark))]));
    }

    static double Error(Way way, double size, double read) => Math.Abs(read - (way.Slope * size) - way.Intercept);
}
