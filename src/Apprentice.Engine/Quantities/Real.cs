namespace Apprentice.Engine.Quantities;

/// <summary>Elementary functions from + − × ÷ √ alone, so that every machine gives the same bits.</summary>
/// <remarks>Relative error below 1e-15 for <see cref="Exp"/> and <see cref="Log"/>, absolute error below 4e-16 for <see cref="Phi"/>, below 0 also relative error below 5e-15; tested against the platform and MathNet.</remarks>
public static class Real
{
    const double Ln2High = 6.93147180369123816490e-01;
    const double Ln2Low = 1.90821492927058770002e-10;
    const double InverseLn2 = 1.44269504088896338700;
    const double Ln10 = 2.30258509299404568402;
    const double RootTwoPi = 2.50662827463100050242;
    const int Cells = 16;
    const int Reach = 9;
    static readonly double[] Tails = MakeTails();

    /// <summary>e to the power x; 0 below −745, infinite above 709.</summary>
    public static double Exp(double x)
    {
        if (double.IsNaN(x)) return double.NaN;
        if (x < -745) return 0;
        if (x > 709.7) return double.PositiveInfinity;
        var k = Math.Floor((x * InverseLn2) + 0.5);
        var r = x - (k * Ln2High) - (k * Ln2Low);
        var sum = 1.0;
        for (var n = 14; n >= 1; n--) sum = 1 + (r * sum / n);
        return Scale(sum, (int)k);
    }

    /// <summary>Natural logarithm; −∞ at 0, NaN below.</summary>
    public static double Log(double x)
    {
        if (double.IsNaN(x) || x < 0) return double.NaN;
        if (x == 0) return double.NegativeInfinity;
        if (double.IsPositiveInfinity(x)) return x;
        var shift = 0;
        if (x < 2.3e-308)
        {
            x *= 18014398509481984.0;
            shift = -54;
        }

        var bits = BitConverter.DoubleToInt64Bits(x);
        var exponent = (int)((bits >> 52) & 0x7FF) - 1023 + shift;
        var m = BitConverter.Int64BitsToDouble((bits & 0xFFFFFFFFFFFFF) | 0x3FF0000000000000);
        if (m > 1.4142135623730951)
        {
            m /= 2;
            exponent++;
        }

        var s = (m - 1) / (m + 1);
        var square = s * s;
        var sum = 0.0;
        for (var n = 23; n >= 1; n -= 2) sum = (sum * square) + (1.0 / n);
        return (exponent * Ln2High) + ((2 * s * sum) + (exponent * Ln2Low));
    }

    /// <summary>Logarithm to base 10.</summary>
    public static double Log10(double x) => Log(x) / Ln10;

    /// <summary>Logarithm to base 2.</summary>
    public static double Log2(double x) => Log(x) * InverseLn2;

    /// <summary>Density of Normal(0, 1).</summary>
    public static double Density(double x) => Exp(-0.5 * x * x) / RootTwoPi;

    /// <summary>Distribution function of Normal(0, 1), never falling: for x ≤ 0 a table of steps of 1/16 and the Taylor series at the nearest; above, 1 less the other tail.</summary>
    public static double Phi(double x) => x > 0 ? 1 - LowerTail(-x) : LowerTail(x);

    /// <summary>∫ Φ from −∞ to x: x·Φ(x) + φ(x).</summary>
    public static double PhiIntegral(double x) => x < -Reach ? 0 : (x * Phi(x)) + Density(x);

    // The lower tail is kept apart so that small probabilities keep their digits, and none falls below 0.
    static double LowerTail(double x)
    {
        if (x <= -Reach) return 0;
        var cell = (int)Math.Floor((-x * Cells) + 0.5);
        var at = -cell / (double)Cells;
        var d = x - at;
        double before = 0, hermite = 1, power = d, sum = 0;
        for (var n = 1; n <= 12; n++)
        {
            sum += hermite * power;
            (before, hermite) = (hermite, -(at * hermite) - ((n - 1) * before));
            power *= d / (n + 1);
        }

        return Tails[cell] + (Density(at) * sum);
    }

    static double[] MakeTails() => [.. Enumerable.Range(0, (Cells * Reach) + 1).Select(cell => Tail(cell / (double)Cells))];

    // Near 0 the series of G. Marsaglia, Evaluating the Normal Distribution, Journal of Statistical Software 11(4), 2004; further out the continued fraction of Laplace.
    static double Tail(double x)
    {
        if (x < 1.5)
        {
            double sum = x, before = 0, term = x, i = 1;
            while (sum != before)
            {
                before = sum;
                i += 2;
                term *= x * x / i;
                sum += term;
            }

            return 0.5 - (sum * Density(x));
        }

        var fraction = x;
        for (var n = 300; n >= 1; n--) fraction = x + (n / fraction);
        return Density(x) / fraction;
    }

    static double Scale(double value, int power)
    {
        while (power > 1000)
        {
            value *= Power(1000);
            power -= 1000;
        }

        while (power < -1000)
        {
            value *= Power(-1000);
            power += 1000;
        }

        return value * Power(power);
    }

    static double Power(int power) => BitConverter.Int64BitsToDouble((long)(power + 1023) << 52);
}
