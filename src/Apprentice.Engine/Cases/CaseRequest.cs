using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Cases;

/// <summary>What a case is asked to be. Only these, the opening findings and fresh randomness choose a case; never what is true.</summary>
/// <param name="Provenance">Where the bike comes from.</param>
/// <param name="Want">What the customer wants.</param>
/// <param name="Opening">What is told first (an opening of the topic), or null for nothing.</param>
/// <param name="Select">What the opening findings have to look like.</param>
/// <param name="Offer">How the job is seen; which clues are on offer follows from it.</param>
/// <param name="Tools">Tools at hand, or null for all.</param>
/// <param name="Questions">Largest number of questions or checks, or null for no limit.</param>
public sealed record CaseRequest(
    string Provenance, string Want, string? Opening, Selection Select, Channel Offer, IReadOnlyList<string>? Tools = null, int? Questions = null);

/// <summary>What the opening findings of a case have to look like.</summary>
public enum Selection
{
    /// <summary>As they come.</summary>
    AsTheyCome,

    /// <summary>They do not go together.</summary>
    Conflicting,

    /// <summary>They suggest that something was changed.</summary>
    SuggestsChange,

    /// <summary>They leave two kinds open.</summary>
    LeavesTwoOpen,
}
