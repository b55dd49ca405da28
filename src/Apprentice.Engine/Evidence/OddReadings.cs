using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>Finds readings that are odd: probably a slip or blunder, or hardly to be expected after the other findings.</summary>
public static class OddReadings
{
    const double SlipFrom = 0.5;
    const double TailBelow = 0.01;

    /// <summary>The odd readings among the findings, by index.</summary>
    public static IReadOnlyList<OddReading> Of(Scene scene, IReadOnlyList<Finding> findings, FindingSet set)
    {
        var total = Belief.Total(scene.Table.Model, set.All);
        if (!(total > 0)) return [];
        var odd = new List<OddReading>();
        foreach (var i in Readings(findings))
        {
            var slip = 1 - (Belief.Total(scene.Table.Model, RightOnly(scene, findings, set, i)) / total);
            var tail = Tail(scene, findings, set, i);
            if (slip >= SlipFrom || tail < TailBelow) odd.Add(new OddReading(i, slip, tail, true));
        }

        return [.. odd.Select(o => o with { Stands = !Readings(findings).Any(j => SameSize(scene, findings, o.Finding, j) && odd.All(k => k.Finding != j)) })];
    }

    static IEnumerable<int> Readings(IReadOnlyList<Finding> findings) =>
        Enumerable.Range(0, findings.Count).Where(i => findings[i].Seen is Seen.Reading);

    static string DimensionOf(Scene scene, Finding finding) => ((Shows.Measured)scene.Table.Names.ClueOf(finding.Clue).Shows).Dimension;

    static bool SameSize(Scene scene, IReadOnlyList<Finding> findings, int i, int j) =>
        DimensionOf(scene, findings[i]) == DimensionOf(scene, findings[j]);

    static Likelihood RightOnly(Scene scene, IReadOnlyList<Finding> findings, FindingSet set, int i)
    {
        var group = Readings(findings).Where(j => SameSize(scene, findings, i, j)).ToList();
        var others = group.Aggregate(set.Everything, (bits, j) => bits & ~(1UL << j));
        var right = scene.Reader.Measured(DimensionOf(scene, findings[i]), [.. group.Select(j => findings[j])], group.IndexOf(i));
        return set.Of(others).And(right);
    }

    // P(a reading at least as unlikely | the other findings), summed over the steps of the tool.
    static double Tail(Scene scene, IReadOnlyList<Finding> findings, FindingSet set, int i)
    {
        var predictive = Predictive.Of(scene, findings, set, i);
        var mine = predictive.At(((Seen.Reading)findings[i].Seen).Millimetres);
        return mine >= TailBelow ? 1 : predictive.NoLikelierThan(mine);
    }
}
