using System.Text.RegularExpressions;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Pages;

/// <summary>The learner's page and the workshop's page.</summary>
public sealed partial class PagesTests
{
    const string ToWorkshop = "06";

    static readonly PageSize Wide = new(120, 200);

    [Theory]
    [InlineData("first-day", "")]
    [InlineData("tenth-day", "")]
    [InlineData("choose", "2")]
    [InlineData("place", "26")]
    [InlineData("skills", "71")]
    [InlineData("charts", "72")]
    [InlineData("over-confident", "")]
    [InlineData("look-out", "7")]
    [InlineData("habit", "71")]
    [InlineData("charts-sure", "73")]
    [InlineData("workshop", ToWorkshop)]
    [InlineData("coach", ToWorkshop + "1")]
    [InlineData("month", ToWorkshop + "3")]
    [InlineData("records", "06")]
    [InlineData("erase", "066")]
    [InlineData("pin-set", "061")]
    public void The_page_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Of(name).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void The_start_page_reads_as_it_was_looked_at() => Golden.Same("plain", new Talk(Lives.TenthDay(), [Corpus.Sample], plain: true).Say("7", "0", "0"));

    // Oracle: the answers of the log, counted here.
    [Fact]
    public void The_table_counts_what_the_log_holds()
    {
        var log = Lives.TenthDay();
        var text = new Talk(log, [Corpus.Sample]).Keys("71").TextAt(Wide);
        var marks = log.Select(e => e.What).OfType<LogEntry.Answered>().SelectMany(a => a.Observed).OfType<Observed.Mark>().GroupBy(m => m.Skill).ToList();
        Assert.Equal(5, marks.Count);
        var rows = Counted().Matches(text).Select(m => (m.Groups["asked"].Value, m.Groups["right"].Value)).Order();
        Assert.Equal(marks.Select(g => (g.Count().ToString(), g.Count(m => m.Right).ToString())).Order(), rows);
    }

    [Fact]
    public void The_sentence_how_sure_counts_what_the_log_holds()
    {
        var log = Lives.OverConfident();
        var sure = log.Select(e => e.What).OfType<LogEntry.Answered>().SelectMany(a => a.Observed).OfType<Observed.Sure>().Where(s => s.Tenths >= 8).ToList();
        Assert.Contains($"When you said 9 of 10 you were right {sure.Count(s => s.Right)} of {sure.Count}. Too sure.", Flat(new Talk(log, [Corpus.Sample]).TextAt(Wide)), StringComparison.Ordinal);
    }

    [Fact]
    public void Wrong_orders_are_counted_over_the_last_twenty_jobs_and_those_before()
    {
        var log = Lives.TenthDay();
        var wrong = log.Select(e => e.What).OfType<LogEntry.Answered>().Select(a => a.Observed.OfType<Observed.Ordered>().Any(o => o.Wrong)).ToList();
        Assert.Contains(
            $"Wrong orders: {wrong[10..].Count(w => w)} in your last 20 jobs, {wrong[..10].Count(w => w)} in the 10 before.", Flat(new Talk(log, [Corpus.Sample]).TextAt(Wide)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_habit_is_told_with_its_counts_and_the_log_says_that_it_was()
    {
        var log = Lives.OverConfident();
        var patterns = log.Select(e => e.What).OfType<LogEntry.Answered>().SelectMany(a => a.Observed).OfType<Observed.Pattern>().ToList();
        var talk = new Talk(log, [Corpus.Sample]).Keys("7");
        Assert.Contains($"In {patterns.Count(p => p.Shown)} of {patterns.Count} jobs", talk.TextAt(Wide), StringComparison.Ordinal);
        Assert.Equal(new LogEntry.HabitTold("Kim", Habit.TrustsNumber), talk.Entries[^1].What);
        Assert.Single(talk.Keys("07").Entries, e => e.What is LogEntry.HabitTold);
    }

    [Fact]
    public void The_lead_sees_a_habit_only_after_six_jobs_for_it()
    {
        var log = Lives.Workshop();
        Assert.Contains("Ten minutes with Kim", new Talk(log, [Corpus.Sample]).Keys("1").Keys(ToWorkshop).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Ten minutes with Kim", new Talk(log[..^2], [Corpus.Sample]).Keys("1").Keys(ToWorkshop).Text, StringComparison.Ordinal);
    }

    // Oracle: sums over the answers of both people, made here.
    [Fact]
    public void What_nobody_has_right_is_asked_of_several_and_safe_for_nobody()
    {
        var history = History.Of(Lives.Workshop());
        var view = WorkshopView.Of(history, Lives.Start.AddDays(10));
        Assert.NotEmpty(view.Nobody);
        foreach (var (skill, people, asked, right) in view.Nobody)
        {
            var marks = history.Jobs.SelectMany(j => j.Observed.OfType<Observed.Mark>().Where(m => m.Skill == skill).Select(m => (j.Person, m.Right))).ToList();
            Assert.Equal((marks.Count, marks.Count(m => m.Right), marks.Select(m => m.Person).Distinct().Count()), (asked, right, people));
            Assert.True(people >= 2);
        }

        Assert.Equal(["Kim", "Sam", "Lou"], view.Needs.Select(n => n.Person));
        Assert.Equal([30, 30, 0], view.Needs.Select(n => n.Jobs));
    }

    [Fact]
    public void Enter_starts_the_first_job_of_the_plan_as_it_was_planned()
    {
        var talk = new Talk(Lives.TenthDay(), [Corpus.Sample]);
        var item = Planner.Of(talk.World.History, talk.World.Topics, "Sam", 8, talk.World.Now).Items[0];
        var started = talk.Keys("{Enter}").Entries.Select(e => e.What).OfType<LogEntry.JobStarted>().Last();
        Assert.Equal(item.Draw.Seed, started.Seed);
        Assert.True(started.Request == item.Draw.Request || started.Request == Mix.Plain(item.Draw).Request);
    }

    [Fact]
    public void Six_jobs_place_an_experienced_person()
    {
        var talk = new Talk(Lives.TenthDay(), [Corpus.Sample]).Keys("2621");
        Assert.IsType<BenchScreen>(talk.Screen);
        Assert.Contains(talk.Entries, e => e.What is LogEntry.PlacementAsked { Person: "Sam" });
        Assert.Contains("job 1 of 6", Flat(talk.Keys("0").TextAt(Wide)), StringComparison.Ordinal);
    }

    [Fact]
    public void Six_jobs_for_a_habit_are_begun_from_its_page()
    {
        var talk = new Talk(Lives.OverConfident(), [Corpus.Sample]).Keys("711");
        Assert.Contains(talk.Entries, e => e.What is LogEntry.AimedAt { Person: "Kim", Habit: Habit.TrustsNumber });
        Assert.Equal(Habits.AimedJobs, Assert.IsType<BenchScreen>(talk.Screen).On.Session?.Left.Count);
    }

    [Fact]
    public void The_lead_s_topics_of_the_month_are_kept() =>
        Assert.Equal([Corpus.Sample.Id], new Talk(Lives.Workshop(), [Corpus.Sample]).Keys("1").Keys(ToWorkshop + "321").World.History.MonthTopics);

    [Fact]
    public void Nobody_known_gets_from_a_question_to_the_bike_without_a_name()
    {
        var talk = new Talk([Corpus.Sample]).Keys("21");
        Assert.IsType<OwnPathScreen>(talk.Screen);
        Assert.IsType<CardScreen>(talk.Keys("2").Screen);
        talk.Keys("{Enter}3");
        for (var job = 0; job < 3; job++)
        {
            Assert.Equal(3 - job, Assert.IsType<BenchScreen>(talk.Screen).On.Session?.Left.Count);
            var grade = Assert.IsType<GradeScreen>(Answered(talk).Screen);
            Assert.Equal(job == 0, grade.On.Guided);
            talk.Keys("{Enter}");
        }

        Assert.IsType<OwnPathScreen>(talk.Screen);
        Assert.Empty(talk.World.History.People);
    }

    // The first line of every question, five of ten.
    static Talk Answered(Talk talk)
    {
        talk.Keys("A");
        for (var n = 0; n < 20 && talk.Screen is AnswerScreen { Form.Next: { } question }; n++) talk.Keys(question.Scale ? "5" : "{Down}{Enter}");
        return talk.Keys("{Enter}");
    }

    static Talk Of(string name) => name switch
    {
        "first-day" => new Talk([Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam")),
        "over-confident" or "look-out" or "habit" or "charts-sure" => new Talk(Lives.OverConfident(), [Corpus.Sample]),
        "workshop" or "coach" or "month" => new Talk(Lives.Workshop(), [Corpus.Sample]).Keys("1"),
        _ => new Talk(Lives.TenthDay(), [Corpus.Sample]),
    };

    static string Flat(string text) => Spaces().Replace(text, " ");

    [GeneratedRegex(@" (?<asked>[0-9]+) +(?<right>[0-9]+)  (safe|nearly|needs work|too few yet)", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Counted();

    [GeneratedRegex(@"\s+", RegexOptions.NonBacktracking)]
    private static partial Regex Spaces();
}
