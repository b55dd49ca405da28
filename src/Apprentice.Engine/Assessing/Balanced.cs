using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Assessing;

/// <summary>Makes papers alike without choosing any single case: equally many natural draws for each place make equally many papers, arranged so that hard places stand beside easy ones, and one of these papers is taken at random.</summary>
/// <remarks>
/// The paper is taken whatever it holds, so at each place every draw is equally likely and the place keeps the natural law of its sort of job (MODEL 5). Arranging is the
/// rearrangement algorithm (G. Puccetti, L. Rüschendorf, Journal of Computational and Applied Mathematics 236, 2012): each place is sorted against the sum of all others.
/// Equal blocks of each sort alone leave papers of many sorts too far apart: few places a sort, and a chance that jumps somewhere inside a block.
/// </remarks>
public static class Balanced
{
    const int Passes = 3;

    /// <summary>One of each place's draws, in the order of the places.</summary>
    /// <typeparam name="T">What is chosen.</typeparam>
    /// <param name="pools">Natural draws per place, equally many for each.</param>
    /// <param name="chance">The chance of a sound answer, or any other measure of how hard a draw is.</param>
    /// <param name="rng">Luck.</param>
    /// <exception cref="ArgumentException">The places have no or unequally many draws.</exception>
    public static IReadOnlyList<T> Choose<T>(IReadOnlyList<IReadOnlyList<T>> pools, Func<T, double> chance, Rng rng)
    {
        if (pools.Count == 0 || pools[0].Count == 0 || pools.Any(p => p.Count != pools[0].Count)) throw new ArgumentException("each place needs equally many draws", nameof(pools));
        var papers = pools[0].Count;
        var columns = pools.Select(pool => Shuffled(papers, rng).Select(i => (Draw: pool[i], Chance: chance(pool[i]))).ToArray()).ToArray();
        var sums = Enumerable.Range(0, papers).Select(p => columns.Sum(c => c[p].Chance)).ToArray();
        for (var pass = 0; pass < Passes; pass++)
        {
            foreach (var column in columns)
            {
                for (var p = 0; p < papers; p++) sums[p] -= column[p].Chance;
                var hardest = Enumerable.Range(0, papers).OrderBy(p => sums[p]).ToList();
                var easiest = column.OrderByDescending(d => d.Chance).ToList();
                for (var i = 0; i < papers; i++) column[hardest[i]] = easiest[i];
                for (var p = 0; p < papers; p++) sums[p] += column[p].Chance;
            }
        }

        var taken = rng.Below(papers);
        return [.. columns.Select(c => c[taken].Draw)];
    }

    /// <summary>The numbers 0 to n − 1 in random order.</summary>
    public static int[] Shuffled(int count, Rng rng)
    {
        var order = Enumerable.Range(0, count).ToArray();
        for (var i = count - 1; i > 0; i--)
        {
            var j = rng.Below(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }

        return order;
    }
}
