using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Histories;

/// <summary>Indices of a topic's short names.</summary>
public sealed class TopicIndex
{
    readonly Dictionary<string, int> _parts;
    readonly Dictionary<string, int> _clues;
    readonly Dictionary<string, int> _events;
    readonly Dictionary<string, int> _dimensions;
    readonly Topic _topic;

    /// <summary>Indices of a topic.</summary>
    public TopicIndex(Topic topic)
    {
        _topic = topic;
        _parts = Index(topic.Parts.Select(p => p.Id));
        _clues = Index(topic.Clues.Select(c => c.Id));
        _events = Index(topic.Events.Select(e => e.Id));
        _dimensions = Index(topic.Dimensions.Select(d => d.Id));
    }

    /// <summary>Index of a part.</summary>
    /// <exception cref="KeyNotFoundException">There is no such part.</exception>
    public int Part(string id) => _parts[id];

    /// <summary>Index of a clue.</summary>
    /// <exception cref="KeyNotFoundException">There is no such clue.</exception>
    public int Clue(string id) => _clues[id];

    /// <summary>Index of an event.</summary>
    /// <exception cref="KeyNotFoundException">There is no such event.</exception>
    public int Event(string id) => _events[id];

    /// <summary>Index of a dimension.</summary>
    /// <exception cref="KeyNotFoundException">There is no such dimension.</exception>
    public int Dimension(string id) => _dimensions[id];

    /// <summary>The clue of a short name.</summary>
    /// <exception cref="KeyNotFoundException">There is no such clue.</exception>
    public Clue ClueOf(string id) => _topic.Clues[_clues[id]];

    /// <summary>Index of a kind of a part; the number of kinds for "none".</summary>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public int Kind(int part, string id)
    {
        var kinds = _topic.Parts[part].Kinds;
        for (var k = 0; k < kinds.Count; k++)
        {
            if (string.Equals(kinds[k].Id, id, StringComparison.Ordinal)) return k;
        }

        return id == Topics.Kind.NoneId ? kinds.Count : throw new ArgumentException($"{_topic.Parts[part].Id} has no kind {id}", nameof(id));
    }

    /// <summary>Short name of a kind by index.</summary>
    public string KindId(int part, int kind) =>
        kind < _topic.Parts[part].Kinds.Count ? _topic.Parts[part].Kinds[kind].Id : Topics.Kind.NoneId;

    static Dictionary<string, int> Index(IEnumerable<string> ids) =>
        ids.Select((id, i) => (id, i)).ToDictionary(p => p.id, p => p.i, StringComparer.Ordinal);
}
