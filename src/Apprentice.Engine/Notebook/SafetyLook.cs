using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>What safety looks found on a real bike.</summary>
public static class SafetyLook
{
    /// <summary>Looks that found something else than all in order, though no stop sign: play, a creak. A look's first finding is that all is in order.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="findings">What was found.</param>
    public static IReadOnlyList<Finding> NotSound(Topic topic, IEnumerable<Finding> findings) => [.. findings.Where(f => IsNotSound(topic, f))];

    /// <summary>Looks with no finding: not taken yet, or they cannot be seen.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="findings">What was found.</param>
    public static IReadOnlyList<Clue> NotTaken(Topic topic, IEnumerable<Finding> findings) =>
        [.. topic.Clues.Where(c => c.Safety).ExceptBy(findings.Where(f => f.Seen is not Seen.Hidden).Select(f => f.Clue), c => c.Id)];

    static bool IsNotSound(Topic topic, Finding finding) =>
        finding.Seen is Seen.Named named
        && topic.Clues.FirstOrDefault(c => c.Id == finding.Clue) is { Safety: true, Shows: Shows.Table table }
        && table.Findings[0].Id != named.Id
        && table.Findings.FirstOrDefault(f => f.Id == named.Id) is { Stop.Length: 0 };
}
