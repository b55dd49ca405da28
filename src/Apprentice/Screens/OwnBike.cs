using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>A real bike that is looked at, question by question.</summary>
/// <param name="Bench">The topic.</param>
/// <param name="Want">What is to be bought.</param>
/// <param name="Provenance">Where the bike comes from.</param>
/// <param name="Tools">What is at hand: 1 eyes and hands, 2 also a rule or a tape, 3 also a caliper.</param>
/// <param name="Findings">What was found, in order.</param>
/// <param name="Blind">Clues that cannot be seen.</param>
/// <param name="Before">The bike one question ago, or null at the first.</param>
sealed record OwnBike(
    Workbench Bench, Want Want, string Provenance, int Tools, IReadOnlyList<Finding> Findings, IReadOnlyList<string> Blind, OwnBike? Before)
{
    const int Readings = 3;
    const int Others = 2;

    // Judgement: a twentieth of what one open yes or no is worth.
    const double LeastBits = 0.05;

    // Judgement: a cap is taken off at home, a wheel only when one wants to.
    const double MostMinutesBare = 1;

    /// <summary>The topic.</summary>
    public Topic Topic => Bench.Topic;

    /// <summary>What the findings amount to.</summary>
    public Reasoning Reasoning => Bench.Reason(
        new Enquiry(Provenance, Want.Asks, Want.Id, Channel.Bench, [.. Offer.Where(c => !c.Safety).Select(c => c.Id)]), Findings);

    /// <summary>What stops the bike, in the topic's words.</summary>
    public IReadOnlyList<string> Stops =>
    [
        .. Findings.Select(f => (f.Seen, Clue(f.Clue).Shows)).Select(p => p is (Seen.Named named, Shows.Table table)
            ? table.Findings.First(t => Same(t.Id, named.Id)).Stop
            : "").Where(s => s.Length > 0),
    ];

    /// <summary>True when something was found that can tell which part it is.</summary>
    public bool TellsMore => Findings.Any(f => !Clue(f.Clue).Safety);

    /// <summary>Number of the question.</summary>
    public int Number => Findings.Count + Blind.Count + 1;

    IEnumerable<Clue> Offer => Topic.Clues.Where(c =>
        c.Channels.Any(k => k.Channel == Channel.Bench) && ToolLevel.Of(Topic, c) <= Tools && !Blind.Contains(c.Id, StringComparer.Ordinal));

    /// <summary>The next question: stop signs first, then what tells most for its minutes; null when nothing helps any more.</summary>
    /// <param name="reasoning">What the findings amount to.</param>
    /// <param name="further">True to go on though no check is worth its minutes any more.</param>
    public Clue? Next(Reasoning reasoning, bool further)
    {
        if (Stops.Count > 0) return null;
        if (Offer.FirstOrDefault(c => c.Safety && Times(c.Id) == 0) is { } look) return look;
        if (reasoning.Ripe && !further && reasoning.Decisions.All(IsOrder)) return null;
        var left = reasoning.Next.Where(n => Times(n.Clue) < Readings);

        // Once the engine finds no check worth its minutes, only what is quickly bare and by itself still tells something is asked; the rest with a key.
        var next = left.FirstOrDefault(n => !reasoning.Ripe || further || (n.With is null && n.Bits >= LeastBits && IsQuicklyBare(Clue(n.Clue))));
        return next is null ? null : Clue(next.Clue);
    }

    /// <summary>Checks that the tools at hand do not allow and that would tell most: at most two, and none once all is settled.</summary>
    /// <param name="reasoning">What the findings amount to.</param>
    public IReadOnlyList<Clue> Beyond(Reasoning reasoning) => Tools == ToolLevel.All || Stops.Count > 0 || reasoning.Parts.All(p => p.Settled)
        ? []
        : [.. (this with { Tools = ToolLevel.All }).Reasoning.Next.Select(n => Clue(n.Clue)).Where(c => ToolLevel.Of(Topic, c) > Tools).Take(Others)];

    /// <summary>What puts this bike into the notebook: the bike, what is asked, all that was found and what cannot be seen. The walk is over with it.</summary>
    /// <param name="world">What is known.</param>
    public IReadOnlyList<LogEntry> Kept(World world)
    {
        var number = world.History.Notebook.NextBike;
        var routine = world.History.Notebook.IsRoutine(null, DateOnly.FromDateTime(world.Now.DateTime));
        return
        [
            new LogEntry.BikePut(number, world.Person, Words.Of("own.title"), null, routine, Channel.Bench, Tools),
            new LogEntry.BikeAsked(number, Topic.Id, Topic.Version, Want.Id, Provenance),
            .. Findings.Concat(Blind.Select(b => FindingOf(b, new Seen.Hidden())))
                .Select(f => new LogEntry.BikeFound(number, Topic.Id, f, StandView.Shared(Clue(f.Clue), f))),
            new LogEntry.WalkEnded(world.Person),
        ];
    }

    /// <summary>The clue of a short name.</summary>
    public Clue Clue(string id) => Topic.Clues.First(c => Same(c.Id, id));

    /// <summary>How often a clue was found.</summary>
    public int Times(string clue) => Findings.Count(f => Same(f.Clue, clue));

    /// <summary>What a walk finds: always on the bike itself.</summary>
    public static Finding FindingOf(string clue, Seen seen) => new(clue, Channel.Bench, seen);

    /// <summary>This bike with one more answer; hidden: the clue cannot be seen.</summary>
    public OwnBike Found(string clue, Seen seen) => seen is Seen.Hidden
        ? this with { Blind = [.. Blind, clue], Before = this }
        : this with { Findings = [.. Findings, FindingOf(clue, seen)], Before = this };

    /// <summary>The bike whose walk a person has not ended, answer by answer; null where there is none, or the topic no longer has what was answered.</summary>
    /// <param name="world">What is known.</param>
    public static OwnBike? Open(World world)
    {
        if (world.History.Notebook.WalkOf(world.Person) is not { Findings.Count: > 0 } walk) return null;
        var begun = walk.Begun;
        if (world.Bench(begun.Topic) is not { } bench || bench.Topic.Wants.FirstOrDefault(w => Same(w.Id, begun.Want)) is not { } want) return null;
        if (!bench.Topic.Provenances.Any(p => Same(p.Id, begun.Provenance)) || !walk.Findings.TrueForAll(f => StandView.Has(bench.Topic, f))) return null;
        return walk.Findings.Aggregate(new OwnBike(bench, want, begun.Provenance, begun.Tools, [], [], null), (bike, f) => bike.Found(f.Clue, f.Seen));
    }

    /// <summary>The screen that follows.</summary>
    /// <param name="below">The screen from which the walk started.</param>
    /// <param name="further">True to go on though no check is worth its minutes any more.</param>
    public Screen Screen(Screen below, bool further = false)
    {
        var reasoning = Reasoning;
        return Next(reasoning, further) switch
        {
            null => new OwnEndScreen(this, OwnSheet.Of(this, reasoning), Next(reasoning, further: true) is not null, below),
            { Shows: Shows.Measured } clue => new OwnReadScreen(this, clue.Id, OwnQuestion.SoFar(this, reasoning), below),
            { } clue => new OwnPickScreen(this, clue.Id, OwnQuestion.SoFar(this, reasoning), below) { Cursor = Cursor.None },
        };
    }

    bool IsQuicklyBare(Clue clue) => clue.Access is null || Topic.Accesses.First(a => Same(a.Id, clue.Access)).Minutes <= MostMinutesBare;

    static bool IsOrder(LineDecision decision) => decision.Best.Choice is Choice.Order or Choice.OrderTwo;

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);
}
