using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;

namespace Apprentice.Engine.Assessing;

/// <summary>What became of a real bike of a paper: shown to candidate and lead, and it counts for nothing.</summary>
/// <param name="Job">The bike.</param>
/// <param name="Sat">What was opened and said.</param>
/// <param name="Found">What there was to be opened, in order; empty where the topic was not at hand when it was marked.</param>
/// <param name="Opened">What the opened checks say of the part, or null where nothing can be said.</param>
/// <param name="All">What all that was found says of it, or null where nothing can be said.</param>
public sealed record RealMark(RealJob Job, SittingReal Sat, IReadOnlyList<Finding> Found, HeldBelief? Opened, HeldBelief? All)
{
    /// <summary>The kind that it really was.</summary>
    public string Was => Job.Case.Truth.KindOf(Job.Part) ?? "";

    /// <summary>True or false for a kind that was said, null for "not settled" and for no answer.</summary>
    public bool? Right => Sat is { Tenths: not null, Kind: { } kind } ? string.Equals(kind, Was, StringComparison.Ordinal) : null;

    /// <summary>What became of a bike.</summary>
    /// <param name="job">The bike.</param>
    /// <param name="sat">What was opened and said; null when it was not looked at.</param>
    /// <param name="benches">Topics in the versions of the paper; where the bike's is not among them, findings and beliefs are left out, since a bike that counts for nothing shall not hold a paper up.</param>
    public static RealMark Of(RealJob job, SittingReal? sat, IReadOnlyList<Workbench> benches)
    {
        var done = sat ?? new SittingReal(job.Place);
        if (benches.FirstOrDefault(b => b.Topic.Id == job.Case.Topic && b.Topic.Version == job.Version) is not { } bench || !RealBench.Fits(bench.Topic, job.Case)) return new RealMark(job, done, [], null, null);
        var found = RealBench.Found(bench.Topic, job.Case);
        return new RealMark(job, done, found, Held(bench, job, [.. done.Opened.Where(o => o >= 0 && o < found.Count)]), Held(bench, job, [.. Enumerable.Range(0, found.Count)]));
    }

    static HeldBelief? Held(Workbench bench, RealJob job, IReadOnlyList<int> opened)
    {
        var reasoning = RealBench.Reason(bench, job.Case, opened);
        return reasoning.Conflict.Impossible ? null : HeldBelief.Of(reasoning).FirstOrDefault(h => h.Part == job.Part);
    }
}
