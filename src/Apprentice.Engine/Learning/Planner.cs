using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>What to do next: see the rules at <see cref="Of"/>.</summary>
public static class Planner
{
    /// <summary>Lengths of a session that are offered, minutes.</summary>
    public static IReadOnlyList<int> Lengths { get; } = [3, 8, 15, 30];

    /// <summary>The next session of a person.</summary>
    /// <param name="history">The history.</param>
    /// <param name="topics">Topics at hand, in the order of the shelf; at least one.</param>
    /// <param name="person">A name, or null for nobody known.</param>
    /// <param name="minutes">Minutes to spend.</param>
    /// <param name="now">The time.</param>
    public static Plan Of(History history, IReadOnlyList<Topic> topics, string? person, int minutes, DateTimeOffset now) =>
        throw new NotSupportedException();

    /// <summary>Where the person stands in the placement they asked for last, or null when they asked for none.</summary>
    public static Placement? PlacementOf(History history, IReadOnlyList<Topic> topics, string person) => throw new NotSupportedException();
}
