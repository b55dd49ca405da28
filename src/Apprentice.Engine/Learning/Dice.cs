namespace Apprentice.Engine.Learning;

/// <summary>Numbers that follow from a number drawn once and the number of a job.</summary>
/// <remarks>Source: Steele, Lea, Flood, Fast Splittable Pseudorandom Number Generators, 2014 (SplitMix64).</remarks>
sealed class Dice(long luck, int job)
{
    ulong _state = unchecked((ulong)luck ^ ((ulong)job * 0xD1342543DE82EF95UL));

    /// <summary>A seed below 2^63, so that it fits every file.</summary>
    public ulong Seed() => Next() >> 1;

    /// <summary>A whole number from 0 up to, not including, a bound of at most a few hundred.</summary>
    public int Below(int bound) => (int)((Next() >> 33) % (ulong)bound);

    ulong Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
