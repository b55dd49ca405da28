using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>Bikes we asked about: before, what was seen, now; the lead lets them count as a provenance of their own, or takes it back.</summary>
/// <param name="Below">The figures.</param>
sealed record AskedBikesScreen(RatesScreen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var (topic, asked) = (Below.Topic(world), Below.Asked(world));
        return new Page(
            Words.Of("stand.rates-asked"),
            topic.Title,
            [
                .. StandWords.Asked(topic, asked).Select(s => new Block.Text(s)),
                new Block.Gap(Drop: true),
                new Block.Table([new("")], Rows(Ways(world).Select(w => (string[])[w.Text]))),
                .. asked.Figures.Count == 0 ? Array.Empty<Block>() :
                [
                    new Block.Gap(Drop: true),
                    new Block.Table(RateWords.Columns, [.. asked.Figures.Select(l => new Row("", Marked: false, RateWords.Cells(topic, l)))]),
                ],
            ],
            [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Ways(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Ways(world)[line].Go(world);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(string Text, Func<World, Turn> Go)> Ways(World world)
    {
        var inForce = Approval.AskedInForce(world.Copy, Below.TopicId);
        return
        [
            .. Below.Asked(world).Missing > 0 ? [] : ((string, Func<World, Turn>)[])[(Words.Of(inForce is null ? "stand.asked-yes" : "stand.asked-again"), Approved)],
            .. inForce is null ? [] : ((string, Func<World, Turn>)[])[(Words.Of("stand.asked-back", ("n", inForce.Number)), w => Turn.To(new ChangeScreen(new ChangesScreen(Below), inForce.Number)))],
            (Words.Of("stand.asked-no"), _ => Turn.To(Below)),
        ];
    }

    Turn Approved(World world)
    {
        var asked = Below.Asked(world);
        var approval = Approval.OfAsked(world.Copy, Below.Topic(world), asked, DateOnly.FromDateTime(world.Now.DateTime), world.History.Workshop?.Lead ?? "");
        if (approval.Change is not { } change) return Turn.To(Below with { Note = approval.Fault });
        return Turn.To(
            Below with { Note = Words.Of("stand.asked-done", ("n", change.Number)) },
            [.. asked.Figures.Select(l => new LogEntry.RateApproved(Below.TopicId, l.Key, l.Before, l.Now, l.Bikes, change.Number))]) with
        {
            Changes = approval.Changes,
        };
    }
}
