namespace Apprentice.Engine.Evidence;

/// <summary>What each choice of an order line loses, for every combination of order classes of the parts asked about.</summary>
/// <param name="OrderLine">Short name of the order line; of the part, where only its name is asked.</param>
/// <param name="Choices">The choices: spares in the topic's order, pairs of them, and to ask.</param>
/// <param name="Of">Loss per choice and combination, in the workshop's money.</param>
/// <param name="Wrong">Per choice and combination, true when what is ordered does not fit.</param>
public sealed record LineLosses(string OrderLine, IReadOnlyList<Choice> Choices, double[][] Of, bool[][] Wrong)
{
    /// <summary>Expected loss of the best choice, for weights that need not add up to 1.</summary>
    public double Least(ReadOnlySpan<double> weights)
    {
        var least = double.PositiveInfinity;
        foreach (var losses in Of) least = Math.Min(least, Expected(losses, weights));
        return least;
    }

    /// <summary>Expected loss of one choice.</summary>
    public static double Expected(double[] losses, ReadOnlySpan<double> weights)
    {
        var sum = 0.0;
        for (var c = 0; c < losses.Length; c++) sum += weights[c] * losses[c];
        return sum;
    }
}
