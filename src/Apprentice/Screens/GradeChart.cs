using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>What each check said: for the likeliest, or for another, as bars with a word.</summary>
static class GradeChart
{
    /// <summary>The chart of a grade.</summary>
    public static Block.Table Of(BenchJob on, Given given, Grade grade, TopicWords words)
    {
        var part = Shown(given, grade);
        var leading = words.Class(part.Part, part.Classes[part.Leading].Kinds);
        return new Block.Table(
            [
                new(Words.Of("grade.chart", ("kind", leading))), new(Words.Of("grade.chart-word")), new(Words.Of("grade.chart-against"), Right: true), new(""),
                new(Words.Of("grade.chart-for")),
            ],
            [
                .. grade.Findings.Select((f, i) => (Finding: f, part.Weights[i].Share, Told: i < on.Made.Job.Told.Count))
                    .Where(l => !on.Clue(l.Finding.Clue).Safety || Spoken.Bar(l.Share).Length > 0)
                    .Select(l => Line(l.Finding, l.Share, l.Told, words)),
            ]);
    }

    /// <summary>The part of which the chart tells: the first that was named otherwise than the checks say, else the least sure.</summary>
    static PartBelief Shown(Given given, Grade grade) =>
        grade.Reasoning.Parts.FirstOrDefault(p => given.Parts.Any(g => string.Equals(g.Part, p.Part, StringComparison.Ordinal) && g.Kind is { } kind && p.ClassOf(kind) != p.Leading))
        ?? grade.Reasoning.Parts.OrderBy(p => p.Highest).First();

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
