using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>Published networks by the core that works on topics. Sources: Data/README.md.</summary>
public sealed class PublishedNetworkTests
{
    const double Tolerance = 1e-12;

    public static TheoryData<string, int> Posteriors => Network.Rows(n => n.Posteriors);

    public static TheoryData<string, int> Soft => Network.Rows(n => n.Soft);

    public static TheoryData<string, int> Information => Network.Rows(n => n.VoiBits);

    [Fact]
    public void Rows_of_every_network_add_up_to_1() =>
        Assert.All(Network.Names, name => Assert.Equal(1, Network.Of(name).Model.Weights.Sum(), Tolerance));

    [Theory]
    [MemberData(nameof(Posteriors))]
    public void Posteriors_are_the_published_ones(string name, int index)
    {
        var value = Network.ValuesOf(name).Posteriors[index];
        var network = Network.Of(name);
        AssertPosterior(value.PEvidence, value.Posterior, network.Model, network.Given(value.Evidence), network.Variable(value.Query));
    }

    [Theory]
    [MemberData(nameof(Soft))]
    public void Uncertain_evidence_is_weighed_by_its_likelihood(string name, int index)
    {
        var value = Network.ValuesOf(name).Soft[index];
        var network = Network.Of(name);
        var findings = value.Likelihood.Aggregate(
            network.Given(value.Evidence), (all, l) => all.And(network.Soft(l.Key, s => double.Parse(l.Value[s]))));
        AssertPosterior(value.PEvidence, value.Posterior, network.Model, findings, network.Variable(value.Query));
    }

    [Theory]
    [MemberData(nameof(Information))]
    public void Joint_beliefs_carry_the_information_of_one_variable_on_another(string name, int index)
    {
        var value = Network.ValuesOf(name).VoiBits[index];
        var network = Network.Of(name);
        var findings = network.Given(value.Evidence);
        var (target, observed) = (network.Variable(value.Target), network.Variable(value.Observe));
        var joint = Belief.Joint(network.Model, findings, [network.Pair(value.Target, value.Observe)]);
        var before = Entropy(Belief.Joint(network.Model, findings, [target]));
        Assert.Equal(value.Before, before, 1e-10);
        Assert.Equal(value.Bits, before + Entropy(Belief.Joint(network.Model, findings, [observed])) - Entropy(joint), 1e-10);
    }

    static void AssertPosterior(double total, IReadOnlyDictionary<string, double> posterior, Model model, Likelihood findings, Query query)
    {
        var joint = Belief.Joint(model, findings, [query]);
        Assert.Equal(total, Belief.Total(model, findings), Tolerance);
        Assert.Equal(total, joint.Sum(), Tolerance);
        Assert.Equal(posterior.Count, joint.Length);
        foreach (var (expected, weight) in posterior.Values.Zip(joint)) Assert.Equal(expected, weight / total, Tolerance);
    }

    static double Entropy(double[] weights)
    {
        var total = weights.Sum();
        return -weights.Where(w => w > 0).Sum(w => w / total * Math.Log2(w / total));
    }
}
