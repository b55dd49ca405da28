using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Learning;

public sealed class HistoryTests
{
    static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.FromHours(1));

    static readonly CaseRequest Request = new("own", "grips", "told", Selection.AsTheyCome, Channel.Bench);

    [Fact]
    public void An_empty_log_has_nobody_and_nothing()
    {
        var history = History.Of([]);
        Assert.Null(history.Luck);
        Assert.Null(history.Current);
        Assert.Empty(history.People);
        Assert.Equal(1, history.NextJob);
    }

    [Fact]
    public void The_number_of_the_first_start_stays() =>
        Assert.Equal(5, Of(new LogEntry.Began(5), new LogEntry.Began(6)).Luck);

    [Fact]
    public void An_unfinished_job_is_found_again_with_its_looks()
    {
        var history = Of(Started(1, "Sam"), Looked(1, "plate", 0), Looked(1, "bend", 0));
        Assert.Equal(["plate", "bend"], history.Unfinished("Sam")?.Looks.Select(l => l.Clue));
        Assert.Null(history.Unfinished("Kim"));
    }

    [Fact]
    public void An_answered_job_is_not_unfinished() =>
        Assert.Null(Of(Started(1, "Sam"), Answered(1)).Unfinished("Sam"));

    [Fact]
    public void A_guided_job_does_not_count() =>
        Assert.Equal(1, Of(Started(1, "Sam", guided: true), Answered(1), Started(2, "Sam"), Answered(2)).Done("Sam", "bar"));

    [Fact]
    public void A_name_takes_the_job_done_before_it()
    {
        var history = Of(Started(1, null), Answered(1), new LogEntry.PersonAdded("Sam", 1), new LogEntry.SatDown("Sam"));
        Assert.Equal([1], history.JobsOf("Sam").Select(j => j.Started.Job));
        Assert.Equal("Sam", history.Current);
    }

    [Fact]
    public void A_questioned_job_keeps_its_lines() =>
        Assert.Equal(["the tape was mine"], Of(Started(1, "Sam"), Answered(1), new LogEntry.Questioned(1, "the tape was mine")).Jobs[0].Questions);

    [Fact]
    public void A_look_at_a_job_that_never_was_is_refused() =>
        Assert.Throws<ArgumentException>(() => Of(Looked(1, "plate", 0)));

    static History Of(params LogEntry[] entries) => History.Of(entries.Select(e => new Logged(Day, e)));

    static LogEntry.JobStarted Started(int job, string? person, bool guided = false) => new(job, person, "bar", "v1", 7, Request, guided, 1);

    static LogEntry.Looked Looked(int job, string clue, int nth) =>
        new(job, new Look(clue, nth), new Engine.Evidence.Finding(clue, Channel.Bench, new Engine.Evidence.Seen.Hidden()));

    static LogEntry.Answered Answered(int job) =>
        new(job, new Given([], [], null, null, null, Forced: false), new Verdict(InShort.RightToWait, [], Sound: true, SafetyError: false));
}
