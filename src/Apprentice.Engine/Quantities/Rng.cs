namespace Apprentice.Engine.Quantities;

/// <summary>PCG-XSH-RR 64/32: the same numbers from the same seed on every machine and runtime.</summary>
/// <remarks>Source: M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good Algorithms for Random Number Generation, HMC-CS-2014-0905, 2014. Wrap-around is meant.</remarks>
public sealed class Rng
{
    const ulong Multiplier = 6364136223846793005;
    readonly ulong _increment;
    ulong _state;
    double? _spare;

    /// <summary>A generator for a seed and a stream.</summary>
    /// <param name="seed">Where it starts.</param>
    /// <param name="stream">Which of the 2⁶³ sequences; the highest bit does not count.</param>
    public Rng(ulong seed, ulong stream = 54)
    {
        unchecked
        {
            _increment = (stream << 1) | 1;
            Next();
            _state += seed;
            Next();
        }
    }

    /// <summary>The next 32 bits.</summary>
    public uint Next()
    {
        unchecked
        {
            var old = _state;
            _state = (old * Multiplier) + _increment;
            var shifted = (uint)(((old >> 18) ^ old) >> 27);
            var turn = (int)(old >> 59);
            return (shifted >> turn) | (shifted << (-turn & 31));
        }
    }

    /// <summary>A number in [0, 1), a multiple of 2⁻⁵³.</summary>
    public double Unit()
    {
        var high = (ulong)(Next() >> 5);
        var low = (ulong)(Next() >> 6);
        return ((high * 67108864.0) + low) / 9007199254740992.0;
    }

    /// <summary>A whole number from 0 to <paramref name="count"/> − 1, all equally likely to within 2⁻³².</summary>
    public int Below(int count) => (int)(Unit() * count);

    /// <summary>An index drawn in proportion to weights that are not negative and not all 0.</summary>
    public int Pick(IReadOnlyList<double> weights)
    {
        var total = 0.0;
        for (var i = 0; i < weights.Count; i++) total += weights[i];
        var left = Unit() * total;
        var last = 0;
        for (var i = 0; i < weights.Count; i++)
        {
            if (weights[i] <= 0) continue;
            last = i;
            left -= weights[i];
            if (left < 0) return i;
        }

        return last;
    }

    /// <summary>A draw from Normal(0, 1) by the polar method (Marsaglia and Bray, 1964), with our own logarithm.</summary>
    public double Normal()
    {
        if (_spare is { } kept)
        {
            _spare = null;
            return kept;
        }

        while (true)
        {
            var x = (2 * Unit()) - 1;
            var y = (2 * Unit()) - 1;
            var square = (x * x) + (y * y);
            if (square is >= 1 or 0) continue;
            var factor = Math.Sqrt(-2 * Real.Log(square) / square);
            _spare = y * factor;
            return x * factor;
        }
    }
}
