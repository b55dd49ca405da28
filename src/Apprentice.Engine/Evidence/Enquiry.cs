using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>What is asked of the engine about a bike.</summary>
/// <param name="Provenance">Where the bike comes from.</param>
/// <param name="Asks">Parts asked about, at least one.</param>
/// <param name="Want">What the customer wants, or null: then no decisions are worked out.</param>
/// <param name="Channel">How further checks reach the bench.</param>
/// <param name="OnOffer">Clues that can still be looked at; those already looked at by this channel are offered again only when their reading is odd, those only told by another are offered.</param>
public sealed record Enquiry(string Provenance, IReadOnlyList<string> Asks, string? Want, Channel Channel, IReadOnlyList<string> OnOffer);
