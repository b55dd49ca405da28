using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

public sealed class ExplanationTests
{
    [Fact]
    public void What_is_explained_is_the_conflict_though_one_finding_clashes_more()
    {
        // MODEL 4: conflict + log10 P(h)/P(h | findings) < 0. A set is fitted to 1 in 20, and brings the newer grip to 2 in 5 of those.
        var fitted = Some.Event(
            "set-fitted", 0.05, new Effect.ChangeKind("bar", "older", [("older", 1)]), new Effect.ChangeKind("grip", null, [("newer", 0.4), ("older", 0.6)]));
        var (score, clash, explanations) = Weigh(3, 0.9, fitted);
        Assert.InRange(score, 0.1, clash);
        var explanation = Assert.Single(explanations);
        Assert.Equal(["set-fitted"], explanation.Story);
        Assert.True(score + Math.Log10(explanation.Before / explanation.After) < 0);
    }

    [Fact]
    public void Where_agreeing_findings_mask_the_conflict_the_clash_is_explained()
    {
        var (score, clash, explanations) = Weigh(5, 0.99, Some.Event("grip-swapped", 0.1, new Effect.ChangeKind("grip", "older", [("newer", 1)])));
        Assert.True(score <= 0 && clash > 0.5, $"{score} {clash}");
        Assert.Equal(["grip-swapped"], Assert.Single(explanations).Story);
    }

    // Some findings of the bar say older, the one of the grip says newer; one line has all older, the other all newer.
    static (double Score, double Clash, IReadOnlyList<Explanation> Explanations) Weigh(int agreeing, double grip, BikeEvent happened)
    {
        var (bar, other) = (Some.Part("bar", "older", "newer"), Some.Part("grip", "older", "newer"));
        var topic = Some.Topic(
            [Some.Line("old", 0.5), Some.Line("new", 0.5)], [bar, other],
            [Some.Built(bar, ("old", [1, 0]), ("new", [0, 1])), Some.Built(other, ("old", [1, 0]), ("new", [0, 1]))],
            [
                .. Enumerable.Range(0, agreeing).Select(i => Some.Table($"clue{i}", new Node.OfPart("bar"), [0.9, 0.1], [0.1, 0.9])),
                Some.Table("grip", new Node.OfPart("grip"), [grip, 1 - grip], [1 - grip, grip]),
            ]) with
        {
            Events = [happened],
        };
        var scene = Some.Scene(topic);
        var conflict = Conflicts.Of(scene.Table, scene.Reader.SetOf([.. Enumerable.Range(0, agreeing).Select(i => Some.Saw($"clue{i}", 0)), Some.Saw("grip", 1)]));
        return (conflict.Score, conflict.Clashes[conflict.Worst], conflict.Explanations);
    }
}
