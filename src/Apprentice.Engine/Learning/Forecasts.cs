namespace Apprentice.Engine.Learning;

/// <summary>Scores of stated certainties.</summary>
public static class Forecasts
{
    /// <summary>Mean of (p − y)²: half of the score over both outcomes. Source: G. W. Brier, Verification of forecasts expressed in terms of probability, 1950.</summary>
    /// <param name="answers">At least one: the certainty, and whether it was right.</param>
    public static double Brier(IReadOnlyList<(double Said, bool Right)> answers) => answers.Average(a => (a.Said - (a.Right ? 1 : 0)) * (a.Said - (a.Right ? 1 : 0)));

    /// <summary>The parts of the score: score = reliability − resolution + uncertainty. Source: A. H. Murphy, A New Vector Partition of the Probability Score, 1973.</summary>
    /// <param name="groups">Answers of one and the same certainty: how often said, how often right; counts may be weights.</param>
    public static (double Reliability, double Resolution, double Uncertainty) Partition(IReadOnlyList<(double Said, double Asked, double Right)> groups)
    {
        var all = groups.Sum(g => g.Asked);
        var share = groups.Sum(g => g.Right) / all;
        return (
            groups.Sum(g => g.Asked * Square(g.Said - (g.Right / g.Asked))) / all,
            groups.Sum(g => g.Asked * Square((g.Right / g.Asked) - share)) / all,
            share * (1 - share));
    }

    static double Square(double x) => x * x;
}
