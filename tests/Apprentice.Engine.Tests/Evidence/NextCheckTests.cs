using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

public sealed class NextCheckTests
{
    [Theory]
    [InlineData("xray", 0.1848072365)]
    [InlineData("smoke", 0.0323739951)]
    [InlineData("bronc", 0.0025397985)]
    public void Bits_of_a_check_are_its_information_on_the_part(string clue, double bits)
    {
        // Lauritzen & Spiegelhalter 1988 as a topic: I(lung; clue), by exact enumeration.
        var next = Reason(Chest(), ["lung"], clue).Next;
        Assert.Equal(bits, Assert.Single(next).Bits, 1e-10);
    }

    [Fact]
    public void Checks_are_ranked_by_bits_a_minute()
    {
        var chest = Chest();
        var topic = chest with { Clues = [.. chest.Clues.Select(c => c.Id == "xray" ? c with { Minutes = 10 } : c)] };
        Assert.Equal("smoke", Reason(topic, ["lung"], "xray", "smoke", "bronc").Next[0].Clue);
        Assert.Equal("xray", Reason(chest, ["lung"], "xray", "smoke", "bronc").Next[0].Clue);
    }

    [Fact]
    public void Access_is_counted_once_for_two_checks_that_need_it()
    {
        var topic = Odd(0.5) with { Accesses = [new Access("wheel", "wheel out", 7)] };
        topic = topic with { Clues = [.. topic.Clues.Select(c => c with { Access = "wheel" })] };
        var next = Reason(topic, ["part"], "a", "b").Next;
        Assert.Equal(9, next[0].Minutes, 1e-12);
    }

    [Fact]
    public void Two_checks_that_tell_only_together_are_paired_and_come_first()
    {
        // Each alone tells nothing, both tell all: one bit in two minutes, before .029 bits in one.
        var reasoning = Reason(Odd(0.6), ["part"], "a", "b", "c");
        Assert.Equal(["a", "b"], reasoning.Next.Take(2).Select(n => n.Clue).Order());
        Assert.Equal(("a", "b"), (reasoning.Next.Single(n => n.Clue == "b").With, reasoning.Next.Single(n => n.Clue == "a").With));
        Assert.All(reasoning.Next.Take(2), n => Assert.Equal((1.0, 2.0, 0.5, 1.0), (Math.Round(n.Bits, 10), n.Minutes, Math.Round(n.Score, 10), Math.Round(n.Settles, 10))));
        Assert.False(reasoning.Ripe);
    }

    [Fact]
    public void A_check_that_tells_only_together_is_not_offered_alone() =>
        Assert.Empty(Reason(Odd(0.6), ["part"], "a").Next);

    [Fact]
    public void Looking_one_step_ahead_would_stop_where_two_steps_go_on()
    {
        // Independent tests of accuracy .8 (the trap of the check values): after one of them no single further test changes
        // what is lost, so a one-step rule stops.
        var scene = Some.Scene(Tests(9));
        IReadOnlyList<Finding> one = [Some.Saw("test0", 0)];
        var losses = Losses.Of(scene, [0], null);
        Assert.Equal(LeastNow(scene, losses, one), LeastAfter(scene, losses, one, "test1"), 1e-12);
        var reasoning = Reason(Tests(9), ["part"], one, [.. Enumerable.Range(1, 8).Select(i => $"test{i}")]);
        Assert.Equal(0.8, reasoning.Parts[0].Highest, 1e-12);
        Assert.False(reasoning.Parts[0].Settled);
        Assert.False(reasoning.Ripe);
        Assert.True(reasoning.Gain > 0, $"{reasoning.Gain}");
    }

    [Fact]
    public void Information_is_never_nothing_where_one_step_ahead_sees_no_gain()
    {
        var next = Reason(Tests(9), ["part"], [Some.Saw("test0", 0)], "test1").Next;
        // I(H; test | .8) by hand: H(.68) − H(.8).
        Assert.Equal(Entropy(0.68) - Entropy(0.8), Assert.Single(next).Bits, 1e-12);
    }

    [Fact]
    public void A_job_that_three_tests_would_settle_is_not_ripe_before_the_first()
    {
        // From even odds two tests of accuracy .8 do not settle it (.941), three do (.985): neither one nor two steps ahead see it.
        var reasoning = Reason(Tests(9), ["part"], [.. Enumerable.Range(0, 9).Select(i => $"test{i}")]);
        Assert.False(reasoning.Ripe);
    }

    static double Entropy(double p) => -(p * Math.Log2(p)) - ((1 - p) * Math.Log2(1 - p));

    internal static double LeastNow(Scene scene, IReadOnlyList<LineLosses> losses, IReadOnlyList<Finding> findings) =>
        losses.Sum(l => l.Least(scene.ClassBeliefs(0, scene.Reader.SetOf(findings).All)));

    internal static double LeastAfter(Scene scene, IReadOnlyList<LineLosses> losses, IReadOnlyList<Finding> findings, string clue)
    {
        var table = (Shows.Table)scene.Table.Names.ClueOf(clue).Shows;
        var total = scene.ClassWeights(0, scene.Reader.SetOf(findings).All).Sum();
        return table.Findings.Sum(f => losses.Sum(l => l.Least(scene.ClassWeights(0, scene.Reader.SetOf([.. findings, Some.Saw(clue, f.Id)]).All)) / total));
    }

    static Reasoning Reason(Topic topic, IReadOnlyList<string> asks, params string[] onOffer) => Reason(topic, asks, [], onOffer);

    static Reasoning Reason(Topic topic, IReadOnlyList<string> asks, IReadOnlyList<Finding> findings, params string[] onOffer) =>
        new Workbench(topic).Reason(Some.Enquiry(asks, onOffer), findings);

    static Topic Chest()
    {
        var (lung, bronc) = (Some.Part("lung", "yes", "no"), Some.Part("bronc", "yes", "no"));
        return Some.Topic(
            [Some.Line("smoker", 0.5), Some.Line("other", 0.5)], [lung, bronc],
            [Some.Built(lung, ("smoker", [0.1, 0.9]), ("other", [0.01, 0.99])), Some.Built(bronc, ("smoker", [0.6, 0.4]), ("other", [0.3, 0.7]))],
            Some.Table("xray", new Node.OfPart("lung"), [0.98, 0.02], [0.05, 0.95]),
            Some.Table("smoke", new Node.OfLine(), [1, 0], [0, 1]),
            Some.Table("bronc", new Node.OfPart("bronc"), [1, 0], [0, 1])) with
        {
            Events = [Some.Event("tub", 0.0104, new Effect.Overrule("xray", [0.98, 0.02]))],
        };
    }

    // The part is one kind when exactly one of a and b shows, the other kind otherwise; c reads it with the given accuracy.
    static Topic Odd(double accuracy)
    {
        var part = Some.Part("part", "same", "different");
        return Some.Topic(
            [Some.Line("00", 0.25), Some.Line("01", 0.25), Some.Line("10", 0.25), Some.Line("11", 0.25)], [part],
            [Some.Built(part, ("00", [1, 0]), ("01", [0, 1]), ("10", [0, 1]), ("11", [1, 0]))],
            Some.Table("a", new Node.OfLine(), [1, 0], [1, 0], [0, 1], [0, 1]),
            Some.Table("b", new Node.OfLine(), [1, 0], [0, 1], [1, 0], [0, 1]),
            Some.Table("c", new Node.OfPart("part"), [accuracy, 1 - accuracy], [1 - accuracy, accuracy]));
    }

    static Topic Tests(int n)
    {
        var part = Some.Part("part", "yes", "no");
        return Some.Topic(
            [Some.Line("any", 1)], [part], [Some.Built(part, ("", [0.5, 0.5]))],
            [.. Enumerable.Range(0, n).Select(i => Some.Table($"test{i}", new Node.OfPart("part"), [0.8, 0.2], [0.2, 0.8]))]);
    }
}
