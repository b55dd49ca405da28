using Apprentice.Content.Topics;
using Apprentice.Engine.Notebook;

namespace Apprentice.Content.Changes;

/// <summary>Bikes we asked about as a section of a topic file: a provenance that stands beside the others and changes none of their lines.</summary>
static class AskedDraft
{
    /// <summary>The change that puts the section in; null when the file has no place for it.</summary>
    /// <param name="drafts">Makes the change.</param>
    /// <param name="asked">What the bikes say.</param>
    /// <param name="day">The day.</param>
    public static Change? Of(Drafts drafts, AskedBikes asked, DateOnly day)
    {
        var shares = asked.Figures.Where(l => l.Sort == LearnedSort.LineShare).ToList();
        var rates = asked.Figures.Where(l => l.Sort == LearnedSort.EventRate).ToList();
        return drafts.Section(Words.Of("stand.asked-title"),
        [
            Drafts.Asked, "",
            .. Table("id", "name", "on the job card", "like", "figures from"),
            Drafts.Joined([AskedBikes.Id, Words.Of("stand.asked-name"), Words.Of("stand.asked-card"), asked.Like, SourceMark.OfBikes(asked.Bikes, routine: false, day)]),
            .. shares.Count == 0 ? Array.Empty<string>() : ["", .. Table("line", "share"), .. LearnedDraft.Shares(shares).Select(s => Drafts.Joined([s.Line, s.Share]))],
            .. rates.Count == 0 ? Array.Empty<string>() : ["", .. Table("event", "rate"), .. rates.Select(r => Drafts.Joined([r.Of, LearnedDraft.Share(r.Now)]))],
        ]);
    }

    /// <summary>The change in force that put the section into a topic, or null.</summary>
    /// <param name="copy">The workshop's copy.</param>
    /// <param name="topic">Short name of the topic.</param>
    public static Change? InForce(WorkshopCopy copy, string topic) =>
        copy.InForce.LastOrDefault(c => c.File == WorkshopCopy.PathOf(topic) && c.Is.Contains(Drafts.Asked, StringComparer.Ordinal) && !copy.Unfit().Contains(c.Number));

    static string[] Table(params string[] columns) => [Drafts.Joined(columns), $"|{string.Concat(columns.Select(_ => "---|"))}"];
}
