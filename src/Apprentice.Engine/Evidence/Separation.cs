using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>How far each clue tells two order classes of a part apart.</summary>
/// <param name="Part">The part.</param>
/// <param name="One">Kinds of the class that is fitted.</param>
/// <param name="Other">Kinds of the class that it is taken for.</param>
/// <param name="ByClue">Expected weight of evidence for the fitted class against the other, in decibans, per clue of the topic in order; at least 0.</param>
public sealed record Separation(string Part, IReadOnlyList<string> One, IReadOnlyList<string> Other, IReadOnlyList<(string Clue, double Decibans)> ByClue)
{
    const double Least = 1e-12;

    /// <summary>The clue that tells most.</summary>
    public (string Clue, double Decibans) Best => ByClue.MaxBy(c => c.Decibans);

    /// <summary>Every ordered pair of classes of a part, "none of these" left out, by looks on the bench with nothing else known.</summary>
    /// <remarks>Expected weight of evidence: Σ P(f | one) 10 log₁₀(P(f | one) / P(f | other)). Source: Good, Probability and the Weighing of Evidence, 1950.</remarks>
    public static IReadOnlyList<Separation> Of(Scene scene, string part)
    {
        var at = scene.Table.Names.Part(part);
        var classes = scene.Classes[at];
        var prior = scene.ClassWeights(at, scene.Nothing);
        var clues = scene.Table.Topic.Clues.Where(c => !c.Safety && c.Channels.Any(x => x.Channel == Channel.Bench)).ToList();
        var shares = clues.ConvertAll(c => Shares(scene, at, c.Id, prior));
        var named = Enumerable.Range(0, classes.Count).Where(c => prior[c] > 0 && !classes.Members[c].Contains(Kind.NoneId)).ToList();
        return
        [
            .. named.SelectMany(a => named.Where(b => b != a).Select(b => new Separation(
                part, classes.Members[a], classes.Members[b], [.. clues.Select((c, i) => (c.Id, Weight(shares[i], a, b)))]))),
        ];
    }

    // P(outcome | class) for each outcome of a look.
    static List<double[]> Shares(Scene scene, int part, string clue, double[] prior)
    {
        var outcomes = scene.Reader.OutcomesOf(clue, Channel.Bench);
        var parts = scene.Table.Topic.Parts.Count;
        return
        [
            .. outcomes.Fine.Select(o =>
            {
                double[] values = [.. outcomes.ColumnOf.Select(c => o[c])];
                var joint = scene.ClassWeights(part, outcomes.Part < 0 ? Likelihood.OfRows(values, parts) : Likelihood.OfPart(outcomes.Part, values, parts));
                return joint.Select((w, c) => prior[c] > 0 ? w / prior[c] : 0).ToArray();
            }),
        ];
    }

    static double Weight(List<double[]> shares, int one, int other)
    {
        var sum = 0.0;
        foreach (var outcome in shares.Where(o => o[one] > Least)) sum += outcome[one] * 10 * Real.Log10(outcome[one] / Math.Max(Least, outcome[other]));
        return Math.Max(0, sum);
    }
}
