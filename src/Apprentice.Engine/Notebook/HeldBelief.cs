using Apprentice.Engine.Evidence;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Notebook;

/// <summary>What the engine held of one part at a time.</summary>
/// <param name="Part">The part.</param>
/// <param name="Classes">Order classes with their beliefs.</param>
/// <param name="Settled">True when it was settled.</param>
public sealed record HeldBelief(string Part, IReadOnlyList<ClassBelief> Classes, bool Settled)
{
    /// <summary>The likeliest class.</summary>
    public ClassBelief Leading => Classes.Aggregate((best, c) => c.Belief > best.Belief ? c : best);

    /// <summary>True when a kind is in the likeliest class.</summary>
    public bool IsRight(string kind) => Leading.Kinds.Contains(kind, StringComparer.Ordinal);

    /// <summary>What reasoning holds now.</summary>
    public static IReadOnlyList<HeldBelief> Of(Reasoning reasoning) => [.. reasoning.Parts.Select(p => new HeldBelief(p.Part, p.Classes, p.Settled))];
}

/// <summary>What a bike really was.</summary>
/// <param name="Parts">Kind per part that is known, "none" for none of these.</param>
/// <param name="Events">What had happened to it; all other events of the topic had not.</param>
/// <param name="Line">Its line, or null when not known.</param>
/// <param name="Built">Month of build, or null when not known.</param>
public sealed record BikeTruth(IReadOnlyList<TruePart> Parts, IReadOnlyList<string> Events, string? Line, Month? Built)
{
    /// <summary>The kind of a part, or null when it is not known.</summary>
    public string? KindOf(string part) => Parts.FirstOrDefault(p => string.Equals(p.Part, part, StringComparison.Ordinal))?.Kind;
}

/// <summary>What a part really was.</summary>
/// <param name="Part">The part.</param>
/// <param name="Kind">Its kind, "none" for none of these.</param>
public sealed record TruePart(string Part, string Kind);

/// <summary>The lead's answer to a report.</summary>
public enum ReportAnswer
{
    /// <summary>It becomes a note, and where it fits a line of the topic and a case.</summary>
    Accepted,

    /// <summary>The lead wants to know more.</summary>
    AskedBack,

    /// <summary>Nothing is changed, and why.</summary>
    Refused,
}

/// <summary>A confirmed real bike as a case for practice: chosen by its truth, so outside all statistics.</summary>
/// <param name="Key">Which: "bike 3 rim-size", or with another workshop's name before it.</param>
/// <param name="From">Name of the other workshop it comes from; empty for a bike of this one.</param>
/// <param name="Topic">Topic.</param>
/// <param name="Want">What the customer wanted.</param>
/// <param name="Provenance">Where the bike came from.</param>
/// <param name="Findings">What was found, in order.</param>
/// <param name="Truth">What it really was.</param>
public sealed record RealCase(string Key, string From, string Topic, string Want, string Provenance, IReadOnlyList<Finding> Findings, BikeTruth Truth)
{
    /// <summary>True where a paper may hold it: nobody here has met the bike.</summary>
    public bool IsForPapers => From.Length > 0;
}
