using Apprentice.Engine.Evidence;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Learning;

/// <summary>How far each check moved the learner, and how far it should have moved them.</summary>
/// <remarks>
/// Both as log odds of the order class of the kind asked about, held within those of 0.01 and 0.99, the ends of what a learner can say. The engine's change is that of the shown findings,
/// given all findings before: so a clue that belongs to a set already seen is worth only what it adds. Checks that showed nothing are left out.
/// </remarks>
static class WeighedRules
{
    const double Most = 0.99;

    public static IEnumerable<Observed> Of(Watched job, IReadOnlyList<LogEntry.Updated> updates)
    {
        var told = job.Made.Job.Told.Count;
        foreach (var update in updates)
        {
            var at = told + update.Look;
            var part = job.Want.Asks.ToList().IndexOf(update.Part);
            if (update.Look < 0 || at >= job.Grade.Findings.Count || part < 0 || job.Grade.Findings[at].Seen is Seen.Hidden) continue;
            var clue = job.ClueOf(job.Grade.Findings[at].Clue);
            var of = job.Parts[part].ClassOf(update.Kind);
            if (LogOdds(job, part, of, at) is not { } before || LogOdds(job, part, of, at + 1) is not { } after) continue;
            var linked = job.LinksTo(job.Grade.Findings[at], job.Grade.Findings.Take(at));
            yield return new Observed.Weighed(clue.Id, clue.Family, linked, after - before, Said(update.After) - Said(update.Before));
        }
    }

    static double Said(int tenths) => Odds.Log(Sureness.Said(tenths));

    static double? LogOdds(Watched job, int part, int of, int findings)
    {
        var index = job.Scene.Table.Names.Part(job.Parts[part].Part);
        var beliefs = job.Scene.ClassBeliefs(index, job.Scene.Reader.SetOf([.. job.Grade.Findings.Take(findings)]).All);
        return beliefs is null ? null : Odds.Log(Math.Clamp(beliefs[of], 1 - Most, Most));
    }
}
