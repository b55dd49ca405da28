namespace Apprentice.Engine.Assessing;

/// <summary>A pass line by modified Angoff, on the sorts of jobs of a plan.</summary>
/// <remarks>Source: W. H. Angoff, Scales, norms, and equivalent scores, in R. L. Thorndike (ed.), Educational Measurement, 1971. Each judge rates each sort; a judge's line is the mean of their ratings, the line the mean over judges.</remarks>
/// <param name="Ratings">All ratings.</param>
public sealed record PassLine(IReadOnlyList<Rating> Ratings)
{
    /// <summary>Judges at most.</summary>
    public const int MostJudges = 4;

    /// <summary>The judges, in order of their first rating.</summary>
    public IReadOnlyList<string> Judges => [.. Ratings.Select(r => r.Judge).Distinct(StringComparer.Ordinal)];

    /// <summary>True with one judge: the plan and the register then say "set by one person".</summary>
    public bool SetByOnePerson => Judges.Count == 1;

    /// <summary>Per judge the share of sound jobs of somebody just good enough, 0 to 1.</summary>
    public IReadOnlyList<double> LineOf => [.. Judges.Select(j => Ratings.Where(r => r.Judge == j).Average(r => r.Of20) / 20)];

    /// <summary>The line: a share of sound jobs, 0 to 1.</summary>
    public double Line => LineOf.Average();

    /// <summary>Standard deviation of the judges' lines (n − 1), or null with one judge.</summary>
    public double? Spread
    {
        get
        {
            if (SetByOnePerson) return null;
            var mean = Line;
            return Math.Sqrt(LineOf.Sum(l => (l - mean) * (l - mean)) / (Judges.Count - 1));
        }
    }

    /// <summary>Standard error of the line, or null with one judge.</summary>
    public double? Error => Spread is { } spread ? spread / Math.Sqrt(Judges.Count) : null;

    /// <summary>What is wrong with the ratings, a sentence each.</summary>
    /// <param name="plan">The plan whose sorts of jobs are rated.</param>
    public IReadOnlyList<string> Faults(TestPlan plan)
    {
        var keys = plan.Families.Select(f => f.Key).ToList();
        return
        [
            .. Judges.Count is < 1 or > MostJudges ? [$"a pass line needs one to {MostJudges} judges, not {Judges.Count}"] : Array.Empty<string>(),
            .. Ratings.Where(r => r.Of20 is < 0 or > 20).Select(r => $"{r.Judge}, {r.Family}: a rating is 0 to 20 of 20 people, not {r.Of20}"),
            .. Ratings.Where(r => !keys.Contains(r.Family)).Select(r => $"{r.Judge}: the plan has no sort of job {r.Family}"),
            .. Judges.SelectMany(j => keys.Where(k => Ratings.Count(r => r.Judge == j && r.Family == k) != 1).Select(k => $"{j} must rate {k} once")),
        ];
    }

    /// <summary>True when the table of the plan passes half of those who stand on this line, to within one job of 20.</summary>
    public bool Fits(StagedRule rule) => Math.Abs(Line - LineOfRule(rule)) <= 0.05;

    /// <summary>The share of sound jobs in the long run at which a table passes half of the papers.</summary>
    public static double LineOfRule(StagedRule rule)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            if (rule.For(middle).Passed < 0.5) low = middle;
            else high = middle;
        }

        return low;
    }
}

/// <summary>What one judge expects on one sort of job.</summary>
/// <param name="Judge">The judge's name.</param>
/// <param name="Family">Key of the sort of job.</param>
/// <param name="Of20">Of 20 people who are just good enough, how many would be sound on such a job: 0 to 20.</param>
public sealed record Rating(string Judge, string Family, double Of20);
