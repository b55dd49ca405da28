using Apprentice.Engine.Assessing;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Marks;

/// <summary>The names of a topic's things, or their short names where the topic, or the thing, is not here any more.</summary>
/// <param name="topic">The topic, or null.</param>
sealed class RecordNames(Topic? topic)
{
    readonly TopicWords? _words = topic is null ? null : new TopicWords(topic);

    public string Clue(string id) => _words?.Clue(id) ?? id;

    /// <summary>True for a safety look that the topic has.</summary>
    public bool IsSafety(string id) => topic?.Clues.Any(c => c.Safety && Same(c.Id, id)) ?? false;

    public string Part(string id) => _words?.Part(id) ?? id;

    public string Kind(string part, string? kind) => _words?.Kind(part, kind) ?? kind ?? Words.Of("answer.not-settled");

    public string Class(string part, IReadOnlyList<string> kinds) => string.Join(" / ", kinds.Select(k => Kind(part, k)));

    public string Choice(Choice choice) => _words?.Choice(choice) ?? choice switch
    {
        Engine.Evidence.Choice.Order order => Words.Of("choice.order", ("spare", order.Spare)),
        Engine.Evidence.Choice.OrderTwo two => Words.Of("choice.two", ("first", two.First), ("second", two.Second)),
        Engine.Evidence.Choice.Wait wait => Words.Of("choice.wait", ("clue", wait.Clue)),
        _ => Words.Of("choice.ask"),
    };

    public string Tag(string tag) => IsKnown(tag) ? _words?.Tag(tag) ?? tag : tag;

    public string Line(string want, int nth)
    {
        var lines = topic?.Wants.FirstOrDefault(w => Same(w.Id, want))?.OrderLines;
        return lines is not null && nth < lines.Count ? Spoken.Capital(lines[nth].Name) : Words.Of("record.order-line", ("n", nth + 1));
    }

    public string Seen(Finding finding)
    {
        var clue = topic?.Clues.FirstOrDefault(c => Same(c.Id, finding.Clue));
        var known = clue is not null && finding.Seen switch
        {
            Engine.Evidence.Seen.Reading => clue.Shows is Shows.Measured,
            Engine.Evidence.Seen.Named named => Findings(clue).Contains(named.Id, StringComparer.Ordinal),
            _ => true,
        };
        return known && _words is not null ? _words.Seen(finding) : finding.Seen switch
        {
            Engine.Evidence.Seen.Reading reading => Words.Of("spoken.mm", ("n", reading.Millimetres.ToString("0.##"))),
            Engine.Evidence.Seen.Named named => named.Id,
            _ => Words.Of("seen.hidden"),
        };
    }

    /// <summary>What the person read or said, or empty where it was told.</summary>
    public string Read(LookTaken taken)
    {
        if (taken.Look.OwnReading is { } mm) return Seen(taken.Shown with { Seen = new Engine.Evidence.Seen.Reading(mm) });
        return taken.Look.OwnFinding is { } id ? Seen(taken.Shown with { Seen = new Engine.Evidence.Seen.Named(id), Writing = null }) : "";
    }

    bool IsKnown(string tag) => topic is not null && (Same(tag, Engine.Topics.Kind.NoneId) || topic.Events.Any(e => Same(e.Id, tag))
        || tag.Split(':') is ["change", _] or ["family", _, _] || (tag.Split(':') is ["line", var line] && topic.Lines.Any(l => Same(l.Id, line))));

    static IEnumerable<string> Findings(Clue clue) => clue.Shows switch
    {
        Shows.Table table => table.Findings.Select(f => f.Id),
        Shows.Code code => code.Findings.Select(f => f.Id),
        _ => [],
    };

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
