namespace Apprentice.Engine.Learning;

/// <summary>Real parts measured twice by one person: no true value is known or needed.</summary>
/// <param name="Number">Number of the series on this file, from 1.</param>
/// <param name="Person">Who measured, or null for nobody known.</param>
/// <param name="Set">Short name of the set of parts.</param>
/// <param name="Readings">Readings in the order taken.</param>
public sealed record RealSeries(int Number, string? Person, string Set, IReadOnlyList<LogEntry.RealPartRead> Readings)
{
    const double Two = 2;

    /// <summary>The two readings of each part that was read twice, mm, by the part's number.</summary>
    public IReadOnlyList<RealPair> Pairs =>
    [
        .. Readings.GroupBy(r => r.Part).OrderBy(g => g.Key)
            .Where(g => g.Any(r => r.Nth == 1) && g.Any(r => r.Nth == 2))
            .Select(g => new RealPair(g.Key, g.Last(r => r.Nth == 1).Millimetres, g.Last(r => r.Nth == 2).Millimetres)),
    ];

    /// <summary>How far the two readings of a part lie apart on average, mm; 0 without pairs.</summary>
    public double Apart => Pairs.Count == 0 ? 0 : Pairs.Average(p => Math.Abs(p.Difference));

    /// <summary>Spread of this person's single reading, mm: s = √(Σd²/2n), the square root of the mean of the pairs' variances d²/2; 0 without pairs.</summary>
    /// <remarks>Source: JCGM 100:2008 (GUM), 4.2.2 for the variance of two readings, 4.2.4 for the pooled one.</remarks>
    public double Spread => Pairs.Count == 0 ? 0 : Math.Sqrt(Pairs.Average(p => p.Difference * p.Difference / Two));

    /// <summary>What two people's means of two readings of one part may differ by, mm: U = 2·√(s₁²/2 + s₂²/2 + 2·δ²/12), coverage factor 2.</summary>
    /// <remarks>Source: JCGM 100:2008 (GUM), 4.2.3 (mean of two), 5.1.2 (difference of uncorrelated means), 6.3.3 (k = 2), F.2.2.1 (resolution δ as rectangular, δ/√12).</remarks>
    /// <param name="other">The other person's series.</param>
    /// <param name="resolution">The finest step that is read, mm.</param>
    public double AllowedBetween(RealSeries other, double resolution) =>
        Two * Math.Sqrt(((Spread * Spread) + (other.Spread * other.Spread)) / Two + (Two * resolution * resolution / 12));

    /// <summary>How far the other person's mean lies from this one's, for each part that both read twice, mm: + when theirs is larger.</summary>
    public IReadOnlyList<(int Part, double Millimetres)> Shifts(RealSeries other) =>
        [.. Pairs.Join(other.Pairs, p => p.Part, p => p.Part, (mine, theirs) => (mine.Part, theirs.Mean - mine.Mean))];
}

/// <summary>Two readings of one real part.</summary>
/// <param name="Part">Number of the part, from 1.</param>
/// <param name="First">First reading, mm.</param>
/// <param name="Second">Second reading, mm.</param>
public sealed record RealPair(int Part, double First, double Second)
{
    /// <summary>Second less first, mm.</summary>
    public double Difference => Second - First;

    /// <summary>Mean of both, mm.</summary>
    public double Mean => (First + Second) / 2;
}
