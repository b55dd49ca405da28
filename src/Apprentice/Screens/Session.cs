using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>A planned session under way.</summary>
/// <param name="Left">Jobs still to come, the one on the bench first.</param>
/// <param name="End">The screen after the last one, or null for the start page.</param>
/// <param name="Places">True while the jobs place an experienced person: the next one is worked out when the last is done.</param>
sealed record Session(IReadOnlyList<PlannedJob> Left, Screen? End = null, bool Places = false)
{
    /// <summary>Begins it: the log keeps what is planned, so that a job put aside goes on with the rest. A placement follows from the log as it is.</summary>
    public Turn Begin(World world)
    {
        var turn = Start(world);
        return Places || Left.Count < 2 ? turn : turn with { Entries = [new LogEntry.SessionPlanned(world.Person, Left), .. turn.Entries] };
    }

    /// <summary>The session of a job that was put aside, or null when it has none.</summary>
    public static Session? Of(World world, PastJob open) => world.History.LeftFrom(open) is { Count: > 0 } left ? new Session(left)
        : !open.Started.Guided && Screens.Start.Placing(world)?.Next is not null ? new Session([], Places: true) : null;

    Turn Start(World world)
    {
        if (Left.Count == 0 || world.Bench(Left[0].Topic) is not { } bench) return Turn.To(Over(world));
        var guided = !world.History.JobsOf(world.Person).Any();
        var (job, entry) = BenchJob.New(world, bench, guided, Left[0].Draw);
        return Turn.To(BenchScreen.Of(job with { Session = this }), entry);
    }

    /// <summary>What follows when the job on the bench was graded.</summary>
    public Turn Next(World world)
    {
        var left = Places ? [.. Screens.Start.Placing(world)?.Next is { } next ? [next.Job] : Array.Empty<PlannedJob>()] : Left.Skip(1).ToList();
        return (this with { Left = left }).Start(world);
    }

    Screen Over(World world) => End ?? new HomeScreen(Places ? Placed(world) : Words.Of("home.session-done"));

    static string Placed(World world) => Screens.Start.Placing(world) is { } placing
        ? Words.Of("home.placed", ("sound", placing.Sound), ("n", placing.Done)) + " " + (placing.Placed.Count == 0
            ? Words.Of("home.placed-none")
            : Words.Of("home.placed-in", ("topics", Spoken.List([.. placing.Placed.Select(t => TopicsScreen.Title(world, t))]))))
        : "";
}
