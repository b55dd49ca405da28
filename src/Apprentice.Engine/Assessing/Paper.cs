using System.Globalization;
using Apprentice.Engine.Cases;

namespace Apprentice.Engine.Assessing;

/// <summary>A paper for one person and one sitting: fresh cases every time.</summary>
public sealed record Paper
{
    /// <summary>Number of the paper, handed in; it says nothing about the seeds.</summary>
    public required string Id { get; init; }

    /// <summary>Who sits it.</summary>
    public required string Candidate { get; init; }

    /// <summary>The candidate's how-manieth paper of this permission, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The permission.</summary>
    public required string Permission { get; init; }

    /// <summary>When it is passed.</summary>
    public required StagedRule Rule { get; init; }

    /// <summary>Minutes a job, before any multiplier.</summary>
    public required double MinutesPerJob { get; init; }

    /// <summary>As many jobs as can be needed, in order of place.</summary>
    public required IReadOnlyList<PaperJob> Jobs { get; init; }

    /// <summary>Six fresh safety jobs for after a talk, places 101 to 106; empty when no sort of job of the plan can hurt.</summary>
    public required IReadOnlyList<PaperJob> SafetyAgain { get; init; }

    /// <summary>Real bikes of other workshops, after all that counts; empty in papers of before there were any.</summary>
    public IReadOnlyList<RealJob> Real { get; init; } = [];

    /// <summary>What stands behind the number of a paper for its fresh safety jobs.</summary>
    public const string AgainMark = "-S";

    /// <summary>The fresh safety jobs as a paper of their own, sat after the talk; null when there are none. All of them must be sound.</summary>
    public Paper? Again => SafetyAgain.Count == 0 ? null : this with
    {
        Id = Id + AgainMark,
        Rule = new StagedRule([new StageCheck(SafetyAgain.Count, 0, 1)]),
        Jobs = [.. SafetyAgain.Select((j, i) => j with { Place = i + 1 })],
        SafetyAgain = [],
        Real = [],
    };

    /// <summary>What stands behind the number of a paper, before the job's place, for the new job of an appeal.</summary>
    public const string NewJobMark = "-N";

    /// <summary>The place of a new job is that of the job it stands for and this.</summary>
    public const int NewJobPlaces = 200;

    // Replacements for a stopped clock count up from 1, a stop each: no sitting comes as far as this.
    const int NewJobFresh = 1_000_000;

    /// <summary>The new job of an appeal as a paper of its own: a fresh case of the same sort that the sitting never used.</summary>
    /// <param name="place">The job that was questioned.</param>
    /// <exception cref="ArgumentException">The paper has no such job.</exception>
    public Paper NewJob(int place) => this with
    {
        Id = Id + NewJobMark + place.ToString(CultureInfo.InvariantCulture),
        Rule = new StagedRule([new StageCheck(1, 0, 1)]),
        Jobs = [At(place) with { Place = 1, Seed = At(place).SeedOf(NewJobFresh) }],
        SafetyAgain = [],
        Real = [],
    };

    /// <summary>What a number names: the paper, whether its fresh safety jobs are meant, and for which job a new one stands, or null.</summary>
    /// <param name="id">Number of a paper, of its fresh safety jobs, or of a new job.</param>
    public static (string Paper, bool SafetyAgain, int? NewJobOf) Named(string id)
    {
        if (id.EndsWith(AgainMark, StringComparison.Ordinal)) return (id[..^AgainMark.Length], true, null);
        var cut = id.LastIndexOf(NewJobMark, StringComparison.Ordinal);
        return cut >= 0 && int.TryParse(id.AsSpan(cut + NewJobMark.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? (id[..cut], false, place) : (id, false, null);
    }

    /// <summary>The job at a place.</summary>
    /// <exception cref="ArgumentException">The paper has no such place.</exception>
    public PaperJob At(int place) => Jobs.Concat(SafetyAgain).FirstOrDefault(j => j.Place == place) ?? throw new ArgumentException($"the paper has no job {place}", nameof(place));

    /// <summary>The case of a job.</summary>
    /// <param name="bench">The topic in the job's version.</param>
    /// <param name="place">Its place.</param>
    /// <param name="fresh">0 for the job itself, n for its n-th replacement.</param>
    /// <exception cref="ArgumentException">The topic is another one or has another version, or gives no such case.</exception>
    public Case Make(Workbench bench, int place, int fresh = 0)
    {
        var job = At(place);
        if (bench.Topic.Id != job.Family.Topic || bench.Topic.Version != job.Version)
            throw new ArgumentException($"job {place} is of {job.Family.Topic} in version {job.Version}, not of {bench.Topic.Id} in version {bench.Topic.Version}; use the topic files that the paper was made with", nameof(bench));
        return bench.Make(job.Family.Request, job.SeedOf(fresh)) ?? throw new ArgumentException($"job {place} cannot be made", nameof(place));
    }
}

/// <summary>A job of a paper. Its seed makes the case, so it is for sealed files and never for a log.</summary>
/// <param name="Place">Place in the paper, from 1.</param>
/// <param name="Family">Its sort.</param>
/// <param name="Version">Version of the topic.</param>
/// <param name="Seed">Seed of the case.</param>
public sealed record PaperJob(int Place, JobFamily Family, string Version, ulong Seed)
{
    /// <summary>The seed of the n-th replacement: a fresh case of the same sort.</summary>
    /// <param name="fresh">0 for the job itself, n for the n-th replacement.</param>
    public ulong SeedOf(int fresh) => fresh == 0 ? Seed : Seeds.Mixed(unchecked(Seed + (0x9E3779B97F4A7C15UL * (ulong)fresh)));
}

/// <summary>Seeds spread so that neighbours have nothing in common.</summary>
static class Seeds
{
    /// <summary>The finaliser of SplitMix64. Source: G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.</summary>
    public static ulong Mixed(ulong seed)
    {
        unchecked
        {
            seed = (seed ^ (seed >> 30)) * 0xBF58476D1CE4E5B9;
            seed = (seed ^ (seed >> 27)) * 0x94D049BB133111EB;
            return seed ^ (seed >> 31);
        }
    }
}
