using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Assessing.Numbers;

/// <summary>The gamma and beta functions and what rests on them.</summary>
public static class Distributions
{
    const double HalfLogTwoPi = 0.91893853320467274178;

    // Source: C. Lanczos, SIAM Journal on Numerical Analysis B 1, 1964, with g = 7 and the nine coefficients of P. Godfrey, 2001.
    static readonly double[] Lanczos =
    [
        0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905, -0.13857109526572012,
        9.9843695780195716e-6, 1.5056327351493116e-7,
    ];

    /// <summary>Natural logarithm of the gamma function.</summary>
    /// <param name="x">Greater than 0.</param>
    public static double LogGamma(double x)
    {
        if (x < 0.5) return LogGamma(x + 1) - Real.Log(x);
        var z = x - 1;
        var sum = Lanczos[0];
        for (var i = 1; i < Lanczos.Length; i++) sum += Lanczos[i] / (z + i);
        var t = z + 7.5;
        return HalfLogTwoPi + ((z + 0.5) * Real.Log(t)) - t + Real.Log(sum);
    }

    /// <summary>Natural logarithm of the beta function.</summary>
    public static double LogBeta(double a, double b) => LogGamma(a) + LogGamma(b) - LogGamma(a + b);

    /// <summary>The share of Beta(a, b) below x: the regularised incomplete beta function, by its continued fraction.</summary>
    /// <remarks>Source: DLMF 8.17.22, evaluated by the method of Lentz (Applied Optics 15, 1976).</remarks>
    public static double BetaShare(double x, double a, double b)
    {
        if (x <= 0) return 0;
        if (x >= 1) return 1;
        if (x > (a + 1) / (a + b + 2)) return 1 - BetaShare(1 - x, b, a);
        const double Tiny = 1e-300;
        var (c, d) = (1.0, 1 / Kept(1 - ((a + b) * x / (a + 1))));
        var f = d;
        for (var m = 1; m <= 1000; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / Kept(1 + (even * d));
            c = Kept(1 + (even / c));
            f *= c * d;
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / Kept(1 + (odd * d));
            c = Kept(1 + (odd / c));
            var step = c * d;
            f *= step;
            if (Math.Abs(step - 1) < 1e-16) break;
        }

        return Real.Exp((a * Real.Log(x)) + (b * Real.Log(1 - x)) - LogBeta(a, b)) * f / a;

        static double Kept(double value) => Math.Abs(value) < Tiny ? Tiny : value;
    }

    /// <summary>The point of Beta(a, b) with a share below it.</summary>
    public static double BetaPoint(double share, double a, double b)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 80; i++)
        {
            var middle = (low + high) / 2;
            if (BetaShare(middle, a, b) < share) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>The point of the F distribution with a share below it.</summary>
    /// <param name="share">Between 0 and 1.</param>
    /// <param name="above">Degrees of freedom above the line.</param>
    /// <param name="below">Degrees of freedom below the line.</param>
    public static double FPoint(double share, double above, double below)
    {
        var x = BetaPoint(share, above / 2, below / 2);
        return below * x / (above * (1 - x));
    }

    /// <summary>The 95 % interval of a share: never less than 95 % sure. Source: C. J. Clopper, E. S. Pearson, Biometrika 26, 1934.</summary>
    /// <param name="right">Right answers.</param>
    /// <param name="of">Answers, at least 1.</param>
    public static (double Low, double High) ShareInterval(int right, int of) => (
        right == 0 ? 0 : BetaPoint(0.025, right, of - right + 1),
        right == of ? 1 : BetaPoint(0.975, right + 1, of - right));
}
