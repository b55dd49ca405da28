using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Histories;

/// <summary>Makes the tables of one part: as built, then each event in turn, then "none of these", then the fit rules.</summary>
sealed class PartTableBuilder
{
    readonly Topic _topic;
    readonly int _provenance;
    readonly int _part;
    readonly HistoryBuilder _all;
    readonly int _package;
    readonly int _host;
    readonly ulong _relevant;
    readonly ulong _spineEvents;
    readonly List<PartTable> _tables = [];
    readonly List<int> _tableOfRow = [];
    readonly Dictionary<string, int> _ids = new(StringComparer.Ordinal);
    readonly Dictionary<PartState, int> _stateIds = [];

    public PartTableBuilder(Topic topic, int provenance, int part, HistoryBuilder all)
    {
        (_topic, _provenance, _part, _all) = (topic, provenance, part, all);
        var id = topic.Parts[part].Id;
        _package = topic.Packages.Select((p, i) => p.Parts.Contains(id) ? i : -1).Max();
        _host = topic.Parts[part].Host is { } host ? all.Names.Part(host) : -1;
        for (var e = 0; e < topic.Events.Count; e++)
        {
            if (MattersForClues(e)) _relevant |= 1UL << e;
            if (all.Scopes[e] < 0 && (MattersForClues(e) || topic.Events[e].Effects.Any(Changes))) _spineEvents |= 1UL << e;
        }

        StateOf(None, 0);
    }

    public List<PartState> States { get; } = [];

    int None => _topic.Parts[_part].Kinds.Count;

    public PartModel Model() => new(_host, None + 1, States.Count, _tables, [.. _tableOfRow]);

    public void AddRow(SpineRow row, MonthFacts facts)
    {
        var start = Start(row, facts);
        var possible = facts.EventsPossible;
        var key = string.Join(';', start.Select(s => $"{s.Kind},{s.Tags},{s.Chance:R}")) + $"|{row.Events & _spineEvents}|{OwnEvents(possible)}";
        if (!_ids.TryGetValue(key, out var id))
        {
            id = _ids[key] = _tables.Count;
            _tables.Add(Table(start, row.Events, possible));
        }

        _tableOfRow.Add(id);
    }

    bool Changes(Effect effect) => effect is Effect.ChangeKind change && change.Part == _topic.Parts[_part].Id;

    bool MattersForClues(int e) => _topic.Events[e].Effects.Any(effect => effect switch
    {
        Effect.Shift shift => _topic.Dimensions[_all.Names.Dimension(shift.Dimension)].Part == _topic.Parts[_part].Id,
        Effect.Overrule overrule => Reads(_all.Names.ClueOf(overrule.Clue).Node),
        _ => false,
    }) || (_all.Scopes[e] == _part && _topic.Clues.Any(c => c.Node is Node.OfEvent of && of.Event == _topic.Events[e].Id));

    bool Reads(Node node) => node switch
    {
        Node.OfPart of => of.Part == _topic.Parts[_part].Id,
        Node.OfEvent of => _all.Scopes[_all.Names.Event(of.Event)] == _part,
        _ => false,
    };

    ulong OwnEvents(ulong possible)
    {
        var own = 0UL;
        for (var e = 0; e < _topic.Events.Count; e++)
        {
            if (_all.Scopes[e] == _part) own |= possible & (1UL << e);
        }

        return own;
    }

    List<Entry> Start(SpineRow row, MonthFacts facts)
    {
        if (_topic.Parts[_part].IsDate) return [new Entry(facts.DateKinds[_part], 0, facts.DateKinds[_part], 1)];
        var package = _topic.Packages[_package];
        var at = package.Parts.ToList().IndexOf(_topic.Parts[_part].Id);
        var builds = facts.Builds[_package];
        if (row.Choices[_package] is >= 0 and var choice) builds = [builds[choice] with { Share = 1, OffDate = false }];
        var change = _all.Bit($"change:{package.Id}");
        return [.. builds.Select(b =>
        {
            var kind = _all.Names.Kind(_part, package.Builds[b.Build].Kinds[at]);
            return new Entry(kind, b.OffDate ? change : 0, kind, b.Share);
        })];
    }

    PartTable Table(List<Entry> start, ulong spineEvents, ulong possible)
    {
        var entries = start;
        for (var e = 0; e < _topic.Events.Count; e++)
        {
            var bit = 1UL << e;
            var rate = _topic.Events[e].Rates[_provenance];
            if (_all.Scopes[e] < 0 && (spineEvents & bit) != 0) entries = [.. entries.SelectMany(x => After(x, e))];
            else if (_all.Scopes[e] == _part && (possible & bit) != 0 && rate > 0)
                entries = [.. entries.SelectMany(x => Happens(x, e, rate))];
        }

        var none = _topic.Parts[_part].NonePrior;
        entries = [.. entries.Select(x => Tagged(x with { Chance = x.Chance * (1 - none) }))];
        if (none > 0) entries.AddRange(start.Select(s => new Entry(None, 0, s.Built, s.Chance * none)));
        return Merged(entries, spineEvents);
    }

    Entry Tagged(Entry x) => x.Kind < None && _topic.Parts[_part].Kinds[x.Kind].Pitfall is not null
        ? x with { Tags = x.Tags | _all.Bit($"family:{_topic.Parts[_part].Id}:{_topic.Parts[_part].Kinds[x.Kind].Id}") }
        : x;

    // An own event that changes nothing on this bike has not happened, for the story.
    IEnumerable<Entry> Happens(Entry x, int e, double rate)
    {
        yield return x with { Chance = x.Chance * (1 - rate) };
        var bit = 1UL << e;
        foreach (var after in After(x with { Chance = x.Chance * rate }, e))
            yield return after.Kind != x.Kind || (_relevant & bit) != 0 ? after with { Tags = after.Tags | bit } : after;
    }

    IEnumerable<Entry> After(Entry x, int e)
    {
        IEnumerable<Entry> entries = [x];
        foreach (var change in _topic.Events[e].Effects.OfType<Effect.ChangeKind>().Where(c => c.Part == _topic.Parts[_part].Id))
            entries = [.. entries.SelectMany(y => Changed(y, change))];
        return entries;
    }

    IEnumerable<Entry> Changed(Entry x, Effect.ChangeKind change)
    {
        if (change.From is { } from && _all.Names.Kind(_part, from) != x.Kind) return [x];
        return change.To.Select(to => x with { Kind = _all.Names.Kind(_part, to.Kind), Chance = x.Chance * to.Share });
    }

    PartTable Merged(List<Entry> entries, ulong spineEvents)
    {
        var merged = entries.Where(x => x.Chance > 0)
            .GroupBy(x => (x.Kind, x.Tags, x.Built)).Select(g => g.First() with { Chance = g.Sum(x => x.Chance) }).ToList();
        var shares = merged.Select(x => x.Chance).ToArray();
        return new PartTable(
            [.. merged.Select(x => x.Kind)],
            [.. merged.Select(x => StateOf(x.Kind, _relevant & (x.Tags | spineEvents)))],
            [.. merged.Select(x => x.Tags)],
            [.. merged.Select(x => x.Built)],
            Fitted(merged, shares));
    }

    double[][] Fitted(List<Entry> entries, double[] shares)
    {
        var rules = _topic.FitRules.Where(r => r.Part == _topic.Parts[_part].Id).ToList();
        if (_host < 0 || rules.Count == 0) return [shares];
        return [.. Enumerable.Range(0, _topic.Parts[_host].Kinds.Count + 1).Select(host =>
        {
            var barred = rules.Where(r => _all.Names.Kind(_host, r.HostKind) == host).Select(r => _all.Names.Kind(_part, r.Kind)).ToHashSet();
            var left = shares.Select((s, i) => barred.Contains(entries[i].Kind) ? 0 : s).ToArray();
            var total = left.Sum();
            return total > 0 ? [.. left.Select(s => s / total)] : shares;
        })];
    }

    int StateOf(int kind, ulong events)
    {
        var state = new PartState(kind, events);
        if (_stateIds.TryGetValue(state, out var id)) return id;
        States.Add(state);
        return _stateIds[state] = States.Count - 1;
    }

    sealed record Entry(int Kind, ulong Tags, int Built, double Chance);
}
