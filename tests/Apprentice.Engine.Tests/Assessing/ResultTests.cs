using Apprentice.Engine.Assessing;
using Apprentice.Engine.Assessing.Numbers;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Tests.Assessing;

/// <summary>Results, appeals and the register, from the log.</summary>
public class ResultTests
{
    const string Permission = "may order rims alone";
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    static readonly DateOnly Day = new(2026, 11, 25);
    static readonly PlanTopic Topic = new("rim-size", "v1");

    [Fact]
    public void One_safety_error_asks_for_a_talk_and_six_sound_jobs()
    {
        var once = Result(20, 0, 1);
        Assert.Equal(Outcome.SafetyFirst, once.Outcome);
        Assert.Equal(Outcome.SafetyFirst, (once with { SafetyAgain = Fresh(6) }).Outcome);
        Assert.Equal(Outcome.SafetyFirst, (once with { Talked = true, SafetyAgain = Fresh(5) }).Outcome);
        Assert.Equal(Outcome.Passed, (once with { Talked = true, SafetyAgain = Fresh(6) }).Outcome);
        Assert.Equal(Outcome.NotYet, (once with { Talked = true, SafetyAgain = [.. Fresh(5), Mark(106, sound: false)] }).Outcome);
        Assert.Equal(Outcome.NotYet, Result(20, 0, 2).Outcome);
    }

    [Theory]
    [InlineData(12, 0, Outcome.Passed)]
    [InlineData(12, 3, Outcome.Open)]
    [InlineData(12, 6, Outcome.NotYet)]
    [InlineData(20, 2, Outcome.Passed)]
    public void The_table_decides(int jobs, int unsound, Outcome outcome) => Assert.Equal(outcome, Result(jobs, unsound, 0).Outcome);

    [Fact]
    public void Reading_is_enough_from_eight_of_ten_and_never_part_of_the_count()
    {
        Assert.True(new ReadingLine(8, 10).Enough);
        Assert.False(new ReadingLine(7, 9).Enough);
        var none = Result(12, 0, 0) with { Jobs = [.. Result(12, 0, 0).Jobs.Select(j => j with { Readings = 2, ReadingsRight = 0 })] };
        Assert.False(none.Reading.Enough);
        Assert.Equal(Outcome.Passed, none.Outcome);
    }

    [Fact]
    public void A_published_result_never_falls()
    {
        var passed = new Logged(Nine, new LogEntry.PaperMarked(Result(12, 0, 0), Published: true));
        var worse = new Logged(Nine.AddDays(1), new LogEntry.PaperMarked(Result(12, 6, 0), Published: true));
        Assert.Equal(Outcome.Passed, Assessments.Of([passed, worse]).Result("7F2")?.Outcome);
        Assert.Equal(Outcome.NotYet, Assessments.Of([worse]).Result("7F2")?.Outcome);
    }

    [Fact]
    public void An_unfair_sort_of_job_counts_as_sound_for_all_who_met_it()
    {
        var log = new List<Logged>
        {
            new(Nine, new LogEntry.PaperMarked(Result(12, 6, 0), Published: true)),
            new(Nine, new LogEntry.PaperMarked(Result(12, 1, 0) with { Paper = "8A1", Candidate = "Kim" }, Published: true)),
            new(Nine.AddDays(1), new LogEntry.FamilyUnfair("sort 1", "v1", Standing.TakenOut, "Lee", "the plate was drawn upside down")),
        };
        var all = Assessments.Of(log);
        Assert.Equal([("7F2", "Sam"), ("8A1", "Kim")], all.TouchedBy("sort 1", "v1"));
        Assert.Equal(5, all.Result("7F2")?.Unsound);
        Assert.Equal(Outcome.Passed, all.Result("8A1")?.Outcome);
        Assert.Equal(Outcome.Passed, all.RegisterOf("Kim", Permission).Results[0].Outcome);
        Assert.Empty(all.TouchedBy("sort 1", "v2"));
    }

    [Fact]
    public void A_job_can_be_questioned_for_fourteen_days_and_somebody_else_decides()
    {
        var all = Assessments.Of([new(Nine, new LogEntry.PaperMarked(Result(12, 1, 0), Published: true))]);
        Assert.Null(Appeal.Fault(all, "7F2", 1, "the tape said 622", Nine.AddDays(14)));
        Assert.Contains("14 days", Appeal.Fault(all, "7F2", 1, "the tape said 622", Nine.AddDays(14).AddSeconds(1)));
        Assert.Contains("no job 13", Appeal.Fault(all, "7F2", 13, "why", Nine));
        Assert.Contains("sentence", Appeal.Fault(all, "7F2", 1, " ", Nine));
        Assert.Contains("no published", Appeal.Fault(all, "none", 1, "why", Nine));
        Assert.Contains("second person", Appeal.DecisionFault(" jo ", "Jo", "Sam", "because"));
        Assert.Contains("second person", Appeal.DecisionFault("Sam", "Jo", "Sam", "because"));
        Assert.Contains("reason", Appeal.DecisionFault("Lee", "Jo", "Sam", ""));
        Assert.Null(Appeal.DecisionFault("Lee", "Jo", "Sam", "the drawing was unclear"));
    }

    [Theory]
    [InlineData(AppealDecision.CountedSound, Outcome.Passed)]
    [InlineData(AppealDecision.Stays, Outcome.Open)]
    public void The_decision_changes_the_count(AppealDecision decision, Outcome outcome)
    {
        var all = Assessments.Of(
        [
            new(Nine, new LogEntry.PaperMarked(Result(12, 1, 0), Published: true)),
            new(Nine, new LogEntry.PaperQuestioned("7F2", 1, "the tape said 622")),
            new(Nine, new LogEntry.AppealDecided("7F2", 1, "Lee", decision, "seen again")),
        ]);
        Assert.Equal(outcome, all.Result("7F2")?.Outcome);
        Assert.Equal("seen again", all.Appeals[0].Decided?.Reason);
        Assert.Contains("already", Appeal.Fault(all, "7F2", 1, "again", Nine));
    }

    [Fact]
    public void A_permission_needs_its_whole_evidence()
    {
        var register = new Register("Sam", Permission);
        Assert.Equal([Missing.JobsTest, Missing.ThreeBikes, Missing.TwoDays, Missing.OddBike, Missing.Whys], register.MissingFor(PermissionLevel.WithSecondLook));
        register = register with { Results = [Result(12, 0, 0)], Bench = [Bike(0, odd: false), Bike(0, odd: true), Bike(0, odd: false)] };
        Assert.Equal([Missing.TwoDays], register.MissingFor(PermissionLevel.WithSecondLook));
        register = register with { Bench = [Bike(0, odd: false), Bike(1, odd: true), Bike(1, odd: false)] };
        Assert.Empty(register.MissingFor(PermissionLevel.WithSecondLook));
        Assert.Equal([Missing.SecondLook, Missing.TenOrders], register.MissingFor(PermissionLevel.Alone));
    }

    [Fact]
    public void Alone_comes_after_ten_orders_that_were_right_in_a_row()
    {
        var log = Evidence();
        for (var i = 0; i < 12; i++) log.Add(new(Nine, new LogEntry.OrderCountersigned("Sam", Permission, "Jo", Right: i != 2, "rim")));
        Assert.Equal([Missing.TenOrders], Assessments.Of(log).RegisterOf("Sam", Permission).MissingFor(PermissionLevel.Alone));
        log.Add(new(Nine, new LogEntry.OrderCountersigned("Sam", Permission, "Jo", Right: true, "rim")));
        Assert.Empty(Assessments.Of(log).RegisterOf("Sam", Permission).MissingFor(PermissionLevel.Alone));
    }

    [Fact]
    public void It_ends_with_its_day_a_changed_fact_or_the_lead()
    {
        var log = Evidence();
        var register = Assessments.Of(log).RegisterOf("Sam", Permission);
        Assert.Equal(PermissionState.WithSecondLook, register.StateOn(Day.AddDays(365), [Topic]));
        Assert.Equal(PermissionState.Expired, register.StateOn(Day.AddDays(366), [Topic]));
        Assert.Equal(PermissionState.LookAgain, register.StateOn(Day, [Topic with { Version = "v2" }]));
        Assert.Equal(["rim-size"], register.ToLookAtAgain([Topic with { Version = "v2" }]));
        log.Add(new(Nine, new LogEntry.PermissionTakenBack("Sam", Permission, "Jo", "three wrong orders")));
        Assert.Equal(PermissionState.TakenBack, Assessments.Of(log).RegisterOf("Sam", Permission).StateOn(Day, [Topic]));
        Assert.Equal(PermissionState.None, new Register("Kim", Permission).StateOn(Day, [Topic]));
    }

    [Fact]
    public void Statistics_wait_for_enough_answers()
    {
        var rng = new Rng(2);
        foreach (var (people, share, discrimination, reliability, rasch) in new[] { (9, false, false, false, false), (10, true, false, false, false), (20, true, false, true, false), (50, true, true, true, false), (100, true, true, true, true) })
        {
            var use = AfterUse.Of([.. Enumerable.Range(0, people).Select(p => Random(p, rng))]);
            Assert.Equal(people, use.People);
            Assert.All(use.Families, f => Assert.Equal((share, discrimination), (f.Interval is not null, f.Discrimination is not null)));
            Assert.Equal((reliability, rasch), (use.Reliability is not null, use.Rasch is not null));
        }
    }

    static PaperResult Random(int person, Rng rng)
    {
        var able = rng.Normal();
        var result = Result(12, 0, 0);
        return result with { Candidate = $"person {person}", Jobs = [.. result.Jobs.Select(j => j with { Sound = rng.Unit() < 1 / (1 + Real.Exp(-able)) })] };
    }

    static List<Logged> Evidence() =>
    [
        new(Nine, new LogEntry.PaperMarked(Result(12, 0, 0), Published: true)),
        .. new[] { Bike(0, odd: false), Bike(1, odd: true), Bike(1, odd: false) }.Select(b => new Logged(Nine, new LogEntry.BenchDone("Sam", Permission, b))),
        new(Nine, new LogEntry.PermissionSigned(new Signature("Sam", Permission, PermissionLevel.WithSecondLook, "Jo", Day, Day.AddDays(365), "7F2", [Topic], SetByOnePerson: true))),
    ];

    static BenchForm Bike(int day, bool odd) => new(Day.AddDays(day), "old roadster", odd, "Jo", [new BenchReading("rim", "622", "622")], Agreed: true, 3);

    static JobMark[] Fresh(int count) => [.. Enumerable.Range(101, count).Select(p => Mark(p, sound: true))];

    static PaperResult Result(int jobs, int unsound, int safetyErrors) => new()
    {
        Paper = "7F2",
        Permission = Permission,
        Candidate = "Sam",
        Number = 1,
        Rule = StagedRule.Default,
        Jobs = [.. Enumerable.Range(1, jobs).Select(p => Mark(p, p > Math.Max(unsound, safetyErrors)) with { SafetyError = p <= safetyErrors })],
    };

    static JobMark Mark(int place, bool sound) => new()
    {
        Place = place,
        Family = $"sort {place}",
        Version = "v1",
        Sound = sound,
        SafetyError = false,
        SafetyJob = false,
        Rule = "paper.rule.sound",
        Values = new Dictionary<string, string>(StringComparer.Ordinal),
        Readings = 0,
        ReadingsRight = 0,
    };
}
