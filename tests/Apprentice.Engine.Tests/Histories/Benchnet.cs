using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>The made-up network of 29 nodes as a spine of date and line with five parts: variants are summed into the entries, a part that was replaced carries its tag.</summary>
sealed class Benchnet
{
    public const int Parts = 5;
    const int Dates = 60;
    const int Lines = 4;
    const int Kinds = 4;

    readonly Dictionary<string, Node> _nodes = Network.Read<Dictionary<string, Node>>("benchnet_grain.json");

    public Benchnet()
    {
        var rows = Enumerable.Range(0, Dates * Lines).ToList();
        Model = new Model([.. rows.Select(r => Value("date", DateOf(r)) * Value("line", LineOf(r), DateOf(r)))], [], [.. Enumerable.Range(1, Parts).Select(PartOf)]);
        DateQuery = new Query(-1, Dates, [.. rows.Select(DateOf)]);
        LineQuery = new Query(-1, Lines, [.. rows.Select(LineOf)]);
    }

    public Model Model { get; }

    public Query DateQuery { get; }

    public Query LineQuery { get; }

    public static Query Fitted(int part) => new(part, Kinds, [0, 1, 2, 3]);

    /// <summary>A finding of a clue: serial and badge read the spine, a1 to b5 the parts.</summary>
    public Likelihood Is(string clue, int state) => clue switch
    {
        "serial" => Likelihood.OfRows([.. Enumerable.Range(0, Dates * Lines).Select(r => Value(clue, state, DateOf(r)))], Parts),
        "badge" => Likelihood.OfRows([.. Enumerable.Range(0, Dates * Lines).Select(r => Value(clue, state, LineOf(r)))], Parts),
        _ => Likelihood.OfPart(clue[1] - '1', [.. Enumerable.Range(0, Kinds).Select(k => Value(clue, state, k))], Parts),
    };

    public Likelihood Given(IReadOnlyDictionary<string, int> evidence) =>
        evidence.Aggregate(Likelihood.None(Parts), (all, e) => all.And(Is(e.Key, e.Value)));

    static int DateOf(int row) => row / Lines;

    static int LineOf(int row) => row % Lines;

    // Own state fastest, then the parents in the order listed.
    double Value(string name, int state, params int[] parents)
    {
        var node = _nodes[name];
        var (at, stride) = (state, node.K);
        for (var p = 0; p < parents.Length; p++)
        {
            at += parents[p] * stride;
            stride *= _nodes[node.Parents[p]].K;
        }

        return node.Values[at];
    }

    PartModel PartOf(int part)
    {
        var rows = Enumerable.Range(0, Dates * Lines).ToList();
        return new PartModel(-1, Kinds, Kinds, [.. rows.Select(r => TableOf(part, DateOf(r), LineOf(r)))], [.. rows]);
    }

    PartTable TableOf(int part, int date, int line)
    {
        var entries = Enumerable.Range(0, Kinds).SelectMany(f => new[] { (Fitted: f, Replaced: 0), (Fitted: f, Replaced: 1) }).ToList();
        var kinds = entries.Select(e => e.Fitted).ToArray();
        var shares = entries.Select(e => Enumerable.Range(0, Kinds).Sum(v =>
            Value($"v{part}", v, date, line) * Value($"r{part}", e.Replaced) * Value($"f{part}", e.Fitted, v, e.Replaced))).ToArray();
        return new PartTable(kinds, kinds, [.. entries.Select(e => e.Replaced == 1 ? 1UL << (part - 1) : 0)], kinds, [shares]);
    }

    sealed record Node(int K, IReadOnlyList<string> Parents, IReadOnlyList<double> Values);
}
