namespace Apprentice.Engine.Assessing;

/// <summary>A staged paper: a few jobs, then more while it is close.</summary>
/// <remarks>All chances are exact, by dynamic programming over jobs sat and jobs not sound, job by job. They hold for equal, independent jobs.</remarks>
/// <param name="Checks">Checks in order of jobs; the last decides.</param>
public sealed record StagedRule(IReadOnlyList<StageCheck> Checks)
{
    /// <summary>12 jobs, then 4 at a time while it is close, at most 36. Source of the table: judgement, chosen by its exact chances.</summary>
    public static StagedRule Default { get; } = new(
    [
        new(12, 0, 6), new(16, 1, 7), new(20, 2, 8), new(24, 3, 9), new(28, 4, 10), new(32, 5, 11), new(36, 6, 7),
    ]);

    /// <summary>This table cut off after a number of jobs: the last check left then decides.</summary>
    /// <param name="most">Largest number of jobs: one of the checks.</param>
    public StagedRule UpTo(int most) => new([.. Checks.Where(c => c.Jobs <= most).Select(c => c.Jobs == most ? c with { NotYetAt = c.PassAt + 1 } : c)]);

    /// <summary>Jobs before the first check.</summary>
    public int First => Checks[0].Jobs;

    /// <summary>Largest number of jobs.</summary>
    public int Most => Checks[^1].Jobs;

    /// <summary>Jobs of each stage: 12, 4, 4 …</summary>
    public IReadOnlyList<int> Stages => [.. Checks.Select((c, i) => i == 0 ? c.Jobs : c.Jobs - Checks[i - 1].Jobs)];

    /// <summary>What is wrong with the table, a sentence, or null.</summary>
    public string? Fault
    {
        get
        {
            if (Checks.Count == 0) return "a staged rule needs at least one check";
            for (var i = 0; i < Checks.Count; i++)
            {
                var (jobs, pass, fail) = (Checks[i].Jobs, Checks[i].PassAt, Checks[i].NotYetAt);
                if (jobs < 1 || (i > 0 && jobs <= Checks[i - 1].Jobs)) return $"check {i + 1}: the number of jobs must be larger than at the check before";
                if (pass < -1 || pass >= fail) return $"after {jobs} jobs: fewer jobs may be allowed than there are for \"not yet\"";
            }

            return Checks[^1].NotYetAt == Checks[^1].PassAt + 1 ? null : "the last check must decide: \"not yet\" from one more job than allowed";
        }
    }

    /// <summary>What the rule says now.</summary>
    /// <param name="jobs">Jobs sat.</param>
    /// <param name="unsound">Of them not sound.</param>
    public StageDecision Decide(int jobs, int unsound) => Checks.FirstOrDefault(c => c.Jobs == jobs) switch
    {
        { } check when unsound <= check.PassAt => StageDecision.Passed,
        { } check when unsound >= check.NotYetAt => StageDecision.NotYet,
        _ => StageDecision.GoOn,
    };

    /// <summary>The jobs after which the next check is due.</summary>
    /// <param name="jobs">Jobs sat so far.</param>
    public int NextCheck(int jobs) => Checks.FirstOrDefault(c => c.Jobs > jobs)?.Jobs ?? Most;

    /// <summary>The chances of somebody who is right on a share of such jobs in the long run.</summary>
    /// <param name="share">0 to 1.</param>
    public Prospect For(double share) => Of((_, _) => share);

    /// <summary>The chances of one more paper for somebody with a record, under a prior: each job's chance is that of the jobs before it.</summary>
    /// <param name="prior">The prior of the long-run share.</param>
    /// <param name="sound">Sound jobs on record.</param>
    /// <param name="unsound">Other jobs on record.</param>
    public Prospect Again(Prior prior, int sound, int unsound) => Of((n, k) => (prior.Sound + sound + n - k) / (prior.Sound + prior.Unsound + sound + unsound + n));

    /// <summary>The chances when the chance of a sound job may depend on the jobs before it.</summary>
    /// <param name="next">Chance of a sound job, given jobs sat and jobs not sound.</param>
    public Prospect Of(Func<int, int, double> next)
    {
        var at = new double[Most + 2];
        at[0] = 1;
        var (passed, notYet, jobs) = (0.0, 0.0, 0.0);
        var check = 0;
        for (var n = 0; n < Most; n++)
        {
            for (var k = n; k >= 0; k--)
            {
                if (at[k] == 0) continue;
                jobs += at[k];
                var miss = at[k] * (1 - next(n, k));
                at[k] -= miss;
                at[k + 1] += miss;
            }

            if (Checks[check].Jobs != n + 1) continue;
            for (var k = 0; k <= n + 1; k++)
            {
                if (k > Checks[check].PassAt && k < Checks[check].NotYetAt) continue;
                if (k <= Checks[check].PassAt) passed += at[k];
                else notYet += at[k];
                at[k] = 0;
            }

            check++;
        }

        return new Prospect(passed, notYet, jobs);
    }
}

/// <summary>When a paper ends: after so many jobs it is passed with at most so many not sound, and "not yet" from so many on.</summary>
/// <param name="Jobs">Jobs sat.</param>
/// <param name="PassAt">Passed with at most so many jobs not sound; −1 for never here.</param>
/// <param name="NotYetAt">Not yet from so many jobs not sound on.</param>
public sealed record StageCheck(int Jobs, int PassAt, int NotYetAt);

/// <summary>What a staged paper says after a check.</summary>
public enum StageDecision
{
    /// <summary>It is close, or no check is due: more jobs.</summary>
    GoOn,

    /// <summary>Passed.</summary>
    Passed,

    /// <summary>Not yet.</summary>
    NotYet,
}

/// <summary>What is to be expected of a staged paper.</summary>
/// <param name="Passed">Chance to pass.</param>
/// <param name="NotYet">Chance of "not yet".</param>
/// <param name="Jobs">Mean number of jobs sat.</param>
public sealed record Prospect(double Passed, double NotYet, double Jobs);

/// <summary>What is held of somebody's long-run share of sound jobs before they sit: as if so many jobs had been seen.</summary>
/// <param name="Name">Name on printed pages.</param>
/// <param name="Sound">Sound jobs, greater than 0.</param>
/// <param name="Unsound">Other jobs, greater than 0.</param>
public sealed record Prior(string Name, double Sound, double Unsound)
{
    /// <summary>All shares alike. Source: T. Bayes, 1763, as the uniform prior of a binomial.</summary>
    public static Prior Flat { get; } = new("flat", 1, 1);

    /// <summary>Most who are sent in are right on about 8 of 10. Judgement.</summary>
    public static Prior Favourable { get; } = new("favourable", 8, 2);
}
