using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>What happens in a sitting: from job to job, at the checks of the rule, at the end. Nothing of the marks is shown.</summary>
static class Sit
{
    // Scales are read, and it is asked which check settled it; no list of what was set aside.
    const int Step = 2;
    const double Short = 3;

    /// <summary>Asks for the code of a paper.</summary>
    /// <param name="file">Path of the sealed file.</param>
    /// <param name="below">The screen to go back to.</param>
    public static Turn Open(string file, Screen below) => Turn.To(below) with { Errand = (_, _) => Turn.To(CodeOf(file, below, out var why) ?? new SitNoScreen(why, below)) };

    /// <summary>The screen that asks for the code of a paper, or null with a sentence why not.</summary>
    public static Screen? CodeOf(string file, Screen below, out string why)
    {
        try
        {
            why = "";
            var bytes = PaperFolder.Read(file);
            _ = PaperFile.Outside(bytes);
            return new SitCodeScreen(bytes, Path.GetDirectoryName(Path.GetFullPath(file)) ?? "", below);
        }
        catch (SealException e)
        {
            why = e.Message;
            return null;
        }
    }

    /// <summary>The time left, in words: whole minutes, at the end seconds too.</summary>
    public static string Left(World world)
    {
        var left = world.Sitting?.LeftAt(world.Now) ?? TimeSpan.Zero;
        return left.TotalMinutes >= Short
            ? Words.Of("sit.left", ("minutes", (int)left.TotalMinutes))
            : Words.Of("sit.left-short", ("minutes", (int)left.TotalMinutes), ("seconds", left.Seconds.ToString("00")));
    }

    /// <summary>True when no time is left.</summary>
    public static bool IsTimeUp(World world) => world.Sitting is { } sitting && sitting.LeftAt(world.Now) <= TimeSpan.Zero;

    /// <summary>Begins a sitting. The desk is closed: whoever sits shall not find it open afterwards.</summary>
    public static Turn Begin(World world, Seat seat, string confirmedBy, double multiplier)
    {
        var paper = seat.Paper;
        var started = new LogEntry.SittingStarted(
            paper.Id, paper.Permission, paper.Candidate, paper.Number, confirmedBy, paper.Rule.First, paper.MinutesPerJob, multiplier, world.Plain);
        var seated = world with { Seat = seat };
        return Job(seated, new Sitting(started, world.Now), 1, started) with { Keeps = w => w with { Seat = seat, DeskKey = null } };
    }

    /// <summary>Goes on after the program was closed: no time has run. The lead sees that it was closed.</summary>
    public static Turn Resume(World world, Seat seat, Sitting known)
    {
        var paper = seat.Paper.Id;
        var seated = world with { Seat = seat };
        LogEntry[] entries = known.RunningSince is { } since
            ?
            [
                new LogEntry.SittingResumed(paper),
                new LogEntry.SittingStopped(paper, null, Words.Of("sit.closed", ("since", $"{since:HH:mm}"), ("to", $"{world.Now:HH:mm}"))),
                new LogEntry.SittingResumed(paper),
            ]
            : [new LogEntry.SittingResumed(paper)];
        return Next(seated, known, entries) with { Keeps = w => w with { Seat = seat, DeskKey = null } };
    }

    /// <summary>Goes on after the clock was stopped.</summary>
    public static Turn GoOn(World world) => world.Sitting is { } sitting ? Next(world, sitting, new LogEntry.SittingResumed(sitting.Paper)) : Turn.To(Start.Home(world));

    /// <summary>The job at a place.</summary>
    public static Turn To(World world, int place) => world.Sitting is { } sitting ? Job(world, sitting, place) : Turn.To(Start.Home(world));

    /// <summary>Confirms an answer: it is in the log before the next job is shown.</summary>
    public static Turn HandIn(World world, AnswerForm form) => world.Sitting is { } sitting && form.On.Sat is { } sat
        ? Next(world, sitting, new LogEntry.SittingAnswered(sat.Paper, sat.Place, form.Given()))
        : Turn.To(Start.Home(world));

    /// <summary>Puts a job off.</summary>
    public static Turn Skip(World world, int place)
    {
        if (world.Sitting is not { } sitting) return Turn.To(Start.Home(world));
        var entry = new LogEntry.SittingSkipped(sitting.Paper, place);
        var after = sitting.With(entry, world.Now);
        var next = after.Open.FirstOrDefault(p => p > place, after.Open[0]);
        return Job(world, after, next, entry);
    }

    /// <summary>Hands in the jobs up to the check: those without an answer are not sound.</summary>
    public static Turn HandInAll(World world) => world.Sitting is { } sitting
        ? Check(world, sitting, sitting.CheckDue ? SittingEnd.Decided : SittingEnd.HandedIn)
        : Turn.To(Start.Home(world));

    /// <summary>No time is left for the jobs up to the check.</summary>
    public static Turn TimeUp(World world) => world.Sitting is { } sitting
        ? Check(world, sitting.With(new LogEntry.SittingTicked(sitting.Paper), world.Now), SittingEnd.TimeUp, new LogEntry.SittingTicked(sitting.Paper))
        : Turn.To(Start.Home(world));

    /// <summary>The lead stops the clock; a fresh job replaces the one on the screen.</summary>
    public static Turn Stop(World world, int place, string reason) => world.Sitting is { } sitting
        ? Turn.To(new SitStoppedScreen(world.Now), new LogEntry.SittingStopped(sitting.Paper, place, reason))
        : Turn.To(Start.Home(world));

    /// <summary>Ends the sitting and writes its result; before that come the real bikes, unless the lead ended it.</summary>
    public static Turn End(World world, SittingEnd why, params IReadOnlyList<LogEntry> before)
    {
        if (world.Sitting is not { } sitting) return Turn.To(Start.Home(world));
        LogEntry[] entries = [.. before, new LogEntry.SittingEnded(sitting.Paper, why)];
        return why != SittingEnd.ByLead && world.Seat is { } seat && SitReal.Jobs(world, seat.Paper).Count > 0
            ? SitReal.Open(seat, entries)
            : Turn.To(new SitEndScreen(""), entries) with { Errand = (w, folder) => Written(w, folder) };
    }

    /// <summary>Writes the result of an ended sitting, also once more after a crash.</summary>
    public static Turn Written(World world, PaperFolder folder)
    {
        if (world.Seat is not { } seat || world.Sitting is not { } sitting) return Turn.To(Start.Home(world));
        string note;
        try
        {
            // Under the name of the sealed paper, whatever was put right since: so it fits the paper on every machine.
            var sat = SatPaper.Of(sitting) with { Candidate = seat.Paper.Candidate };
            var file = folder.Write(PaperFolder.NameOf(sat.Paper, sat.Candidate, PaperFolder.ResultEnding), ResultFile.Sealed(sat, seat.SittingKey), seat.Folder);
            note = Words.Of("sit.written", ("file", file));
        }
        catch (SealException e)
        {
            note = Words.Of("sit.not-written", ("why", e.Message));
        }

        return Turn.To(new SitEndScreen(note)) with { Keeps = w => w with { Seat = null, DeskKey = null } };
    }

    static Turn Next(World world, Sitting before, params IReadOnlyList<LogEntry> entries)
    {
        var after = entries.Aggregate(before, (sitting, entry) => sitting.With(entry, world.Now));
        return after.NextPlace() is { } place ? Job(world, after, place, entries) : Turn.To(new SitHandInScreen(after.Places), entries);
    }

    static Turn Job(World world, Sitting after, int place, params IReadOnlyList<LogEntry> entries)
    {
        if (world.Seat is not { } seat || world.BenchesOf(seat.Paper).FirstOrDefault(b => string.Equals(b.Topic.Id, seat.Paper.At(place).Family.Topic, StringComparison.Ordinal)) is not { } bench) return Turn.To(Start.Home(world));
        var job = after.JobAt(place);
        var on = new BenchJob(place, bench, seat.Paper.Make(bench, place, job.Fresh), Guided: false, Step, job.Looks) { Sat = new SitPlace(seat.Paper.Id, place) };
        return Turn.To(BenchScreen.Of(on), [.. entries, new LogEntry.SittingOpened(seat.Paper.Id, place)]);
    }

    // The marks are worked out only to see whether more jobs are needed; they go nowhere.
    static Turn Check(World world, Sitting after, SittingEnd why, params IReadOnlyList<LogEntry> entries)
    {
        if (world.Seat is not { } seat) return Turn.To(Start.Home(world));
        var unsound = Enumerable.Range(1, after.Places).Count(p => !SatPaper.MarkOf(seat.Paper, world.BenchesOf(seat.Paper), after.JobAt(p)).Sound);
        if (seat.Paper.Rule.Decide(after.Places, unsound) != StageDecision.GoOn) return End(world, why, entries);
        var widened = new LogEntry.SittingWidened(after.Paper, seat.Paper.Rule.NextCheck(after.Places));
        var more = after.With(widened, world.Now);
        return Sitting.IsBreakAt(after.Places)
            ? Turn.To(new SitBreakScreen(more.Places - more.Closed), [.. entries, widened, new LogEntry.SittingStopped(after.Paper, null, Words.Of("sit.break"))])
            : Noted(Job(world, more, more.Closed + 1, [.. entries, widened]), Words.Of("sit.more", ("n", more.Places - more.Closed)));
    }

    static Turn Noted(Turn turn, string note) => turn.Next is BenchScreen bench ? turn with { Next = bench with { Note = note } } : turn;
}
