using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>How a person weighs each sort of evidence against what it is worth.</summary>
/// <param name="Updates">All checks after which it was asked how sure.</param>
/// <param name="Families">All six families.</param>
/// <param name="Clues">Single clues that were asked about, shrunk to their family.</param>
/// <param name="Linked">Second and later clues of a set that belongs together: above 1 means counted as separate votes.</param>
public sealed record TrustReport(
    int Updates, IReadOnlyList<(ClueFamily Family, TrustSlope Slope)> Families, IReadOnlyList<(string Topic, string Clue, ClueFamily Family, TrustSlope Slope)> Clues,
    TrustSlope Linked);

/// <summary>Change of the learner's log odds for one of the engine's: 1 is worth what it is, below is trusted too little, above too much.</summary>
/// <param name="Updates">On how many checks it rests.</param>
/// <param name="Slope">The slope.</param>
/// <param name="Low">Lower end of the 90 of 100 interval.</param>
/// <param name="High">Upper end.</param>
/// <param name="Word">What may be said.</param>
public sealed record TrustSlope(int Updates, double Slope, double Low, double High, TrustWord Word);

/// <summary>Words for a slope.</summary>
public enum TrustWord
{
    /// <summary>Fewer than ten updates.</summary>
    NotYetKnown,

    /// <summary>The interval lies below 1.</summary>
    TooLittle,

    /// <summary>The interval holds 1.</summary>
    AboutRight,

    /// <summary>The interval lies above 1.</summary>
    TooMuch,
}
