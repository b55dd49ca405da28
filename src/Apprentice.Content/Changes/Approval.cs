using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Changes;

/// <summary>The lead lets a learned figure count.</summary>
public static class Approval
{
    /// <summary>The change that does it; null when the topic file has no cell for the figure, or could not be read with it.</summary>
    /// <param name="copy">The workshop's copy.</param>
    /// <param name="topic">The topic.</param>
    /// <param name="learned">The figure.</param>
    /// <param name="all">All figures learned for the topic.</param>
    /// <param name="day">The day.</param>
    /// <param name="by">Who lets it.</param>
    public static Change? Of(WorkshopCopy copy, Topic topic, Learned learned, IReadOnlyList<Learned> all, DateOnly day, string by)
    {
        var path = WorkshopCopy.PathOf(topic.Id);
        if (copy.Text(path) is not { } text) return null;
        var made = LearnedDraft.Of(new Drafts(copy.NextNumber, path, text, day, by), topic, learned, all, learned.Key);
        if (made is null) return null;
        var change = made with { Because = Words.Of("stand.because-rates", ("n", learned.Bikes)) };
        return copy.With([change]).Unfit().Contains(change.Number) ? null : change;
    }
}
