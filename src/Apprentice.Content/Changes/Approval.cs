using Apprentice.Content.Topics;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Changes;

/// <summary>The lead lets learned figures count.</summary>
/// <param name="Changes">The changes that do it, oldest first; none when it cannot be done.</param>
/// <param name="Fault">Why not, or empty.</param>
public sealed record Approval(IReadOnlyList<Change> Changes, string Fault)
{
    /// <summary>The change that stands for it: the last.</summary>
    public Change? Change => Changes.Count == 0 ? null : Changes[^1];

    /// <summary>What was held before any figure was learned: the topic without the figures that the lead let count, so that the same bikes never count twice.</summary>
    /// <param name="copy">The workshop's copy.</param>
    /// <param name="topic">The topic in force.</param>
    /// <param name="notebook">The notebook, which knows what was let count.</param>
    public static Topic Prior(WorkshopCopy copy, Topic topic, BenchNotebook notebook)
    {
        var path = WorkshopCopy.PathOf(topic.Id);
        var let = notebook.Approved.Where(a => a.Topic == topic.Id).Select(a => (a.Change, a.What)).ToHashSet();
        var learned = copy.InForce.Where(c => c.File == path && let.Contains((c.Number, c.Title))).Select(c => c.Number).ToList();
        if (learned.Count == 0 || copy.Without(topic.Id, learned) is not { } before) return topic;
        // A line that was added beside a learned figure stands on it and is not there without it.
        return before with { Events = [.. topic.Events.Select(e => before.Events.FirstOrDefault(b => b.Id == e.Id) ?? e)] };
    }

    /// <summary>Lets one figure of the routine bikes count.</summary>
    /// <param name="copy">The workshop's copy.</param>
    /// <param name="topic">The topic in force.</param>
    /// <param name="prior">The topic that the figures were learned from.</param>
    /// <param name="learned">The figure.</param>
    /// <param name="all">All figures learned for the topic.</param>
    /// <param name="day">The day.</param>
    /// <param name="by">Who lets it.</param>
    public static Approval Of(WorkshopCopy copy, Topic topic, Topic prior, Learned learned, IReadOnlyList<Learned> all, DateOnly day, string by) =>
        Made(copy, topic, Words.Of("stand.because-rates", ("n", learned.Bikes)), [], day, by, drafts => learned.Sort == LearnedSort.Window
            ? WindowDraft.Of(topic, prior, learned)?.Draft(drafts, learned.Key, SourceMark.OfBikes(learned.Bikes, routine: true, day))
            : LearnedDraft.Of(drafts, learned, all));

    /// <summary>Lets the bikes that were asked about count as a provenance; what was let count of them before is taken back first.</summary>
    /// <param name="copy">The workshop's copy.</param>
    /// <param name="topic">The topic in force.</param>
    /// <param name="asked">What the bikes say.</param>
    /// <param name="day">The day.</param>
    /// <param name="by">Who lets it.</param>
    public static Approval OfAsked(WorkshopCopy copy, Topic topic, AskedBikes asked, DateOnly day, string by)
    {
        var before = AskedInForce(copy, topic.Id);
        if (before is not null && copy.BuiltOn(before.Number) is [var other, ..]) return new Approval([], Words.Of("stand.change-built-on", ("n", other.Number)));
        IReadOnlyList<Change> back = before is null ? [] : [copy.TakenBack(before.Number, day, by)];
        return Made(copy, topic, Words.Of("stand.because-asked", ("n", asked.Bikes)), back, day, by, drafts => AskedDraft.Of(drafts, asked, day));
    }

    /// <summary>The change in force by which bikes that were asked about count, or null.</summary>
    /// <param name="copy">The workshop's copy.</param>
    /// <param name="topic">Short name of the topic.</param>
    public static Change? AskedInForce(WorkshopCopy copy, string topic) => AskedDraft.InForce(copy, topic);

    static Approval Made(WorkshopCopy copy, Topic topic, string because, IReadOnlyList<Change> first, DateOnly day, string by, Func<Drafts, Change?> draft)
    {
        var (path, ready) = (WorkshopCopy.PathOf(topic.Id), copy.With(first));
        if (ready.Text(path) is not { } text || draft(new Drafts(ready.NextNumber, path, text, day, by)) is not { } made) return new Approval([], Words.Of("stand.rate-by-hand"));
        var change = made with { Because = because };
        return ready.With([change]).FaultOf(change.Number) is { } fault ? new Approval([], Words.Of("stand.rate-unfit", ("fault", fault.Message))) : new Approval([.. first, change], "");
    }
}
