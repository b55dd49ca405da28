using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Assessing;

/// <summary>The state of a sitting, folded from the log. It is what is saved: no seed, no truth, no key.</summary>
/// <param name="Started">How it began.</param>
/// <param name="At">When.</param>
public sealed record Sitting(LogEntry.SittingStarted Started, DateTimeOffset At)
{
    const int JobsBeforeBreak = 12;

    /// <summary>Number of the paper.</summary>
    public string Paper => Started.Paper;

    /// <summary>Jobs up to the next check.</summary>
    public int Places { get; init; } = Started.Jobs;

    /// <summary>Jobs up to the last check: they are closed.</summary>
    public int Closed { get; init; }

    /// <summary>Jobs that were looked at, answered or put off, by place.</summary>
    public IReadOnlyList<SittingJob> Jobs { get; init; } = [];

    /// <summary>Place of the job on the screen, or null.</summary>
    public int? OnScreen { get; init; }

    /// <summary>Time used while the clock ran.</summary>
    public TimeSpan Used { get; init; }

    /// <summary>Since when the clock has run without a note, or null while it stands.</summary>
    public DateTimeOffset? RunningSince { get; init; } = At;

    /// <summary>Reasons for which the lead stopped the clock, with the times.</summary>
    public IReadOnlyList<(DateTimeOffset At, int? Place, string Reason)> Stops { get; init; } = [];

    /// <summary>Why it ended, or null while it goes on.</summary>
    public SittingEnd? End { get; init; }

    /// <summary>When it ended, or null.</summary>
    public DateTimeOffset? Ended { get; init; }

    /// <summary>Real bikes that were looked at, by place: after the end, outside jobs, time and rule.</summary>
    public IReadOnlyList<SittingReal> Real { get; init; } = [];

    /// <summary>True once the real bikes were handed in; until then they can be gone on with.</summary>
    public bool RealOver { get; init; }

    /// <summary>The real bike at a place, untouched when nothing was done.</summary>
    public SittingReal RealAt(int place) => Real.FirstOrDefault(r => r.Place == place) ?? new SittingReal(place);

    /// <summary>Time for the jobs up to the next check, multiplier included.</summary>
    public TimeSpan Allowed => TimeSpan.FromMinutes(Places * Started.MinutesPerJob * Started.Multiplier);

    /// <summary>Time left at a moment, never below zero.</summary>
    public TimeSpan LeftAt(DateTimeOffset now)
    {
        var left = Allowed - Used - Since(now);
        return left < TimeSpan.Zero ? TimeSpan.Zero : left;
    }

    /// <summary>The job at a place, untouched when nothing was done.</summary>
    public SittingJob JobAt(int place) => Jobs.FirstOrDefault(j => j.Place == place) ?? new SittingJob(place);

    /// <summary>Jobs with a confirmed answer.</summary>
    public int Answered => Jobs.Count(j => j.Given is not null && j.Place <= Places);

    /// <summary>Jobs since the last check without an answer, in order.</summary>
    public IReadOnlyList<int> Open => [.. Enumerable.Range(Closed + 1, Places - Closed).Where(p => JobAt(p).Given is null)];

    /// <summary>True when all jobs since the last check are answered.</summary>
    public bool CheckDue => Open.Count == 0;

    /// <summary>True at a check where a break is due: after every twelve jobs, so that no sitting is longer than planned.</summary>
    public bool BreakDue => CheckDue && IsBreakAt(Places);

    /// <summary>True when a break is due after so many jobs.</summary>
    public static bool IsBreakAt(int jobs) => jobs > 0 && jobs % JobsBeforeBreak == 0;

    /// <summary>The place to go to next: the first one not put off, then the first that was put off; null when all are answered. Jobs before the last check are closed, answered or not.</summary>
    public int? NextPlace()
    {
        var open = Open;
        var fresh = open.Where(p => !JobAt(p).Skipped).Select(p => (int?)p).FirstOrDefault();
        return fresh ?? open.Select(p => (int?)p).FirstOrDefault();
    }

    /// <summary>This sitting with one more entry of its paper.</summary>
    /// <exception cref="ArgumentException">The entry speaks of a place that the sitting does not have.</exception>
    public Sitting With(LogEntry entry, DateTimeOffset at)
    {
        if (End is not null) return RealOver ? this : WithReal(entry);
        return entry switch
        {
            LogEntry.SittingOpened e => Ticked(at) with { OnScreen = Checked(e.Place) },
            LogEntry.SittingTicked => Ticked(at),
            LogEntry.SittingLooked e => Ticked(at).Changed(e.Place, j => j with { Looks = [.. j.Looks, e.Look] }),
            LogEntry.SittingAnswered e => Ticked(at).Changed(e.Place, j => j with { Given = e.Given, Skipped = false }),
            LogEntry.SittingSkipped e => Ticked(at).Changed(e.Place, j => j with { Skipped = true }),
            LogEntry.SittingStopped e => Stopped(e, at),
            LogEntry.SittingResumed => this with { RunningSince = at },
            LogEntry.SittingWidened e => Ticked(at) with { Places = Math.Max(Places, e.Jobs), Closed = e.Jobs > Places ? Places : Closed },
            LogEntry.SittingEnded e => Ticked(at) with { End = e.Why, Ended = at, RunningSince = null, OnScreen = null },
            _ => this,
        };
    }

    Sitting WithReal(LogEntry entry) => entry switch
    {
        LogEntry.SittingRealLooked e => Changed(RealAt(e.Place) is var real && real.Opened.Contains(e.Check) ? real : real with { Opened = [.. real.Opened, e.Check] }),
        LogEntry.SittingRealAnswered e => Changed(RealAt(e.Place) with { Kind = e.Kind, Tenths = e.Tenths }),
        LogEntry.SittingRealEnded => this with { RealOver = true },
        _ => this,
    };

    Sitting Changed(SittingReal real) => this with { Real = [.. Real.Where(r => r.Place != real.Place).Append(real).OrderBy(r => r.Place)] };

    TimeSpan Since(DateTimeOffset now) => RunningSince is { } since && now > since ? now - since : TimeSpan.Zero;

    Sitting Ticked(DateTimeOffset at) => RunningSince is null ? this : this with { Used = Used + Since(at), RunningSince = at };

    Sitting Stopped(LogEntry.SittingStopped stop, DateTimeOffset at)
    {
        var stands = Ticked(at) with { RunningSince = null, Stops = [.. Stops, (at, stop.Place, stop.Reason)] };
        return stop.Place is { } place && JobAt(place).Given is null ? stands.Changed(place, j => new SittingJob(place) { Fresh = j.Fresh + 1 }) : stands;
    }

    int Checked(int place) => place >= 1 && place <= Places ? place : throw new ArgumentException($"the sitting of paper {Paper} has no job {place}", nameof(place));

    Sitting Changed(int place, Func<SittingJob, SittingJob> change)
    {
        Checked(place);
        return this with { Jobs = [.. Jobs.Where(j => j.Place != place).Append(change(JobAt(place))).OrderBy(j => j.Place)] };
    }
}

/// <summary>Why a sitting ended.</summary>
public enum SittingEnd
{
    /// <summary>The rule decided.</summary>
    Decided,

    /// <summary>The time was up.</summary>
    TimeUp,

    /// <summary>The candidate handed in.</summary>
    HandedIn,

    /// <summary>The lead ended it.</summary>
    ByLead,
}

/// <summary>A job of a sitting: what was looked at and answered. It holds nothing of what is true.</summary>
/// <param name="Place">Place in the paper.</param>
public sealed record SittingJob(int Place)
{
    /// <summary>0 for the job itself, n when its n-th replacement stands here.</summary>
    public int Fresh { get; init; }

    /// <summary>Looks in the order taken.</summary>
    public IReadOnlyList<Look> Looks { get; init; } = [];

    /// <summary>The confirmed answer, or null.</summary>
    public Given? Given { get; init; }

    /// <summary>True while it is put off.</summary>
    public bool Skipped { get; init; }
}
