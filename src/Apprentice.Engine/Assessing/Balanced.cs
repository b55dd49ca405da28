using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Assessing;

/// <summary>Equal blocks over places of different sorts: each place takes its case from one block of natural draws of its own sort, and every block is taken once.</summary>
/// <remarks>
/// The block of a place is a random one of all, so that each place keeps the natural law of its sort (MODEL 5), while easy and hard blocks cancel over the paper:
/// Latin hypercube sampling (M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21, 1979). Where every sort has equally many places, each sort also takes one from
/// each of its own coarse blocks: sliced Latin hypercubes (P. Z. G. Qian, JASA 107, 2012).
/// </remarks>
public static class Balanced
{
    /// <summary>One of each place's draws, in the order of the places.</summary>
    /// <typeparam name="T">What is chosen.</typeparam>
    /// <param name="pools">Natural draws per place, each a multiple of the number of places.</param>
    /// <param name="sorts">The sort of each place, any number.</param>
    /// <param name="difficulty">Any measure; equal ones keep their order.</param>
    /// <param name="rng">Luck.</param>
    /// <exception cref="ArgumentException">Draws cannot be cut into equal blocks.</exception>
    public static IReadOnlyList<T> Choose<T>(IReadOnlyList<IReadOnlyList<T>> pools, IReadOnlyList<int> sorts, Func<T, double> difficulty, Rng rng)
    {
        var places = pools.Count;
        if (places == 0 || sorts.Count != places || pools.Any(p => p.Count == 0 || p.Count % places != 0))
            throw new ArgumentException("the draws of each place must be a multiple of the places", nameof(pools));
        var blocks = Blocks(sorts, rng);
        return
        [
            .. pools.Select((pool, place) =>
            {
                var size = pool.Count / places;
                return pool.OrderBy(difficulty).ElementAt((blocks[place] * size) + rng.Below(size));
            }),
        ];
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

    static int[] Blocks(IReadOnlyList<int> sorts, Rng rng)
    {
        var groups = sorts.Select((sort, place) => (sort, place)).GroupBy(p => p.sort).Select(g => g.Select(p => p.place).ToList()).ToList();
        if (groups.Any(g => g.Count != groups[0].Count)) return Shuffled(sorts.Count, rng);
        var blocks = new int[sorts.Count];
        var coarse = groups.Select(g => Shuffled(g.Count, rng)).ToList();
        for (var c = 0; c < groups[0].Count; c++)
        {
            var fine = Shuffled(groups.Count, rng);
            for (var g = 0; g < groups.Count; g++) blocks[groups[g][Array.IndexOf(coarse[g], c)]] = (c * groups.Count) + fine[g];
        }

        return blocks;
    }
}
