namespace Apprentice.Engine.Histories;

/// <summary>Message passing on a model: each part is summed out on its own per spine row; parts are never multiplied out.</summary>
public static class Belief
{
    /// <summary>Which histories count: those with all required tags and none of the forbidden ones.</summary>
    /// <param name="Required">Tags that must be there, anywhere in the history.</param>
    /// <param name="Forbidden">Tags that must not be there.</param>
    public sealed record Story(ulong Required, ulong Forbidden)
    {
        /// <summary>Every history.</summary>
        public static Story Any { get; } = new(0, 0);
    }

    /// <summary>P(findings), up to the common factor of the likelihoods; 0 when no history allows them.</summary>
    public static double Total(Model model, Likelihood findings) => Joint(model, findings, [])[0];

    /// <summary>P(findings and story).</summary>
    /// <remarks>Tags of different parts are required each at its own part; a tag is borne by the spine or by exactly one part.</remarks>
    public static double Total(Model model, Likelihood findings, Story story) => new Pass(model, findings, [], story).Run()[0];

    /// <summary>P(findings and values of the queried variables), the last variable changing fastest.</summary>
    /// <param name="model">The model.</param>
    /// <param name="findings">The findings.</param>
    /// <param name="queries">Variables: at most one of the spine, and at most one a part, the spine first, parts in ascending order.</param>
    /// <returns>As many numbers as there are combinations of values.</returns>
    public static double[] Joint(Model model, Likelihood findings, IReadOnlyList<Query> queries) =>
        new Pass(model, findings, queries, Story.Any).Run();
}

/// <summary>A variable asked about.</summary>
/// <param name="Part">Index of the part, or −1 for the spine.</param>
/// <param name="Values">Number of values.</param>
/// <param name="ValueOf">Value per state of the part, or per row of the spine.</param>
public sealed record Query(int Part, int Values, int[] ValueOf);
