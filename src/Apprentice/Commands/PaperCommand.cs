using System.CommandLine;
using System.Globalization;
using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Storage.Papers;

namespace Apprentice.Commands;

/// <summary><c>paper</c>: plans and papers for a lead who scripts.</summary>
static class PaperCommand
{
    const int CasesEach = 5;
    const ulong Seed = 20;

    /// <summary>The verb with its four words.</summary>
    public static Command Make(Desk desk, SourceOptions sources) => new("paper", "Test plans and sealed papers")
    {
        Plan(desk, sources),
        Seal(desk, sources),
        List(desk, sources),
        Show(desk),
    };

    static Command Plan(Desk desk, SourceOptions sources)
    {
        var permission = new Argument<string>("PERMISSION") { Description = "What may somebody do who passes: \"may order brake parts alone\"" };
        var ids = new Argument<string[]>("TOPIC") { Description = "Topics, none in draft", Arity = ArgumentArity.OneOrMore };
        var reason = new Option<string?>("--reason") { Description = "Why a plan that was saved before is changed", HelpName = "TEXT" };
        var save = new Option<bool>("--save") { Description = "Save it; without this only what the plan would be is said" };
        var real = Real("Real bikes of other workshops at the end of a paper, which do not count; else those of the plan that was saved, else 0");
        var json = new Option<bool>("--json") { Description = "For scripts" };
        var command = new Command("plan", "A plan with everything filled in") { permission, ids, reason, save, real, json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            IReadOnlyList<Workbench> benches = [.. parsed.GetRequiredValue(ids).Distinct(StringComparer.Ordinal).Select(id => new Workbench(taught.Topic(id)))];
            taught.Tell(desk.Error, [.. benches.Select(b => b.Topic)]);
            var planner = new TestPlanner(benches);
            if (planner.Faults is [var fault, ..]) throw new Complaint($"{char.ToUpperInvariant(fault[0])}{fault[1..]}.", ExitCode.Fault);
            var before = File.Exists(sources.LogFile(parsed)) ? sources.History(parsed) : History.Empty;
            var plan = planner.Plan(parsed.GetRequiredValue(permission));
            plan = plan with { RealBikes = RealOf(parsed.GetValue(real)) ?? before.Assessments.Plan(plan.Permission)?.RealBikes ?? 0 };
            var there = RealOffer.There([.. benches.Select(b => b.Topic)], before.Notebook).Count;
            var forecast = planner.Forecast(plan, CasesEach, Seed);
            if (parsed.GetValue(save)) Save(plan, parsed.GetValue(reason), sources, parsed);
            if (parsed.GetValue(json)) Json.Write(desk.Out, Of(plan, forecast, parsed.GetValue(save), there));
            else Say(desk, benches, plan, forecast, parsed.GetValue(save), before.Notebook);
            return ExitCode.Done;
        });
        return command;
    }

    static Command Seal(Desk desk, SourceOptions sources)
    {
        var permission = new Argument<string>("PERMISSION") { Description = "A saved plan's permission" };
        var names = new Argument<string[]>("NAME") { Description = "For whom", Arity = ArgumentArity.OneOrMore };
        var secret = Passphrase.Option();
        var real = Real("Real bikes at the end of these papers, in place of the plan's number");
        var json = new Option<bool>("--json") { Description = "For scripts" };
        var command = new Command("make", "Makes and seals a paper for each name; codes are said once") { permission, names, secret, real, json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            using var log = sources.OpenLog(parsed);
            var history = History.Of(log.Read());
            var plan = Choose.One("permission", parsed.GetRequiredValue(permission), history.Assessments.Plans, p => p.Permission);
            if (RealOf(parsed.GetValue(real)) is { } bikes) plan = plan with { RealBikes = bikes };
            var key = Passphrase.Open(log, parsed.GetValue(secret));
            var made = Made(plan, Benches(taught, plan), history, [.. parsed.GetRequiredValue(names).Distinct(StringComparer.Ordinal)], key, PaperFolder.Beside(sources.LogFile(parsed)));
            taught.Tell(desk.Error, [.. plan.Topics.Select(t => taught.Topic(t.Id))]);
            foreach (var paper in made) log.Append(new Logged(TimeProvider.System.GetLocalNow(), paper.Entry));
            if (parsed.GetValue(json)) Json.Write(desk.Out, new { Json.Schema, Papers = made.Select(m => new { m.Entry.Paper, m.Entry.Candidate, m.Entry.Number, m.Entry.Permission, m.File, m.Code, m.Met, m.Of, m.Real, m.RealMet }) });
            else foreach (var m in made) Say(desk, m);
            return ExitCode.Done;
        });
        return command;
    }

    static Command List(Desk desk, SourceOptions sources)
    {
        var json = new Option<bool>("--json") { Description = "For scripts" };
        var command = new Command("list", "Papers that were made, and where they stand") { json };
        command.SetAction(parsed =>
        {
            using var log = sources.OpenLog(parsed);
            var all = Assessments.Of(log.Read());
            if (parsed.GetValue(json)) Json.Write(desk.Out, new { Json.Schema, Papers = all.Papers.Select(p => new { p.Paper, p.Candidate, p.Number, p.Permission, State = StateOf(all, p.Paper) }) });
            else if (all.Papers.Count == 0) desk.Out.WriteLine("No paper was made yet.");
            else foreach (var p in all.Papers) desk.Out.WriteLine($"{p.Paper}  {p.Candidate}, paper {p.Number}, \"{p.Permission}\": {StateOf(all, p.Paper)}");
            return ExitCode.Done;
        });
        return command;
    }

    static Command Show(Desk desk)
    {
        var file = new Argument<string>("FILE") { Description = "A sealed paper or a result" };
        var json = new Option<bool>("--json") { Description = "For scripts" };
        var command = new Command("show", "What stands on the outside of a sealed paper or a result; no key is needed") { file, json };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            var (what, paper, candidate, number, permission) = Outside(path);
            if (parsed.GetValue(json)) Json.Write(desk.Out, new { Json.Schema, What = what, Paper = paper, Candidate = candidate, Number = number, Permission = permission });
            else desk.Out.WriteLine($"{what} {paper}, {candidate}, paper {number}{(permission is null ? "" : $", \"{permission}\"")}. What it holds is sealed.");
            return ExitCode.Done;
        });
        return command;
    }

    static (string What, string Paper, string Candidate, int Number, string? Permission) Outside(string path)
    {
        try
        {
            var bytes = PaperFolder.Read(path);
            try
            {
                var (paper, candidate, number, permission) = PaperFile.Outside(bytes);
                return ("paper", paper, candidate, number, permission);
            }
            catch (SealException)
            {
                var (paper, candidate, number) = ResultFile.Outside(bytes);
                return ("result", paper, candidate, number, null);
            }
        }
        catch (SealException e)
        {
            throw new Complaint($"{path}: neither a sealed paper nor a result. {e.Message}", ExitCode.Fault);
        }
    }

    static Option<string?> Real(string what) => new("--real") { Description = $"{what} (0 to {TestPlan.MostRealBikes})", HelpName = "N" };

    static int? RealOf(string? text) => text is null ? null
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n <= TestPlan.MostRealBikes ? n
        : throw new Complaint($"--real '{text}' will not do; write a whole number from 0 to {TestPlan.MostRealBikes}.", ExitCode.Usage);

    static void Say(Desk desk, MadePaper m)
    {
        desk.Out.WriteLine($"{m.Entry.Candidate}: paper {m.Entry.Paper}, code {m.Code}, {m.Met} of {m.Of} sorts of jobs met before, {m.File}");
        if (RealText.Made(m) is { } real) desk.Out.WriteLine($"  {real}");
    }

    static void Save(TestPlan plan, string? reason, SourceOptions sources, ParseResult parsed)
    {
        using var log = sources.OpenLog(parsed, isNew: true);
        if (Assessments.Of(log.Read()).Plan(plan.Permission) is not null && string.IsNullOrWhiteSpace(reason))
            throw new Complaint($"\"{plan.Permission}\" was saved before. Say why it is changed with --reason; the reason is kept.", ExitCode.Usage);
        log.Append(new Logged(TimeProvider.System.GetLocalNow(), new LogEntry.PlanSaved(plan, reason ?? "")));
    }

    static void Say(Desk desk, IReadOnlyList<Workbench> benches, TestPlan plan, PlanForecast forecast, bool saved, BenchNotebook notebook)
    {
        desk.Out.WriteLine($"{plan.Permission}: {(saved ? "saved" : "not saved; write --save to keep it")}");
        foreach (var (name, text) in new[] { ("testplan.jobs", PlanText.Jobs(plan)), ("testplan.time", PlanText.Time(plan)), ("testplan.mix", PlanText.Mix(plan)), ("testplan.seen", PlanText.Seen(plan)), ("testplan.pass", PlanText.Pass(plan)), ("testplan.real", RealText.Wish(plan)) })
            desk.Out.WriteLine($"{Words.Of(name)}: {text}");
        if (plan.RealBikes > 0) desk.Out.WriteLine(RealText.There(benches.Select(b => b.Topic), plan, notebook));
        desk.Out.WriteLine(PlanText.NotYet(plan));
        desk.Out.WriteLine($"{PlanText.Expected(forecast)} {PlanText.ExpectedOf(forecast)}");
        foreach (var (of20, passes, jobs) in PlanText.Tells(plan)) desk.Out.WriteLine($"  {of20}: {passes} pass, {jobs} jobs sat");
        desk.Out.WriteLine(PlanText.Apart(plan));
        foreach (var family in plan.Families) desk.Out.WriteLine($"  {FamilyName.Of(benches.First(b => b.Topic.Id == family.Topic).Topic, family)}");
    }

    static object Of(TestPlan plan, PlanForecast forecast, bool saved, int there) => new
    {
        Json.Schema,
        plan.Permission,
        Saved = saved,
        Topics = plan.Topics,
        Jobs = new { plan.Rule.First, plan.Rule.Most, plan.MinutesPerJob, Sittings = plan.Sittings(plan.Rule.Most) },
        Checks = plan.Rule.Checks,
        Families = plan.Families.Select(f => new { f.Key, f.Topic, f.Provenance, f.Want, f.Opening, f.Select, f.Offer, f.Safety }),
        RealBikes = new { Wanted = plan.RealBikes, There = there },
        Expected = new { forecast.Cases, forecast.Settled, forecast.Odd, Pitfalls = forecast.Pitfalls.Select(p => new { p.Class, p.Share }) },
        Tells = plan.Tells.Select(t => new { t.Share, t.Prospect.Passed, t.Prospect.NotYet, t.Prospect.Jobs }),
    };

    static IReadOnlyList<MadePaper> Made(TestPlan plan, IReadOnlyList<Workbench> benches, History history, IReadOnlyList<string> names, byte[] key, PaperFolder folder)
    {
        try
        {
            return DeskWork.Make(plan, benches, history.Assessments, history.Notebook, [.. names.Select(history.Called.OfTyped)], key, folder);
        }
        catch (Exception e) when (e is SealException or ArgumentException)
        {
            throw new Complaint($"No paper was made: {e.Message.Split(" (Parameter", 2)[0]}.", ExitCode.Fault);
        }
    }

    static IReadOnlyList<Workbench> Benches(Taught taught, TestPlan plan) =>
        [.. plan.Topics.Where(t => taught.Topics.Ids.Contains(t.Id, StringComparer.Ordinal)).Select(t => new Workbench(taught.Topic(t.Id)))];

    static string StateOf(Assessments all, string paper) => all.Result(paper) is { } result ? (result.Published is null ? "marked" : "published")
        : all.SittingOf(paper) switch
        {
            null => "made",
            { End: null } => "begun",
            _ => "sat",
        };
}
