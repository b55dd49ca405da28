namespace Apprentice.Engine.Quantities;

/// <summary>The beta distribution: what is known of a share after so many hits and misses.</summary>
/// <remarks>Continued fraction: NIST Digital Library of Mathematical Functions, 8.17.22; logarithm of the gamma function: the same, 5.11.1. Tested against MathNet to 1e-10.</remarks>
public static class BetaShare
{
    const double HalfLnTwoPi = 0.91893853320467274178;
    const int MostTerms = 500;
    const int MostSteps = 80;

    /// <summary>P(share ≤ x).</summary>
    /// <param name="x">0 to 1.</param>
    /// <param name="a">Greater than 0: hits and what was put in before.</param>
    /// <param name="b">Greater than 0: misses and what was put in before.</param>
    public static double Below(double x, double a, double b)
    {
        if (x <= 0) return 0;
        return x >= 1 ? 1 : Below(x, a, b, Constant(a, b));
    }

    static double Constant(double a, double b) => LogGamma(a + b) - LogGamma(a) - LogGamma(b);

    static double Below(double x, double a, double b, double constant)
    {
        var front = Real.Exp(constant + (a * Real.Log(x)) + (b * Real.Log(1 - x)));
        return x < (a + 1) / (a + b + 2) ? front * Fraction(x, a, b) / a : 1 - (front * Fraction(1 - x, b, a) / b);
    }

    /// <summary>The share below which it lies with a probability: halving, made quick by Newton's step where that stays between the ends.</summary>
    /// <param name="probability">Between 0 and 1.</param>
    /// <param name="a">Greater than 0.</param>
    /// <param name="b">Greater than 0.</param>
    public static double Quantile(double probability, double a, double b)
    {
        double low = 0, high = 1, x = a / (a + b);
        var constant = Constant(a, b);
        for (var step = 0; step < MostSteps && high - low > 1e-14; step++)
        {
            var over = Below(x, a, b, constant) - probability;
            if (over > 0) high = x;
            else low = x;
            var density = Real.Exp(constant + ((a - 1) * Real.Log(x)) + ((b - 1) * Real.Log(1 - x)));
            var next = x - (over / density);
            if (Math.Abs(next - x) < 1e-14) return next;
            x = next > low && next < high ? next : (low + high) / 2;
        }

        return x;
    }

    /// <summary>Logarithm of the gamma function for x &gt; 0.</summary>
    public static double LogGamma(double x)
    {
        var product = 1.0;
        for (; x < 15; x++) product *= x;
        var inverse = 1 / (x * x);
        var series = (((((-1.0 / 1680 * inverse) + (1.0 / 1260)) * inverse) - (1.0 / 360)) * inverse) + (1.0 / 12);
        return ((x - 0.5) * Real.Log(x)) - x + HalfLnTwoPi + (series / x) - Real.Log(product);
    }

    // Lentz's way of working out a continued fraction from the front.
    static double Fraction(double x, double a, double b)
    {
        const double Tiny = 1e-300;
        double c = 1, d = 1 / Away(1 - ((a + b) * x / (a + 1))), value = d;
        for (var m = 1; m < MostTerms; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / Away(1 + (even * d));
            c = Away(1 + (even / c));
            value *= d * c;
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / Away(1 + (odd * d));
            c = Away(1 + (odd / c));
            value *= d * c;
            if (Math.Abs((d * c) - 1) < 1e-15) break;
        }

        return value;

        static double Away(double number) => Math.Abs(number) < Tiny ? Tiny : number;
    }
}
