using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Tests.Histories;

public class MarginalsTests
{
    [Fact]
    public void One_pass_gives_what_a_pass_for_each_part_gives_on_the_bench_network()
    {
        var net = new Benchnet();
        var findings = net.Given(new Dictionary<string, int>(StringComparer.Ordinal) { ["serial"] = 2, ["badge"] = 1, ["a1"] = 0, ["b1"] = 2, ["a3"] = 1 });
        Same(net.Model, findings, 1e-14);
    }

    [Fact]
    public void One_pass_is_right_for_parts_that_sit_on_each_other()
    {
        // Row × host (2 kinds) × two guests that depend on it, one with a guest of its own.
        var host = new PartModel(-1, 2, 2, [Table([0, 1], [[0.3, 0.7]]), Table([0, 1], [[0.6, 0.4]])], [0, 1]);
        var left = new PartModel(0, 2, 2, [Table([0, 1], [[0.9, 0.1], [0.2, 0.8]])], [0, 0]);
        var right = new PartModel(0, 2, 2, [Table([0, 1], [[0.5, 0.5], [0.1, 0.9]])], [0, 0]);
        var guest = new PartModel(2, 2, 2, [Table([0, 1], [[0.25, 0.75], [0.65, 0.35]])], [0, 0]);
        var alone = new PartModel(-1, 2, 2, [Table([0, 1], [[0.15, 0.85]]), Table([0, 1], [[0.5, 0.5]])], [0, 1]);
        var model = new Model([0.4, 0.6], [], [host, left, right, guest, alone]);
        var findings = new Likelihood([0.7, 0.2], [[0.9, 0.3], [0.1, 0.8], null, [0.6, 0.2], [0.3, 0.4]]);
        Same(model, findings, 1e-15);
    }

    static PartTable Table(int[] kinds, double[][] shares) => new(kinds, kinds, new ulong[kinds.Length], kinds, shares);

    static void Same(Model model, Likelihood findings, double tolerance)
    {
        var all = Marginals.Of(model, findings);
        for (var p = 0; p < model.Parts.Count; p++)
        {
            var states = model.Parts[p].States;
            var one = Belief.Joint(model, findings, [new Query(p, states, [.. Enumerable.Range(0, states)])]);
            for (var s = 0; s < states; s++) Assert.Equal(one[s], all[p][s], tolerance);
        }
    }
}
