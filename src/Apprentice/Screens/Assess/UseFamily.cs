using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Assessing.Numbers;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>One sort of job after use: its figures, and finding it unfair for all who met it.</summary>
static class UseFamily
{
    static readonly Standing[] Remedies = [Standing.CountedSound, Standing.TakenOut];

    /// <summary>The page of a sort.</summary>
    public static Turn Open(World world, FamilyUse use, UseScreen below)
    {
        var versions = VersionsOf(world, use.Family);
        return Turn.To(new SignOffChooseScreen(
            Words.Of("use.one"), "", [new SortNames(world.Topics).Of(use.Family), AssessUse.Share(use), AssessUse.Parts(use), .. world.History.Assessments.Unfair.Where(u => u.Family == use.Family).Select(Said), Words.Of("use.fair")],
            [Words.Of("sign.back"), .. versions.Select(v => Words.Of(versions.Count == 1 ? "use.found" : "use.found-version", ("version", v), ("n", world.History.Assessments.TouchedBy(use.Family, v).Count)))],
            (_, here, line) => line == 0 ? Turn.To(below) : Turn.To(Remedy(use.Family, versions[line - 1], here, below)), below));
    }

    static SignOffChooseScreen Remedy(string family, string version, Screen before, UseScreen below) => new(
        Words.Of("use.one"), "", [Words.Of("use.remedy")], [Words.Of("use.counted"), Words.Of("use.out")],
        (world, here, line) => Turn.To(new SignOffAskScreen(Words.Of("use.one"), "", [Words.Of("use.who")], Words.Of("bike.name"),
            (_, who, by) => Turn.To(new SignOffAskScreen(Words.Of("use.one"), "", [Words.Of("use.why")], Words.Of("takeback.field"),
                (then, _, reason) => Turn.To(below with { Note = Touched(then, family, version) }, new LogEntry.FamilyUnfair(family, version, Remedies[line], by, reason)), who)), here)
        {
            Otherwise = SignOffBike.Lead(world),
        }), before);

    /// <summary>What was decided about a sort.</summary>
    public static string Said(LogEntry.FamilyUnfair unfair) => Words.Of("use.said", ("remedy", Words.Of($"standing.{unfair.Remedy}")), ("by", unfair.By), ("reason", unfair.Reason.TrimEnd('.')));

    /// <summary>Everybody who met a sort in a version.</summary>
    public static string People(World world, string family, string version) =>
        Spoken.List([.. world.History.Assessments.TouchedBy(family, version).Select(t => Words.Of("use.touched-one", ("name", t.Candidate), ("paper", t.Paper)))]);

    static string Touched(World world, string family, string version) => Words.Of("use.touched", ("people", People(world, family, version)));

    static List<string> VersionsOf(World world, string family) =>
        [.. world.History.Assessments.Results.SelectMany(r => r.Jobs).Where(j => j.Family == family).Select(j => j.Version).Distinct(StringComparer.Ordinal)];
}
