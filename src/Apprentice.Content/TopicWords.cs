using System.Diagnostics;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Content;

/// <summary>The names of a topic's things, and remarks about them in words.</summary>
/// <param name="topic">The topic.</param>
public sealed class TopicWords(Topic topic)
{
    /// <summary>The name of a clue; the short name itself when there is none of that name.</summary>
    public string Clue(string id) => topic.Clues.FirstOrDefault(c => Same(c.Id, id))?.Name ?? Common(id);

    /// <summary>The name of a part.</summary>
    public string Part(string id) => topic.Parts.FirstOrDefault(p => Same(p.Id, id))?.Name ?? id;

    /// <summary>The name of a kind of a part; "none of these" for none, "not settled" for null.</summary>
    public string Kind(string part, string? kind) => kind is null
        ? Words.Of("answer.not-settled")
        : topic.Parts.FirstOrDefault(p => Same(p.Id, part))?.Kinds.FirstOrDefault(k => Same(k.Id, kind))?.Name ?? Common(kind);

    /// <summary>The name of an order class: its kinds.</summary>
    public string Class(string part, IReadOnlyList<string> kinds) => string.Join(" / ", kinds.Select(k => Kind(part, k)));

    /// <summary>The name of a spare.</summary>
    public string Spare(string id) => topic.Spares.FirstOrDefault(s => Same(s.Id, id))?.Name ?? id;

    /// <summary>What a tag of a story says: an event's sentence, a line that kept the old part, a running change, another family.</summary>
    public string Tag(string tag)
    {
        if (Same(tag, Engine.Topics.Kind.NoneId)) return Words.Of("story.nothing");
        if (topic.Events.FirstOrDefault(e => Same(e.Id, tag)) is { } happened) return happened.Story.TrimEnd('.');
        var parts = tag.Split(':');
        return parts switch
        {
            ["line", var line] => Words.Of("story.line", ("line", topic.Lines.First(l => Same(l.Id, line)).Name)),
            ["change", _] => Words.Of("story.running"),
            ["family", var part, var kind] => Words.Of("story.family", ("kind", Kind(part, kind))),
            _ => tag,
        };
    }

    /// <summary>What was seen at a clue.</summary>
    public string Seen(Finding finding)
    {
        var clue = topic.Clues.First(c => Same(c.Id, finding.Clue));
        return (finding.Seen, clue.Shows) switch
        {
            (Engine.Evidence.Seen.Reading reading, Shows.Measured) when Instrument.Of(clue.Tool) is { Inches: true } => Spoken.Inches(reading.Millimetres),
            (Engine.Evidence.Seen.Reading reading, Shows.Measured measured) => Spoken.Millimetres(reading.Millimetres, measured),
            (Engine.Evidence.Seen.Named named, Shows.Table table) => table.Findings.First(f => Same(f.Id, named.Id)).Text,
            (Engine.Evidence.Seen.Named named, Shows.Code code) => code.Findings.First(f => Same(f.Id, named.Id)).Text,
            (Engine.Evidence.Seen.Hidden, _) when finding.Writing is not null => Words.Of("seen.other"),
            (Engine.Evidence.Seen.Hidden, _) => Words.Of("seen.hidden"),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>A choice for an order line.</summary>
    public string Choice(Choice choice) => choice switch
    {
        Engine.Evidence.Choice.Order order => Words.Of("choice.order", ("spare", Spare(order.Spare))),
        Engine.Evidence.Choice.OrderTwo two => Words.Of("choice.two", ("first", Spare(two.First)), ("second", Spare(two.Second))),
        Engine.Evidence.Choice.Wait wait => Words.Of("choice.wait", ("clue", Clue(wait.Clue))),
        Engine.Evidence.Choice.Ask => Words.Of("choice.ask"),
        _ => throw new UnreachableException(),
    };

    static string Common(string id) => Same(id, Engine.Topics.Kind.NoneId) ? Words.Of("answer.none") : id;

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);
}
