using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

public sealed class ExplanationTests
{
    static readonly double[][] Rows = [[0.9, 0.1], [0.1, 0.9]];

    [Fact]
    public void What_is_explained_is_the_conflict_though_one_finding_clashes_more()
    {
        // MODEL 4: conflict + log10 P(h)/P(h | findings) < 0.
        var (score, clash, explanations) = Weigh(["f0", "f0", "f1"]);
        Assert.InRange(score, 1e-9, clash);
        Assert.Contains(explanations, e => score + Math.Log10(e.Before / e.After) < 0 && clash + Math.Log10(e.Before / e.After) >= 0);
    }

    [Fact]
    public void Where_agreeing_findings_mask_the_conflict_the_clash_is_explained()
    {
        var (score, clash, explanations) = Weigh(["f0", "f0", "f0", "f0", "f0", "f1"]);
        Assert.True(score <= 0 && clash > 0.5, $"{score} {clash}");
        Assert.All(explanations, e => Assert.True(clash + Math.Log10(e.Before / e.After) < 0));
    }

    static (double Score, double Clash, IReadOnlyList<Explanation> Explanations) Weigh(IReadOnlyList<string> seen)
    {
        var (bar, grip) = (Some.Part("bar", "older", "newer"), Some.Part("grip", "older", "newer"));
        var topic = Some.Topic(
            [Some.Line("old", 0.5), Some.Line("new", 0.5)], [bar, grip],
            [Some.Built(bar, ("old", [1, 0]), ("new", [0, 1])), Some.Built(grip, ("old", [1, 0]), ("new", [0, 1]))],
            [.. seen.Select((_, i) => Some.Table($"clue{i}", new Node.OfPart(i == seen.Count - 1 ? "grip" : "bar"), Rows))]) with
        {
            Events = [Some.Event("grip-swapped", 0.2, new Effect.ChangeKind("grip", "older", [("newer", 1)]))],
        };
        var scene = Some.Scene(topic);
        var conflict = Conflicts.Of(scene.Table, scene.Reader.SetOf([.. seen.Select((s, i) => Some.Saw($"clue{i}", s))]));
        return (conflict.Score, conflict.Clashes[conflict.Worst], conflict.Explanations);
    }
}
