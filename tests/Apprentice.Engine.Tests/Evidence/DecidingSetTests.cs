using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

public sealed class DecidingSetTests
{
    [Fact]
    public void Of_two_pairs_as_good_the_one_that_comes_first_in_the_topic_is_named()
    {
        // Every pair settles it alike: the pair that stands first is told, in whatever order it was looked at.
        double[][] strong = [[0.9, 0.1], [0.1, 0.9]];
        var topic = Topic([.. "abcde".Select(c => Some.Table($"{c}", new Node.OfPart("bar"), strong))]);
        Assert.Equal([0, 1], Of(topic, ["a", "b", "c", "d", "e"]));
        Assert.Equal([3, 4], Of(topic, ["d", "e", "c", "b", "a"]));
    }

    [Fact]
    public void A_bar_that_takes_more_than_fourteen_findings_is_not_said_to_be_settled_by_none()
    {
        double[][] weak = [[0.55, 0.45], [0.45, 0.55]];
        var topic = Topic([.. Enumerable.Range(0, 20).Select(i => Some.Table($"c{i}", new Node.OfPart("bar"), weak))]);
        Assert.Equal(20, Of(topic, [.. Enumerable.Range(0, 20).Select(i => $"c{i}")]).Count);
    }

    static IReadOnlyList<int> Of(Topic topic, IReadOnlyList<string> seen)
    {
        var belief = new Workbench(topic).Reason(Some.Enquiry(["bar"]), [.. seen.Select(c => Some.Saw(c, 1))]).Parts[0];
        Assert.True(belief.Settled);
        return belief.DecidingSet;
    }

    static Topic Topic(Clue[] clues)
    {
        var bar = Some.Part("bar", "older", "newer");
        return Some.Topic([Some.Line("any", 1)], [bar], [Some.Built(bar, ("", [0.5, 0.5]))], clues);
    }
}
