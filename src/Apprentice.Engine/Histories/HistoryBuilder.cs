using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Histories;

/// <summary>Enumerates the histories of one provenance of a topic and merges them into spine rows and part tables.</summary>
sealed class HistoryBuilder
{
    readonly Topic _topic;
    readonly int _provenance;
    readonly List<double> _weights = [];
    readonly List<ulong> _rowTags = [];
    readonly PartTableBuilder[] _parts;
    readonly Dictionary<string, int> _tagOf;

    public HistoryBuilder(Topic topic, int provenance)
    {
        (_topic, _provenance) = (topic, provenance);
        Names = new TopicIndex(topic);
        Scopes = [.. topic.Events.Select(ScopeOf)];
        Tags = [.. TagsOf(topic)];
        _tagOf = Tags.Select((t, i) => (t.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        _parts = [.. topic.Parts.Select((_, p) => new PartTableBuilder(topic, provenance, p, this))];
        Segments = [.. topic.Lines.SelectMany((_, l) => SegmentsOf(l))];
        for (var s = 0; s < Segments.Count; s++) AddRows(s);
    }

    public TopicIndex Names { get; }

    public IReadOnlyList<int> Scopes { get; }

    public IReadOnlyList<Tag> Tags { get; }

    public List<SpineRow> Rows { get; } = [];

    public IReadOnlyList<Segment> Segments { get; }

    public IEnumerable<List<PartState>> States => _parts.Select(p => p.States);

    public Model Model() => new([.. _weights], [.. _rowTags], [.. _parts.Select(p => p.Model())]);

    /// <summary>The tag's bit, or 0 when the topic has no such tag.</summary>
    public ulong Bit(string tag) => _tagOf.TryGetValue(tag, out var i) ? 1UL << i : 0;

    static IEnumerable<Tag> TagsOf(Topic topic)
    {
        foreach (var e in topic.Events) yield return new Tag(e.Id, e.Pitfall);
        foreach (var line in topic.Lines)
        {
            if (line.Pitfall is { } pitfall) yield return new Tag($"line:{line.Id}", pitfall);
        }

        foreach (var package in topic.Packages)
        {
            if (package.Builds.FirstOrDefault(b => b.From?.Pitfall is not null)?.From?.Pitfall is { } pitfall)
                yield return new Tag($"change:{package.Id}", pitfall);
        }

        foreach (var part in topic.Parts)
        {
            foreach (var kind in part.Kinds)
            {
                if (kind.Pitfall is { } pitfall) yield return new Tag($"family:{part.Id}:{kind.Id}", pitfall);
            }
        }
    }

    // An event that concerns one part only belongs to that part; any other joins the spine.
    int ScopeOf(BikeEvent e)
    {
        var touched = e.Effects.Select(effect => effect switch
        {
            Effect.ChangeKind change => Names.Part(change.Part),
            Effect.Shift shift => Names.Part(_topic.Dimensions[Names.Dimension(shift.Dimension)].Part),
            Effect.Overrule overrule => NodePart(Names.ClueOf(overrule.Clue).Node),
            _ => throw new System.Diagnostics.UnreachableException(),
        }).Distinct().ToList();
        return touched is [>= 0] ? touched[0] : -1;
    }

    int NodePart(Node node) => node is Node.OfPart part ? Names.Part(part.Part) : -1;

    IEnumerable<Segment> SegmentsOf(int line)
    {
        var model = _topic.Lines[line];
        if (model.Shares[_provenance] <= 0) yield break;
        if (_topic.Years.Count == 0)
        {
            yield return new Segment(line, [], [1.0], MonthFacts.Of(_topic, model, null));
            yield break;
        }

        var months = _topic.Years
            .SelectMany(y => Enumerable.Range(1, 12).Select(m => (Month: Month.Of(y.Year, m), Weight: y.Shares[_provenance])))
            .Where(m => m.Weight > 0 && !(m.Month < model.From) && !(m.Month > model.To)).ToList();
        var total = months.Sum(m => m.Weight);
        foreach (var alike in months.Select(m => (m.Month, Weight: m.Weight / total, Facts: MonthFacts.Of(_topic, model, m.Month))).GroupBy(m => m.Facts.Key(), StringComparer.Ordinal))
            yield return new Segment(line, [.. alike.Select(m => m.Month)], [.. alike.Select(m => m.Weight)], alike.First().Facts);
    }

    void AddRows(int segment)
    {
        var it = Segments[segment];
        var weight = _topic.Lines[it.Line].Shares[_provenance] * it.Weights.Sum();
        foreach (var (events, eventChance) in SpineEvents(it.Facts.EventsPossible))
        {
            foreach (var (choices, choiceChance) in Choices(it.Facts))
            {
                var row = new SpineRow(it.Line, segment, events, choices);
                _weights.Add(weight * eventChance * choiceChance);
                _rowTags.Add(RowTags(row));
                Rows.Add(row);
                foreach (var part in _parts) part.AddRow(row, it.Facts);
            }
        }
    }

    List<(ulong Events, double Chance)> SpineEvents(ulong possible)
    {
        var all = new List<(ulong Events, double Chance)> { (0, 1) };
        for (var e = 0; e < _topic.Events.Count; e++)
        {
            var rate = _topic.Events[e].Rates[_provenance];
            if (Scopes[e] >= 0 || (possible & (1UL << e)) == 0 || rate <= 0) continue;
            var bit = 1UL << e;
            all = [.. all.SelectMany(a => new[] { (a.Events, a.Chance * (1 - rate)), (a.Events | bit, a.Chance * rate) })];
        }

        return all;
    }

    // Packages of several parts are drawn in the spine where there is a choice; single parts in their own table.
    List<(IReadOnlyList<int> Choices, double Chance)> Choices(MonthFacts facts)
    {
        var all = new List<(IReadOnlyList<int> Choices, double Chance)> { ([], 1) };
        for (var p = 0; p < _topic.Packages.Count; p++)
        {
            var builds = facts.Builds[p];
            if (_topic.Packages[p].Parts.Count == 1)
                all = [.. all.Select(a => ((IReadOnlyList<int>)[.. a.Choices, -1], a.Chance))];
            else
                all = [.. all.SelectMany(a => builds.Select((b, i) => ((IReadOnlyList<int>)[.. a.Choices, i], a.Chance * b.Share)))];
        }

        return all;
    }

    ulong RowTags(SpineRow row)
    {
        var facts = Segments[row.Segment].Facts;
        var tags = row.Events;
        if (facts.KeptOld) tags |= Bit($"line:{_topic.Lines[row.Line].Id}");
        for (var p = 0; p < row.Choices.Count; p++)
        {
            if (row.Choices[p] >= 0 && facts.Builds[p][row.Choices[p]].OffDate) tags |= Bit($"change:{_topic.Packages[p].Id}");
        }

        return tags;
    }
}
