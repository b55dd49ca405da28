using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Learning;

/// <content>A walk round an own bike, answer by answer, until it is kept in the notebook or let go.</content>
public abstract partial record LogEntry
{
    /// <summary>A walk began. It replaces an earlier one of the same person.</summary>
    /// <param name="Person">Who walks, or null for nobody known.</param>
    /// <param name="Topic">Topic.</param>
    /// <param name="Version">Its version then.</param>
    /// <param name="Want">What is to be bought.</param>
    /// <param name="Provenance">Where the bike comes from, in this topic's words.</param>
    /// <param name="Tools">Tools at hand: 1 eyes and hands, 2 also a rule or a tape, 3 also a caliper or special tools.</param>
    public sealed record WalkBegun(string? Person, string Topic, string Version, string Want, string Provenance, int Tools) : LogEntry;

    /// <summary>A question of the walk was answered; hidden: it cannot be seen.</summary>
    public sealed record WalkFound(string? Person, Finding Finding) : LogEntry;

    /// <summary>The last answer of the walk was taken back.</summary>
    public sealed record WalkStruck(string? Person) : LogEntry;

    /// <summary>The walk is over: the bike is in the notebook, or was let go.</summary>
    public sealed record WalkEnded(string? Person) : LogEntry;
}
