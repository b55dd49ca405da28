using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
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

    [Fact]
    public void What_another_look_can_show_adds_up_to_1_and_follows_from_both_together()
    {
        var scene = Some.Scene(Handlebars.Topic);
        foreach (var first in new[] { Some.Saw("plate", "11", Channel.Phone), Some.Saw("marking", 2), Some.Read("stem-length", 322) })
        {
            var outcomes = scene.Reader.OutcomesOf(first.Clue, Channel.Bench, [first]);
            var before = Values(scene.Reader.Likely([first]));
            for (var c = 0; c < outcomes.Columns; c++) Assert.Equal(1, outcomes.Fine.Sum(o => o[c]), 1e-9);
            if (first.Seen is Seen.Reading) continue;
            var both = Values(scene.Reader.Likely([first, first with { Channel = Channel.Bench }]));
            var same = IndexOf(scene, first);
            for (var v = 0; v < both.Length; v++) Assert.Equal(both[v] / before[v], outcomes.Fine[same][outcomes.ColumnOf[v]], 1e-12);
        }
    }

    [Fact]
    public void Another_reading_of_one_size_is_as_likely_as_both_together_make_it()
    {
        var scene = Some.Scene(Handlebars.Topic);
        var first = Some.Read("stem-length", 322);
        var outcomes = scene.Reader.OutcomesOf("stem-length", Channel.Bench, [first]);
        var before = Values(scene.Reader.Likely([first]));
        var near = new double[before.Length];
        for (var mm = 240; mm <= 400; mm++)
        {
            var both = Values(scene.Reader.Likely([first, Some.Read("stem-length", mm)]));
            for (var v = 0; v < near.Length; v++) near[v] += both[v] / before[v];
        }

        for (var v = 0; v < near.Length; v++) Assert.Equal(near[v], outcomes.Fine.Sum(o => o[outcomes.ColumnOf[v]]), 1e-6);
    }

    static int IndexOf(Scene scene, Finding finding) =>
        ClueReader.FindingsOf(scene.Table.Names.ClueOf(finding.Clue), Channel.Bench).Ids.ToList().IndexOf(((Seen.Named)finding.Seen).Id);

    static double[] Values(Likelihood likelihood) =>
        likelihood.Rows ?? likelihood.Parts.OfType<double[]>().Single();

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
