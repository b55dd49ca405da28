using System.Globalization;
using System.Text.RegularExpressions;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Marks;

/// <summary>Results and their reasons.</summary>
public sealed partial class ResultTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];

    [Theory]
    [InlineData("result")]
    [InlineData("result-not-yet")]
    [InlineData("result-lead")]
    [InlineData("firm")]
    [InlineData("results")]
    [InlineData("why-list")]
    [InlineData("why-job")]
    [InlineData("why-job-sound")]
    [InlineData("appeal-ask")]
    [InlineData("talk")]
    public void The_page_is_as_it_was_looked_at(string name)
    {
        var talk = Of(name);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    // The record is made when a paper is marked, so nothing is told of the look before; the mark is as without it.
    [Theory]
    [InlineData(false, true, true)]
    [InlineData(true, true, false)]
    [InlineData(false, false, false)]
    public void A_record_tells_of_an_order_without_the_safety_look_and_of_nothing_else(bool looked, bool ordered, bool told)
    {
        var bench = Corpus.Bench("rim-size");
        var request = new CaseRequest("own", "tyre", null, Selection.AsTheyCome, Channel.Bench);
        var made = Enumerable.Range(1, 99).Select(s => bench.Make(request, (ulong)s)).OfType<Case>().First(c => c.Look("rim-wall", 0).Seen is Seen.Named { Id: "sound" });
        var sat = new SittingJob(1)
        {
            Looks = [.. made.Job.Bench.Where(c => looked || c != "rim-wall").Select(c => new Look(c, 0))],
            Given = new Given([new PartAnswer("rim", "622", 9)], [ordered ? new Choice.Order("tyre-622") : new Choice.Ask()], null, null, null, Forced: false),
        };
        var family = new JobFamily(bench.Topic.Id, "own", "tyre", null, Selection.AsTheyCome, Channel.Bench, Safety: true);
        var record = JobRecord.Of(bench, made, family, sat, bench.Grade(made, sat.Given.With(sat.Looks)));
        var figures = new RecordTelling([bench.Topic]).Figures(record);
        Assert.Equal(told, figures.Contains("Ordered without Safety look at the rim's side. It changes no mark, but such a look comes first: what it may find can hurt someone."));
        Assert.Equal(told, figures.Any(f => f.StartsWith("Ordered without", StringComparison.Ordinal)));
    }

    // A hand that has the printout alone: it reads the figures, does the sum, and compares. Figures are printed to a tenth of a bike and a hundredth of money.
    [Fact]
    public void Every_mark_can_be_worked_out_again_from_the_printed_figures()
    {
        var telling = new RecordTelling([Sat.Topic]);
        var done = 0;
        foreach (var mark in Sat.Result(Sat.Passed).Jobs.Concat(Sat.Result(Sat.NotYet).Jobs))
        {
            Assert.NotNull(mark.Record);
            var figures = telling.Figures(mark.Record);
            var marks = new List<double>();
            foreach (var line in figures)
            {
                if (line.StartsWith("Full mark", StringComparison.Ordinal)) marks.Add(100);
                if (line.StartsWith("No mark", StringComparison.Ordinal)) marks.Add(0);
                if (PartSum().Match(line) is { Success: true } part) marks.Add(Compared(part, 100 - N(part, "by"), 12));
                else if (OrderSum().Match(line) is { Success: true } order) marks.Add(Compared(order, N(order, "by"), 0.2));
            }

            Assert.Equal((mark.Record.Judged?.Parts.Count ?? 0) + (mark.Record.Judged?.Orders.Count ?? 0), marks.Count);
            Assert.Equal(mark.Sound, marks.All(m => m >= 50) && figures.Contains("No safety error."));
            done++;
        }

        Assert.Equal(32, done);
    }

    [Fact]
    public void A_job_that_is_not_sound_has_one_sentence_with_what_was_said_and_what_the_checks_say()
    {
        var telling = new RecordTelling([Sat.Topic]);
        var not = Sat.Result(Sat.NotYet).Jobs.Where(j => !j.Sound).ToList();
        Assert.Equal(6, not.Count);
        Assert.All(not, j =>
        {
            var said = telling.InShort(j);
            Assert.EndsWith(".", said, StringComparison.Ordinal);
            Assert.NotEqual(RecordTelling.Rule(j), said);
        });
    }

    // The topic may be gone or have other names when a printout is asked for.
    [Fact]
    public void Without_its_topic_a_mark_is_told_with_short_names()
    {
        var mark = Sat.Result(Sat.NotYet).Jobs[0];
        var (with, without) = (new RecordTelling([Sat.Topic]), new RecordTelling([]));
        Assert.NotEqual(with.Bike(mark.Record ?? throw new InvalidOperationException()), without.Bike(mark.Record));
        Assert.NotEmpty(without.Looks(mark.Record).Concat(without.Unused(mark.Record).Select(u => (u.Check, u.Seen, ""))));
        Assert.Contains("older", without.InShort(mark) + without.Bike(mark.Record), StringComparison.Ordinal);
    }

    [Fact]
    public void A_candidate_sees_only_own_results_that_were_told()
    {
        var told = Sat.Talk().At(new HomeScreen()).Keys("R");
        Assert.IsType<ResultListScreen>(told.Screen);
        Assert.DoesNotContain(Sat.NotYet, told.Text, StringComparison.Ordinal);
        Assert.IsType<ResultListScreen>(Sat.Talk().At(new HomeScreen()).Keys("81").Screen);
        var log = Sat.Log();
        log.RemoveAll(e => e.What is LogEntry.PaperMarked);
        log.Add(new Logged(log[^1].At, new LogEntry.PaperMarked(Sat.Result(Sat.Passed) with { Published = null }, Published: false)));
        Assert.IsType<HomeScreen>(new Talk(log, [Sat.Topic]).At(new HomeScreen()).Keys("R").Screen);
    }

    [Fact]
    public void The_start_page_says_what_waits_until_it_is_opened()
    {
        string Home(Talk talk) => string.Join(' ', talk.At(new HomeScreen()).TextAt(new PageSize(120, 60)).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        var talk = Sat.Talk();
        Assert.Contains("Tests The result of a test is here. Key R.", Home(talk), StringComparison.Ordinal);
        talk.Keys("R1");
        Assert.Equal(new LogEntry.ResultShown(Sat.Passed), talk.Entries[^1].What);
        Assert.DoesNotContain("Tests The", Home(talk), StringComparison.Ordinal);
        LogEntry[] asked = [new LogEntry.ResultShown(Sat.Passed), new LogEntry.PaperQuestioned(Sat.Passed, 5, "odd"), new LogEntry.AppealDecided(Sat.Passed, 5, "Lee", AppealDecision.Stays, "the tape says so")];
        Assert.DoesNotContain("Key R.", Home(Sat.Talk(asked[..2])), StringComparison.Ordinal);
        Assert.Contains("Your question about job 5 of a test is answered. Key R.", Home(Sat.Talk(asked)), StringComparison.Ordinal);
        Assert.DoesNotContain("Key R.", Home(Sat.Talk([.. asked, new LogEntry.SatDown("Jo")])), StringComparison.Ordinal);
    }

    [Fact]
    public void A_talk_that_is_to_come_stands_on_the_start_page_once_the_result_was_told()
    {
        var result = Sat.Result(Sat.Passed) with { Paper = "9B9B9B", Published = null };
        result = result with { Jobs = [.. result.Jobs.Select((j, i) => j with { SafetyError = i == 0 })] };
        Assert.Equal(Outcome.SafetyFirst, result.Outcome);
        string Text(params LogEntry[] more) => Sat.Talk([new LogEntry.ResultShown(Sat.Passed), .. more]).At(new HomeScreen()).TextAt(new PageSize(120, 60)).Replace("\n", " ", StringComparison.Ordinal);
        Assert.DoesNotContain("Your lead wants to talk", Text(new LogEntry.PaperMarked(result, Published: false)), StringComparison.Ordinal);
        Assert.Contains("Your lead wants to talk", Text(new LogEntry.PaperMarked(result, Published: true), new LogEntry.ResultShown("9B9B9B")), StringComparison.Ordinal);
        Assert.EndsWith("Of 6 fresh safety jobs 5 were sound; all of them must be.", AssessWords.Safety(result with { SafetyAgain = [.. result.Jobs.Skip(9).Take(5).Append(result.Jobs[4])] }), StringComparison.Ordinal);
        LogEntry[] talked = [new LogEntry.PaperMarked(result, Published: true), new LogEntry.SafetyTalked("9B9B9B", "Jo", "the cable")];
        Assert.DoesNotContain("Your lead wants to talk", Text(talked), StringComparison.Ordinal);
        string Lead(params LogEntry[] more) => Sat.Talk(more).At(new WorkshopScreen(new HomeScreen())).TextAt(new PageSize(120, 60));
        Assert.Contains("Let Sam sit six fresh safety jobs", Lead(talked), StringComparison.Ordinal);
        Assert.DoesNotContain("Let Sam sit", Lead([.. talked, new LogEntry.SafetyAgainMarked("9B9B9B", [.. result.Jobs.Skip(1).Take(6)])]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "holds a paper back, however many", false)]
    [InlineData(1, "This paper has one", true)]
    [InlineData(2, "This paper has 2", true)]
    public void How_firm_says_that_safety_errors_are_not_in_its_figures(int errors, string said, bool beside)
    {
        var result = Sat.Result(Sat.NotYet) with { Paper = "9B9B9B" };
        result = result with { Jobs = [.. result.Jobs.Select((j, i) => j with { SafetyError = i < errors })] };
        var talk = Sat.Talk(new LogEntry.PaperMarked(result, Published: false));
        var firm = talk.At(new ResultFirmScreen("9B9B9B", new HomeScreen())).TextAt(new PageSize(200, 60));
        Assert.Contains("Safety errors are not in these figures", firm, StringComparison.Ordinal);
        Assert.Contains(said, firm, StringComparison.Ordinal);
        Assert.Equal(beside, AssessWords.Firm(result).Contains("not counted in this", StringComparison.Ordinal));
        Assert.Contains("Safety errors are not in these figures", AssessCandidatePage.Html(talk.World.History, [Sat.Topic], result, Sat.Nine), StringComparison.Ordinal);
    }

    [Fact]
    public void The_lead_tells_a_result_once()
    {
        var talk = Of("result-lead");
        var before = talk.Entries.Count;
        Assert.Contains("It cannot be taken back.", talk.Keys("T").TextAt(new PageSize(120, 40)), StringComparison.Ordinal);
        Assert.Equal(before, talk.Keys("2").Entries.Count);
        talk.Keys("T1");
        Assert.True(Assert.IsType<LogEntry.PaperMarked>(talk.Entries[^1].What).Published);
        var count = talk.Entries.Count;
        Assert.Equal(count, talk.Keys("T").Entries.Count);
        Assert.NotNull(talk.World.History.Assessments.PublishedAt(Sat.Passed));
    }

    [Fact]
    public void Two_safety_errors_ask_for_a_talk_before_anything_else()
    {
        var not = Sat.Result(Sat.NotYet);
        PaperResult With(int errors) => not with { Jobs = [.. not.Jobs.Select((j, i) => j with { SafetyError = i < errors })] };
        Assert.Contains("a talk with your lead", AssessWords.Next(History.Empty, With(2)), StringComparison.Ordinal);
        Assert.DoesNotContain("talk", AssessWords.Next(History.Empty, With(0)), StringComparison.Ordinal);
        var talk = Sat.Talk(new LogEntry.PaperMarked(With(2) with { Paper = "9B9B9B" }, Published: false)).At(new ResultScreen("9B9B9B", IsLead: true, new HomeScreen())).Keys("T");
        Assert.Contains("A talk face to face comes first.", talk.TextAt(new PageSize(120, 40)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_printed_result_holds_every_job_with_its_figures()
    {
        var (name, html) = Sat.Talk().At(new ResultScreen(Sat.Passed, IsLead: false, new HomeScreen())).Keys("4").Sheets[^1];
        Assert.Equal($"apprentice-result-{Sat.Passed}.html", name);
        for (var job = 1; job <= 20; job++) Assert.Contains($"<h3>Job {job}: ", html, StringComparison.Ordinal);
        Assert.Contains("Set by one person (Jo)", html, StringComparison.Ordinal);
    }

    // Source: the exact chances of the staged table, held by StagedRuleTests against figures worked out elsewhere.
    [Fact]
    public void How_firm_prints_the_exact_chances()
    {
        var text = Of("firm").TextAt(new PageSize(120, 40));
        foreach (var n in new[] { 19, 18, 16, 13, 10 })
            Assert.Contains((100 * StagedRule.Default.For(n / 20.0).Passed).ToString("0.#", CultureInfo.InvariantCulture) + " of 100", text, StringComparison.Ordinal);
        Assert.Contains("19 of 22", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    static double Compared(Match sum, double by, double near)
    {
        var own = 100 * Math.Max(0, 1 - ((N(sum, "from") - N(sum, "less")) / by));
        Assert.Equal(N(sum, "mark"), own, near);
        return N(sum, "mark");
    }

    static double N(Match match, string name) => double.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^Mark: 1 less \((?<from>[0-9.]+) less (?<less>[0-9.]+)\) / \(100 less (?<by>[0-9.]+)\), at least 0: (?<mark>[0-9.]+) of 100\.", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex PartSum();

    [GeneratedRegex(@"^Mark: 1 less \((?<from>[0-9.]+) less (?<less>[0-9.]+)\) / (?<by>[0-9.]+), at least 0: (?<mark>[0-9.]+) of 100\.", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex OrderSum();

    static Talk Of(string name)
    {
        var home = new HomeScreen();
        var mine = new ResultScreen(Sat.Passed, IsLead: false, home);
        return name switch
        {
            "result" => Sat.Talk().At(mine),
            "result-not-yet" => Sat.Talk(new LogEntry.SatDown("Kim")).At(new ResultScreen(Sat.NotYet, IsLead: false, home)),
            "result-lead" => new Talk([.. Sat.Log().Where(e => e.What is not LogEntry.PaperMarked), new(Sat.Nine.AddDays(1), new LogEntry.PaperMarked(Sat.Result(Sat.Passed) with { Published = null }, Published: false))], [Sat.Topic]).At(new ResultScreen(Sat.Passed, IsLead: true, home)),
            "firm" => Sat.Talk().At(new ResultFirmScreen(Sat.Passed, mine)),
            "results" => Sat.Talk().At(ResultListScreen.ForLead(home)),
            "why-list" => Sat.Talk().At(new WhyListScreen(Sat.Passed, Asks: false, mine)),
            "why-job" => Sat.Talk().At(new WhyJobScreen(Sat.Passed, 5, mine)),
            "why-job-sound" => Sat.Talk().At(new WhyJobScreen(Sat.Passed, 1, mine)),
            "appeal-ask" => Sat.Talk().At(new AppealAskScreen(Sat.Passed, 5, mine)),
            _ => Sat.Talk().At(new ResultTalkScreen(Sat.Passed, mine)),
        };
    }
}
