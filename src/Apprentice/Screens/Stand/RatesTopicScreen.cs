using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Figures learned from the workshop's bikes: of which topic.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record RatesTopicScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-rates"),
        "",
        [new Block.Text(Words.Of("stand.rates-topic")), new Block.Gap(Drop: true), new Block.Table([new("")], Rows(world.Practised.Select(b => (string[])[b.Topic.Title])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Practised.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new RatesScreen(this, world.Practised[line].Topic.Id));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>Learned figures of a topic: before, what was seen, now; a number lets one count.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="TopicId">The topic.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record RatesScreen(Screen Below, string TopicId, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The topic.</summary>
    public Topic Topic(World world) => (world.Bench(TopicId) ?? throw new InvalidOperationException(TopicId)).Topic;

    /// <summary>The figures.</summary>
    public IReadOnlyList<Learned> All(World world) => LearnedRates.Of(Topic(world), world.History.Notebook);

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var (topic, all, asked) = (Topic(world), All(world), LearnedRates.AskedAbout(Topic(world), world.History.Notebook));
        return new Page(
            Words.Of("stand.lead-rates"),
            topic.Title,
            [
                new Block.Text(Words.Of(all.Count == 0 ? "stand.rates-none" : "stand.rates-what")),
                new Block.Gap(Drop: true),
                .. all.Count == 0 ? Array.Empty<Block>() :
                [
                    new Block.Table(
                        [
                            new(Words.Of("stand.rates-figure")), new(Words.Of("stand.rates-before"), Right: true), new(Words.Of("stand.rates-seen"), Right: true),
                            new(Words.Of("stand.rates-now"), Right: true), new(Words.Of("stand.rates-between"), Right: true, Drop: true),
                        ],
                        Rows(all.Select(l => (string[])[RateWords.Name(topic, l), RateWords.Figure(l, l.Before), RateWords.Seen(l), RateWords.Figure(l, l.Now), $"{RateWords.Figure(l, l.Low)} - {RateWords.Figure(l, l.High)}"]))),
                ],
                .. asked.Count == 0 ? Array.Empty<Block>() :
                [
                    new Block.Gap(Drop: true), new Block.Text(Words.Of("stand.rates-asked")),
                    .. asked.Where(l => l.Hits > 0).Select(l => new Block.Text(Words.Of("stand.rates-asked-line", ("what", RateWords.Name(topic, l)), ("hits", l.Hits), ("bikes", l.Bikes)), 2)),
                ],
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => All(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new RateScreen(this with { Note = "" }, All(world)[line]));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>Learned figures in words.</summary>
static class RateWords
{
    /// <summary>What it is the figure of.</summary>
    public static string Name(Topic topic, Learned learned) => learned.Sort switch
    {
        LearnedSort.EventRate => Words.Of("stand.rates-event", ("what", topic.Events.First(e => e.Id == learned.Of).Story), ("where", Provenance(topic, learned.In))),
        LearnedSort.LineShare => Words.Of("stand.rates-line", ("what", topic.Lines.First(l => l.Id == learned.Of).Name), ("where", Provenance(topic, learned.In))),
        LearnedSort.Spread => Words.Of("stand.rates-spread", ("what", topic.Dimensions.First(d => d.Id == learned.Of).Name), ("where", topic.Parts.First(p => p.Id == topic.Dimensions.First(d => d.Id == learned.Of).Part).Kinds.First(k => k.Id == learned.In).Name)),
        _ => Words.Of("stand.rates-window", ("what", Spoken.List([.. topic.Packages.First(p => p.Id == learned.Of).Parts.Select(new TopicWords(topic).Part)]))),
    };

    /// <summary>The figure: bikes of 100, mm, or months.</summary>
    public static string Figure(Learned learned, double value) => learned.Sort switch
    {
        LearnedSort.Spread => Words.Of("spoken.mm", ("n", value.ToString("0.0#"))),
        LearnedSort.Window => value.ToString("0.0"),
        _ => (100 * value).ToString("0.#"),
    };

    /// <summary>What was seen.</summary>
    public static string Seen(Learned learned) => learned.Sort is LearnedSort.Spread
        ? Words.Of("stand.rates-bikes", ("bikes", learned.Bikes))
        : Words.Of("stand.rates-seen-cell", ("hits", learned.Hits), ("bikes", learned.Bikes));

    static string Provenance(Topic topic, string id) => topic.Provenances.First(p => p.Id == id).Name;
}

/// <summary>Lets a learned figure count, or not.</summary>
/// <param name="Below">The figures.</param>
/// <param name="Learned">The figure.</param>
sealed record RateScreen(RatesScreen Below, Learned Learned) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.rate-approve"),
        Below.Topic(world).Title,
        [
            new Block.Text(Words.Of(
                "stand.rate-approve-what", ("figure", RateWords.Name(Below.Topic(world), Learned)), ("before", RateWords.Figure(Learned, Learned.Before)), ("now", RateWords.Figure(Learned, Learned.Now)), ("bikes", Learned.Bikes))),
            new Block.Gap(),
            new Block.Table([new("")], Rows([(string[])[Words.Of("stand.rate-yes")], [Words.Of("stand.rate-no")]])),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line > 0) return Turn.To(Below);
        if (Approval.Of(world.Copy, Below.Topic(world), Learned, Below.All(world), DateOnly.FromDateTime(world.Now.DateTime), world.History.Workshop?.Lead ?? "") is not { } change)
            return Turn.To(Below with { Note = Words.Of("stand.rate-by-hand") });
        return Turn.To(
            Below with { Note = Words.Of("stand.rate-done", ("n", change.Number)) },
            new LogEntry.RateApproved(Below.TopicId, Learned.Key, Learned.Before, Learned.Now, Learned.Bikes, change.Number)) with
        {
            Changes = [change],
        };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
