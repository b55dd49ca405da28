using System.Text.Json;
using System.Text.Json.Serialization;
using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Tests.Histories;

public sealed class BenchnetTests
{
    const double Tolerance = 1e-12;
    static readonly Benchnet Net = new();
    static readonly Values Oracle = JsonSerializer.Deserialize<Values>(File.ReadAllText(Network.FileOf("benchnet_posteriors.json"))) ?? throw new InvalidDataException();

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Fitted_parts_line_and_date_are_as_worked_out_elsewhere(int index)
    {
        var value = Oracle.Cases[index];
        var findings = Net.Given(value.Evidence);
        Assert.Equal(value.Total, Belief.Total(Net.Model, findings), Tolerance);
        Assert.Equal(1, Belief.Total(Net.Model, findings) / value.Total, Tolerance);
        AssertClose(value.Line, Posterior(findings, Net.LineQuery));
        var dates = Posterior(findings, Net.DateQuery);
        Assert.Equal(value.LikeliestDate[1], dates.Max(), Tolerance);
        Assert.Equal(value.LikeliestDate[1], dates[(int)value.LikeliestDate[0]], Tolerance);
        foreach (var (part, expected) in new[] { value.F1, value.F2, value.F3, value.F4, value.F5 }.Index())
            AssertClose(expected, Posterior(findings, Benchnet.Fitted(part)));
    }

    [Fact]
    public void All_five_parts_and_the_line_at_once_add_up_to_each_alone()
    {
        var findings = Net.Given(Oracle.Cases[0].Evidence);
        var joint = Belief.Joint(Net.Model, findings, [Net.LineQuery, .. Enumerable.Range(0, Benchnet.Parts).Select(Benchnet.Fitted)]);
        Assert.Equal(4 * 1024, joint.Length);
        for (var part = 0; part < Benchnet.Parts; part++)
        {
            var alone = Belief.Joint(Net.Model, findings, [Benchnet.Fitted(part)]);
            var stride = (int)Math.Pow(4, Benchnet.Parts - 1 - part);
            for (var k = 0; k < 4; k++) Assert.Equal(alone[k], joint.Where((_, i) => i / stride % 4 == k).Sum(), Tolerance);
        }
    }

    [Fact]
    public void Replaced_parts_are_told_by_their_tags()
    {
        // P(replaced) as in the tables of the network: r1 .22, r2 .19.
        var nothing = Likelihood.None(Benchnet.Parts);
        var total = Belief.Total(Net.Model, nothing);
        Assert.Equal(0.22, Belief.Total(Net.Model, nothing, new Belief.Story(1, 0)) / total, 1e-5);
        Assert.Equal(0.22 * 0.19, Belief.Total(Net.Model, nothing, new Belief.Story(3, 0)) / total, 1e-5);
        Assert.Equal(0.22 * 0.81, Belief.Total(Net.Model, nothing, new Belief.Story(1, 2)) / total, 1e-5);
    }

    [Fact]
    public void A_part_replaced_and_not_replaced_add_up_to_all()
    {
        var findings = Net.Given(Oracle.Cases[1].Evidence);
        for (var part = 0; part < Benchnet.Parts; part++)
        {
            var replaced = Belief.Total(Net.Model, findings, new Belief.Story(1UL << part, 0));
            var kept = Belief.Total(Net.Model, findings, new Belief.Story(0, 1UL << part));
            Assert.Equal(1, (replaced + kept) / Oracle.Cases[1].Total, Tolerance);
        }
    }

    static double[] Posterior(Likelihood findings, Query query)
    {
        var joint = Belief.Joint(Net.Model, findings, [query]);
        var total = joint.Sum();
        return [.. joint.Select(w => w / total)];
    }

    static void AssertClose(IReadOnlyList<double> expected, double[] actual)
    {
        Assert.Equal(expected.Count, actual.Length);
        foreach (var (e, a) in expected.Zip(actual)) Assert.Equal(e, a, Tolerance);
    }

    sealed record Values([property: JsonPropertyName("cases")] IReadOnlyList<Case> Cases);

    sealed record Case(
        [property: JsonPropertyName("evidence")] IReadOnlyDictionary<string, int> Evidence,
        [property: JsonPropertyName("p_evidence")] double Total,
        [property: JsonPropertyName("date_mode_p")] IReadOnlyList<double> LikeliestDate,
        [property: JsonPropertyName("line")] IReadOnlyList<double> Line,
        [property: JsonPropertyName("f1")] IReadOnlyList<double> F1,
        [property: JsonPropertyName("f2")] IReadOnlyList<double> F2,
        [property: JsonPropertyName("f3")] IReadOnlyList<double> F3,
        [property: JsonPropertyName("f4")] IReadOnlyList<double> F4,
        [property: JsonPropertyName("f5")] IReadOnlyList<double> F5);
}
