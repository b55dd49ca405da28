using System.Text.Json;
using System.Text.Json.Serialization;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>A published network as a spine without parts: every full assignment is a row.</summary>
sealed class Network
{
    static readonly JsonSerializerOptions Snake = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };
    static readonly Lazy<Dictionary<string, NetworkValues>> All = new(() => Values().ToDictionary(n => n.Name, n => n.Values));

    readonly NetworkTables _tables;
    readonly int[][] _rows;

    Network(NetworkTables tables)
    {
        _tables = tables;
        var rows = new List<int[]> { Array.Empty<int>() };
        foreach (var variable in tables.Order)
            rows = [.. rows.SelectMany(r => Enumerable.Range(0, tables.States[variable].Count).Select(s => (int[])[.. r, s]))];
        _rows = [.. rows];
        Model = new Model([.. _rows.Select(WeightOf)], [], []);
    }

    public static IEnumerable<string> Names => All.Value.Keys;

    public Model Model { get; }

    public static NetworkValues ValuesOf(string name) => All.Value[name];

    public static Network Of(string name) => new(All.Value[name].Network);

    /// <summary>One theory row per entry of a list of the values of each network.</summary>
    public static TheoryData<string, int> Rows<T>(Func<NetworkValues, IReadOnlyList<T>> list)
    {
        var data = new TheoryData<string, int>();
        foreach (var (name, values) in All.Value)
        {
            for (var i = 0; i < list(values).Count; i++) data.Add(name, i);
        }

        return data;
    }

    public Likelihood Is(string variable, string state) => Soft(variable, s => _tables.States[variable][s] == state ? 1 : 0);

    public Likelihood Soft(string variable, Func<int, double> likelihood)
    {
        var at = At(variable);
        return Likelihood.OfRows([.. _rows.Select(r => likelihood(r[at]))], 0);
    }

    public Likelihood Given(IReadOnlyDictionary<string, string> evidence) =>
        evidence.Aggregate(Likelihood.None(0), (all, e) => all.And(Is(e.Key, e.Value)));

    public FindingSet Findings(IEnumerable<KeyValuePair<string, string>> evidence) =>
        FindingSet.Independent(0, [.. evidence.Select(e => Is(e.Key, e.Value))]);

    public Query Variable(string variable) => new(-1, _tables.States[variable].Count, [.. _rows.Select(r => r[At(variable)])]);

    /// <summary>Two variables as one, the second fastest.</summary>
    public Query Pair(string first, string second)
    {
        var (a, b) = (Variable(first), Variable(second));
        return new Query(-1, a.Values * b.Values, [.. a.ValueOf.Zip(b.ValueOf, (x, y) => (x * b.Values) + y)]);
    }

    /// <summary>The same network with bit 0 as a tag on the rows where a variable has a state.</summary>
    public Model Tagged(string variable, string state) =>
        new(Model.Weights, [.. (Is(variable, state).Rows ?? []).Select(x => x > 0 ? 1UL : 0UL)], []);

    public static string FileOf(string name) => Path.Combine(AppContext.BaseDirectory, "Data", name);

    public static T Read<T>(string name) =>
        JsonSerializer.Deserialize<T>(File.ReadAllText(FileOf(name)), Snake) ?? throw new InvalidDataException(name);

    static IEnumerable<(string Name, NetworkValues Values)> Values() =>
        Read<Dictionary<string, NetworkValues>>("bn_oracles.json").Select(p => (p.Key, p.Value));

    int At(string variable) => _tables.Order.ToList().IndexOf(variable);

    double WeightOf(int[] row)
    {
        var weight = 1.0;
        for (var v = 0; v < row.Length; v++)
        {
            var line = _tables.Cpt[_tables.Order[v]].Single(l => l.Given.All(g => _tables.States[g.Key][row[At(g.Key)]] == g.Value));
            weight *= line.P[row[v]];
        }

        return weight;
    }
}

sealed record NetworkTables(
    IReadOnlyList<string> Order, IReadOnlyDictionary<string, IReadOnlyList<string>> States, IReadOnlyDictionary<string, IReadOnlyList<CptRow>> Cpt);

sealed record CptRow(IReadOnlyDictionary<string, string> Given, IReadOnlyList<double> P);

sealed record NetworkValues(
    NetworkTables Network, IReadOnlyList<PosteriorValue> Posteriors, IReadOnlyList<SoftValue> Soft, IReadOnlyList<ConflictValue> Conflicts,
    IReadOnlyList<InformationValue> VoiBits);

sealed record PosteriorValue(
    string Query, IReadOnlyDictionary<string, string> Evidence, double PEvidence, IReadOnlyDictionary<string, double> Posterior);

sealed record SoftValue(
    string Query, IReadOnlyDictionary<string, string> Evidence, IReadOnlyDictionary<string, IReadOnlyList<string>> Likelihood, double PEvidence,
    IReadOnlyDictionary<string, double> Posterior);

sealed record ConflictValue(IReadOnlyDictionary<string, string> Evidence, [property: JsonPropertyName("conf_log2")] double Log2);

sealed record InformationValue(
    string Target, string Observe, IReadOnlyDictionary<string, string> Evidence, [property: JsonPropertyName("H_before")] double Before,
    [property: JsonPropertyName("expected_entropy_reduction_bits")] double Bits);
