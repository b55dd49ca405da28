using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Assessing;

/// <summary>What a mark rests on: the bike, looks, readings, answer, figures and proof. It is made when a paper is marked, never before, and holds no seed.</summary>
public sealed record JobRecord
{
    /// <summary>The sort of job.</summary>
    public required JobFamily Family { get; init; }

    /// <summary>0 for the job itself, n for its n-th replacement.</summary>
    public required int Fresh { get; init; }

    /// <summary>What was told first.</summary>
    public required IReadOnlyList<Finding> Told { get; init; }

    /// <summary>Looks in the order taken, with what each showed.</summary>
    public required IReadOnlyList<LookTaken> Looks { get; init; }

    /// <summary>What the checks that were not taken would have shown.</summary>
    public required IReadOnlyList<Finding> Unused { get; init; }

    /// <summary>The answer, or null for none.</summary>
    public required Given? Given { get; init; }

    /// <summary>What was fitted, per part asked: a kind, or "none" for none of these.</summary>
    public required IReadOnlyList<(string Part, string Kind)> Was { get; init; }

    /// <summary>What had happened to the bike: tags of its story.</summary>
    public required IReadOnlyList<string> Story { get; init; }

    /// <summary>The figures of the marks, or null without an answer.</summary>
    public required Judged? Judged { get; init; }

    /// <summary>Per part asked, what all checks together say: the likeliest class and its share.</summary>
    public required IReadOnlyList<(string Part, ClassBelief Leading, bool Settled)> Proof { get; init; }

    /// <summary>The record of a job.</summary>
    /// <param name="bench">The topic.</param>
    /// <param name="made">The case.</param>
    /// <param name="family">The sort of job.</param>
    /// <param name="job">What was looked at and answered.</param>
    /// <param name="grade">The grade, or null without an answer.</param>
    public static JobRecord Of(Workbench bench, Case made, JobFamily family, SittingJob job, Grade? grade)
    {
        var parts = bench.Topic.Parts.Select(p => p.Id).ToList();
        return new JobRecord
        {
            Family = family,
            Fresh = job.Fresh,
            Told = made.Job.Told,
            Looks = [.. job.Looks.Select(l => new LookTaken(l, bench.Shown(made, l)))],
            Unused = [.. made.Job.Bench.Where(c => job.Looks.All(l => l.Clue != c)).Select(c => made.Look(c, 0))],
            Given = job.Given,
            Was = [.. bench.EnquiryOf(made.Job).Asks.Select(a => (a, made.Truth.Kinds[parts.IndexOf(a)]))],
            Story = made.Truth.Story,
            Judged = grade?.Judged,
            Proof = [.. bench.Prove(made).Parts.Select(p => (p.Part, p.Classes[p.Leading], p.Settled))],
        };
    }
}

/// <summary>A look with what it showed.</summary>
/// <param name="Look">The look, with what was read.</param>
/// <param name="Shown">What there was to be read.</param>
public sealed record LookTaken(Look Look, Finding Shown);
