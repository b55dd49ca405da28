using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Assessing;

/// <summary>What a permission asks to be shown: which sorts of jobs, how many, how long, and when it is enough.</summary>
public sealed record TestPlan
{
    /// <summary>Longest sitting without a break, minutes. Judgement.</summary>
    public const double LongestSitting = 48;

    /// <summary>The permission: "may order tyres and rims alone".</summary>
    public required string Permission { get; init; }

    /// <summary>Topics with their versions.</summary>
    public required IReadOnlyList<PlanTopic> Topics { get; init; }

    /// <summary>8 to 12 sorts of jobs where the topics give so many; those that can hurt first.</summary>
    public required IReadOnlyList<JobFamily> Families { get; init; }

    /// <summary>When it is passed.</summary>
    public StagedRule Rule { get; init; } = StagedRule.Default;

    /// <summary>Minutes a job, before any multiplier.</summary>
    public double MinutesPerJob { get; init; } = 4;

    /// <summary>Most real bikes of a paper. Judgement: a quarter of the first twelve jobs, so that the end is not long.</summary>
    public const int MostRealBikes = 3;

    /// <summary>Real bikes of other workshops that a paper carries at its end where there are so many; they count for nothing.</summary>
    public int RealBikes { get; init; }

    /// <summary>The sort of job at a place: every sort stands in the first twelve, then they come round again.</summary>
    /// <param name="place">Place, from 1.</param>
    public JobFamily FamilyAt(int place) => Families[(place - 1) % Families.Count];

    /// <summary>Safety jobs among the first jobs.</summary>
    public int SafetyJobs => Enumerable.Range(1, Rule.First).Count(p => FamilyAt(p).Safety);

    /// <summary>How many of the first jobs are seen in a way.</summary>
    public int SeenBy(Channel offer) => Enumerable.Range(1, Rule.First).Count(p => FamilyAt(p).Offer == offer);

    /// <summary>Sittings of at most 48 minutes for a number of jobs.</summary>
    /// <param name="jobs">Jobs sat.</param>
    public int Sittings(int jobs) => (int)Math.Ceiling(jobs / Math.Floor(LongestSitting / MinutesPerJob));

    /// <summary>How often somebody right on 19, 18, 16, 13 and 10 of 20 such jobs passes, and how many jobs they sit. Exact for equal, independent jobs.</summary>
    public IReadOnlyList<(double Share, Prospect Prospect)> Tells => [.. Shares.Select(s => (s, Rule.For(s)))];

    static double[] Shares => [0.95, 0.9, 0.8, 0.65, 0.5];
}

/// <summary>A topic of a plan in the version that was planned with.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Version">Version.</param>
public sealed record PlanTopic(string Id, string Version);

/// <summary>What is to be expected of the cases of a plan: shown, never used to choose a case.</summary>
/// <param name="Cases">Cases looked at.</param>
/// <param name="Settled">Share that all checks on offer settle.</param>
/// <param name="Odd">Share with any pitfall in its history.</param>
/// <param name="Pitfalls">Share of cases with a class of pitfall in their history, classes that were met only.</param>
public sealed record PlanForecast(int Cases, double Settled, double Odd, IReadOnlyList<(PitfallClass Class, double Share)> Pitfalls);
