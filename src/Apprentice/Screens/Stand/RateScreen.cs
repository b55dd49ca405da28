using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;

namespace Apprentice.Screens;

/// <summary>Lets a learned figure count, or not.</summary>
/// <param name="Below">The figures.</param>
/// <param name="Learned">The figure.</param>
sealed record RateScreen(RatesScreen Below, Learned Learned) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The months of a running change, or null for another figure.</summary>
    public WindowDraft? Window(World world) => Learned.Sort == LearnedSort.Window ? WindowDraft.Of(Below.Topic(world), Below.Prior(world), Learned) : null;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.rate-approve"),
        Below.Topic(world).Title,
        [
            new Block.Text(Words.Of(
                "stand.rate-approve-what", ("figure", RateWords.Name(Below.Topic(world), Learned)), ("before", RateWords.Figure(Learned, Learned.Before)), ("now", RateWords.Figure(Learned, Learned.Now)), ("bikes", Learned.Bikes))),
            .. Window(world) is { } window ? Months(window) : [],
            new Block.Gap(),
            new Block.Table([new("")], Rows([(string[])[Words.Of("stand.rate-yes")], [Words.Of("stand.rate-no")]])),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <summary>The months as they are and as they would be.</summary>
    public static IReadOnlyList<Block> Months(WindowDraft window) =>
    [
        new Block.Gap(Drop: true),
        new Block.Text(Words.Of("stand.window-was", ("months", RateWords.Months(window.Was)))),
        new Block.Text(Words.Of("stand.window-is", ("months", RateWords.Months(window.Is)))),
    ];

    /// <summary>Lets the figure count.</summary>
    public Turn Approved(World world)
    {
        var (topic, day) = (Below.Topic(world), DateOnly.FromDateTime(world.Now.DateTime));
        var approval = Approval.Of(world.Copy, topic, Below.Prior(world), Learned, Below.All(world), day, world.History.Workshop?.Lead ?? "");
        if (approval.Change is not { } change) return Turn.To(Below with { Note = approval.Fault });
        return Turn.To(
            Below with { Note = Words.Of(Learned.Sort == LearnedSort.Window ? "stand.window-done" : "stand.rate-done", ("n", change.Number)) },
            new LogEntry.RateApproved(Below.TopicId, Learned.Key, Learned.Before, Learned.Now, Learned.Bikes, change.Number)) with
        {
            Changes = approval.Changes,
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line > 0) return Turn.To(Below);
        return Window(world) switch
        {
            { Moves: false } => Turn.To(Below with { Note = Words.Of("stand.window-same") }),
            { Published.Count: > 0 } window => Turn.To(new MonthReplaceScreen(this, window)),
            _ => Approved(world),
        };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
