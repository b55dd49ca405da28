using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Assessing.Numbers;

/// <summary>The Rasch model: how hard sorts of jobs are by conditional maximum likelihood, and how able people are by Warm's weighted likelihood.</summary>
/// <remarks>Sources: G. Rasch, Probabilistic Models for Some Intelligence and Attainment Tests, 1960; E. B. Andersen, JRSS B 34, 1972 (conditional likelihood); T. A. Warm, Psychometrika 54, 1989.</remarks>
public sealed class RaschModel
{
    const int MostSteps = 100;
    const double Enough = 1e-12;

    RaschModel(double[] difficulties, double[] errors, double logLikelihood, int people)
    {
        (Difficulties, Errors, LogLikelihood, People) = (difficulties, errors, logLikelihood, people);
    }

    /// <summary>Difficulties in logits; they add up to 0.</summary>
    public IReadOnlyList<double> Difficulties { get; }

    /// <summary>Their standard errors.</summary>
    public IReadOnlyList<double> Errors { get; }

    /// <summary>Conditional log likelihood.</summary>
    public double LogLikelihood { get; }

    /// <summary>People who count: neither none nor all right.</summary>
    public int People { get; }

    /// <summary>The model of a table, or null when it cannot be fitted: a column that all or none of those who count have right.</summary>
    /// <param name="rows">A row a person of 0 and 1, all of the same length of at least 2.</param>
    public static RaschModel? Fit(IReadOnlyList<IReadOnlyList<int>> rows)
    {
        var items = rows.Count == 0 ? 0 : rows[0].Count;
        var used = rows.Where(r => r.Sum() > 0 && r.Sum() < items).ToList();
        var right = Enumerable.Range(0, items).Select(i => (double)used.Sum(r => r[i])).ToArray();
        if (items < 2 || right.Any(s => s == 0 || s == used.Count)) return null;
        var scores = Enumerable.Range(0, items + 1).Select(r => used.Count(row => row.Sum() == r)).ToArray();
        var beta = new double[items];
        for (var step = 0; step < MostSteps; step++)
        {
            var (gradient, information, _) = Slope(beta, right, scores);
            if (Inverse(information) is not { } inverse) return null;
            var move = inverse.Select(row => row.Zip(gradient, (a, g) => a * g).Sum()).ToArray();
            for (var i = 0; i < items; i++) beta[i] += Math.Clamp(move[i], -1, 1);
            var mean = beta.Average();
            for (var i = 0; i < items; i++) beta[i] -= mean;
            if (move.Max(Math.Abs) < Enough) return Fitted(beta, right, scores, used.Count);
        }

        return null;
    }

    /// <summary>Ability in logits for a number right; also for none and for all right.</summary>
    /// <param name="right">Number right, 0 to all.</param>
    public double Ability(int right)
    {
        var (low, high) = (-30.0, 30.0);
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            var (expected, information, third) = At(middle);
            if (right - expected + (third / (2 * information)) > 0) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Expected number right of somebody of an ability.</summary>
    public double Expected(double ability) => At(ability).Expected;

    /// <summary>Information at an ability; 1/√ of it is the standard error.</summary>
    public double Information(double ability) => At(ability).Information;

    /// <summary>Expected number right on jobs of given difficulties.</summary>
    public static double Expected(IEnumerable<double> difficulties, double ability) => difficulties.Sum(b => 1 / (1 + Real.Exp(b - ability)));

    static RaschModel? Fitted(double[] beta, double[] right, int[] scores, int people)
    {
        var (_, information, likelihood) = Slope(beta, right, scores);
        // The information has the rank of the columns less one; the sum-to-zero inverse is that of I + J/k, less J/k.
        return Inverse(information) is { } inverse
            ? new RaschModel(beta, [.. inverse.Select((row, i) => Math.Sqrt(row[i] - (1.0 / beta.Length)))], likelihood, people)
            : null;
    }

    (double Expected, double Information, double Third) At(double ability)
    {
        var (expected, information, third) = (0.0, 0.0, 0.0);
        foreach (var b in Difficulties)
        {
            var p = 1 / (1 + Real.Exp(b - ability));
            expected += p;
            information += p * (1 - p);
            third += p * (1 - p) * (1 - (2 * p));
        }

        return (expected, information, third);
    }

    // Gradient in the difficulties, I + J/k, and the log likelihood, all by elementary symmetric functions of exp(−difficulty).
    static (double[] Gradient, double[][] Information, double LogLikelihood) Slope(double[] beta, double[] right, int[] scores)
    {
        var k = beta.Length;
        var e = beta.Select(b => Real.Exp(-b)).ToArray();
        var all = Symmetric(e, -1, -1);
        var gradient = right.Select(s => -s).ToArray();
        var information = Enumerable.Range(0, k).Select(_ => Enumerable.Repeat(1.0 / k, k).ToArray()).ToArray();
        var single = Enumerable.Range(0, k).Select(i => Shares(e[i], Symmetric(e, i, -1), all, 1)).ToArray();
        for (var i = 0; i < k; i++)
        {
            for (var j = i; j < k; j++)
            {
                var both = i == j ? single[i] : Shares(e[i] * e[j], Symmetric(e, i, j), all, 2);
                var sum = 0.0;
                for (var r = 1; r < k; r++) sum += scores[r] * (both[r] - (single[i][r] * single[j][r]));
                information[i][j] += sum;
                if (i != j) information[j][i] += sum;
            }

            for (var r = 1; r < k; r++) gradient[i] += scores[r] * single[i][r];
        }

        var likelihood = -beta.Zip(right, (b, s) => b * s).Sum();
        for (var r = 1; r < k; r++) likelihood -= scores[r] * Real.Log(all[r]);
        return (gradient, information, likelihood);
    }

    static double[] Shares(double factor, double[] without, double[] all, int taken) =>
        [.. all.Select((g, r) => r < taken ? 0 : factor * without[r - taken] / g)];

    // Sums of products of so many of the values, two of them left out: only sums of positive numbers.
    static double[] Symmetric(double[] e, int without, int alsoWithout)
    {
        var sums = new double[e.Length + 1];
        sums[0] = 1;
        for (var i = 0; i < e.Length; i++)
        {
            if (i == without || i == alsoWithout) continue;
            for (var r = i + 1; r >= 1; r--) sums[r] += e[i] * sums[r - 1];
        }

        return sums;
    }

    // Gauss–Jordan with the largest pivot; null for a singular matrix.
    static double[][]? Inverse(double[][] matrix)
    {
        var n = matrix.Length;
        var a = matrix.Select((row, i) => row.Concat(Enumerable.Range(0, n).Select(j => i == j ? 1.0 : 0)).ToArray()).ToArray();
        for (var c = 0; c < n; c++)
        {
            var pivot = Enumerable.Range(c, n - c).MaxBy(r => Math.Abs(a[r][c]));
            if (!(Math.Abs(a[pivot][c]) > 1e-12)) return null;
            (a[c], a[pivot]) = (a[pivot], a[c]);
            var scale = a[c][c];
            for (var j = 0; j < 2 * n; j++) a[c][j] /= scale;
            for (var r = 0; r < n; r++)
            {
                if (r == c) continue;
                var factor = a[r][c];
                for (var j = 0; j < 2 * n; j++) a[r][j] -= factor * a[c][j];
            }
        }

        return [.. a.Select(row => row[n..])];
    }
}
