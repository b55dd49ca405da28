using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>Which skills an answer shows.</summary>
/// <remarks>
/// A clue is asked when it is in the set that settles a part, or, where none does, speaks loudest of all (3 decibans or more); shown when the learner's word on the part follows from the shown
/// findings or from their own readings. It is asked and not shown when it is the best next check and the learner stopped too early without it.
/// A pitfall of the bike is asked when a finding had to be set aside (−3 decibans or less) or the pitfall explains why the findings do not go together; one of a reading, whenever the
/// learner chose from where to measure or which writing to go by. Reading is asked by each reading or finding of one's own. Deciding is asked when the job was ripe; stopping, when there was
/// something worth looking at. Chance of guessing: one of the answers on offer; reading a scale and stopping have none.
/// </remarks>
static class SkillRules
{
    const double Half = 0.5;

    public static IEnumerable<Observed> Of(Watched job) => [.. Clues(job), .. Pitfalls(job), .. Taken(job), .. Readings(job), .. Rest(job)];

    static Observed.Mark Mark(Watched job, SkillSort sort, string id, bool right, double guess) => new(new SkillKey(sort, job.Topic.Id, id), right, guess);

    static IEnumerable<Observed> Clues(Watched job)
    {
        var asked = new Dictionary<string, bool>(StringComparer.Ordinal);
        for (var p = 0; p < job.Parts.Count; p++)
        {
            foreach (var finding in Bearing(job, job.Parts[p]))
            {
                var clue = job.Grade.Findings[finding].Clue;
                asked[clue] = asked.GetValueOrDefault(clue, true) && Follows(job, p);
            }
        }

        if (!job.Ripe && job.Grade.Reasoning.Next.Count > 0 && job.Grade.Reasoning.Next[0].Clue is var next && !job.Looked(next)) asked[next] = false;
        return asked.Select(a => Mark(job, SkillSort.Clue, a.Key, a.Value, Guess(job)));
    }

    static IEnumerable<int> Bearing(Watched job, PartBelief belief)
    {
        var all = Enumerable.Range(0, belief.Weights.Count).Where(i => job.Grade.Findings[i].Seen is not Seen.Hidden && belief.Weights[i].Share >= Watched.Says);
        return belief.Settled ? all.Where(i => belief.DecidingSet.Contains(i)) : all.OrderByDescending(i => belief.Weights[i].Share).Take(1);
    }

    static bool Follows(Watched job, int part) => job.Follows(part) || job.MarkOf(Aspect.Identification) >= 0.85;

    static double Guess(Watched job) => 1.0 / (job.Parts.Max(p => p.Classes.Count) + 1);

    static IEnumerable<Observed> Pitfalls(Watched job)
    {
        var aside = job.Parts.Any(p => p.Weights.Any(w => w.Share <= -Watched.Says));
        var told = job.Grade.Reasoning.Conflict.Explanations.SelectMany(e => e.Story).ToHashSet(StringComparer.Ordinal);
        var right = Enumerable.Range(0, job.Parts.Count).All(p => Follows(job, p));
        return job.Scene.Table.Tags.Where(t => job.Made.Truth.Story.Contains(t.Id) && (aside || told.Contains(t.Id)))
            .Select(t => t.Pitfall).Distinct(StringComparer.Ordinal).Select(p => Mark(job, SkillSort.Pitfall, p, right, Guess(job)));
    }

    static IEnumerable<Observed> Taken(Watched job)
    {
        var marks = new Dictionary<string, (bool Right, double Guess)>(StringComparer.Ordinal);
        foreach (var look in job.Answer.Looks)
        {
            var clue = job.ClueOf(look.Clue);
            if (look.Datum is { } datum && look.OwnReading is not null && clue.Shows is Shows.Measured measured)
            {
                foreach (var pitfall in measured.Slips.Select(s => s.Pitfall).OfType<string>().Distinct(StringComparer.Ordinal))
                    marks[pitfall] = (marks.GetValueOrDefault(pitfall, (true, 0)).Item1 && datum == 0, 1.0 / (measured.Slips.Count + 1));
            }
            else if (look.Writing is { } writing && clue.Plate is { } plate)
            {
                foreach (var pitfall in clue.Pitfalls.Where(p => job.ClassOf(p) is PitfallClass.DecoyNumber or PitfallClass.MarkingNotSize))
                    marks[pitfall] = (marks.GetValueOrDefault(pitfall, (true, 0)).Item1 && writing == 0, 1.0 / plate.Writings.Count);
            }
        }

        return marks.Select(m => Mark(job, SkillSort.Pitfall, m.Key, m.Value.Right, m.Value.Guess));
    }

    static IEnumerable<Observed> Readings(Watched job)
    {
        foreach (var reading in job.Grade.Readings) yield return Mark(job, SkillSort.Reading, reading.Look.Clue, reading.Mistake == Mistake.None, 0);
        foreach (var look in job.Answer.Looks)
        {
            if (MarkingGrades.Of(job.Bench, job.Made, look) is { } part) yield return Mark(job, SkillSort.Reading, look.Clue, part.Mark >= Half, GuessOf(job.ClueOf(look.Clue)));
        }
    }

    static double GuessOf(Clue clue) => clue.Shows switch
    {
        Shows.Table table => 1.0 / Math.Max(2, table.Findings.Count),
        Shows.Code code => 1.0 / Math.Max(2, code.Findings.Count),
        _ => 0,
    };

    static IEnumerable<Observed> Rest(Watched job)
    {
        if (job.Ripe && job.MarkOf(Aspect.Decision) is { } decision)
            yield return Mark(job, SkillSort.Deciding, "", decision >= Half && !job.Grade.SafetyError, 1.0 / Math.Max(2, job.Grade.Reasoning.Decisions.Max(d => d.Options.Count)));
        if (job.Grade.Path.Count > 0) yield return Mark(job, SkillSort.Stopping, "", job.MarkOf(Aspect.Stopping) >= Half, 0);
    }
}
