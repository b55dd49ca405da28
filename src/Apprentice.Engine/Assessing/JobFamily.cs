using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Assessing;

/// <summary>A sort of job: what may be known about many of them. No two cases of it are the same.</summary>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Provenance">Where the bike comes from.</param>
/// <param name="Want">What the customer wants.</param>
/// <param name="Opening">What is told first, or null.</param>
/// <param name="Select">What that has to look like.</param>
/// <param name="Offer">How the job is seen.</param>
/// <param name="Safety">True when a wrong order can hurt somebody.</param>
public sealed record JobFamily(string Topic, string Provenance, string Want, string? Opening, Selection Select, Channel Offer, bool Safety)
{
    /// <summary>One name for it in files and statistics.</summary>
    public string Key => $"{Topic}/{Provenance}/{Want}/{Opening ?? "-"}/{Select}/{Offer}";

    /// <summary>The request of its cases.</summary>
    public CaseRequest Request => new(Provenance, Want, Opening, Select, Offer);
}
