namespace Apprentice.Engine.Assessing.Numbers;

/// <summary>Classical test theory of right and not right answers: people in rows, sorts of jobs in columns.</summary>
/// <remarks>Sources: G. F. Kuder, M. W. Richardson, Psychometrika 2, 1937; L. J. Cronbach, Psychometrika 16, 1951; L. S. Feldt, Psychometrika 30, 1965.</remarks>
public sealed class ClassicalTest
{
    const double Tail = 0.27;
    readonly int[][] _rows;
    readonly double[] _totals;

    /// <summary>The numbers of a table.</summary>
    /// <param name="rows">A row a person of 0 and 1, all of the same length of at least 2; at least two rows.</param>
    /// <exception cref="ArgumentException">The table is too small, or a row has another length.</exception>
    public ClassicalTest(IReadOnlyList<IReadOnlyList<int>> rows)
    {
        if (rows.Count < 2 || rows[0].Count < 2) throw new ArgumentException("at least two people and two sorts of jobs are needed", nameof(rows));
        if (rows.Any(r => r.Count != rows[0].Count || r.Any(x => x is < 0 or > 1))) throw new ArgumentException("each row needs the same columns, each 0 or 1", nameof(rows));
        _rows = [.. rows.Select(r => r.ToArray())];
        _totals = [.. _rows.Select(r => (double)r.Sum())];
    }

    /// <summary>People.</summary>
    public int People => _rows.Length;

    /// <summary>Columns.</summary>
    public int Items => _rows[0].Length;

    /// <summary>Mean number right.</summary>
    public double Mean => _totals.Average();

    /// <summary>Standard deviation of the number right (n − 1).</summary>
    public double Spread => Math.Sqrt(Cross(_totals, _totals) / (People - 1));

    /// <summary>Cronbach's alpha, which for 0 and 1 is KR-20, both variances with the same divisor. Zero spread gives 0.</summary>
    public double Alpha
    {
        get
        {
            var total = Cross(_totals, _totals);
            return total == 0 ? 0 : Items / (Items - 1.0) * (1 - (Enumerable.Range(0, Items).Sum(i => Cross(Column(i), Column(i))) / total));
        }
    }

    /// <summary>KR-21: alpha as if all columns were equally hard.</summary>
    public double Kr21 => Items / (Items - 1.0) * (1 - (Mean * (Items - Mean) / (Items * Cross(_totals, _totals) / People)));

    /// <summary>Standard error of measurement, jobs.</summary>
    public double Error => Spread * Math.Sqrt(1 - Alpha);

    /// <summary>Feldt's 95 % interval of alpha.</summary>
    public (double Low, double High) AlphaInterval => IntervalOf(Alpha, People, Items);

    /// <summary>Feldt's 95 % interval of an alpha.</summary>
    public static (double Low, double High) IntervalOf(double alpha, int people, int items)
    {
        var (above, below) = (people - 1.0, (people - 1.0) * (items - 1));
        return (1 - ((1 - alpha) * Distributions.FPoint(0.975, above, below)), 1 - ((1 - alpha) * Distributions.FPoint(0.025, above, below)));
    }

    /// <summary>Share right of a column.</summary>
    public double Share(int item) => Column(item).Average();

    /// <summary>Correlation of a column with the number right in all others; 0 without spread.</summary>
    public double ItemRest(int item) => Correlation(Column(item), [.. _totals.Select((t, p) => t - _rows[p][item])]);

    /// <summary>Share right in the upper 27 % less that in the lower 27 %; people with equal totals at the edge of a group belong to it in part, so that their order does not matter.</summary>
    /// <remarks>Source of the 27 %: T. L. Kelley, Journal of Educational Psychology 30, 1939.</remarks>
    public double Discrimination(int item)
    {
        var group = (int)Math.Floor((Tail * People) + 0.5);
        return group == 0 ? 0 : GroupShare(item, group, t => -t) - GroupShare(item, group, t => t);
    }

    double GroupShare(int item, int group, Func<double, double> order)
    {
        var (left, right) = ((double)group, 0.0);
        foreach (var tie in _totals.Select((t, p) => (Key: order(t), Right: _rows[p][item])).GroupBy(p => p.Key).OrderBy(g => g.Key))
        {
            var taken = Math.Min(left, tie.Count());
            right += taken * tie.Average(p => p.Right);
            left -= taken;
            if (left <= 0) break;
        }

        return right / group;
    }

    double[] Column(int item) => [.. _rows.Select(r => (double)r[item])];

    static double Correlation(double[] a, double[] b)
    {
        var spread = Math.Sqrt(Cross(a, a) * Cross(b, b));
        return spread == 0 ? 0 : Cross(a, b) / spread;
    }

    static double Cross(double[] a, double[] b)
    {
        var (ma, mb) = (a.Average(), b.Average());
        return a.Zip(b, (x, y) => (x - ma) * (y - mb)).Sum();
    }
}
