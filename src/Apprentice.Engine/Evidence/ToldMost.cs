using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Evidence;

/// <summary>Of which of the parts asked about a check tells most.</summary>
static class ToldMost
{
    const double Even = 1e-6;

    /// <summary>The part with which the check shares most information, given the findings, in bits.</summary>
    /// <param name="scene">The topic.</param>
    /// <param name="enquiry">What is asked, at least one part, and how the bike is seen.</param>
    /// <param name="findings">What was found before the check.</param>
    /// <param name="clue">The check.</param>
    /// <param name="otherwise">The part for a check that tells as much of this one, or of none: the first asked when null.</param>
    public static string Of(Scene scene, Enquiry enquiry, IReadOnlyList<Finding> findings, string clue, string? otherwise)
    {
        var stays = otherwise ?? enquiry.Asks[0];
        var set = scene.Reader.SetOf(findings);
        if (enquiry.Asks.Count == 1 || !(Belief.Total(scene.Table.Model, set.All) > 0)) return stays;
        var outcomes = scene.Reader.OutcomesOf(clue, enquiry.Channel, findings);
        var bits = enquiry.Asks.ToDictionary(a => a, a => Bits(scene, set, scene.Table.Names.Part(a), outcomes), StringComparer.Ordinal);
        var most = enquiry.Asks.OrderByDescending(a => bits[a]).First();
        return bits[most] > bits[stays] + Even ? most : stays;
    }

    static double Bits(Scene scene, FindingSet set, int part, Outcomes outcomes) => new Lookahead(scene, set, [part], [part], []).Single(outcomes).Bits;
}
