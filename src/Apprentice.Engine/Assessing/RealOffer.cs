using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Assessing;

/// <summary>Which real bikes a paper may hold for a candidate.</summary>
/// <param name="Fresh">Bikes that the candidate has not met.</param>
/// <param name="Met">Bikes left out, because the candidate met them in practice or in a paper before.</param>
public sealed record RealOffer(IReadOnlyList<RealCase> Fresh, int Met)
{
    /// <summary>The bikes for a candidate.</summary>
    /// <param name="topics">Topics of the plan as they are at hand.</param>
    /// <param name="notebook">Bikes, and who practised on them.</param>
    /// <param name="all">Papers that were marked.</param>
    /// <param name="candidate">For whom.</param>
    public static RealOffer Of(IReadOnlyList<Topic> topics, BenchNotebook notebook, Assessments all, string candidate)
    {
        var there = There(topics, notebook);
        var sat = all.Results.Where(r => r.Candidate == candidate).SelectMany(r => r.Real).Where(m => m.Sat.IsMet).Select(m => m.Job.Case.Key);
        var met = MetBy(notebook, candidate).Concat(sat).ToHashSet(StringComparer.Ordinal);
        IReadOnlyList<RealCase> fresh = [.. there.Where(c => !met.Contains(c.Key))];
        return new RealOffer(fresh, there.Count - fresh.Count);
    }

    /// <summary>Other workshops' bikes that topics ask about; none of a draft, none of a topic that could no longer tell the bike.</summary>
    public static IReadOnlyList<RealCase> There(IReadOnlyList<Topic> topics, BenchNotebook notebook) =>
        [.. RealCases.ForPapers(notebook).Where(c => topics.Any(t => t.Id == c.Topic && t.State != TopicState.Draft && RealBench.Fits(t, c)))];

    /// <summary>Keys of the bikes that a person practised on.</summary>
    public static IReadOnlySet<string> MetBy(BenchNotebook notebook, string person) => notebook.Tried.Where(t => t.Person == person).Select(t => t.Case).ToHashSet(StringComparer.Ordinal);
}
