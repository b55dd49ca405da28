using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>What a learner did and concluded.</summary>
public sealed record Answer
{
    /// <summary>Looks in the order taken; the opening findings are not looks.</summary>
    public required IReadOnlyList<Look> Looks { get; init; }

    /// <summary>One answer per part that the want asks for, in that order.</summary>
    public required IReadOnlyList<PartAnswer> Parts { get; init; }

    /// <summary>One choice per order line of the want, in that order.</summary>
    public required IReadOnlyList<Choice> Orders { get; init; }

    /// <summary>The clue named as the one that settled it; "none" for none; null when not asked.</summary>
    public string? SettledBy { get; init; }

    /// <summary>The clue named as set aside; "none" for none; null when not asked.</summary>
    public string? SetAside { get; init; }

    /// <summary>What happened to the bike: a tag of the story, "none" for nothing; null when not asked.</summary>
    public string? Story { get; init; }

    /// <summary>True when something was ordered.</summary>
    public bool Ordered => Orders.Any(o => o is Choice.Order or Choice.OrderTwo);

    /// <summary>True when the learner chose to force a part that did not go.</summary>
    public bool Forced { get; init; }
}

/// <summary>A look at a clue.</summary>
/// <param name="Clue">The clue.</param>
/// <param name="Nth">0 for the first look at it, 1 for the second …</param>
/// <param name="OwnReading">What the learner read, in mm, where they read a scale themselves; else null.</param>
/// <param name="Datum">The datum they chose (0 right, n the n-th slip), or null when they did not choose.</param>
/// <param name="OwnFinding">The finding that they say it is, where they looked themselves; else null.</param>
/// <param name="Writing">The writing that they went by (0 the true number, n the n-th decoy, more for other writings of the plate), or null when they did not choose.</param>
/// <param name="OwnBearing">What they say it tells, or null when not asked.</param>
public sealed record Look(
    string Clue, int Nth, double? OwnReading = null, int? Datum = null, string? OwnFinding = null, int? Writing = null, Bearing? OwnBearing = null);

/// <summary>Which one, and how sure.</summary>
/// <param name="Part">The part.</param>
/// <param name="Kind">A kind of the named class, "none" for none of these, or null for "not settled".</param>
/// <param name="Tenths">How sure: 1 to 9 of ten, 10 for as good as certain (taken as 0.99). With "not settled": how sure of the likeliest.</param>
public sealed record PartAnswer(string Part, string? Kind, int Tenths)
{
    /// <summary>The probability meant by <see cref="Tenths"/>.</summary>
    public double Certainty => Tenths >= 10 ? 0.99 : Tenths / 10.0;
}
