using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Tests.Learning;

public sealed class DrillPlanTests
{
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    static readonly string[] Families = ["a", "b", "c"];

    [Fact]
    public void A_missed_item_comes_back_after_two_or_three_others()
    {
        var gaps = new List<int>();
        foreach (var seed in Enumerable.Range(1, 200))
        {
            var drill = Run((ulong)seed, items: 8, missed: n => n == 1);
            var back = drill.Answers.Select((a, i) => (a.Item, Number: i + 1)).Single(a => a.Item.Back is not null);
            Assert.Equal(1, back.Item.Back);
            Assert.Equal(drill.Answers[0].Item.Family, back.Item.Family);
            gaps.Add(back.Number - 2);
        }
        Assert.Equal([2, 3], gaps.Distinct().Order());
    }

    [Fact]
    public void It_comes_back_with_new_figures_or_as_it_was()
    {
        Assert.NotEqual(Run(5, 8, n => n == 1).Answers[0].Item.Seed, Back(Run(5, 8, n => n == 1)).Seed);
        Assert.Equal(Run(5, 8, n => n == 1, sameAgain: true).Answers[0].Item.Seed, Back(Run(5, 8, n => n == 1, sameAgain: true)).Seed);
    }

    [Fact]
    public void Missed_again_it_comes_back_again_and_all_come_back_once()
    {
        var drill = Run(9, items: 40, missed: n => n <= 6);
        var returns = drill.Answers.Select(a => a.Item.Back).OfType<int>().ToList();
        Assert.Equal(returns.Distinct(), returns);
        Assert.Equal(drill.Answers.Select((a, i) => (a.Right, Number: i + 1)).Where(a => !a.Right).Select(a => a.Number), returns.Order());
    }

    [Fact]
    public void Without_a_miss_every_item_is_new()
    {
        var drill = Run(3, items: 60, missed: _ => false);
        Assert.All(drill.Answers, a => Assert.Null(a.Item.Back));
        Assert.Equal(60, drill.Answers.Select(a => a.Item.Seed).Distinct().Count());
        Assert.Equal(Families, drill.Answers.Select(a => a.Item.Family).Distinct().Order());
    }

    [Theory]
    [InlineData("++++++++", false)]
    [InlineData("+++++++++", false)]
    [InlineData("++++++++--", true)]
    [InlineData("+++++++---", false)]
    [InlineData("----++++++++++", true)]
    [InlineData("++++++++++---", false)]
    public void The_clock_is_hidden_until_8_of_the_last_10_were_right(string answers, bool shown)
    {
        var state = DrillPlan.State([.. answers.Select(c => Answer(c == '+', 11))]);
        Assert.Equal(shown, state.Seconds is not null);
        Assert.Equal(answers[^Math.Min(10, answers.Length)..].Count(c => c == '+'), state.Right);
    }

    [Fact]
    public void The_time_is_the_mean_of_those_without_a_pause() =>
        Assert.Equal(12, DrillPlan.State([.. Enumerable.Range(0, 9).Select(n => Answer(right: true, n % 2 == 0 ? 12 : null)), Answer(right: true, 12)]).Seconds);

    [Theory]
    [InlineData("+++", true)]
    [InlineData("++", false)]
    [InlineData("+++-++", false)]
    [InlineData("-+++", true)]
    public void Help_fades_after_three_right_in_a_row(string answers, bool alone) =>
        Assert.Equal(alone, DrillPlan.IsAlone([.. answers.Select(c => Answer(c == '+', null))]));

    [Fact]
    public void Times_come_from_the_log_and_leave_pauses_out()
    {
        var history = History.Of(
        [
            At(0, new LogEntry.DrillStarted(1, "Sam", "vernier", 4)), At(0, Asked), At(20, Answered), At(50, Asked),
            At(60, new LogEntry.Paused(null)), At(900, Answered), At(910, Asked), At(935, Answered), At(940, new LogEntry.DrillEnded(1)),
        ]);
        var drill = Assert.Single(history.Drills);
        Assert.Equal([20.0, null, 25.0], history.DrillAnswers("Sam", "vernier").Select(a => a.Time?.TotalSeconds));
        Assert.Equal(85, drill.Spent.TotalSeconds);
        Assert.False(drill.IsUp);
        Assert.True(drill.IsOver);
        Assert.Empty(history.DrillAnswers("Kim", "vernier"));
        Assert.Empty(history.DrillAnswers("Sam", "datum"));
    }

    [Theory]
    [InlineData(179, false)]
    [InlineData(180, true)]
    public void It_is_up_after_three_minutes(int seconds, bool up) =>
        Assert.Equal(up, History.Of([At(0, new LogEntry.DrillStarted(1, null, "vernier", 4)), At(0, Asked), At(seconds, Answered)]).Drills[0].IsUp);

    [Fact]
    public void A_clock_that_was_set_back_takes_nothing_off() =>
        Assert.Equal(0, History.Of([At(50, new LogEntry.DrillStarted(1, null, "vernier", 4)), At(50, Asked), At(20, Answered)]).Drills[0].Spent.TotalSeconds);

    [Fact]
    public void An_answer_to_a_drill_that_never_began_is_refused() => Assert.Throws<ArgumentException>(() => History.Of([At(0, Answered)]));

    static LogEntry Asked => new LogEntry.DrillAsked(1, new DrillDraw("plain", 1, null));

    static LogEntry Answered => new LogEntry.DrillAnswered(1, "27.15", Right: true);

    static Logged At(int second, LogEntry entry) => new(Nine.AddSeconds(second), entry);

    static DrillAnswer Answer(bool right, int? seconds) => new(new DrillDraw("a", 1, null), "", right, seconds is { } s ? TimeSpan.FromSeconds(s) : null);

    static DrillDraw Back(PastDrill drill) => drill.Answers.Select(a => a.Item).Single(i => i.Back is not null);

    static PastDrill Run(ulong seed, int items, Predicate<int> missed, bool sameAgain = false)
    {
        var drill = new PastDrill(new LogEntry.DrillStarted(1, null, "vernier", seed));
        for (var n = 1; n <= items; n++)
            drill = drill with { Answers = [.. drill.Answers, new DrillAnswer(DrillPlan.Next(drill, Families, sameAgain), "", !missed(n), null)] };
        return drill;
    }
}
