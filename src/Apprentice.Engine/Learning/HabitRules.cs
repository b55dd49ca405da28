using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>In which jobs each habit could show, and in which it did. A job asks each habit once at most.</summary>
static class HabitRules
{
    const double Open = 0.1;
    const double LikelyStory = 0.5;
    const double RareStory = 0.1;
    const int ThirdReading = 2;

    public static IEnumerable<Observed> Of(Watched job)
    {
        var parts = Enumerable.Range(0, job.Parts.Count).ToList();
        (Habit Habit, IEnumerable<bool> Shown)[] all =
        [
            (Habit.TrustsNumber, parts.SelectMany(p => Trusts(job, p, ClueFamily.NumberOrDate))),
            (Habit.IgnoresNumber, parts.SelectMany(p => Ignores(job, p, ClueFamily.NumberOrDate)).Concat(LeavesOut(job))),
            (Habit.CountsSetApart, parts.SelectMany(p => CountsApart(job, p))),
            (Habit.DistrustsSet, parts.SelectMany(p => Distrusts(job, p))),
            (Habit.ForgetsKeptOld, ForgetsKeptOld(job)),
            (Habit.SeesKeptOld, SeesKeptOld(job)),
            (Habit.WrongPoint, job.Grade.Readings.Where(r => r.Look.Datum is not null).Select(r => r.Mistake == Mistake.Datum && r.Datum > 0)),
            (Habit.MeasuresTwice, ReadingRules.MeasuresTwice(job, ThirdReading)),
            (Habit.TakesNearer, ReadingRules.TakesNearer(job, Open)),
            (Habit.TrustsMarking, parts.SelectMany(p => Trusts(job, p, ClueFamily.SizeMarking)).Concat(TakesWriting(job))),
            (Habit.IgnoresMarking, parts.SelectMany(p => Ignores(job, p, ClueFamily.SizeMarking))),
            (Habit.OrdersTooSoon, TooSoon(job)),
            (Habit.WaitsTooOften, TooOften(job, hazard: false)),
            (Habit.HurtsOnThin, Hurts(job)),
            (Habit.AsksThoughSafe, TooOften(job, hazard: true)),
            (Habit.Forces, Lines(job, hazard: true).Any() ? [job.Answer.Forced] : []),
            (Habit.SkipsSafetyLook, SkipsLook(job)),
        ];
        return all.Select(a => (a.Habit, Shown: a.Shown.ToList())).Where(a => a.Shown.Count > 0).Select(a => new Observed.Pattern(a.Habit, a.Shown.Contains(true)));
    }

    // Could show: a finding of the family alone points at another kind than all together, which settle the part. Shows: that other kind was named.
    static IEnumerable<bool> Trusts(Watched job, int part, ClueFamily family)
    {
        if (!job.Parts[part].Settled) yield break;
        for (var f = 0; f < job.Grade.Findings.Count; f++)
        {
            if (job.ClueOf(job.Grade.Findings[f].Clue).Family == family && job.PointsElsewhere(part, f) is { } other) yield return job.Named(part) == other;
        }
    }

    // Could show: a finding of the family is in the set that settles the part. Shows: it was left open, or another kind was named.
    static IEnumerable<bool> Ignores(Watched job, int part, ClueFamily family)
    {
        var belief = job.Parts[part];
        if (belief.Settled && belief.DecidingSet.Any(f => belief.Weights[f].Share >= Watched.Says && job.ClueOf(job.Grade.Findings[f].Clue).Family == family))
            yield return !job.Follows(part) && job.MarkOf(Aspect.Identification) < 0.5;
    }

    // Could show: a number or date is on the engine's path. Shows: it was not looked at, and the job was not ripe.
    static IEnumerable<bool> LeavesOut(Watched job) => job.Grade.Path.Where(c => job.ClueOf(c).Family == ClueFamily.NumberOrDate).Select(c => !job.Looked(c) && !job.Ripe);

    // Could show: taken one by one the findings would settle the part on a kind on which they together do not settle it, and two of them belong to one set. Shows: that kind was named.
    static IEnumerable<bool> CountsApart(Watched job, int part)
    {
        if (!job.HasLinked(job.Grade.Findings)) yield break;
        if (job.OneByOne(part) is { } naive && naive.Chance >= job.Parts[part].SettleAt && (!job.Parts[part].Settled || naive.Class != job.Parts[part].Leading))
            yield return job.Named(part) == naive.Class;
    }

    // Could show: two findings of one set are in the set that settles the part. Shows: it was left open.
    static IEnumerable<bool> Distrusts(Watched job, int part)
    {
        var belief = job.Parts[part];
        if (belief.Settled && job.HasLinked([.. belief.DecidingSet.Select(f => job.Grade.Findings[f])])) yield return job.Named(part) is null;
    }

    // Could show: a line that kept the old part is more likely than not, and a part is settled. Shows: another kind of it was named.
    static IEnumerable<bool> ForgetsKeptOld(Watched job)
    {
        if (KeptOld(job) >= LikelyStory && job.Parts.Any(p => p.Settled))
            yield return Enumerable.Range(0, job.Parts.Count).Any(p => job.Parts[p].Settled && job.Named(p) is { } named && named != job.Parts[p].Leading);
    }

    // Could show: what happened is asked, and a line that kept the old part is as good as ruled out. Shows: it was named as what happened.
    static IEnumerable<bool> SeesKeptOld(Watched job)
    {
        if (job.Answer.Story is { } story && KeptOld(job) is { } chance and <= RareStory && chance >= 0) yield return job.KeptOldTags.Any(t => t.Tag.Id == story);
    }

    // P(a line that kept the old part | findings); −1 when the topic has none.
    static double KeptOld(Watched job)
    {
        var bits = job.KeptOldTags.Aggregate(0UL, (all, t) => all | (1UL << t.Bit));
        if (bits == 0) return -1;
        var (model, findings) = (job.Scene.Table.Model, job.Scene.Reader.SetOf(job.Grade.Findings).All);
        var total = Belief.Total(model, findings);
        return total > 0 ? 1 - (Belief.Total(model, findings, new Belief.Story(0, bits)) / total) : -1;
    }

    // Could show: a size marking was read among several writings. Shows: another writing was taken.
    static IEnumerable<bool> TakesWriting(Watched job) => job.Answer.Looks
        .Where(l => l.Writing is not null && job.ClueOf(l.Clue).Family == ClueFamily.SizeMarking).Select(l => l.Writing > 0);

    // Could show: something was worth looking at. Shows: named or ordered with a check untaken that would have been worth it.
    static IEnumerable<bool> TooSoon(Watched job)
    {
        if (job.Grade.Path.Count > 0)
            yield return !job.Ripe && (job.Answer.Parts.Any(p => p.Kind is not null) || job.Answer.Ordered);
    }

    // Could show: all is settled beyond argument, no stop sign, and asking in place of ordering loses half of what a question costs or more. Shows: asked or waited on such a line.
    static IEnumerable<bool> TooOften(Watched job, bool hazard)
    {
        if (!job.Ripe || job.Grade.OpenToArgument || job.Grade.Reasoning.Stops.Count > 0 || job.Parts.Any(p => !p.Settled)) yield break;
        foreach (var line in Lines(job, hazard))
        {
            var decision = job.Grade.Reasoning.Decisions[line];
            var asking = decision.Options.First(o => o.Choice is Choice.Ask);
            if (decision.Best.Choice is Choice.Order or Choice.OrderTwo && asking.Loss - decision.Best.Loss >= job.Topic.Costs.AskCost / 2)
                yield return job.Answer.Orders[line] is Choice.Ask or Choice.Wait;
        }
    }

    // Could show: a part that can hurt could be ordered, and what was told did not support it. Shows: ordered although the learner's own readings did not reach its level.
    static IEnumerable<bool> Hurts(Watched job)
    {
        if (Lines(job, hazard: true).Any() && job.Grade.Path.Count > 0)
            yield return job.Grade.SafetyError && !job.Answer.Forced && job.Answer.Ordered;
    }

    // Could show: something was ordered where a safety look is on offer and uses no question. Shows: a look was left out.
    static IEnumerable<bool> SkipsLook(Watched job)
    {
        if (job.Answer.Ordered && job.Made.Job.Request.Questions is null && job.Made.Job.Bench.Any(c => job.ClueOf(c).Safety)) yield return job.Grade.SafetyLeft.Count > 0;
    }

    // Order lines with a spare that can hurt, or those without.
    static IEnumerable<int> Lines(Watched job, bool hazard) => Enumerable.Range(0, job.Want.OrderLines.Count)
        .Where(l => job.Topic.Spares.Any(s => s.Hazard && s.OrderLine == job.Want.OrderLines[l].Id) == hazard);
}
