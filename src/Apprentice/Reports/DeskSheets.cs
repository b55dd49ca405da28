using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Screens;

namespace Apprentice.Reports;

/// <summary>What the desk prints: the recovery code, the slips with codes, the plan, the form for the bench.</summary>
static class DeskSheets
{
    const int Bikes = 3;
    const int Lines = 6;

    /// <summary>The recovery code.</summary>
    public static Report Recovery(World world, string code) => new(
        Words.Of("desk.code-title"), world.Now,
        [world.History.Workshop?.Name ?? "", code, Words.Of("desk.code-keep"), Words.Of("desk.code-burn")], []);

    /// <summary>Slips with the codes of papers.</summary>
    public static Report Codes(World world, IReadOnlyList<MadePaper> made) => new(
        Words.Of("papers.made"), world.Now,
        [Words.Of("papers.made-keep"), Words.Of("desk.code-burn"), .. made.Select(RealText.Made).OfType<string>()],
        [
            new("codes", Words.Of("papers.made"), [Words.Of("sit.pick-who"), Words.Of("sit.pick-paper"), Words.Of("sit.pick-for"), Words.Of("papers.code"), Words.Of("papers.met")],
                [.. made.Select(m => (IReadOnlyList<object?>)[m.Entry.Candidate, m.Entry.Paper, m.Entry.Permission, m.Code.Replace('-', '\u2011'), Words.Of("papers.met-of", ("met", m.Met), ("of", m.Of))])]),
        ]);

    /// <summary>A plan for print.</summary>
    /// <param name="world">Topics at hand.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="forecast">What is to be expected.</param>
    /// <param name="line">Its pass line, or null.</param>
    public static Report Plan(World world, TestPlan plan, PlanForecast forecast, PassLine? line) => new(
        Words.Of("testplan.print-title", ("permission", plan.Permission)), world.Now,
        [
            .. plan.Topics.Select(t => Words.Of("testplan.print-topic", ("topic", world.Bench(t.Id)?.Topic.Title ?? t.Id), ("version", t.Version), ("by", world.Bench(t.Id)?.Topic.CheckedBy ?? ""))),
            Line("testplan.jobs", PlanText.Jobs(plan)), Line("testplan.time", PlanText.Time(plan)), Line("testplan.mix", PlanText.Mix(plan)), PlanText.Expected(forecast), PlanText.ExpectedOf(forecast),
            Line("testplan.seen", PlanText.Seen(plan)), Line("testplan.pass", PlanText.Pass(plan)), PlanText.NotYet(plan), PlanText.Line(plan, line), PlanText.Apart(plan), Line("testplan.real", RealText.Wish(plan)), Words.Of("testplan.not-tested"), Words.Of("testplan.fair"),
        ],
        [
            new("tells", Words.Of("testplan.tells"), [Words.Of("testplan.someone"), Words.Of("testplan.passes"), Words.Of("testplan.sat")],
                [.. PlanText.Tells(plan).Select(t => (IReadOnlyList<object?>)[t.Of20, t.Passes, t.Jobs])]),
            new("sorts", Words.Of("testplan.sorts"), [Words.Of("testplan.nth"), Words.Of("testplan.sort"), .. line?.Judges ?? []],
                [.. plan.Families.Select((f, i) => (IReadOnlyList<object?>)[i + 1, FamilyName.Of(world.Bench(f.Topic)?.Topic, f), .. (line?.Judges ?? []).Select(j => line?.Ratings.First(r => r.Judge == j && r.Family == f.Key).Of20)])]),
            new("pitfalls", Words.Of("testplan.pitfalls"), [Words.Of("testplan.pitfall"), Words.Of("testplan.share")],
                [.. forecast.Pitfalls.Select(p => (IReadOnlyList<object?>)[Words.Of($"skills.pitfall.{p.Class.ToString().ToLowerInvariant()}"), Spoken.AboutTenths(p.Share)])]),
        ]);

    static string Line(string name, string text) => $"{Words.Of(name)}: {text}";

    /// <summary>The form for three real bikes.</summary>
    public static Report Bench(World world, TestPlan plan) => new(
        Words.Of("testplan.form-title", ("permission", plan.Permission)), world.Now,
        [Words.Of("testplan.form-how"), Words.Of("testplan.form-names")],
        [
            .. Enumerable.Range(1, Bikes).Select(bike => new ReportTable(
                $"bike-{bike}", Words.Of("testplan.form-bike", ("n", bike)), [Words.Of("testplan.form-what"), Words.Of("testplan.form-lead"), Words.Of("testplan.form-candidate")],
                [.. Enumerable.Range(1, Lines).Select(_ => (IReadOnlyList<object?>)["\u00a0", "", ""])])),
        ]);
}
