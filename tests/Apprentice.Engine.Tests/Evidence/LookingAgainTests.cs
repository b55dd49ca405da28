using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

public sealed class LookingAgainTests
{
    [Fact]
    public void What_was_only_told_can_be_looked_at_on_the_bench()
    {
        // On the phone 3 of 10 are misread: looking for oneself settles it.
        var marking = Some.Table("marking", new Node.OfPart("bar"), [0.99, 0.01], [0.01, 0.99]) with
        {
            Channels = [new ClueChannel(Channel.Bench, 0, 0), new ClueChannel(Channel.Phone, 0, 0.3)],
        };
        var reasoning = Reason([marking], Some.Saw("marking", "f1", Channel.Phone));
        Assert.False(reasoning.Ripe);
        Assert.Equal("marking", Assert.Single(reasoning.Next).Clue);
    }

    [Fact]
    public void A_marking_looked_at_on_the_bench_is_not_offered_again()
    {
        var marking = Some.Table("marking", new Node.OfPart("bar"), [0.6, 0.4], [0.4, 0.6]);
        Assert.Empty(Reason([marking], Some.Saw("marking", 1)).Next);
    }

    [Fact]
    public void A_second_tool_on_a_size_that_was_measured_tells_no_more_than_their_joint_readings_do()
    {
        // Parts differ by 4 mm and spread by 2 mm: the true size is known to 0.3 mm after one reading, and still leaves doubt.
        var rule = Some.Clue("rule", new Node.OfPart("bar"), Some.Measured(1, 0.3, 270, 380));
        var tape = Some.Clue("tape", new Node.OfPart("bar"), Some.Measured(1, 0.3, 270, 380));
        var reasoning = Reason([rule, tape], Some.Read("rule", 313));
        Assert.All(reasoning.Next, n => Assert.True(n.Bits < 0.05, $"{n.Clue} {n.Bits}"));
        Assert.True(reasoning.Ripe);
    }

    static Reasoning Reason(Clue[] clues, Finding finding)
    {
        var bar = Some.Part("bar", "older", "newer");
        var topic = Some.Topic([Some.Line("any", 1)], [bar], [Some.Built(bar, ("", [0.5, 0.5]))], clues) with
        {
            Dimensions = [new Dimension("size", "bar", "length", [310, 314], [2, 2], 280, 370, "judgement")],
        };
        return new Workbench(topic).Reason(Some.Enquiry(["bar"], [.. clues.Select(c => c.Id)]), [finding]);
    }
}
