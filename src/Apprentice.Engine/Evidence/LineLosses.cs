using System.Numerics;

namespace Apprentice.Engine.Evidence;

/// <summary>What each choice of an order line loses, for every combination of order classes of the parts asked about.</summary>
/// <param name="OrderLine">Short name of the order line; of the part, where only its name is asked.</param>
/// <param name="Choices">The choices: spares in the topic's order, pairs of them, and to ask.</param>
/// <param name="Of">Loss per choice and combination, in the workshop's money.</param>
/// <param name="Wrong">Per choice and combination, true when what is ordered does not fit.</param>
public sealed record LineLosses(string OrderLine, IReadOnlyList<Choice> Choices, double[][] Of, bool[][] Wrong)
{
    const int Abreast = 4;
    double[][]? _undominated;
    double[]? _across;

    /// <summary>Expected loss of the best choice, for weights that need not add up to 1 and are not negative.</summary>
    /// <remarks>Choices are summed side by side, each in the order of the combinations as in <see cref="Expected"/>, so that not even the last digit differs.</remarks>
    public double Least(ReadOnlySpan<double> weights)
    {
        var across = _across ??= Across(_undominated ??= Undominated());
        var lanes = Vector<double>.Count;
        var stride = across.Length / weights.Length;
        var least = new Vector<double>(double.PositiveInfinity);
        for (var k = 0; k < stride; k += Abreast * lanes)
        {
            var (a, b, c, d) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
            for (int w = 0, at = k; w < weights.Length; w++, at += stride)
            {
                var weight = new Vector<double>(weights[w]);
                a += weight * new Vector<double>(across, at);
                b += weight * new Vector<double>(across, at + lanes);
                c += weight * new Vector<double>(across, at + (2 * lanes));
                d += weight * new Vector<double>(across, at + (3 * lanes));
            }

            least = Vector.Min(least, Vector.Min(Vector.Min(a, b), Vector.Min(c, d)));
        }

        var best = double.PositiveInfinity;
        for (var i = 0; i < lanes; i++) best = Math.Min(best, least[i]);
        return best;
    }

    /// <summary>Expected loss of one choice.</summary>
    public static double Expected(double[] losses, ReadOnlySpan<double> weights)
    {
        var sum = 0.0;
        for (var c = 0; c < losses.Length; c++) sum += weights[c] * losses[c];
        return sum;
    }

    /// <summary>The same for some of the combinations only, for weights that are 0 in all others; choices that are never the best are left out.</summary>
    /// <param name="combinations">Indices of the combinations, ascending.</param>
    public LineLosses Over(int[] combinations)
    {
        var of = (_undominated ??= Undominated()).Select(losses => combinations.Select(c => losses[c]).ToArray()).ToArray();
        return new LineLosses(OrderLine, [], of, []);
    }

    // Losses by combination, all choices of one beside each other; what fills up the last row is its last choice again.
    static double[] Across(double[][] of)
    {
        var block = Abreast * Vector<double>.Count;
        var stride = (of.Length + block - 1) / block * block;
        var across = new double[stride * of[0].Length];
        for (var c = 0; c < of[0].Length; c++)
        {
            for (var k = 0; k < stride; k++) across[(c * stride) + k] = of[Math.Min(k, of.Length - 1)][c];
        }

        return across;
    }

    // A choice that loses nowhere less than another is never the better one, whatever the weights.
    double[][] Undominated()
    {
        var kept = new List<double[]>();
        foreach (var losses in Of)
        {
            if (kept.Exists(k => NowhereMore(k, losses))) continue;
            kept.RemoveAll(k => NowhereMore(losses, k));
            kept.Add(losses);
        }

        return [.. kept];
    }

    static bool NowhereMore(double[] one, double[] other)
    {
        for (var c = 0; c < one.Length; c++)
        {
            if (one[c] > other[c]) return false;
        }

        return true;
    }
}
