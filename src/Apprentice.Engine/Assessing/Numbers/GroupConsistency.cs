using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Assessing.Numbers;

/// <summary>How often two papers of a fixed length would agree over a group, from its mean and spread alone: for 20 people or more.</summary>
/// <remarks>Source: H. Huynh, On the reliability of decisions in domain-referenced testing, Journal of Educational Measurement 13, 1976 (bivariate beta-binomial).</remarks>
/// <param name="Agreement">Share of people for whom both papers say the same.</param>
/// <param name="Kappa">Agreement beyond chance.</param>
/// <param name="Passed">Share that passes.</param>
public sealed record GroupConsistency(double Agreement, double Kappa, double Passed)
{
    /// <summary>For a group.</summary>
    /// <param name="jobs">Jobs a paper.</param>
    /// <param name="mean">Mean number sound.</param>
    /// <param name="spread">Standard deviation of the group (n, not n − 1).</param>
    /// <param name="cut">Passed from so many sound jobs on.</param>
    /// <returns>The indices, or null when the group differs no more than by chance.</returns>
    public static GroupConsistency? Of(int jobs, double mean, double spread, int cut)
    {
        var kr21 = jobs / (jobs - 1.0) * (1 - (mean * (jobs - mean) / (jobs * spread * spread)));
        if (!(kr21 > 0)) return null;
        var alpha = ((1 / kr21) - 1) * mean;
        var beta = (jobs / kr21) - jobs - alpha;
        var (both, neither, passed) = (0.0, 0.0, 0.0);
        for (var x = 0; x <= jobs; x++)
        {
            if (x >= cut) passed += Real.Exp(Ways(jobs, x) + Distributions.LogBeta(alpha + x, beta + jobs - x) - Distributions.LogBeta(alpha, beta));
            for (var y = 0; y <= jobs; y++)
            {
                if (x >= cut != y >= cut) continue;
                var share = Real.Exp(Ways(jobs, x) + Ways(jobs, y) + Distributions.LogBeta(alpha + x + y, beta + (2 * jobs) - x - y) - Distributions.LogBeta(alpha, beta));
                if (x >= cut) both += share;
                else neither += share;
            }
        }

        var chance = (passed * passed) + ((1 - passed) * (1 - passed));
        return new GroupConsistency(both + neither, (both + neither - chance) / (1 - chance), passed);
    }

    static double Ways(int n, int k) => Distributions.LogGamma(n + 1) - Distributions.LogGamma(k + 1) - Distributions.LogGamma(n - k + 1);
}
