namespace Apprentice.Engine.Assessing.Numbers;

/// <summary>What is known of papers after use, each figure only from enough answers on.</summary>
public sealed record AfterUse
{
    /// <summary>Answers from which a share is told with its interval.</summary>
    public const int ForShare = 10;

    /// <summary>Answers from which discrimination is told.</summary>
    public const int ForDiscrimination = 50;

    /// <summary>People from which reliability is told.</summary>
    public const int ForReliability = 20;

    /// <summary>People from which the Rasch model is fitted.</summary>
    public const int ForRasch = 100;

    /// <summary>Per sort of job.</summary>
    public required IReadOnlyList<FamilyUse> Families { get; init; }

    /// <summary>People whose papers have the common sorts.</summary>
    public required int People { get; init; }

    /// <summary>Sorts that all these people met.</summary>
    public required IReadOnlyList<string> Common { get; init; }

    /// <summary>KR-20 with its interval, or null below 20 people.</summary>
    public required (double Alpha, double Low, double High)? Reliability { get; init; }

    /// <summary>The Rasch model of the common sorts, or null below 100 people or when it cannot be fitted.</summary>
    public required RaschModel? Rasch { get; init; }

    /// <summary>What marks say. Each person counts once: their first paper, and in it the first job of a sort; jobs found unfair are left out.</summary>
    /// <param name="results">Results of one permission.</param>
    public static AfterUse Of(IReadOnlyList<PaperResult> results)
    {
        var first = results.GroupBy(r => r.Candidate, StringComparer.Ordinal).Select(g => First(g.MinBy(r => r.Number))).Where(p => p.Count > 0).ToList();
        var families = first.SelectMany(p => p.Keys).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        var common = families.Where(f => first.All(p => p.ContainsKey(f))).ToList();
        var table = first.Select(p => (IReadOnlyList<int>)[.. common.Select(f => p[f] ? 1 : 0)]).ToList();
        var test = first.Count >= ForReliability && common.Count >= 2 ? new ClassicalTest(table) : null;
        return new AfterUse
        {
            Families = [.. families.Select(f => UseOf(f, first))],
            People = first.Count,
            Common = common,
            Reliability = test is null ? null : (test.Alpha, test.AlphaInterval.Low, test.AlphaInterval.High),
            Rasch = first.Count >= ForRasch ? RaschModel.Fit(table) : null,
        };
    }

    static FamilyUse UseOf(string family, List<Dictionary<string, bool>> people)
    {
        var met = people.Where(p => p.ContainsKey(family)).ToList();
        var right = met.Count(p => p[family]);
        return new FamilyUse(
            family, right, met.Count, met.Count >= ForShare ? Distributions.ShareInterval(right, met.Count) : null,
            met.Count >= ForDiscrimination ? Discrimination(family, met) : null);
    }

    // People met unequal numbers of sorts, so they are ordered by their share sound.
    static double Discrimination(string family, List<Dictionary<string, bool>> met)
    {
        var group = Math.Max(1, (int)Math.Floor((0.27 * met.Count) + 0.5));
        return Share(-1) - Share(1);

        double Share(int sign)
        {
            var (left, right) = ((double)group, 0.0);
            foreach (var tie in met.GroupBy(p => sign * (double)p.Values.Count(v => v) / p.Count).OrderBy(g => g.Key))
            {
                var taken = Math.Min(left, tie.Count());
                right += taken * tie.Average(p => p[family] ? 1.0 : 0);
                left -= taken;
                if (left <= 0) break;
            }

            return right / group;
        }
    }

    static Dictionary<string, bool> First(PaperResult? result) => (result?.Jobs ?? []).Where(j => j.Standing == Standing.Counted)
        .GroupBy(j => j.Family, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Sound, StringComparer.Ordinal);
}

/// <summary>What is known of a sort of job after use: per sort, never per case.</summary>
/// <param name="Family">Key of the sort.</param>
/// <param name="Right">Sound answers.</param>
/// <param name="Of">Answers.</param>
/// <param name="Interval">95 % interval of the share, or null below 10 answers.</param>
/// <param name="Discrimination">Upper less lower 27 %, or null below 50 answers.</param>
public sealed record FamilyUse(string Family, int Right, int Of, (double Low, double High)? Interval, double? Discrimination);
