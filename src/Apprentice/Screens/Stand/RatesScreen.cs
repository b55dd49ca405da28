using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Learned figures of a topic: before, what was seen, now; a number lets one count. The last line leads to the bikes that were asked about.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="TopicId">The topic.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record RatesScreen(Screen Below, string TopicId, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The topic in force.</summary>
    public Topic Topic(World world) => (world.Bench(TopicId) ?? throw new InvalidOperationException(TopicId)).Topic;

    /// <summary>The topic with the figures that were held before any was learned.</summary>
    public Topic Prior(World world) => Approval.Prior(world.Copy, Topic(world), world.History.Notebook);

    /// <summary>The figures of the routine bikes.</summary>
    public IReadOnlyList<Learned> All(World world) => LearnedRates.Of(Prior(world), world.History.Notebook);

    /// <summary>The bikes that were asked about.</summary>
    public AskedBikes Asked(World world) => AskedBikes.Of(Prior(world), world.History.Notebook);

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var (topic, all) = (Topic(world), All(world));
        return new Page(
            Words.Of("stand.lead-rates"),
            topic.Title,
            [
                new Block.Text(Words.Of(all.Count == 0 ? "stand.rates-none" : "stand.rates-what")),
                new Block.Gap(Drop: true),
                new Block.Table(RateWords.Columns, Rows([.. all.Select(l => RateWords.Cells(topic, l)), [Words.Of("stand.rates-asked"), "", Words.Of("stand.asked-known", ("bikes", Asked(world).Bikes)), "", ""]])),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => All(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var all = All(world);
        return Turn.To(line < all.Count ? new RateScreen(this with { Note = "" }, all[line]) : new AskedBikesScreen(this with { Note = "" }));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
