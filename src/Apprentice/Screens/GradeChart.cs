using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>What each check said: for the likeliest, or for another, as bars with a word.</summary>
static class GradeChart
{
    /// <summary>The chart of a grade.</summary>
    /// <param name="on">The job.</param>
    /// <param name="grade">Its grade.</param>
    /// <param name="part">The part of which it tells.</param>
    /// <param name="words">Words of the topic.</param>
    public static Block.Table Of(BenchJob on, Grade grade, PartBelief part, TopicWords words)
    {
        var leading = words.Class(part.Part, part.Classes[part.Leading].Kinds);
        var title = grade.Reasoning.Parts.Count > 1
            ? Words.Of("grade.chart-part", ("part", Spoken.Capital(words.Part(part.Part))), ("kind", leading))
            : Words.Of("grade.chart", ("kind", leading));
        return new Block.Table(
            [
                new(title), new(Words.Of("grade.chart-word")), new(Words.Of("grade.chart-against"), Right: true), new(""),
                new(Words.Of("grade.chart-for")),
            ],
            [
                .. grade.Findings.Select((f, i) => (Finding: f, part.Weights[i].Share, Told: i < on.Made.Job.Told.Count))
                    .Where(l => !on.Clue(l.Finding.Clue).Safety || Spoken.Bar(l.Share).Length > 0)
                    .Select(l => Line(l.Finding, l.Share, l.Told, words)),
            ]);
    }

    /// <summary>The part of which the chart tells first: the one that decided an order that is not good, then the first that was named otherwise than the checks say, else the least sure.</summary>
    public static PartBelief First(BenchJob on, Given given, Grade grade)
    {
        var parts = grade.Reasoning.Parts;
        return Decided(on, grade)
            ?? parts.FirstOrDefault(p => given.Parts.Any(g => Same(g.Part, p.Part) && g.Kind is { } kind && p.ClassOf(kind) != p.Leading))
            ?? parts.OrderBy(p => p.Highest).First();
    }

    // Of the parts that what was ordered must fit, or any spare of the line where nothing was, the one that fits least likely.
    static PartBelief? Decided(BenchJob on, Grade grade)
    {
        if (grade.Parts.All(p => p.Aspect != Aspect.Decision || p.Word == MarkWord.Good)) return null;
        var worst = grade.Judged.Orders.OrderBy(o => o.Mark).First();
        var line = on.Topic.Spares.Where(s => Same(s.OrderLine, worst.Line));
        List<Spare> ordered = worst.Chosen switch
        {
            Choice.Order order => [.. line.Where(s => Same(s.Id, order.Spare))],
            Choice.OrderTwo two => [.. line.Where(s => Same(s.Id, two.First) || Same(s.Id, two.Second))],
            _ => [],
        };
        return ordered.Count > 0
            ? Of(grade, ordered).OrderBy(p => p.Classes.Where(c => ordered.Any(s => Fits(s, p, c))).Sum(c => c.Belief)).FirstOrDefault()
            : Of(grade, line).OrderBy(p => p.Highest).FirstOrDefault();
    }

    static IEnumerable<PartBelief> Of(Grade grade, IEnumerable<Spare> spares) => grade.Reasoning.Parts.Where(p => spares.Any(s => s.Fits.Any(f => Same(f.Part, p.Part))));

    static bool Fits(Spare spare, PartBelief part, ClassBelief of) => spare.Fits.All(f => !Same(f.Part, part.Part) || of.Kinds.Any(k => f.Kinds.Contains(k)));

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);

    static Row Line(Finding finding, double share, bool told, TopicWords words)
    {
        var seen = words.Seen(finding);
        var hidden = finding.Seen is Seen.Hidden;
        return new Row("", Marked: false,
        [
            $"{words.Clue(finding.Clue)}: {(told ? Words.Of("seen.was-told", ("seen", seen)) : seen)}",
            hidden ? "" : Spoken.Strength(share),
            !hidden && share < 0 ? Spoken.Bar(share) : "",
            "|",
            !hidden && share > 0 ? Spoken.Bar(share) : "",
        ]);
    }
}
