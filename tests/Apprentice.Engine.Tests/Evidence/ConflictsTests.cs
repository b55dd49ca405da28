using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Tests.Histories;
using Apprentice.Engine.Topics;
using CsCheck;

namespace Apprentice.Engine.Tests.Evidence;

/// <summary>Values in log2, by exact enumeration: see Data/README.md. Definition: Jensen, Chamberlain, Nordahl, Jensen, Analysis in HUGIN of data conflict, UAI 1990.</summary>
public sealed class ConflictsTests
{
    const double Tolerance = 1e-10;
    static readonly double Log2Of10 = Math.Log2(10);
    static readonly IReadOnlyList<Explained> Stories = Network.Read<ExplainedFile>("extra_oracles.json").ConflictExplained;

    public static TheoryData<string, int> Values => Network.Rows(n => n.Conflicts);

    public static TheoryData<int> StoryRows => [.. Enumerable.Range(0, Stories.Count)];

    [Theory]
    [MemberData(nameof(Values))]
    public void Conflict_is_as_enumerated(string name, int index)
    {
        var value = Network.ValuesOf(name).Conflicts[index];
        var network = Network.Of(name);
        Assert.Equal(value.Log2, Log2Of10 * Conflicts.Score(network.Model, network.Findings(value.Evidence)), Tolerance);
        Assert.Equal(value.Log2, Log2Of10 * Conflicts.Score(network.Model, network.Findings(value.Evidence.Reverse())), Tolerance);
    }

    [Theory]
    [MemberData(nameof(StoryRows))]
    public void A_story_lowers_conflict_by_what_the_findings_make_of_it(int index)
    {
        var value = Stories[index];
        var network = Network.Of(value.Network);
        var with = Conflicts.Score(network.Model, network.Findings(value.E.Concat(value.H)));
        Assert.Equal(value.ConfEAndHLog2, Log2Of10 * with, Tolerance);
        var (variable, state) = value.H.Single();
        var tagged = network.Tagged(variable, state);
        var story = new Belief.Story(1, 0);
        var before = Belief.Total(tagged, Likelihood.None(0), story);
        var after = Belief.Total(tagged, network.Given(value.E), story) / Belief.Total(tagged, network.Given(value.E));
        Assert.Equal(value.ConfEAndHLog2, (Log2Of10 * Conflicts.Score(network.Model, network.Findings(value.E))) + Math.Log2(before / after), Tolerance);
    }

    [Fact]
    public void Two_findings_clash_with_each_other_as_much_as_they_conflict()
    {
        var network = Network.Of("holmes_wet_grass");
        var findings = network.Findings(new Dictionary<string, string> { ["H"] = "yes", ["W"] = "no" });
        Assert.All(Conflicts.Clashes(network.Model, findings), clash => Assert.Equal(1.5956097449206648, Log2Of10 * clash, Tolerance));
    }

    [Fact]
    public void Agreeing_findings_hide_a_clash_from_the_conflict_but_not_from_itself()
    {
        // Nine looks agree, the tenth stands against them: together they still support one another.
        var model = new Model([0.5, 0.5], [], []);
        var set = FindingSet.Independent(0, [.. Enumerable.Range(0, 9).Select(_ => Some.Rows(0.9, 0.1)), Some.Rows(0.01, 0.99)]);
        Assert.True(Conflicts.Score(model, set) < 0);
        var clashes = Conflicts.Clashes(model, set);
        Assert.True(clashes[9] > 0.5, $"{clashes[9]}");
        Assert.All(clashes.Take(9), c => Assert.True(c < 0.5, $"{c}"));
    }

    [Fact]
    public void Findings_that_do_not_touch_each_other_have_no_conflict() => Check.Sample(
        Gen.Double[0.01, 0.99].Array[5], p =>
        {
            var weights = new[] { p[0] * p[1], p[0] * (1 - p[1]), (1 - p[0]) * p[1], (1 - p[0]) * (1 - p[1]) };
            var set = FindingSet.Independent(0, [Some.Rows(p[2], p[2], p[3], p[3]), Some.Rows(p[4], 1 - p[4], p[4], 1 - p[4])]);
            return Math.Abs(Conflicts.Score(new Model(weights, [], []), set)) < 1e-12;
        });

    [Fact]
    public void Wet_grass_is_explained_by_the_sprinkler()
    {
        // Jensen 1996: rain and sprinkler as events of a topic; the lawn of H is wet by either, that of W by rain.
        var topic = Some.Topic(
            [Some.Line("any", 1)], [], [],
            Some.Table("H", new Node.OfEvent("sprinkler"), [0, 1], [0.9, 0.1]),
            Some.Table("W", new Node.OfEvent("rain"), [0.2, 0.8], [1, 0])) with
        {
            Events = [Some.Event("sprinkler", 0.1), Some.Event("rain", 0.2, new Effect.Overrule("H", [1, 0]))],
        };
        var conflict = Some.Scene(topic) is var scene ? Conflicts.Of(scene.Table, scene.Reader.SetOf([Some.Saw("H", 0), Some.Saw("W", 1)])) : null;
        Assert.NotNull(conflict);
        Assert.Equal(1.5956097449206648, Log2Of10 * conflict.Score, Tolerance);
        Assert.True(conflict.Shown);
        var story = Assert.Single(conflict.Explanations);
        Assert.Equal(["sprinkler"], story.Story);
        Assert.Equal((0.1, 1), (Math.Round(story.Before, 12), Math.Round(story.After, 12)));
    }

    [Fact]
    public void One_call_of_two_is_explained_by_the_alarm()
    {
        // Russell & Norvig: the alarm as an event at its probability .002516442, two clues that hear it.
        var topic = Some.Topic(
            [Some.Line("any", 1)], [], [],
            Some.Table("john", new Node.OfEvent("alarm"), [0.05, 0.95], [0.9, 0.1]),
            Some.Table("mary", new Node.OfEvent("alarm"), [0.01, 0.99], [0.7, 0.3])) with
        {
            Events = [Some.Event("alarm", 0.002516442)],
        };
        var scene = Some.Scene(topic);
        var conflict = Conflicts.Of(scene.Table, scene.Reader.SetOf([Some.Saw("john", 1), Some.Saw("mary", 0)]));
        Assert.Equal(0.20479423296025537, Log2Of10 * conflict.Score, Tolerance);
        var story = Assert.Single(conflict.Explanations);
        Assert.Equal(0.002516442, story.Before, 1e-12);
        Assert.Equal(0.018249738245007478, story.After, 1e-12);
    }

    [Fact]
    public void Findings_that_nothing_allows_are_said_to_be_impossible()
    {
        var topic = Some.Topic(
            [Some.Line("a", 0.5), Some.Line("b", 0.5)], [], [],
            Some.Table("x", new Node.OfLine(), [1, 0], [0, 1]),
            Some.Table("y", new Node.OfLine(), [1, 0], [0, 1]),
            Some.Table("z", new Node.OfLine(), [1, 0], [0, 1]));
        var scene = Some.Scene(topic);
        var conflict = Conflicts.Of(scene.Table, scene.Reader.SetOf([Some.Saw("x", 0), Some.Saw("y", 1), Some.Saw("z", 0)]));
        Assert.True(conflict.Impossible);
        Assert.Equal(1, conflict.Worst);
        Assert.Empty(conflict.Explanations);
    }

    sealed record ExplainedFile(IReadOnlyList<Explained> ConflictExplained);

    sealed record Explained(string Network, IReadOnlyDictionary<string, string> E, IReadOnlyDictionary<string, string> H, double ConfEAndHLog2);
}
