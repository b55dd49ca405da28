using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Tests.Learning;

public sealed class HabitsTests
{
    // Identity of a test martingale (Ville 1939): at the border the mean of E over all courses of n jobs is exactly 1.
    [Theory]
    [InlineData(0.1, true)]
    [InlineData(0.4, false)]
    public void At_the_border_the_evidence_is_one_on_average(double border, bool above)
    {
        const int Jobs = 10;
        var mean = 0.0;
        for (var course = 0; course < 1 << Jobs; course++)
        {
            var test = new RunningTest(border, above);
            var chance = 1.0;
            for (var j = 0; j < Jobs; j++)
            {
                var shown = ((course >> j) & 1) == 1;
                test.Take(shown);
                chance *= shown ? border : 1 - border;
            }

            mean += chance * test.Value;
        }

        Assert.Equal(1, mean, 1e-12);
    }

    // Ville's inequality with the union bound: 5 of 100. Every habit could show 100 times, and is looked at after each.
    [Fact]
    public void Of_those_without_habits_fewer_than_five_of_a_hundred_are_ever_told_of_any()
    {
        var rng = new Rng(31);
        var told = Enumerable.Range(0, 1000).Count(_ => Enum.GetValues<Habit>().Any(_ => Found(rng, 0.1, 100) is not null));
        Assert.InRange(told, 0, 50);
    }

    // The goal: a strong habit, shown in 7 of 10 jobs, is found within 15 such jobs in 95 of 100 learners.
    [Fact]
    public void A_strong_habit_is_found_within_fifteen_jobs()
    {
        var rng = new Rng(32);
        Assert.InRange(Enumerable.Range(0, 2000).Count(_ => Found(rng, 0.7, 15) is not null), 1900, 2000);
    }

    [Fact]
    public void One_that_is_still_there_is_told_to_be_gone_to_fewer_than_five_of_a_hundred()
    {
        var rng = new Rng(33);
        var gone = Enumerable.Range(0, 1000).Count(_ =>
        {
            var test = new RunningTest(Habits.Still, above: false);
            return Enumerable.Range(0, 100).Any(_ =>
            {
                test.Take(rng.Unit() < 0.4);
                return test.Value >= 1 / Habits.FalseGone;
            });
        });
        Assert.InRange(gone, 0, 50);
    }

    [Fact]
    public void It_is_told_with_its_jobs_then_gone_and_the_lead_sees_it_after_one_aimed_set()
    {
        var log = new Logbook();
        for (var i = 0; i < 6; i++) log.Job("Sam", i, new Observed.Pattern(Habit.TakesNearer, Shown: true), new Observed.Pattern(Habit.Forces, Shown: false));
        var state = Of(log);
        Assert.Equal((6, 6, HabitStanding.LookOut, false), (state.Relevant, state.Shown, state.State, state.ForLead));
        Assert.Equal([1, 2, 3, 4, 5, 6], state.Evidence);
        Assert.Equal(HabitStanding.NotTold, Habits.Of(log.History, "Sam")[(int)Habit.Forces].State);
        Assert.Equal(0, Habits.Of(log.History, "Kim")[(int)Habit.TakesNearer].Relevant);
        log.Add(new LogEntry.HabitTold("Sam", Habit.TakesNearer)).Add(new LogEntry.AimedAt("Sam", Habit.TakesNearer));
        for (var i = 0; i < Habits.AimedJobs - 1; i++) log.Job("Sam", 7, new Observed.Pattern(Habit.TakesNearer, Shown: false));
        Assert.False(Of(log).ForLead);
        log.Job("Sam", 7, new Observed.Pattern(Habit.TakesNearer, Shown: false));
        Assert.True(Of(log).ForLead);
        for (var i = 0; i < 20; i++) log.Job("Sam", 8, new Observed.Pattern(Habit.TakesNearer, Shown: false));
        Assert.Equal(HabitStanding.Gone, Of(log).State);
        for (var i = 0; i < 8; i++) log.Job("Sam", 9, new Observed.Pattern(Habit.TakesNearer, Shown: true));
        Assert.Equal(HabitStanding.LookOut, Of(log).State);
    }

    static HabitState Of(Logbook log) => Habits.Of(log.History, "Sam")[(int)Habit.TakesNearer];

    // The number of the job with which a habit is found, or null.
    static int? Found(Rng rng, double share, int jobs)
    {
        var test = new RunningTest(Habits.Free, above: true);
        for (var j = 1; j <= jobs; j++)
        {
            test.Take(rng.Unit() < share);
            if (test.Value >= Habits.Limit) return j;
        }

        return null;
    }
}
