using Apprentice.Engine.Assessing;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Marks;

/// <summary>A real bike of a paper in sentences, the same on screens, in print and for scripts. What the topic no longer has is called by its short name.</summary>
/// <param name="topics">Topics at hand.</param>
public sealed class RealTelling(IReadOnlyList<Topic> topics)
{
    readonly SortNames _sorts = new(topics);

    /// <summary>Which bike: its number, topic and workshop.</summary>
    public string Bike(RealMark mark) => Words.Of(
        "realbike.bike", ("n", mark.Job.Place), ("topic", _sorts.Find(mark.Job.Case.Topic)?.Title ?? mark.Job.Case.Topic), ("name", mark.Job.Case.From));

    /// <summary>What it was, what was said, and that it counts for nothing.</summary>
    public string InShort(RealMark mark) => $"{Was(mark)} {Said(mark)} {Words.Of("realbike.counts")}";

    /// <summary>All that can be told of it, a sentence each.</summary>
    public IReadOnlyList<string> Lines(RealMark mark)
    {
        var names = NamesOf(mark);
        var events = mark.Job.Case.Truth.Events;
        return
        [
            Was(mark),
            .. events.Count == 0 ? Array.Empty<string>() : [Words.Of("realbike.story", ("story", Spoken.List([.. events.Select(names.Tag)])))],
            Said(mark),
            .. mark.Sat.Opened.Count == 0 ? [Words.Of("realbike.unopened")] : Held("realbike.opened", mark.Opened, names),
            .. Held("realbike.all", mark.All, names),
        ];
    }

    /// <summary>What was found on it: check, what it showed, and whether it was opened.</summary>
    public IReadOnlyList<(string Check, string Seen, bool Opened)> Found(RealMark mark) =>
        [.. mark.Found.Select((f, i) => (NamesOf(mark).Clue(f.Clue), NamesOf(mark).Seen(f), mark.Sat.Opened.Contains(i)))];

    string Was(RealMark mark) => Words.Of("realbike.was", ("part", Spoken.Capital(NamesOf(mark).Part(mark.Job.Part))), ("kind", NamesOf(mark).Kind(mark.Job.Part, mark.Was)));

    string Said(RealMark mark) => mark.Sat.Tenths is not { } tenths ? Words.Of("realbike.no-answer") : Words.Of(
        mark.Right switch { true => "realbike.said-right", false => "realbike.said-other", null => "realbike.said-open" },
        ("kind", NamesOf(mark).Kind(mark.Job.Part, mark.Sat.Kind)), ("n", tenths));

    static string[] Held(string key, HeldBelief? held, RecordNames names) =>
        held is null ? [] : [Words.Of(key, ("kind", names.Class(held.Part, held.Leading.Kinds)), ("chance", Spoken.Twentieths(held.Leading.Belief)))];

    RecordNames NamesOf(RealMark mark) => new(_sorts.Find(mark.Job.Case.Topic));
}
