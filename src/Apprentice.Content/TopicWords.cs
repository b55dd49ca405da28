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

    /// <summary>What a tag of a story says: an event's sentence, a line, a pitfall's text.</summary>
    public string Tag(string tag) =>
        topic.Events.FirstOrDefault(e => Same(e.Id, tag))?.Story
        ?? (topic.Lines.FirstOrDefault(l => Same(l.Id, tag)) is { } line ? Words.Of("story.line", ("line", line.Name)) : null)
        ?? (topic.Pitfalls.FirstOrDefault(p => Same(p.Id, tag)) is { } pitfall ? pitfall.Text.TrimEnd('.') : null)
        ?? topic.Parts.SelectMany(p => p.Kinds).FirstOrDefault(k => Same(k.Id, tag))?.Name
        ?? (Same(tag, Engine.Topics.Kind.NoneId) ? Words.Of("story.nothing") : tag);

    /// <summary>The name of whatever has that short name: a kind, a spare, a clue, an event; the short name itself when nothing has.</summary>
    public string Any(string id) =>
        topic.Parts.SelectMany(p => p.Kinds).FirstOrDefault(k => Same(k.Id, id))?.Name
        ?? topic.Spares.FirstOrDefault(s => Same(s.Id, id))?.Name
        ?? topic.Clues.FirstOrDefault(c => Same(c.Id, id))?.Name
        ?? topic.Events.FirstOrDefault(e => Same(e.Id, id))?.Story
        ?? topic.Parts.FirstOrDefault(p => Same(p.Id, id))?.Name
        ?? Common(id);

    /// <summary>What was seen at a clue.</summary>
    public string Seen(Finding finding)
    {
        var clue = topic.Clues.First(c => Same(c.Id, finding.Clue));
        return (finding.Seen, clue.Shows) switch
        {
            (Engine.Evidence.Seen.Reading reading, Shows.Measured measured) => Spoken.Millimetres(reading.Millimetres, measured),
            (Engine.Evidence.Seen.Named named, Shows.Table table) => table.Findings.First(f => Same(f.Id, named.Id)).Text,
            (Engine.Evidence.Seen.Named named, Shows.Code code) => code.Findings.First(f => Same(f.Id, named.Id)).Text,
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
