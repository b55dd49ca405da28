using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>A small model drawn from a seed, with findings and a plain enumeration of all its histories.</summary>
sealed class SmallModel
{
    const int TagsPerOwner = 2;
    readonly Rng _rng;

    public SmallModel(int rows, int parts, ulong seed)
    {
        _rng = new Rng(seed);
        var all = new List<PartModel>();
        for (var p = 0; p < parts; p++) all.Add(PartOf(p, rows, all));
        Model = new Model(Shares(rows), [.. Enumerable.Range(0, rows).Select(_ => Tags(0))], all);
        Findings = [.. Enumerable.Range(0, 4).Select(_ => Finding())];
    }

    public Model Model { get; }

    public IReadOnlyList<Likelihood> Findings { get; }

    public Likelihood All => Findings.Aggregate(Likelihood.None(Model.Parts.Count), (all, f) => all.And(f));

    /// <summary>A finding that is equally likely whatever the bike is.</summary>
    public Likelihood Flat(double p) => new([.. Model.Weights.Select(_ => p)], [.. Model.Parts.Select(x => Enumerable.Repeat(1.0, x.States).ToArray())]);

    /// <summary>The spine's row, and of each part its state.</summary>
    public IReadOnlyList<Query> Queries =>
    [
        new Query(-1, Model.Weights.Length, [.. Enumerable.Range(0, Model.Weights.Length)]),
        .. Model.Parts.Select((p, i) => new Query(i, p.States, [.. Enumerable.Range(0, p.States)])),
    ];

    public Belief.Story Story() => new(Tags(0) | Tags(1), Tags(Model.Parts.Count) & ~(Tags(0) | Tags(1)));

    /// <summary>P(findings, story) summed over every row and every entry of every part, by values of the queries.</summary>
    public double[] Enumerated(Likelihood findings, IReadOnlyList<Query> queries, Belief.Story story)
    {
        var sums = new double[queries.Aggregate(1, (n, q) => n * q.Values)];
        for (var row = 0; row < Model.Weights.Length; row++) Walk(row, [], Model.Weights[row] * (findings.Rows?[row] ?? 1), findings, queries, story, sums);
        return sums;
    }

    void Walk(int row, List<int> entries, double weight, Likelihood findings, IReadOnlyList<Query> queries, Belief.Story story, double[] sums)
    {
        var p = entries.Count;
        if (p == Model.Parts.Count)
        {
            var tags = entries.Select((e, i) => TableOf(i, row).Tags[e]).Aggregate(Model.Tags[row], (a, b) => a | b);
            if ((story.Required & ~tags) != 0 || (story.Forbidden & tags) != 0) return;
            var at = queries.Aggregate(0, (i, q) => (i * q.Values) + q.ValueOf[q.Part < 0 ? row : TableOf(q.Part, row).State[entries[q.Part]]]);
            sums[at] += weight;
            return;
        }

        var table = TableOf(p, row);
        var host = Model.Parts[p].Host;
        var shares = table.Given(host < 0 ? 0 : TableOf(host, row).Kind[entries[host]]);
        for (var e = 0; e < shares.Length; e++)
            Walk(row, [.. entries, e], weight * shares[e] * (findings.Parts[p]?[table.State[e]] ?? 1), findings, queries, story, sums);
    }

    PartTable TableOf(int part, int row) => Model.Parts[part].Tables[Model.Parts[part].TableOfRow[row]];

    PartModel PartOf(int part, int rows, List<PartModel> before)
    {
        var host = _rng.Below(part + 1) - 1;
        var kinds = 2 + _rng.Below(2);
        var states = kinds + 1;
        var hostKinds = host < 0 ? 1 : before[host].Kinds;
        var tables = Enumerable.Range(0, 1 + _rng.Below(rows)).Select(_ => Table(part, kinds, hostKinds)).ToList();
        return new PartModel(host, kinds, states, tables, [.. Enumerable.Range(0, rows).Select(_ => _rng.Below(tables.Count))]);
    }

    // The last kind has two states, so that clues can tell more than the kind.
    PartTable Table(int part, int kinds, int hostKinds)
    {
        var entries = kinds + 1 + _rng.Below(2);
        var kind = Enumerable.Range(0, entries).Select(e => Math.Min(e, kinds - 1)).ToArray();
        var state = Enumerable.Range(0, entries).Select(e => Math.Min(e, kinds)).ToArray();
        return new PartTable(
            kind, state, [.. kind.Select(_ => Tags(part + 1))], kind, [.. Enumerable.Range(0, hostKinds).Select(_ => Shares(entries))]);
    }

    Likelihood Finding()
    {
        var part = _rng.Below(Model.Parts.Count + 1) - 1;
        var n = part < 0 ? Model.Weights.Length : Model.Parts[part].States;
        var values = Enumerable.Range(0, n).Select(_ => _rng.Below(8) == 0 ? 0 : _rng.Unit()).ToArray();
        return part < 0 ? Likelihood.OfRows(values, Model.Parts.Count) : Likelihood.OfPart(part, values, Model.Parts.Count);
    }

    // A tag is borne by the spine or by exactly one part.
    ulong Tags(int owner) => (ulong)_rng.Below(1 << TagsPerOwner) << (owner * TagsPerOwner);

    double[] Shares(int n)
    {
        var shares = Enumerable.Range(0, n).Select(_ => _rng.Below(6) == 0 ? 0 : 0.05 + _rng.Unit()).ToArray();
        if (shares.Sum() == 0) shares[0] = 1;
        var total = shares.Sum();
        return [.. shares.Select(s => s / total)];
    }
}
