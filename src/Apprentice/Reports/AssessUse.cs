using System.Globalization;
using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing.Numbers;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>What is known of a permission's sorts of jobs after use, in words: each figure only from enough answers on, below that one sentence.</summary>
static class AssessUse
{
    /// <summary>The numbers of a permission.</summary>
    public static AfterUse Of(History history, string permission) => AfterUse.Of([.. history.Assessments.Results.Where(r => r.Permission == permission)]);

    /// <summary>How many were sound: the count, and from ten answers on the interval.</summary>
    public static string Share(FamilyUse use) => use.Interval is { } interval
        ? Words.Of("use.share", ("right", use.Right), ("of", use.Of), ("low", Hundred(interval.Low)), ("high", Hundred(interval.High)))
        : Words.Of("use.share-few", ("right", use.Right), ("of", use.Of), ("from", AfterUse.ForShare));

    /// <summary>How much better the strong do than the weak, from fifty answers on.</summary>
    public static string Parts(FamilyUse use) => use.Discrimination is { } difference
        ? Words.Of("use.parts", ("n", Hundred(difference)))
        : Words.Of("use.parts-few", ("from", AfterUse.ForDiscrimination));

    /// <summary>How firm an order of people by their marks is, from twenty people on.</summary>
    public static string Reliability(AfterUse use) => use.Reliability is { } r
        ? Words.Of("use.reliability", ("alpha", Hundred(r.Alpha)), ("low", Hundred(r.Low)), ("high", Hundred(r.High)), ("people", use.People))
        : Words.Of("use.reliability-few", ("from", AfterUse.ForReliability), ("people", use.People));

    /// <summary>The scale of people and sorts of jobs, from a hundred people on.</summary>
    public static string Rasch(AfterUse use) => use.Rasch is null
        ? Words.Of(use.People >= AfterUse.ForRasch ? "use.rasch-not" : "use.rasch-few", ("from", AfterUse.ForRasch), ("people", use.People), ("common", use.Common.Count))
        : Words.Of("use.rasch", ("people", use.People), ("common", use.Common.Count));

    /// <summary>The report: a row a sort of job, and what is found unfair.</summary>
    public static Report Report(History history, IReadOnlyList<Topic> topics, string permission, DateTimeOffset now)
    {
        var use = Of(history, permission);
        var sorts = new SortNames(topics);
        return new Report(
            Words.Of("use.report", ("permission", permission)), now, [Words.Of("use.per-sort"), Reliability(use), Rasch(use)],
            [
                new ReportTable("sorts", Words.Of("use.sorts"), ["sort", "name", "sound", "answers", "low", "high", "upper_less_lower", "said"],
                    [.. use.Families.Select(f => (object?[])[f.Family, sorts.Of(f.Family), f.Right, f.Of, Number(f.Interval?.Low), Number(f.Interval?.High), Number(f.Discrimination), $"{Share(f)} {Parts(f)}"])]),
                new ReportTable("scale", Words.Of("use.scale"), ["sort", "difficulty", "standard_error"],
                    use.Rasch is { } rasch ? [.. use.Common.Select((f, i) => (object?[])[f, Number(rasch.Difficulties[i]), Number(rasch.Errors[i])])] : []),
                new ReportTable("people", Words.Of("use.people"), ["sound", "estimate", "information"],
                    use.Rasch is { } scale ? [.. Enumerable.Range(0, use.Common.Count + 1).Select(n => (object?[])[n, Number(scale.Ability(n)), Number(scale.Information(scale.Ability(n)))])] : []),
                new ReportTable("unfair", Words.Of("use.unfair"), ["sort", "version", "remedy", "by", "reason", "touched"],
                    [.. history.Assessments.Unfair.Select(u => (object?[])[u.Family, u.Version, Words.Of($"standing.{u.Remedy}"), u.By, u.Reason, string.Join("; ", history.Assessments.TouchedBy(u.Family, u.Version).Select(t => $"{t.Candidate} {t.Paper}"))])]),
            ]);
    }

    // Below nothing there is nothing to tell: a negative figure is shown as 0.
    static string Hundred(double share) => (100 * Math.Max(0, share)).ToString("0", CultureInfo.InvariantCulture);

    static double? Number(double? value) => value is { } v ? Math.Round(v, 4) : null;
}
