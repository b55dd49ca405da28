using Apprentice.Engine.Quantities;

namespace Apprentice.Drills;

/// <summary>The generator of an item.</summary>
static class Luck
{
    /// <summary>A generator for a seed, spread and run in: neighbouring seeds are not independent in their first numbers.</summary>
    public static Rng Of(ulong seed)
    {
        var rng = new Rng(unchecked(seed * 0x9E3779B97F4A7C15UL), stream: 11);
        for (var i = 0; i < 8; i++) rng.Next();
        return rng;
    }

    /// <summary>Items in a random order.</summary>
    public static IReadOnlyList<T> Mixed<T>(this Rng rng, IEnumerable<T> items)
    {
        var all = items.ToArray();
        for (var i = all.Length - 1; i > 0; i--)
        {
            var j = rng.Below(i + 1);
            (all[i], all[j]) = (all[j], all[i]);
        }
        return all;
    }
}
