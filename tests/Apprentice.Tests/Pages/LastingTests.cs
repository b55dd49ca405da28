using System.Text.RegularExpressions;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Pages;

/// <summary>A session that is put aside, the next permission, and the example workshop.</summary>
public sealed partial class LastingTests
{
    static readonly PageSize Wide = new(120, 200);

    static readonly TestPlan Plan = new()
    {
        Permission = "order tyres alone",
        Topics = [new PlanTopic(Corpus.Sample.Id, Corpus.Sample.Version)],
        Families = [new JobFamily(Corpus.Sample.Id, Corpus.Sample.Provenances[0].Id, Corpus.Sample.Wants[0].Id, null, Selection.AsTheyCome, Channel.Bench, Safety: false)],
    };

    [Fact]
    public void A_job_put_aside_goes_on_with_the_jobs_planned_after_it()
    {
        var before = new Talk(Lives.TenthDay(), [Corpus.Sample]).Keys("{Enter}");
        var planned = Assert.IsType<BenchScreen>(before.Screen).On.Session?.Left ?? [];
        Assert.True(planned.Count > 1);
        var talk = new Talk(before.Entries, [Corpus.Sample]);
        Assert.Contains(planned.Count == 2 ? "One more of its plan follows." : $"Then {planned.Count - 1} more of its plan follow.", Flat(talk.TextAt(Wide)), StringComparison.Ordinal);
        talk.Keys("1");
        Assert.Equal(planned.Select(p => p.Draw.Seed), Assert.IsType<BenchScreen>(talk.Screen).On.Session?.Left.Select(p => p.Draw.Seed));
        Answered(talk).Keys("{Enter}");
        var next = talk.Entries.Select(e => e.What).OfType<LogEntry.JobStarted>().Last();
        Assert.Equal(planned[1].Draw.Seed, next.Seed);
    }

    [Fact]
    public void A_job_of_no_plan_goes_on_alone()
    {
        var log = new Talk(Lives.TenthDay(), [Corpus.Sample]).Keys("{Enter}").Entries;
        var started = (LogEntry.JobStarted)log[^1].What;
        log[^1] = log[^1] with { What = started with { Seed = started.Seed + 1 } };
        var talk = new Talk(log, [Corpus.Sample]).Keys("1");
        Assert.Null(Assert.IsType<BenchScreen>(talk.Screen).On.Session);
    }

    [Fact]
    public void A_session_goes_with_the_person_and_is_erased_with_them()
    {
        var log = new Talk(Lives.TenthDay(), [Corpus.Sample]).Keys("{Enter}").Entries;
        Assert.Contains(PersonEntries.Of(log, "Sam"), e => e.What is LogEntry.SessionPlanned);
        Assert.DoesNotContain(PersonEntries.Without(log, "Sam"), e => e.What is LogEntry.SessionPlanned);
        var moved = History.Of([.. Lives.OverConfident(), .. PersonEntries.After(History.Of(Lives.OverConfident()), PersonEntries.Of(log, "Sam"))]);
        Assert.Equal(History.Of(log).LeftFrom(History.Of(log).Jobs[^1]).Count, moved.LeftFrom(moved.Unfinished("Sam") ?? moved.Jobs[0]).Count);
    }

    [Fact]
    public void The_next_permission_is_said_with_what_is_missing()
    {
        Assert.DoesNotContain("Permission", Text(), StringComparison.Ordinal);
        Assert.Contains("\"order tyres alone\": jobs test not yet sat, bench 0 of 3 bikes.", Text(Saved), StringComparison.Ordinal);
        Assert.Contains("jobs test not yet sat, bench 1 of 3 bikes.", Text(Saved, Bike(1)), StringComparison.Ordinal);
        Assert.Contains("bench 3 of 3 bikes, bikes on a second day to come, an odd bike to come.", Text(Saved, Bike(1), Bike(1), Bike(1)), StringComparison.Ordinal);
        Assert.Contains("bench 0 of 3 bikes.", Text(Saved, new LogEntry.BenchDone("Kim", Plan.Permission, Form(1))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_result_that_was_not_told_is_not_told_here()
    {
        var result = new PaperResult { Paper = "7F2", Permission = Plan.Permission, Candidate = "Sam", Number = 1, Rule = StagedRule.Default, Jobs = [] };
        Assert.Contains("jobs test sat, result to come", Text(Saved, new LogEntry.PaperMarked(result, Published: false)), StringComparison.Ordinal);
        Assert.DoesNotContain("result to come", Text(Saved, new LogEntry.PaperMarked(result, Published: true)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("example-start", "4")]
    [InlineData("example-lead", "41")]
    [InlineData("example-card", "411")]
    [InlineData("example-tenth-day", "43")]
    [InlineData("example-sure", "44")]
    public void The_example_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = new Talk([Corpus.Sample]).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void Nothing_done_in_the_example_reaches_the_log_or_a_file()
    {
        var talk = new Talk([Corpus.Sample]).Keys("43{Enter}");
        Assert.IsType<BenchScreen>(Assert.IsType<ExampleScreen>(talk.Screen).Inner);
        talk.Keys("0");
        Assert.Contains("is put aside", talk.Text, StringComparison.Ordinal);
        Assert.IsType<ExampleStartScreen>(Assert.IsType<ExampleScreen>(talk.Keys("0").Screen).Inner);
        talk.Keys("14");
        Assert.Contains("No file is written in the example.", Flat(talk.TextAt(Wide)), StringComparison.Ordinal);
        Assert.IsType<FirstStartScreen>(talk.Keys("00").Screen);
        Assert.Single(talk.Entries);
        Assert.Empty(talk.Sheets);
        Assert.Empty(talk.World.History.People);
    }

    [Fact]
    public void The_example_shows_a_paper_passed_and_a_paper_with_a_safety_error()
    {
        var talk = new Talk([Corpus.Topic("brakes")]).Keys("4");
        var all = Assert.IsType<ExampleScreen>(talk.Screen).Made.Assessments;
        var passed = Assert.Single(all.Results, r => r.Outcome == Outcome.Passed);
        var unsafeOne = Assert.Single(all.Results, r => r.Outcome == Outcome.SafetyFirst);
        Assert.Equal(2, all.Results.Count);
        Assert.Equal(1, unsafeOne.SafetyErrors);
        Assert.Null(all.PublishedAt(unsafeOne.Paper));
        Assert.Equal(passed.Paper, Assert.Single(all.Appeals).Paper);
        Assert.Empty(all.RegisterOf(passed.Candidate, passed.Permission).MissingFor(PermissionLevel.WithSecondLook));
        Assert.All(all.Results.SelectMany(r => r.Jobs), j => Assert.NotNull(j.Record?.Judged));
        var week = Flat(talk.Keys("1").TextAt(Wide));
        Assert.Contains($"Talk with {unsafeOne.Candidate}: a safety error in a test.", week, StringComparison.Ordinal);
        Assert.Contains($"Give the questioned job of {passed.Candidate} to a second person.", week, StringComparison.Ordinal);
        Assert.Contains($"Tell {unsafeOne.Candidate} how the test went.", week, StringComparison.Ordinal);
        talk.Keys("551S").Keys("We looked at that brake.{Enter}");
        Assert.Contains("The talk was held.", Flat(talk.TextAt(Wide)), StringComparison.Ordinal);
        Assert.Single(talk.Entries);
    }

    [Fact]
    public void The_papers_of_the_example_are_the_same_each_time()
    {
        static IEnumerable<(string, int, bool, string)> Marks() => ExampleHistory.Of([new Workbench(Corpus.Topic("brakes"))], new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero))
            .Assessments.Results.SelectMany(r => r.Jobs.Select(j => (r.Candidate, j.Place, j.Sound, j.Rule)));
        Assert.Equal(Marks(), Marks());
    }

    [Fact]
    public void The_example_tests_no_draft() => Assert.Empty(Assert.IsType<ExampleScreen>(new Talk([Corpus.Sample]).Keys("4").Screen).Made.Assessments.Plans);

    static LogEntry Saved => new LogEntry.PlanSaved(Plan, "");

    static LogEntry.BenchDone Bike(int day) => new LogEntry.BenchDone("Sam", Plan.Permission, Form(day));

    static BenchForm Form(int day) => new(new DateOnly(2026, 11, day), "old roadster", Odd: false, "Jo", [], Agreed: true, 3);

    static string Text(params LogEntry[] entries)
    {
        var log = Lives.TenthDay();
        Lives.Add(log, entries);
        return Flat(new Talk(log, [Corpus.Sample]).TextAt(Wide));
    }

    // The first line of every question, five of ten.
    static Talk Answered(Talk talk)
    {
        talk.Keys("A");
        for (var n = 0; n < 20 && talk.Screen is AnswerScreen { Form.Next: { } question }; n++) talk.Keys(question.Scale ? "5" : "{Down}{Enter}");
        return talk.Keys("{Enter}");
    }

    static string Flat(string text) => Spaces().Replace(text, " ");

    [GeneratedRegex(@"\s+", RegexOptions.NonBacktracking)]
    private static partial Regex Spaces();
}
