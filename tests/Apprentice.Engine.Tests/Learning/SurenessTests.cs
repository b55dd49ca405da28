using System.Text.Json;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using MathNet.Numerics.Distributions;

namespace Apprentice.Engine.Tests.Learning;

public sealed class SurenessTests
{
    static JsonElement Json(string file) => JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", file))).RootElement;

    // Source: MathNet.Numerics, Beta.CDF.
    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(1, 1)]
    [InlineData(7.5, 4.5)]
    [InlineData(0.5, 40.5)]
    [InlineData(300, 2)]
    [InlineData(2.8239, 2)]
    public void The_beta_distribution_is_that_of_a_library(double a, double b)
    {
        foreach (var x in (double[])[1e-6, 0.01, 0.2, 0.5, 0.77, 0.99, 1 - 1e-6])
            Assert.Equal(Beta.CDF(a, b, x), BetaShare.Below(x, a, b), 1e-10);
        foreach (var p in (double[])[0.05, 0.5, 0.95])
            Assert.Equal(p, Beta.CDF(a, b, BetaShare.Quantile(p, a, b)), 1e-9);
    }

    // Source: Jeffreys' interval as Brown, Cai, DasGupta 2001 define it, quantiles by MathNet.Numerics.
    [Theory]
    [InlineData(7, 11)]
    [InlineData(1, 20)]
    [InlineData(39, 40)]
    public void The_interval_is_that_of_Jeffreys(int right, int asked)
    {
        var (low, high) = Sureness.Interval(right, asked);
        Assert.Equal(0.05, Beta.CDF(right + 0.5, asked - right + 0.5, low), 1e-9);
        Assert.Equal(0.95, Beta.CDF(right + 0.5, asked - right + 0.5, high), 1e-9);
    }

    [Fact]
    public void None_and_all_reach_to_the_ends() => Assert.Equal((0.0, 1.0), (Sureness.Interval(0, 5).Low, Sureness.Interval(5, 5).High));

    // Source: Data/learner_oracles.json, murphy_grouped.
    [Fact]
    public void The_parts_of_the_score_are_those_of_Murphy()
    {
        var murphy = Json("learner_oracles.json").GetProperty("murphy_grouped");
        var groups = murphy.GetProperty("groups").EnumerateArray()
            .Select(g => (Said: g.GetProperty("f").GetDouble(), Asked: g.GetProperty("n").GetDouble(), Right: g.GetProperty("hits").GetDouble())).ToList();
        var (reliability, resolution, uncertainty) = Forecasts.Partition(groups);
        Assert.Equal(murphy.GetProperty("reliability").GetDouble(), reliability, 1e-12);
        Assert.Equal(murphy.GetProperty("resolution").GetDouble(), resolution, 1e-12);
        Assert.Equal(murphy.GetProperty("uncertainty").GetDouble(), uncertainty, 1e-12);
        var each = groups.SelectMany(g => Enumerable.Range(0, (int)g.Asked).Select(i => (g.Said, i < g.Right))).ToList();
        Assert.Equal(murphy.GetProperty("brier").GetDouble(), Forecasts.Brier(each), 1e-12);
    }

    // Source: D. S. Wilks, Statistical Methods in the Atmospheric Sciences, 2nd edition, table 7.3: chance of rain said, how often it rained then, share of all forecasts
    // (two shares as they must be for the sum to be 1). The mean is printed there as .162; the parts: Data/misc2_oracles.json.
    [Fact]
    public void The_parts_of_the_score_are_those_of_a_published_table()
    {
        (double Said, double Rained, double Share)[] table =
        [
            (0, .006, .4112), (.05, .019, .0671), (.1, .059, .1833), (.2, .15, .0986), (.3, .277, .0616), (.4, .377, .0366),
            (.5, .511, .0303), (.6, .587, .0275), (.7, .723, .0245), (.8, .779, .022), (.9, .934, .017), (1, .933, .0203),
        ];
        var wilks = Json("misc2_oracles.json").GetProperty("wilks_table7.3");
        var (reliability, resolution, uncertainty) = Forecasts.Partition([.. table.Select(r => (r.Said, r.Share, r.Share * r.Rained))]);
        Assert.Equal(wilks.GetProperty("reliability").GetDouble(), reliability, 1e-12);
        Assert.Equal(wilks.GetProperty("resolution").GetDouble(), resolution, 1e-12);
        Assert.Equal(wilks.GetProperty("uncertainty").GetDouble(), uncertainty, 1e-12);
        Assert.Equal(wilks.GetProperty("brier").GetDouble(), reliability - resolution + uncertainty, 1e-12);
        Assert.Equal(wilks.GetProperty("published_obar").GetDouble(), table.Sum(r => r.Share * r.Rained), 0.001);
    }

    // Source: A. H. Murphy, A New Vector Partition of the Probability Score, 1973: the parts of several classes are the sums over the classes; Data/misc2_oracles.json.
    [Fact]
    public void The_parts_of_three_classes_are_the_sums_of_each()
    {
        var vector = Json("misc2_oracles.json").GetProperty("murphy_vector_3class");
        var groups = vector.GetProperty("groups").EnumerateArray().Select(g => (Said: Numbers(g, "p"), Counts: Numbers(g, "counts"))).ToList();
        var parts = Enumerable.Range(0, 3).Select(k => Forecasts.Partition([.. groups.Select(g => (g.Said[k], g.Counts.Sum(), g.Counts[k]))])).ToList();
        Assert.Equal(vector.GetProperty("reliability").GetDouble(), parts.Sum(p => p.Reliability), 1e-12);
        Assert.Equal(vector.GetProperty("resolution").GetDouble(), parts.Sum(p => p.Resolution), 1e-12);
        Assert.Equal(vector.GetProperty("uncertainty").GetDouble(), parts.Sum(p => p.Uncertainty), 1e-12);
        var scores = Enumerable.Range(0, 3).Sum(k => Forecasts.Brier([.. groups.SelectMany(g => g.Counts.SelectMany((n, c) => Enumerable.Repeat((g.Said[k], c == k), (int)n)))]));
        Assert.Equal(vector.GetProperty("brier").GetDouble(), scores, 1e-12);

        static List<double> Numbers(JsonElement group, string field) => [.. group.GetProperty(field).EnumerateArray().Select(x => x.GetDouble())];
    }

    [Fact]
    public void Eight_nine_and_ten_are_taken_together_and_few_is_said()
    {
        var log = new Logbook();
        for (var i = 0; i < 19; i++) log.Job("Sam", i, new Observed.Sure("bar", 8 + (i % 3), i % 2 == 0), new Observed.Sure("stem", 5, Right: true));
        var report = Sureness.Of(log.History, "Sam");
        Assert.Equal([5, 8, 9, 9.9], report.Levels.Select(l => Math.Round(l.Tenths, 9)));
        Assert.Equal((19, 10, true), (report.High.Asked, report.High.Right, report.High.Few));
        Assert.Equal(SureWord.BitTooSure, report.High.Word);
        Assert.Empty(report.Topics);
        log.Job("Sam", 20, Enumerable.Repeat(new Observed.Sure("bar", 9, Right: false), 21));
        var later = Sureness.Of(log.History, "Sam");
        Assert.False(later.High.Few);
        Assert.Equal(SureWord.TooSure, later.High.Word);
        Assert.Equal(("bar", 40), (later.Topics[0].Topic, later.Topics[0].Level.Asked));
    }

    [Theory]
    [InlineData(9, 27, 30, SureWord.Fits)]
    [InlineData(5, 27, 30, SureWord.TooUnsure)]
    [InlineData(9, 23, 30, SureWord.BitTooSure)]
    [InlineData(9, 15, 30, SureWord.TooSure)]
    public void The_word_follows_the_interval(int tenths, int right, int asked, SureWord word) =>
        Assert.Equal(word, Sureness.LevelOf([.. Enumerable.Range(0, asked).Select(i => new Observed.Sure("bar", tenths, i < right))]).Word);
}
