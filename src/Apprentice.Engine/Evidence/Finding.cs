using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>What was observed at a clue.</summary>
/// <param name="Clue">The clue's short name. The same clue may stand in several findings: looked at again.</param>
/// <param name="Channel">How it reached the bench.</param>
/// <param name="Seen">What was observed.</param>
/// <param name="Datum">Of a reading taken on a drawing: 0 for the right datum, n for the clue's n-th named slip. Null for a told reading: where it was taken is not known.</param>
/// <param name="Writing">Of a marking read off a drawn plate: 0 for the true number, n for the clue's n-th decoy, more for other writings, which tell nothing. Null for a told one: which was read is not known.</param>
public sealed record Finding(string Clue, Channel Channel, Seen Seen, int? Datum = null, int? Writing = null);

/// <summary>What was observed.</summary>
public abstract record Seen
{
    Seen()
    {
    }

    /// <summary>A reading in mm, a whole number of the tool's steps.</summary>
    /// <param name="Millimetres">The reading.</param>
    public sealed record Reading(double Millimetres) : Seen;

    /// <summary>A finding of the clue's list.</summary>
    /// <param name="Id">Its short name.</param>
    public sealed record Named(string Id) : Seen;

    /// <summary>It cannot be seen on this bike: no evidence.</summary>
    public sealed record Hidden : Seen;
}
