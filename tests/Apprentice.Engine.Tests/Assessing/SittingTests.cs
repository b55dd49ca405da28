using Apprentice.Engine.Assessing;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Assessing;

/// <summary>A sitting is what its log says: nothing confirmed is lost, whenever the power goes.</summary>
public class SittingTests
{
    const string Paper = "7F2";
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    static readonly LogEntry.SittingStarted Started = new(Paper, "may order rims alone", "Sam", 1, "Jo", 12, 4, 1, Plain: false);

    [Fact]
    public void A_crash_at_any_moment_loses_no_answer_and_no_more_than_two_seconds()
    {
        var log = Stream(new Rng(5));
        var rng = new Rng(6);
        for (var i = 0; i < 200; i++)
        {
            var cut = 1 + rng.Below(log.Count - 1);
            var crash = log[cut - 1].At + (rng.Unit() * (log[cut].At - log[cut - 1].At));
            var before = log.Take(cut).ToList();
            var back = crash.AddMinutes(5);
            var resumed = Of([.. before, new Logged(back, new LogEntry.SittingResumed(Paper))]);
            var given = before.Select(e => e.What).OfType<LogEntry.SittingAnswered>().Select(a => a.Place).Distinct().Count();
            Assert.Equal(given, resumed.Answered);
            Assert.Equal(before.Select(e => e.What).OfType<LogEntry.SittingLooked>().Count(), resumed.Jobs.Sum(j => j.Looks.Count));
            var lost = crash - Nine - resumed.Used;
            Assert.InRange(lost, TimeSpan.Zero, TimeSpan.FromSeconds(2));
            Assert.Equal(resumed.Allowed - resumed.Used, resumed.LeftAt(back));
        }
    }

    [Fact]
    public void The_clock_counts_the_multiplier_and_stops()
    {
        var log = new List<Logged> { new(Nine, Started with { Multiplier = 1.5 }) };
        Assert.Equal(TimeSpan.FromMinutes(72), Of(log).Allowed);
        log.Add(new(Nine.AddMinutes(3), new LogEntry.SittingOpened(Paper, 1)));
        log.Add(new(Nine.AddMinutes(5), new LogEntry.SittingStopped(Paper, 1, "fire alarm")));
        Assert.Equal(TimeSpan.FromMinutes(67), Of(log).LeftAt(Nine.AddMinutes(60)));
        log.Add(new(Nine.AddMinutes(60), new LogEntry.SittingResumed(Paper)));
        Assert.Equal(TimeSpan.FromMinutes(66), Of(log).LeftAt(Nine.AddMinutes(61)));
        Assert.Equal(TimeSpan.Zero, Of(log).LeftAt(Nine.AddHours(9)));
        Assert.Equal("fire alarm", Of(log).Stops[0].Reason);
    }

    [Fact]
    public void A_stop_puts_a_fresh_job_in_the_place_of_the_one_on_the_screen()
    {
        var look = new LogEntry.SittingLooked(Paper, 2, new Look("plate", 0), new Finding("plate", Channel.Bench, new Seen.Named("worn")));
        var sitting = Of([new(Nine, Started), new(Nine, look), new(Nine, Answer(1)), new(Nine, new LogEntry.SittingStopped(Paper, 2, "phone")), new(Nine, new LogEntry.SittingStopped(Paper, 1, "phone"))]);
        Assert.Equal(1, sitting.JobAt(2).Fresh);
        Assert.Empty(sitting.JobAt(2).Looks);
        Assert.Equal(0, sitting.JobAt(1).Fresh);
        Assert.NotNull(sitting.JobAt(1).Given);
    }

    [Fact]
    public void Jobs_put_off_come_back_after_the_others()
    {
        var log = new List<Logged> { new(Nine, Started), new(Nine, new LogEntry.SittingSkipped(Paper, 1)) };
        Assert.Equal(2, Of(log).NextPlace());
        for (var place = 2; place <= 12; place++) log.Add(new(Nine, Answer(place)));
        Assert.Equal(1, Of(log).NextPlace());
        Assert.False(Of(log).CheckDue);
        log.Add(new(Nine, Answer(1)));
        Assert.True(Of(log).CheckDue && Of(log).BreakDue);
        log.Add(new(Nine, new LogEntry.SittingWidened(Paper, 16)));
        Assert.Equal(13, Of(log).NextPlace());
        Assert.Equal(TimeSpan.FromMinutes(64), Of(log).Allowed);
    }

    [Fact]
    public void Jobs_before_the_last_check_are_closed_answered_or_not()
    {
        var log = new List<Logged> { new(Nine, Started), new(Nine, Answer(1)), new(Nine, new LogEntry.SittingWidened(Paper, 16)) };
        var sitting = Of(log);
        Assert.Equal((12, 16, 13), (sitting.Closed, sitting.Places, sitting.NextPlace()));
        Assert.Equal([13, 14, 15, 16], sitting.Open);
        for (var place = 13; place <= 16; place++) log.Add(new(Nine, Answer(place)));
        Assert.True(Of(log).CheckDue);
        Assert.False(Of(log).BreakDue);
        Assert.Equal(5, Of(log).Answered);
    }

    [Fact]
    public void After_the_end_nothing_changes()
    {
        var log = new List<Logged> { new(Nine, Started), new(Nine.AddMinutes(1), new LogEntry.SittingEnded(Paper, SittingEnd.HandedIn)) };
        var ended = Of(log);
        Assert.Same(ended, ended.With(Answer(1), Nine.AddMinutes(2)));
        Assert.Equal(TimeSpan.FromMinutes(1), SatPaper.Of(ended).Used);
        Assert.Throws<ArgumentException>(() => SatPaper.Of(Of([new(Nine, Started)])));
    }

    [Fact]
    public void A_place_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentException>(() => Of([new(Nine, Started), new(Nine, Answer(13))]));

    static Sitting Of(IReadOnlyList<Logged> log) => History.Of(log).Assessments.SittingOf(Paper) ?? throw new InvalidOperationException("no sitting");

    static LogEntry.SittingAnswered Answer(int place) => new(Paper, place, new Given([new PartAnswer("rim", "622", 9)], [new Choice.Ask()], null, null, null, Forced: false));

    // Somebody looks and answers; the clock is noted every two seconds or sooner.
    static List<Logged> Stream(Rng rng)
    {
        var log = new List<Logged> { new(Nine, Started) };
        var now = Nine;
        for (var place = 1; place <= 12; place++)
        {
            Note(new LogEntry.SittingOpened(Paper, place));
            for (var tick = 0; tick < 20; tick++) Note(new LogEntry.SittingTicked(Paper));
            Note(new LogEntry.SittingLooked(Paper, place, new Look("plate", 0), new Finding("plate", Channel.Bench, new Seen.Hidden())));
            Note(Answer(place));
        }

        return log;

        void Note(LogEntry entry) => log.Add(new Logged(now += TimeSpan.FromSeconds(0.2 + (1.8 * rng.Unit())), entry));
    }
}
