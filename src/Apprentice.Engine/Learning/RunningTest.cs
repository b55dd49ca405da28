using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Learning;

/// <summary>A test that may be looked at after every job: is a share above (or below) a border?</summary>
/// <remarks>
/// E = mean over shares p of (p/p₀)^k · ((1 − p)/(1 − p₀))^(n − k), the p lying evenly between the border and the end. Whoever shows it in at most p₀ of jobs (at least p₀ for the
/// other side), whatever came before, meets E ≥ 1/α at any time with probability at most α. Sources: J. Ville, Étude critique de la notion de collectif, 1939;
/// mixtures: H. Robbins, Statistical Methods Related to the Law of the Iterated Logarithm, 1970.
/// </remarks>
/// <param name="border">p₀, between 0 and 1.</param>
/// <param name="above">True to test for a share above the border, false for one below.</param>
public sealed class RunningTest(double border, bool above)
{
    const int Shares = 12;
    const double Most = 600;
    readonly double[] _shown = [.. Between(border, above).Select(p => Real.Log(p / border))];
    readonly double[] _not = [.. Between(border, above).Select(p => Real.Log((1 - p) / (1 - border)))];
    int _hits;
    int _misses;

    /// <summary>E for what was taken so far; 1 at the start.</summary>
    public double Value
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Shares; i++) sum += Real.Exp(Math.Min((_hits * _shown[i]) + (_misses * _not[i]), Most));
            return sum / Shares;
        }
    }

    /// <summary>Takes one more job.</summary>
    /// <returns>True when E may have risen: on the side for which it tests.</returns>
    public bool Take(bool shown)
    {
        if (shown) _hits++;
        else _misses++;
        return shown == above;
    }

    static IEnumerable<double> Between(double border, bool above) =>
        Enumerable.Range(0, Shares).Select(i => (i + 0.5) / Shares).Select(part => above ? border + ((1 - border) * part) : border * part);
}
