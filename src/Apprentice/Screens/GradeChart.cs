using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;

namespace Apprentice.Screens;

/// <summary>What each check said: for the likeliest, or for another, as bars with a word.</summary>
static class GradeChart
{
    /// <summary>The chart of a grade.</summary>
    public static Block.Table Of(BenchJob on, Grade grade, TopicWords words)
    {
        var part = grade.Reasoning.Parts[0];
        var leading = words.Class(part.Part, part.Classes[part.Leading].Kinds);
        return new Block.Table(
            [
                new(Words.Of("grade.chart")), new(Words.Of("grade.chart-word")), new(Words.Of("grade.chart-against"), Right: true), new(""),
                new(Words.Of("grade.chart-for", ("kind", leading))),
            ],
            [.. grade.Findings.Select((f, i) => Line(f, part.Weights[i].Share, i < on.Made.Job.Told.Count, words))]);
    }

    static Row Line(Finding finding, double share, bool told, TopicWords words)
    {
        var seen = words.Seen(finding);
        var hidden = finding.Seen is Seen.Hidden;
        return new Row("", Marked: false,
        [
            $"{words.Clue(finding.Clue)}: {(told ? Words.Of("seen.told", ("seen", seen)) : seen)}",
            hidden ? "" : Spoken.Strength(share),
            !hidden && share < 0 ? Spoken.Bar(share) : "",
            "|",
            !hidden && share > 0 ? Spoken.Bar(share) : "",
        ]);
    }
}
