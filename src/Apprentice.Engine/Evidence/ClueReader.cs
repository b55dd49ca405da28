using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>Turns findings of a topic into likelihoods over its histories.</summary>
public sealed class ClueReader
{
    const int MostKept = 20_000;
    readonly HistoryTable _table;
    readonly Dictionary<Finding, Likelihood> _single = [];
    readonly Dictionary<(string Clue, Channel Channel), Outcomes> _outcomes = [];
    readonly Dictionary<string, (int Part, IReadOnlyList<IReadOnlyList<double>> Shares)> _shares = new(StringComparer.Ordinal);
    readonly Dictionary<string, PlateShares> _plates = new(StringComparer.Ordinal);

    /// <summary>A reader for a table.</summary>
    public ClueReader(HistoryTable table) => _table = table;

    int Parts => _table.Topic.Parts.Count;

    /// <summary>Findings as a set; hidden ones tell nothing.</summary>
    /// <exception cref="KeyNotFoundException">A clue that the topic does not have.</exception>
    /// <exception cref="ArgumentException">A finding that the clue does not have.</exception>
    public FindingSet SetOf(IReadOnlyList<Finding> findings)
    {
        var groups = findings.Select((f, i) => (Finding: f, Index: i)).GroupBy(f => GroupKey(f.Finding)).Select(g =>
        {
            var members = g.Aggregate(0UL, (bits, f) => bits | (1UL << f.Index));
            return new FindingSet.Group(members, subset => Likely([.. g.Where(f => (subset & (1UL << f.Index)) != 0).Select(f => f.Finding)]));
        });
        return new FindingSet(Parts, findings.Count, [.. groups]);
    }

    /// <summary>The likelihood of findings of one group.</summary>
    public Likelihood Likely(IReadOnlyList<Finding> group)
    {
        if (group.Count != 1) return LikelyTogether(group);
        if (_single.TryGetValue(group[0], out var known)) return known;
        if (_single.Count >= MostKept) _single.Clear();
        return _single[group[0]] = LikelyTogether(group);
    }

    Likelihood LikelyTogether(IReadOnlyList<Finding> group)
    {
        var seen = group.Where(f => f.Seen is not Seen.Hidden).ToList();
        if (seen.Count == 0) return Likelihood.None(Parts);
        var clue = _table.Names.ClueOf(seen[0].Clue);
        return clue.Shows is Shows.Measured measured ? Measured(measured.Dimension, seen, -1) : Looks(clue, seen);
    }

    /// <summary>The likelihood of readings of one dimension when one of them counts only if it is neither slip nor blunder.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="right">Index of the one, or −1 for none.</param>
    public Likelihood Measured(string dimension, IReadOnlyList<Finding> readings, int right)
    {
        var size = _table.Topic.Dimensions[_table.Names.Dimension(dimension)];
        var part = _table.Names.Part(size.Part);
        var models = readings.Select(r => (Model: ModelOf(r.Clue, r.Channel, r.Datum), Value: ((Seen.Reading)r.Seen).Millimetres)).ToList();
        var states = _table.States[part].Select(s => Readings(SpreadOf(size, s), models, right)).ToArray();
        return Likelihood.OfPart(part, states, Parts);
    }

    /// <summary>The model of a clue's readings.</summary>
    public MeasuredModel ModelOf(string clue, Channel channel, int? datum)
    {
        var it = _table.Names.ClueOf(clue);
        return new MeasuredModel((Shows.Measured)it.Shows, ChannelOf(it, channel), datum);
    }

    /// <summary>Distribution of a dimension in a state of its part.</summary>
    public SizeSpread SpreadOf(Dimension size, PartState state)
    {
        var nominal = state.Kind < size.Nominals.Count ? size.Nominals[state.Kind] : null;
        if (nominal is not { } mean) return new SizeSpread(null, 0, size.Low, size.High);
        var variance = size.Spreads[state.Kind] * size.Spreads[state.Kind];
        for (var e = 0; e < _table.Topic.Events.Count; e++)
        {
            if ((state.Events & (1UL << e)) == 0) continue;
            foreach (var shift in _table.Topic.Events[e].Effects.OfType<Effect.Shift>().Where(s => s.Dimension == size.Id))
            {
                mean += shift.Millimetres;
                variance += shift.Spread * shift.Spread;
            }
        }

        return new SizeSpread(mean, Math.Sqrt(variance), size.Low, size.High);
    }

    /// <summary>All that a first look at a clue can show, as likelihoods; steps of a reading are joined into bins.</summary>
    public Outcomes OutcomesOf(string clue, Channel channel)
    {
        if (_outcomes.TryGetValue((clue, channel), out var known)) return known;
        return _outcomes[(clue, channel)] = Outcomes.Of(_table, this, clue, channel, []);
    }

    /// <summary>All that a look can show after some findings: another look at the same marking shares what it shows, another reading of the same size its true size.</summary>
    public Outcomes OutcomesOf(string clue, Channel channel, IReadOnlyList<Finding> findings)
    {
        var key = GroupKeyOf(_table.Names.ClueOf(clue));
        var before = findings.Where(f => f.Seen is not Seen.Hidden && GroupKey(f).Equals(key)).ToList();
        return before.Count == 0 ? OutcomesOf(clue, channel) : Outcomes.Of(_table, this, clue, channel, before);
    }

    /// <summary>How a clue reaches the bench by a channel; a channel that the clue does not name is read like the bench.</summary>
    public static ClueChannel ChannelOf(Clue clue, Channel channel) =>
        clue.Channels.FirstOrDefault(c => c.Channel == channel) ?? new ClueChannel(channel, 0, 0);

    /// <summary>Findings and misreading share of a clue that is not measured.</summary>
    public static (IReadOnlyList<string> Ids, double Misread) FindingsOf(Clue clue, Channel channel) => clue.Shows switch
    {
        Shows.Table t => ([.. t.Findings.Select(f => f.Id)], t.Misread + ChannelOf(clue, channel).ExtraMisread),
        Shows.Code c => ([.. c.Findings.Select(f => f.Id)], c.Misread + ChannelOf(clue, channel).ExtraMisread),
        _ => throw new ArgumentException($"{clue.Id} is measured", nameof(clue)),
    };

    /// <summary>What a clue shows before misreading, per row of the spine or per state of its part.</summary>
    /// <returns>Index of the part, or −1 for the spine, and a share per finding for each row or state.</returns>
    public (int Part, IReadOnlyList<IReadOnlyList<double>> Shares) SharesOf(Clue clue)
    {
        if (!_shares.TryGetValue(clue.Id, out var known)) known = _shares[clue.Id] = new ClueShares(_table, clue).All();
        return known;
    }

    /// <summary>The writings of a code apart: the true number and its decoys.</summary>
    public PlateShares PlateOf(Clue clue)
    {
        if (!_plates.TryGetValue(clue.Id, out var known)) known = _plates[clue.Id] = new PlateShares(_table, clue);
        return known;
    }

    /// <summary>The same after some looks at the clue.</summary>
    public (int Part, IReadOnlyList<IReadOnlyList<double>> Shares) SharesOf(Clue clue, IReadOnlyList<Finding> looks)
    {
        var (part, shares) = SharesOf(clue);
        if (looks.Count == 0) return (part, shares);
        var seen = Indices(clue, looks);
        return (part, [.. shares.Select((s, v) => LooksGiven(clue, s, v, seen)).Select(s => s.Sum() is > 0 and var sum ? (IReadOnlyList<double>)[.. s.Select(x => x / sum)] : s)]);
    }

    static object GroupKeyOf(Clue clue) => clue.Shows is Shows.Measured m ? ("size", m.Dimension) : ("clue", clue.Id);

    object GroupKey(Finding finding) => GroupKeyOf(_table.Names.ClueOf(finding.Clue));

    static double Readings(SizeSpread spread, List<(MeasuredModel Model, double Value)> readings, int right)
    {
        if (readings is [var only])
        {
            var half = only.Model.Step / 2;
            return only.Model.Between(only.Value - half, only.Value + half, spread, right == 0);
        }

        var points = SizePoints.Of(spread, readings);
        var sum = points.Elsewhere * readings.Aggregate(1.0, (product, r) => product * r.Model.Blunder * r.Model.FlatStep) * (right >= 0 ? 0 : 1);
        foreach (var (size, weight) in points.Points)
        {
            var product = weight;
            for (var i = 0; i < readings.Count; i++) product *= readings[i].Model.Given(readings[i].Value, size, right == i);
            sum += product;
        }

        return sum;
    }

    Likelihood Looks(Clue clue, List<Finding> looks)
    {
        var (part, shares) = SharesOf(clue);
        var seen = Indices(clue, looks);
        var values = new double[shares.Count];
        for (var v = 0; v < values.Length; v++) values[v] = LooksGiven(clue, shares[v], v, seen).Sum();
        return part < 0 ? Likelihood.OfRows(values, Parts) : Likelihood.OfPart(part, values, Parts);
    }

    static List<SeenWriting> Indices(Clue clue, IReadOnlyList<Finding> looks) =>
    [
        .. looks.Select(l =>
        {
            var (ids, misread) = FindingsOf(clue, l.Channel);
            var at = ids.ToList().IndexOf(((Seen.Named)l.Seen).Id);
            return at < 0 ? throw new ArgumentException($"{clue.Id} cannot show {((Seen.Named)l.Seen).Id}", nameof(looks)) : new SeenWriting(at, misread, l.Writing);
        }),
    ];

    // Looking twice at one marking: what it shows is shared, each look has its own misreading.
    double[] LooksGiven(Clue clue, IReadOnlyList<double> shares, int row, List<SeenWriting> seen)
    {
        if (clue.Shows is Shows.Code && seen.Exists(l => l.Writing is not null)) return PlateOf(clue).Given(row, seen);
        var products = new double[shares.Count];
        for (var f = 0; f < products.Length; f++)
        {
            products[f] = shares[f];
            foreach (var look in seen) products[f] *= look.Given(f, products.Length);
        }

        return products;
    }
}
