using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>Habits of measuring: what was known right after a first reading, and what was done then.</summary>
static class ReadingRules
{
    // Could show: after a first reading its part is settled and the reading is in order. Shows: it was measured a third time. A second reading is good practice.
    public static IEnumerable<bool> MeasuresTwice(Watched job, int third) => Firsts(job)
        .Where(f => f.Belief.Settled && job.Grade.Reasoning.Odd.All(o => job.Grade.Findings[o.Finding].Clue != f.Clue))
        .Select(f => job.Answer.Looks.Any(l => l.Clue == f.Clue && l.Nth >= third));

    // Could show: after a first reading two sizes are open, the second with at least the given belief. Shows: one was named with no further look at that part, and nothing else settled it.
    public static IEnumerable<bool> TakesNearer(Watched job, double open) => Firsts(job)
        .Where(f => !f.Belief.Settled && f.Belief.Classes.Select(c => c.Belief).OrderDescending().Skip(1).First() >= open)
        .Select(f => job.Named(f.Part) is not null && !job.Parts[f.Part].Settled && job.Answer.Looks.Skip(f.Look + 1).All(l => PartOf(job, l.Clue) != f.Belief.Part));

    // First readings of a part asked, each with the belief right after it.
    static IEnumerable<(int Look, string Clue, int Part, PartBelief Belief)> Firsts(Watched job)
    {
        var reasoner = new Reasoner(job.Scene);
        var told = job.Made.Job.Told.Count;
        for (var i = 0; i < job.Answer.Looks.Count; i++)
        {
            var look = job.Answer.Looks[i];
            var part = job.Want.Asks.ToList().IndexOf(PartOf(job, look.Clue) ?? "");
            if (look.Nth > 0 || part < 0 || job.Grade.Findings[told + i].Seen is not Seen.Reading) continue;
            if (reasoner.Settle(job.Want.Asks, [.. job.Grade.Findings.Take(told + i + 1)]) is { } beliefs) yield return (i, look.Clue, part, beliefs[part]);
        }
    }

    static string? PartOf(Watched job, string clue) => job.ClueOf(clue) switch
    {
        { Shows: Shows.Measured measured } => job.Topic.Dimensions[job.Scene.Table.Names.Dimension(measured.Dimension)].Part,
        { Node: Node.OfPart node } => node.Part,
        _ => null,
    };
}
