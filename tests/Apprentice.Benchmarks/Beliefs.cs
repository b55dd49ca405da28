using Apprentice.Engine.Histories;
using Apprentice.Engine.Tests.Histories;
using BenchmarkDotNet.Attributes;

namespace Apprentice.Benchmarks;

/// <summary>Belief and the marginals of five parts on the made-up network of 29 nodes; goal 25,000 a second on one core.</summary>
[MemoryDiagnoser]
public class Beliefs
{
    static readonly Dictionary<string, int> Evidence = new(StringComparer.Ordinal)
    {
        ["serial"] = 2,
        ["badge"] = 1,
        ["a1"] = 0,
        ["b1"] = 2,
        ["a2"] = 3,
        ["a3"] = 1,
        ["b4"] = 0,
        ["a5"] = 2,
    };

    readonly Benchnet _net = new();
    readonly Likelihood _findings;

    public Beliefs() => _findings = _net.Given(Evidence);

    /// <summary>With the likelihoods at hand: the states of all five parts, each of which also adds up to the belief in the findings.</summary>
    [Benchmark]
    public double FiveMarginals() => Marginals.Of(_net.Model, _findings)[0][0];

    /// <summary>The belief in the findings alone.</summary>
    [Benchmark]
    public double Total() => Belief.Total(_net.Model, _findings);
}
