using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Judges the reasons: the check that settled it, the check set aside, what happened to the bike.</summary>
sealed class EvidenceGrades(Workbench bench, Answer answer, Judgement judgement)
{
    const double Tick = 1;


    /// <summary>The mark, the mean of what was asked; null when nothing was.</summary>
    public GradePart? Of()
    {
        var marks = new List<(double Mark, Remark Remark)>();
        if (answer.SettledBy is { } settled) marks.Add(OverParts(settled, SettledBy));
        if (answer.SetAside is { } aside) marks.Add(OverParts(aside, SetAside));
        if (answer.Story is { } story) marks.Add(Story(story));
        if (marks.Count == 0) return null;
        var mark = marks.Average(m => m.Mark);
        return new GradePart(Aspect.Evidence, mark, marks.MinBy(m => m.Mark).Remark, Remark.Of("grade.rule.reason", ("mark", new Value.Mark(mark))));
    }

    // The question is about the job: a check is right when it is right for one of the parts asked, "none" only when it is for all.
    (double Mark, Remark Remark) OverParts(string named, Func<string, PartBelief, (double Mark, Remark Remark)> one)
    {
        var marks = judgement.Reasoning.Parts.Select(p => one(named, p)).ToList();
        return named == Kind.NoneId ? marks.MinBy(m => m.Mark) : marks.MaxBy(m => m.Mark);
    }

    // Shares of readings of one check count together.
    Dictionary<string, double> Shares(PartBelief belief)
    {
        var shares = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var i = 0; i < judgement.Findings.Count; i++)
        {
            if (judgement.Findings[i].Seen is not Seen.Hidden)
                shares[judgement.Findings[i].Clue] = shares.GetValueOrDefault(judgement.Findings[i].Clue) + belief.Weights[i].Share;
        }

        return shares;
    }

    (double Mark, Remark Remark) SettledBy(string named, PartBelief belief)
    {
        var shares = Shares(belief);
        if (!belief.Settled || shares.Count == 0 || (named == Kind.NoneId && belief.DecidingSet.Count == 0))
            return named == Kind.NoneId ? (1, Remark.Of("grade.reason.none-settled")) : (0, Remark.Of("grade.reason.nothing-settled"));
        var best = shares.MaxBy(s => s.Value);
        var missing = best.Value - shares.GetValueOrDefault(named) - Tick;
        var mark = named == Kind.NoneId ? 0 : Math.Clamp(1 - (Math.Max(0, missing) / Math.Max(Tick, best.Value)), 0, 1);
        return (mark, Remark.Of(mark >= 0.85 ? "grade.reason.settled-by" : "grade.reason.better", ("check", new Value.OfClue(mark >= 0.85 ? named : best.Key))));
    }

    (double Mark, Remark Remark) SetAside(string named, PartBelief belief)
    {
        var shares = Shares(belief);
        var lowest = shares.Count == 0 ? 0 : shares.Min(s => s.Value);
        if (lowest >= -Tick)
            return named == Kind.NoneId ? (1, Remark.Of("grade.reason.none-aside")) : (0, Remark.Of("grade.reason.agrees", ("check", new Value.OfClue(named))));
        var worst = shares.MinBy(s => s.Value).Key;
        if (named == Kind.NoneId) return (lowest > -3 ? 0.5 : 0, Remark.Of("grade.reason.should-aside", ("check", new Value.OfClue(worst))));
        var mark = shares.GetValueOrDefault(named) <= Math.Min(-Tick, lowest + Tick) ? 1 : shares.GetValueOrDefault(named) < -Tick ? 0.5 : 0;
        return (mark, Remark.Of(mark >= 0.85 ? "grade.reason.aside" : "grade.reason.should-aside", ("check", new Value.OfClue(mark >= 0.85 ? named : worst))));
    }

    // P(story) against the likeliest on offer: nothing happened, or any one named thing.
    (double Mark, Remark Remark) Story(string named)
    {
        var scene = bench.SceneOf(judgement.Provenance);
        var table = scene.Table;
        var findings = scene.Reader.SetOf(judgement.Findings).All;
        var all = table.Tags.Count == 0 ? 0 : ulong.MaxValue >> (64 - table.Tags.Count);
        var chances = table.Tags.Select((t, i) => (t.Id, Chance: Histories.Belief.Total(table.Model, findings, new Belief.Story(1UL << i, 0))))
            .Append((Kind.NoneId, Histories.Belief.Total(table.Model, findings, new Belief.Story(0, all)))).ToDictionary(p => p.Item1, p => p.Item2, StringComparer.Ordinal);
        var best = chances.MaxBy(c => c.Value);
        var mark = best.Value > 0 ? chances.GetValueOrDefault(named) / best.Value : 0;
        return (mark, Remark.Of(mark >= 0.85 ? "grade.reason.story" : "grade.reason.likelier-story", ("story", new Value.OfTag(mark >= 0.85 ? named : best.Key))));
    }
}
