using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens.Assess;

namespace Apprentice.Screens;

/// <summary>The job card and the bench: checks with tool and minutes, and what they showed. On the phone: questions.</summary>
/// <param name="On">The job.</param>
/// <param name="Help">Sentences of help in a guided job, worked out once for what was found.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record BenchScreen(BenchJob On, IReadOnlyList<string> Help, string Note = "") : ChoiceScreen
{
    /// <summary>The bench of a job.</summary>
    public static BenchScreen Of(BenchJob on) => new(on, Guide.Of(on));

    bool Phone => On.Offer == Channel.Phone;

    bool IsTaken => Cursor.Marked < On.OnOffer.Count && On.Times(On.OnOffer[Cursor.Marked].Id) > 0;

    /// <inheritdoc/>
    public override int? Job => On.Logged;

    /// <inheritdoc/>
    public override bool Slow => On.Guided;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var words = new TopicWords(On.Topic);
        return new Page(
            Words.Of("job.title", ("job", On.Number), ("topic", On.Topic.Title)),
            JobCardBlocks.Right(On, On.Guided ? Words.Of("job.guided") : world.Who),
            [.. JobCardBlocks.Of(On), new Block.Rule(Drop: true), Table(words)],
            Keys(world))
        {
            Foot = Foot(),
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => On.OnOffer.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == On.OnOffer.Count
        ? Answer()
        : Look(world, line, again: Cursor.Pending == 0 && line == Cursor.Marked);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(On.Sat is { } sat ? new SitMenuScreen(sat.Place) : Start.Home(world));

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter switch
    {
        _ when key.Press == Screens.Press.Right && On.Sat is null => Card(world),
        'A' => Answer(),
        'R' => Cursor.Marked < On.OnOffer.Count ? Look(world, Cursor.Marked, again: true) : Turn.To(this),
        'L' when On.Sat is null => Card(world),
        'S' => Safety(world),
        _ => null,
    };

    /// <summary>A digit on a check that was taken only marks it; Enter and R measure again.</summary>
    public override Turn Press(World world, Input key)
    {
        if (key.Digit is null) return base.Press(world, key);
        if (IsLeaving(key)) return Back(world);
        var (cursor, taken) = Cursor.After(key, Count(world));
        var here = this with { Cursor = cursor, Note = "" };
        if (taken is not { } line) return Turn.To(here);
        return line == On.OnOffer.Count ? here.Answer() : here.Look(world, line, again: false);
    }

    Turn Answer() => Turn.To(AnswerScreen.Of(On, this with { Note = "" }));

    Turn Card(World world) => CardScreen.Open(world, this, On.Topic, Cursor.Marked < On.OnOffer.Count ? On.OnOffer[Cursor.Marked].Id : On.OnOffer[0].Id);

    Turn Safety(World world)
    {
        var line = On.OnOffer.ToList().FindIndex(c => c.Safety && On.Times(c.Id) == 0);
        return line < 0 ? Turn.To(this) : Look(world, line, again: false);
    }

    /// <summary>Takes a check. Where it is asked how sure the learner is, first what they hold for likeliest of the part of which this check tells most.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="line">Line of the check.</param>
    /// <param name="again">True to take it once more.</param>
    public Turn Look(World world, int line, bool again)
    {
        var clue = On.OnOffer[line];
        var here = this with { Cursor = new Cursor(line), Note = "" };
        if (On.Times(clue.Id) > 0 && !again) return Turn.To(here);
        if (On.Times(clue.Id) >= Engine.Cases.Case.LooksPerClue) return Turn.To(here with { Note = Words.Of("bench.enough") });
        if (On.Left <= 0) return Turn.To(here with { Note = Words.Of("bench.no-questions") });
        if (On.Sat is null && !clue.Safety && Opinion.IsAsked(world, On) && Opinion.PartAt(On, clue.Id) is var part && !string.Equals(part, On.Opinion?.Part, StringComparison.Ordinal))
            return Turn.To(new OpinionScreen(here, line, again, part) { Cursor = Cursor.None });
        return (here.Scale(clue)?.Start() ?? here.Gauge(clue)?.Start() ?? here.Marking(clue)?.Start()) is { } screen ? Turn.To(screen) : here.Seeing(On.Looking(clue.Id));
    }

    Turn Seeing(BenchJob after)
    {
        var bench = this with { On = after, Help = Guide.Of(after) };
        var asks = after.Opinion is not null && !after.Clue(after.Looks[^1].Clue).Safety && after.Findings[^1].Seen is not Seen.Hidden;
        return Turn.To(asks ? new SureNowScreen(bench) : bench, On.Sat is { } sat
            ? new LogEntry.SittingLooked(sat.Paper, sat.Place, after.Looks[^1], after.Findings[^1])
            : new LogEntry.Looked(On.Number, after.Looks[^1], after.Findings[^1]));
    }

    // The scale that the learner reads, or null where the reading is shown.
    ReadingTask? Scale(Clue clue)
    {
        if (!On.ReadsScales || On.Made.Look(clue.Id, 0).Seen is not Seen.Reading) return null;
        var nth = On.Times(clue.Id);
        var task = ReadingTask.Of(
            Words.Of("job.title", ("job", On.Number), ("topic", clue.Name)), clue, datum => On.Bench.EdgeOf(On.Made, clue.Id, nth, datum),
            unchecked(On.Made.Job.Seed + (ulong)nth), this, (_, own) => Seeing(On.Reading(clue.Id, own)), Engine.Workbench.ZeroErrorOf(On.Made));
        return task is null ? null : task with { Job = On.Logged, Drawn = DrawnDatums.Of(On.Topic, clue, On.Made.Truth, On.Made.Job.Seed) };
    }

    // The gauge that the learner tries, or null where what it shows is told.
    GaugeTask? Gauge(Clue clue)
    {
        var nth = On.Times(clue.Id);
        if (!On.ReadsScales || On.Made.Look(clue.Id, nth).Seen is not Seen.Named shown) return null;
        var task = GaugeTask.Of(
            Words.Of("job.title", ("job", On.Number), ("topic", clue.Name)), clue, shown.Id, unchecked(On.Made.Job.Seed + (ulong)nth), this,
            (_, finding) => Seeing(On.Finding(clue.Id, new OwnLook(finding))));
        return task is null ? null : task with { Job = On.Logged };
    }

    // What the learner looks at, or null where what it shows is told.
    LookTask? Marking(Clue clue)
    {
        if (!On.ReadsScales) return null;
        var asked = Spoken.List([.. On.Want.Asks.Select(new TopicWords(On.Topic).Part)]);
        var task = LookTask.Of(
            Words.Of("job.title", ("job", On.Number), ("topic", clue.Name)), On.Topic, clue, asked, On.Made, On.Times(clue.Id), this,
            (_, own) => Seeing(On.Finding(clue.Id, own)));
        return task is null ? null : task with { Job = On.Logged };
    }

    Block.Table Table(TopicWords words) => new(
        [
            new(Words.Of(Phone ? "bench.ask" : "bench.check")), new(Words.Of("bench.with"), Drop: true), new(Words.Of("bench.min"), Right: true) { Said = "bench.said-min" },
            new(Words.Of(Phone ? "bench.back" : "bench.found")),
        ],
        Rows(
        [
            .. On.OnOffer.Select(c => (string[])
                [c.Name, c.Tool, Spoken.Minutes(On.MinutesOf(c)), Noted.Of(On, words, c)]),
            [Words.Of("bench.answer"), "", "", ""],
        ]));

    List<Block> Foot()
    {
        List<Block> foot = [];
        if (Note.Length > 0) foot.Add(new Block.Text(Note));
        foot.AddRange(Stops());
        if (Help.Count > 0) foot.Add(new Block.Text(string.Join(' ', Help)));
        if (Cursor.Marked < On.OnOffer.Count) foot.Add(new Block.Text(string.Join(' ', Detail(On.OnOffer[Cursor.Marked]))));
        else if (Phone) foot.Add(new Block.Text(Words.Of("bench.callers")));
        return foot;
    }

    IEnumerable<Block> Stops() => On.Findings
        .Select(f => (f.Seen, On.Clue(f.Clue).Shows))
        .Select(p => p is (Seen.Named named, Shows.Table table) ? table.Findings.First(t => string.Equals(t.Id, named.Id, StringComparison.Ordinal)).Stop : "")
        .Where(s => s.Length > 0).Distinct(StringComparer.Ordinal)
        .Select(s => new Block.Text(Words.Of("guide.stop", ("stop", s))));

    /// <summary>What stands on the marked check: caution first, since it must never be cut off.</summary>
    IEnumerable<string> Detail(Clue clue)
    {
        if (clue.Caution.Length > 0) yield return Words.Of("bench.caution", ("caution", clue.Caution.TrimEnd('.')));
        yield return Phone && clue.Ask.Length > 0 ? Words.Of("bench.question", ("ask", clue.Ask)) : ClueWhere.Of(clue);
        if (On.Times(clue.Id) == 0 && On.ComesOff(clue) is { } access)
            yield return Words.Of("bench.comes-off", ("access", access.Name), ("minutes", Spoken.Minutes(access.Minutes)));
        if (On.Times(clue.Id) > 0 && On.Left is not null) yield return Words.Of("bench.again-ask");
    }

    IReadOnlyList<string> Keys(World world) =>
    [
        Digits(world, Phone ? "bench.keys-ask" : "bench.keys"),
        .. Cursor.IsLong(Count(world)) ? [Words.Of(IsTaken ? "bench.key-again" : Phone ? "bench.key-ask" : "bench.key-check")] : IsTaken ? [Words.Of("bench.key-again")] : Array.Empty<string>(),
        .. On.OnOffer.Any(c => c.Safety && On.Times(c.Id) == 0) ? [Words.Of("bench.key-safety")] : Array.Empty<string>(),
        Words.Of("bench.key-answer"), On.Sat is null ? Words.Of("bench.key-card") : "",
        Words.Of(On.Sat is null ? "key.back" : "sit.key-menu"), Words.Of("key.pause"), Words.Of("key.help"),
    ];
}
