using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Cases;

/// <summary>Chooses parallel sets: sort by difficulty, cut into equal blocks, take one at random from each, shuffle. Every place keeps its natural law, and sets are alike.</summary>
public static class EqualBlocks
{
    /// <summary>Draws wanted for each place.</summary>
    public const int DrawsPerPlace = 40;

    /// <summary>One of each block, in random order.</summary>
    /// <typeparam name="T">What is chosen.</typeparam>
    /// <param name="drawn">Natural draws, a multiple of <paramref name="places"/>.</param>
    /// <param name="difficulty">Any measure; equal ones keep their order.</param>
    /// <param name="places">How many to choose.</param>
    /// <param name="rng">Luck.</param>
    /// <exception cref="ArgumentException">The draws cannot be cut into equal blocks.</exception>
    public static IReadOnlyList<T> Choose<T>(IReadOnlyList<T> drawn, Func<T, double> difficulty, int places, Rng rng)
    {
        if (places < 1 || drawn.Count % places != 0 || drawn.Count == 0) throw new ArgumentException("the draws must be a multiple of the places", nameof(drawn));
        var sorted = drawn.OrderBy(difficulty).ToList();
        var block = drawn.Count / places;
        var chosen = Enumerable.Range(0, places).Select(b => sorted[(b * block) + rng.Below(block)]).ToArray();
        for (var i = places - 1; i > 0; i--)
        {
            var j = rng.Below(i + 1);
            (chosen[i], chosen[j]) = (chosen[j], chosen[i]);
        }

        return chosen;
    }
}
