using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Reports;
using Apprentice.Screens.Assess;

namespace Apprentice.Screens;

/// <summary>Confirmed real bikes to practise on: marked as real, counted for nothing.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record RealListScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.real-title"),
        world.Who,
        [
            new Block.Text(Words.Of(Cases(world).Count == 0 ? "stand.real-none" : "stand.real-ask")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(Cases(world).Select(c => (string[])[
                world.Bench(c.Topic)?.Topic.Title ?? c.Topic, c.From.Length > 0 ? Words.Of("stand.real-from", ("name", c.From)) : Words.Of("stand.real-own")]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Cases(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new RealBenchScreen(this, Cases(world)[line], []));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    // Cases that the topics at hand can still tell.
    static List<RealCase> Cases(World world) => [.. RealCases.Of(world.History.Notebook).Where(c => world.Bench(c.Topic) is { } bench && RealBench.Fits(bench.Topic, c))];
}

/// <summary>A real bike on the bench: each check that was taken can be opened.</summary>
/// <param name="Below">The list.</param>
/// <param name="Case">The case.</param>
/// <param name="Opened">Indices of the findings opened, in order.</param>
/// <param name="Sat">Place among the real bikes of the paper that is sat, or null in practice.</param>
sealed record RealBenchScreen(Screen Below, RealCase Case, IReadOnlyList<int> Opened, int? Sat = null) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var topic = TopicOf(world);
        var found = RealBench.Found(topic, Case);
        return new Page(
            Words.Of("stand.real-job", ("topic", topic.Title)),
            world.Who,
            [
                .. Sat is null ? Array.Empty<Block>() : [new Block.Text(Words.Of("sit.real-note"))],
                new Block.Text(Words.Of("stand.real-card", ("want", topic.Wants.First(w => w.Id == Case.Want).Name), ("card", topic.Provenances.First(p => p.Id == Case.Provenance).Card))),
                new Block.Gap(Drop: true),
                new Block.Table([new(""), new("")], Rows(
                [
                    [Words.Of("stand.real-answer"), ""],
                    .. found.Select((f, i) => (string[])[new TopicWords(topic).Clue(f.Clue), Opened.Contains(i) ? StandWords.Finding(topic, f) : "."]),
                ])),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <summary>The topic: in a sitting in the version of the paper.</summary>
    public Topic TopicOf(World world) => BenchOf(world).Topic;

    /// <summary>The topic made ready.</summary>
    public Engine.Workbench BenchOf(World world) => (Sat is null || world.Seat is not { } seat ? world.Bench(Case.Topic) : SitReal.BenchOf(world, seat.Paper, Case.Topic)) ?? throw new InvalidOperationException(Case.Topic);

    /// <inheritdoc/>
    protected override int Count(World world) => RealBench.Found(TopicOf(world), Case).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line == 0) return Turn.To(new RealAnswerScreen(this));
        if (Opened.Contains(line - 1)) return Turn.To(this);
        var opened = this with { Opened = [.. Opened, line - 1] };
        return Sat is { } place ? SitReal.Looked(world, opened, place, line - 1) : Turn.To(opened);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>Which one is it?</summary>
/// <param name="Below">The bench.</param>
sealed record RealAnswerScreen(RealBenchScreen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.real-job", ("topic", Below.TopicOf(world).Title)),
        world.Who,
        [
            new Block.Text(PartOf(world).Question),
            new Block.Gap(Drop: true),
            new Block.Table([new("")], Rows(Answers(world).Select(a => (string[])[a.Name]))),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <summary>The part asked about.</summary>
    public Part PartOf(World world) => Below.TopicOf(world) is var topic ? topic.Parts.First(p => p.Id == topic.Wants.First(w => w.Id == Below.Case.Want).Asks[0]) : throw new InvalidOperationException();

    /// <inheritdoc/>
    protected override int Count(World world) => Answers(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new RealSureScreen(this, Answers(world)[line].Id));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(string? Id, string Name)> Answers(World world) =>
        [.. PartOf(world).Kinds.Select(k => ((string?)k.Id, k.Name)), (Kind.NoneId, Words.Of("answer.none")), (null, Words.Of("answer.not-settled"))];
}

/// <summary>How sure, and then what it really was.</summary>
/// <param name="Below">The answer.</param>
/// <param name="Kind">The kind said, or null for not settled.</param>
sealed record RealSureScreen(RealAnswerScreen Below, string? Kind) : ChoiceScreen
{
    const int Most = 9;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.real-job", ("topic", Below.Below.TopicOf(world).Title)),
        world.Who,
        [
            new Block.Text(Words.Of("stand.real-sure", ("kind", new TopicWords(Below.Below.TopicOf(world)).Kind(Below.PartOf(world).Id, Kind)))),
            new Block.Gap(Drop: true),
            new Block.Table([new("")], Rows(Enumerable.Range(1, Most).Select(n => (string[])[Words.Of("spoken.of-ten", ("n", n))]))),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Most;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var it = Below.Below.Case;
        if (Below.Below.Sat is { } place) return SitReal.Answered(world, place, Kind, line + 1);
        var part = Below.PartOf(world).Id;
        var right = string.Equals(it.Truth.KindOf(part), Kind, StringComparison.Ordinal);
        return Turn.To(new RealBikeEndScreen(Below, Kind, line + 1), new LogEntry.RealTried(world.Person, it.Key, Kind, line + 1, right));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>What the real bike was, what the opened checks were worth, and what all of them were.</summary>
/// <param name="Below">The answer.</param>
/// <param name="Kind">The kind said, or null for not settled.</param>
/// <param name="Tenths">How sure.</param>
sealed record RealBikeEndScreen(RealAnswerScreen Below, string? Kind, int Tenths) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var (bench, it) = (Below.Below, Below.Below.Case);
        var topic = bench.TopicOf(world);
        var (part, words) = (Below.PartOf(world), new TopicWords(topic));
        var all = RealBench.Found(topic, it);
        return new Page(
            Words.Of("stand.real-job", ("topic", topic.Title)),
            world.Who,
            [
                new Block.Text(Words.Of("stand.real-was", ("kinds", Spoken.List([.. it.Truth.Parts.Select(p => StandWords.Kind(topic, p))])))),
                .. it.Truth.Events.Select(e => new Block.Text(Words.Of("stand.real-event", ("story", words.Tag(e))))),
                new Block.Text(Words.Of("stand.real-said", ("kind", words.Kind(part.Id, Kind)), ("n", Tenths))),
                new Block.Text(Held("stand.real-yours", world, bench.Opened)),
                new Block.Text(Held("stand.real-all", world, [.. Enumerable.Range(0, all.Count)])),
                new Block.Gap(Drop: true),
                .. all.Select((f, i) => new Block.Text($"{words.Clue(f.Clue)}: {StandWords.Finding(topic, f)}{(bench.Opened.Contains(i) ? "" : $"   ({Words.Of("stand.real-unopened")})")}", 2)),
                new Block.Gap(Drop: true),
                new Block.Text(Words.Of("stand.real-counts")),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below.Below.Below : this);

    string Held(string key, World world, IReadOnlyList<int> opened)
    {
        var bench = Below.Below.BenchOf(world);
        var reasoning = RealBench.Reason(bench, Below.Below.Case, opened);
        if (reasoning.Conflict.Impossible) return Words.Of("own.conflict");
        var held = reasoning.Parts[0];
        return Words.Of(key, ("kind", new TopicWords(bench.Topic).Class(held.Part, held.Classes[held.Leading].Kinds)), ("tenths", Spoken.Twentieths(held.Highest)));
    }
}
