using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;

namespace Apprentice.Screens.Assess;

/// <summary>The real bikes at the end of a paper: after the rule has decided, without a clock, and for nothing.</summary>
static class SitReal
{
    /// <summary>A topic in the version of the paper, or null.</summary>
    public static Workbench? BenchOf(World world, Paper paper, string topic) => world.BenchesOf(paper).FirstOrDefault(b => string.Equals(b.Topic.Id, topic, StringComparison.Ordinal));

    /// <summary>Bikes that can be looked at here; those that the candidate met in practice since the paper was made are left out.</summary>
    public static IReadOnlyList<RealJob> Jobs(World world, Paper paper)
    {
        var met = RealOffer.MetBy(world.History.Notebook, world.History.Called.Of(paper.Candidate));
        return [.. paper.Real.Where(r => !met.Contains(r.Case.Key) && BenchOf(world, paper, r.Case.Topic) is { Topic: var topic } && topic.Version == r.Version && RealBench.Fits(topic, r.Case))];
    }

    /// <summary>Goes to the bikes of a sitting that has ended, or back to them after the program was closed.</summary>
    public static Turn Open(Seat seat, params IReadOnlyList<LogEntry> entries) => Turn.To(new SitRealScreen(), entries) with { Keeps = w => w with { Seat = seat, DeskKey = null } };

    /// <summary>A check was opened.</summary>
    public static Turn Looked(World world, Screen next, int place, int check) => world.Seat is { } seat
        ? Turn.To(next, new LogEntry.SittingRealLooked(seat.Paper.Id, place, check))
        : Turn.To(Start.Home(world));

    /// <summary>It was said what a bike is: the next one without an answer is marked, or the end.</summary>
    public static Turn Answered(World world, int place, string? kind, int tenths)
    {
        if (world.Seat is not { } seat || world.Sitting is not { } sitting) return Turn.To(Start.Home(world));
        var answered = new LogEntry.SittingRealAnswered(seat.Paper.Id, place, kind, tenths);
        var after = sitting.With(answered, world.Now);
        var jobs = Jobs(world, seat.Paper);
        var open = jobs.Select((j, i) => (j, i)).Where(p => after.RealAt(p.j.Place).Tenths is null).Select(p => (int?)p.i).FirstOrDefault();
        return Turn.To(new SitRealScreen { Cursor = new Cursor(open ?? jobs.Count) }, answered);
    }

    /// <summary>Hands the bikes in and writes the result.</summary>
    public static Turn HandIn(World world) => world.Seat is { } seat
        ? Turn.To(new SitEndScreen(""), new LogEntry.SittingRealEnded(seat.Paper.Id)) with { Errand = (w, folder) => Sit.Written(w, folder) }
        : Turn.To(Start.Home(world));
}

/// <summary>The real bikes of a paper: one after the other, in any order, or none.</summary>
sealed record SitRealScreen : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.real-title"),
        world.Who,
        [
            new Block.Text(Words.Of("sit.real-done")),
            new Block.Text(Words.Of("sit.real-what")),
            .. LeftOut(world) is > 0 and var left ? [new Block.Text(Words.Of(left == 1 ? "sit.real-met-one" : "sit.real-met", ("n", left)))] : Array.Empty<Block>(),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(
            [
                .. Jobs(world).Select(j => (string[])[Words.Of("sit.real-bike", ("n", j.Place), ("topic", world.Bench(j.Case.Topic)?.Topic.Title ?? j.Case.Topic)), State(world, j)]),
                [Words.Of("sit.real-hand-in"), ""],
            ])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Jobs(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var jobs = Jobs(world);
        if (line >= jobs.Count || world.Sitting is not { } sitting) return SitReal.HandIn(world);
        return Turn.To(new RealBenchScreen(this, jobs[line].Case, sitting.RealAt(jobs[line].Place).Opened, jobs[line].Place));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(this);

    static IReadOnlyList<RealJob> Jobs(World world) => world.Seat is { } seat ? SitReal.Jobs(world, seat.Paper) : [];

    static int LeftOut(World world) => world.Seat is { } seat ? seat.Paper.Real.Count - Jobs(world).Count : 0;

    static string State(World world, RealJob job) => Words.Of(world.Sitting?.RealAt(job.Place) switch
    {
        { Tenths: not null } => "sit.state-answered",
        { Opened.Count: > 0 } => "sit.state-begun",
        _ => "sit.state-new",
    });
}
