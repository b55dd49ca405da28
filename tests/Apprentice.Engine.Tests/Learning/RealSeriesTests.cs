using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Tests.Learning;

/// <summary>The spread of a person's readings, against worked values of JCGM 100:2008 (GUM).</summary>
public sealed class RealSeriesTests
{
    // Facts U7.3, W1: five readings of one seatpost, s = 0.04183 mm (computed there by the formula of GUM 4.2.2).
    static readonly double[] Post = [27.15, 27.20, 27.20, 27.10, 27.15];

    [Fact]
    public void The_formula_that_checks_the_pairs_gives_the_worked_value() => Assert.Equal(0.04183, Deviation(Post), 5e-6);

    [Theory]
    [InlineData(27.15, 27.20)]
    [InlineData(27.20, 27.10)]
    [InlineData(27.10, 27.10)]
    public void The_spread_of_one_pair_is_its_standard_deviation(double first, double second) =>
        Assert.Equal(Deviation([first, second]), Series("Sam", (first, second)).Spread, 1e-12);

    // GUM 4.2.4: the pooled variance is the mean of the variances where all have as many degrees of freedom.
    [Fact]
    public void The_spread_of_several_pairs_is_pooled()
    {
        var pooled = Math.Sqrt((Square(Deviation([27.15, 27.20])) + Square(Deviation([31.60, 31.50])) + Square(Deviation([25.40, 25.40]))) / 3);
        var series = Series("Sam", (27.15, 27.20), (31.60, 31.50), (25.40, 25.40));
        Assert.Equal(pooled, series.Spread, 1e-12);
        Assert.Equal(0.05, series.Apart, 1e-12);
    }

    // Facts U7.3: resolution 0.05 gives 0.01443; two means of it, k = 2: 2 x 0.01443 x sqrt 2 = 0.0408.
    [Fact]
    public void Without_any_spread_the_resolution_is_left() =>
        Assert.Equal(2 * 0.01443 * Math.Sqrt(2), Series("Sam", (27.15, 27.15)).AllowedBetween(Series("Kim", (27.2, 27.2)), 0.05), 1e-4);

    // GUM 4.2.3 and 5.1.2: u of the difference of two means of two readings is sqrt(s1^2/2 + s2^2/2).
    [Fact]
    public void Two_people_s_spreads_are_combined() =>
        Assert.Equal(
            2 * Math.Sqrt((Square(0.3) / 2) + (Square(0.4) / 2)),
            Series("Sam", (10, 10 + (0.3 * Math.Sqrt(2)))).AllowedBetween(Series("Kim", (10, 10 + (0.4 * Math.Sqrt(2)))), 0),
            1e-12);

    [Fact]
    public void Means_are_compared_part_by_part_where_both_read_twice()
    {
        var mine = Series("Sam", (27.15, 27.25), (31.6, 31.6));
        var theirs = Series("Kim", (27.3, 27.3));
        var (part, shift) = Assert.Single(mine.Shifts(theirs));
        Assert.Equal(1, part);
        Assert.Equal(0.1, shift, 1e-12);
    }

    [Fact]
    public void A_part_read_once_is_no_pair()
    {
        var history = History.Of([Read(1, 1, 1, 27.2), Read(1, 2, 1, 30), Read(1, 1, 2, 27.3)]);
        Assert.Equal([1], Assert.Single(history.RealParts).Pairs.Select(p => p.Part));
    }

    [Fact]
    public void Series_are_told_apart() =>
        Assert.Equal([(1, 2), (2, 1)], History.Of([Read(1, 1, 1, 27), Read(1, 1, 2, 27), Read(2, 1, 1, 27)]).RealParts.Select(s => (s.Number, s.Readings.Count)));

    // s as in GUM 4.2.2, written out apart from the program.
    static double Deviation(double[] readings)
    {
        var mean = readings.Sum() / readings.Length;
        return Math.Sqrt(readings.Sum(r => Square(r - mean)) / (readings.Length - 1));
    }

    static double Square(double x) => x * x;

    static Logged Read(int series, int part, int nth, double mm) => new(default, new LogEntry.RealPartRead(series, "Sam", "seatposts", part, nth, mm, $"{mm}"));

    static RealSeries Series(string person, params (double First, double Second)[] pairs) => new(1, person, "seatposts",
    [
        .. pairs.SelectMany((p, i) => new[]
        {
            new LogEntry.RealPartRead(1, person, "seatposts", i + 1, 1, p.First, ""), new LogEntry.RealPartRead(1, person, "seatposts", i + 1, 2, p.Second, ""),
        }),
    ]);
}
