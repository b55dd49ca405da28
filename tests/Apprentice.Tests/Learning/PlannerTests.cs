using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Learning;

public sealed class PlannerTests
{
    static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    static IReadOnlyList<Topic> Topics { get; } = [Corpus.Topic("folding-bar"), Corpus.Topic("rim-size")];

    [Theory]
    [InlineData(3, 1)]
    [InlineData(8, 3)]
    [InlineData(15, 5)]
    [InlineData(30, 10)]
    public void The_first_session_is_as_long_as_asked_and_every_job_can_be_made(int minutes, int jobs)
    {
        var history = History.Of([new Logged(Now, new LogEntry.Began(5))]);
        var plan = Planner.Of(history, Topics, "Sam", minutes, Now);
        Assert.Equal(jobs, plan.Items.Count);
        Assert.All(plan.Items, i =>
        {
            var bench = new Workbench(Topics.First(t => t.Id == i.Topic));
            Assert.NotNull(bench.Make(i.Draw.Request, i.Draw.Seed) ?? bench.Make(Mix.Plain(i.Draw).Request, i.Draw.Seed));
            Assert.NotEmpty(Words.Raw(i.Why.Key));
        });
    }

    [Fact]
    public void Six_bikes_are_ordinary_to_four_odd()
    {
        var odd = Enumerable.Range(1, 60).SelectMany(luck => Planner.Of(History.Of([new Logged(Now, new LogEntry.Began(luck))]), Topics, "Sam", 30, Now).Items)
            .Where(i => i.Draw.Request.Opening is not null).Select(i => i.Draw.Request.Select != Selection.AsTheyCome).ToList();
        Assert.InRange(odd.Count(o => o) / (double)odd.Count, 0.33, 0.47);
    }

    [Fact]
    public void The_topics_of_the_month_are_the_ones_planned() =>
        Assert.All(Planner.Of(History.Of([new Logged(Now, new LogEntry.TopicsChosen(["rim-size"]))]), Topics, "Sam", 30, Now).Items, i => Assert.Equal("rim-size", i.Topic));

    [Fact]
    public void The_same_log_gives_the_same_plan()
    {
        Logged[] log = [new(Now, new LogEntry.Began(9)), new(Now, new LogEntry.PersonAdded("Sam"))];
        var (one, other) = (Planner.Of(History.Of(log), Topics, "Sam", 30, Now), Planner.Of(History.Of(log), Topics, "Sam", 30, Now));
        Assert.Equal(one.Items.Select(i => (i.Topic, i.Draw.Request, i.Draw.Seed, i.Skill, i.Why.Key)), other.Items.Select(i => (i.Topic, i.Draw.Request, i.Draw.Seed, i.Skill, i.Why.Key)));
    }

    [Fact]
    public void A_habit_has_an_aimed_set_in_every_topic_in_which_it_can_show() => Assert.All(Enum.GetValues<Habit>(), habit =>
    {
        var fitting = Topics.Where(t => AimedSets.Fits(t, habit)).ToList();
        var jobs = AimedSets.Of(History.Empty, Topics, habit);
        Assert.Equal(fitting.Count > 0 ? Habits.AimedJobs : 0, jobs.Count);
        Assert.All(jobs, j => Assert.Contains(fitting, t => t.Id == j.Topic));
    });
}
