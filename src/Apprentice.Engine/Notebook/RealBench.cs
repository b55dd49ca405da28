using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>What of a real case a topic knows.</summary>
public static class RealBench
{
    /// <summary>True when want, provenance, a finding and a kind of the case are known to the topic as it is now.</summary>
    public static bool Fits(Topic topic, RealCase it) => topic.Wants.Any(w => Is(w.Id, it.Want) && it.Truth.KindOf(w.Asks[0]) is { } kind && IsKind(topic, w.Asks[0], kind))
        && topic.Provenances.Any(p => Is(p.Id, it.Provenance)) && Found(topic, it).Count > 0;

    /// <summary>Findings that the topic knows, those that could not be seen left out.</summary>
    public static IReadOnlyList<Finding> Found(Topic topic, RealCase it) => [.. it.Findings.Where(f => f.Seen is not Seen.Hidden && topic.Clues.Any(c => Is(c.Id, f.Clue) && Knows(c, f)))];

    /// <summary>What the findings opened amount to.</summary>
    /// <param name="bench">The topic, which <see cref="Fits"/>.</param>
    /// <param name="it">The case.</param>
    /// <param name="opened">Indices of <see cref="Found"/>, in order.</param>
    public static Reasoning Reason(Workbench bench, RealCase it, IReadOnlyList<int> opened)
    {
        var want = bench.Topic.Wants.First(w => Is(w.Id, it.Want));
        var found = Found(bench.Topic, it);
        return bench.Reason(new Enquiry(it.Provenance, want.Asks, null, Channel.Bench, []), [.. opened.Select(i => found[i])]);
    }

    static bool IsKind(Topic topic, string part, string kind) => Is(kind, Kind.NoneId) || topic.Parts.Any(p => Is(p.Id, part) && p.Kinds.Any(k => Is(k.Id, kind)));

    static bool Knows(Clue clue, Finding finding) => clue.Channels.Any(c => c.Channel == finding.Channel)
        && (finding.Seen is Seen.Named ? StandView.TextOf(clue, finding) is not null : clue.Shows is Shows.Measured);

    static bool Is(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);
}
