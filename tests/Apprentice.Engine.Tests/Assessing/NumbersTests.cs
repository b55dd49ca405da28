using Apprentice.Engine.Assessing;
using Apprentice.Engine.Assessing.Numbers;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Tests.Assessing;

/// <summary>Statistics after use against values of other programs. Sources of the tables: R. D. Bock, M. Lieberman, Psychometrika 35, 1970 (LSAT 6 and 7); sim_rasch_150x20 is simulated. Sources of the values: psych 2.2.9 and psychometric 2.3 (classical, 1e-10), eRm 1.0-2 and psychotools 0.7-2 with own converged values (Rasch, 1e-8), all in R 4.2.2.</summary>
public class NumbersTests
{
    [Theory]
    [InlineData("lsat6", 3.819, 1.0350412118898, 0.294997192215944, 0.196441168748289, 0.869066612393, 0.223473787862733, 0.36180253172623)]
    [InlineData("lsat7", 3.707, 1.1985773182, 0.453408735387, 0.415044131245, 0.886129914982, 0.39796, 0.50520)]
    [InlineData("sim", 9.8333333333, 4.5294215917, 0.837532247280, 0.794438115353, 1.825687040128, 0.79729, 0.87298)]
    public void Classical_figures(string table, double mean, double spread, double alpha, double kr21, double error, double low, double high)
    {
        var test = new ClassicalTest(Rows(table));
        Assert.Equal(mean, test.Mean, 1e-9);
        Assert.Equal(spread, test.Spread, 1e-9);
        Assert.Equal(alpha, test.Alpha, 1e-10);
        Assert.Equal(kr21, test.Kr21, 1e-10);
        Assert.Equal(error, test.Error, 1e-10);
        Assert.Equal(low, test.AlphaInterval.Low, 6e-6);
        Assert.Equal(high, test.AlphaInterval.High, 6e-6);
    }

    [Fact]
    public void Columns_of_lsat_6()
    {
        var test = new ClassicalTest(Rows("lsat6"));
        double[] rest = [0.1128326889, 0.1531781201, 0.1727789433, 0.1444280952, 0.1215964025];
        double[] share = [0.924, 0.709, 0.553, 0.763, 0.87];
        double[] upperLower = [0.19662447257383397, 0.6314580403187959, 0.8108766994842892, 0.5369901547116708, 0.3203469292076835];
        for (var i = 0; i < 5; i++)
        {
            Assert.Equal(rest[i], test.ItemRest(i), 1e-10);
            Assert.Equal(share[i], test.Share(i), 1e-12);
            Assert.Equal(upperLower[i], test.Discrimination(i), 1e-10);
        }
    }

    [Fact]
    public void The_order_of_people_does_not_change_the_discrimination()
    {
        var rows = Rows("lsat6");
        Assert.Equal(new ClassicalTest(rows).Discrimination(1), new ClassicalTest([.. rows.Reverse()]).Discrimination(1), 1e-12);
    }

    /// <summary>Source: forms_oracles, feldt_small_classes (scipy 1.10.1).</summary>
    [Theory]
    [InlineData(8, 0.6239389370443031, 0.9616849753458043)]
    [InlineData(12, 0.6746594469200344, 0.9449428725619141)]
    [InlineData(20, 0.7193589429107161, 0.9255410888471006)]
    [InlineData(50, 0.7688329672647385, 0.897516563489854)]
    [InlineData(100, 0.7913184740277693, 0.8819191487371919)]
    public void Reliability_of_a_small_class_says_little(int people, double low, double high)
    {
        var interval = ClassicalTest.IntervalOf(0.84, people, 30);
        Assert.Equal(low, interval.Low, 1e-9);
        Assert.Equal(high, interval.High, 1e-9);
    }

    [Fact]
    public void The_beta_share_agrees_with_a_library()
    {
        foreach (var (x, a, b) in new[] { (0.3, 2.5, 4.0), (0.9, 30.0, 3.0), (0.01, 0.5, 0.5), (0.5, 400.0, 410.0) })
        {
            Assert.Equal(MathNet.Numerics.SpecialFunctions.BetaRegularized(a, b, x), Distributions.BetaShare(x, a, b), 1e-12);
            Assert.Equal(x, Distributions.BetaPoint(Distributions.BetaShare(x, a, b), a, b), 1e-9);
        }
    }

    /// <summary>Source: the requirement's figure: 4 of 6 right has .22 to .96.</summary>
    [Fact]
    public void Four_of_six_says_little()
    {
        var (low, high) = Distributions.ShareInterval(4, 6);
        Assert.Equal(0.22, low, 0.005);
        Assert.Equal(0.96, high, 0.005);
        Assert.Equal((0, 1), (Distributions.ShareInterval(0, 3).Low, Distributions.ShareInterval(3, 3).High));
    }

    [Theory]
    [InlineData("lsat6", -1091.56968998069, new[] { -1.25612845595082, 0.474906003430786, 1.23598415228723, 0.168410575812773, -0.623172275579973 }, 0.104409864227331)]
    [InlineData("lsat7", -1182.69989918, new[] { -0.541469526454, 0.536545749526, -0.133582899831, 0.805165876224, -0.666659199464 }, 0.079170203576)]
    [InlineData("sim", -1176.73728751, new[] { -1.429326400643, -1.613039611289, -1.660851280604 }, 0.207437744515)]
    public void Rasch_difficulties(string table, double likelihood, double[] difficulties, double error)
    {
        var model = RaschModel.Fit(Rows(table));
        Assert.NotNull(model);
        Assert.Equal(likelihood, model.LogLikelihood, 1e-7);
        for (var i = 0; i < difficulties.Length; i++) Assert.Equal(difficulties[i], model.Difficulties[i], 1e-8);
        Assert.Equal(error, model.Errors[0], 1e-8);
        Assert.Equal(0, model.Difficulties.Sum(), 1e-9);
    }

    [Fact]
    public void Abilities_and_information_of_lsat_6()
    {
        var model = RaschModel.Fit(Rows("lsat6"));
        Assert.NotNull(model);
        double[] warm = [-2.790480822342, -1.337596516559, -0.411478700257, 0.421925255723, 1.335730920754, 2.776478876238];
        for (var r = 0; r <= 5; r++) Assert.Equal(warm[r], model.Ability(r), 1e-9);
        Assert.Equal(1.05883632174191, model.Information(0), 1e-8);
        Assert.Equal(0.286343753551206, model.Information(-3), 1e-8);
    }

    [Fact]
    public void A_column_that_all_have_right_cannot_be_fitted() => Assert.Null(RaschModel.Fit([[1, 0, 1], [1, 1, 0], [1, 0, 0]]));

    /// <summary>Source: own code in another language of Huynh's formulas (classification_oracles, huynh_toy10 and huynh_small); no published worked example was found.</summary>
    [Theory]
    [InlineData(10, 7.3, 2.1, 8, 0.72399749528748, 0.44660770959898, 0.52503431240292)]
    [InlineData(5, 3.2, 1.3, 4, 0.64620742944382, 0.28527250679617, 0.4500172222581)]
    public void Two_papers_agree_over_a_group(int jobs, double mean, double spread, int cut, double agreement, double kappa, double passed)
    {
        var group = GroupConsistency.Of(jobs, mean, spread, cut);
        Assert.NotNull(group);
        Assert.Equal(agreement, group.Agreement, 1e-10);
        Assert.Equal(kappa, group.Kappa, 1e-10);
        Assert.Equal(passed, group.Passed, 1e-10);
        Assert.Null(GroupConsistency.Of(10, 5, 1, 5));
    }

    /// <summary>Source: misc_oracles, angoff: judges' sums 3.15, 3.20, 3.25 of 5, line 64 of 100, standard error .0288675135 jobs.</summary>
    [Fact]
    public void A_pass_line_of_three_judges()
    {
        double[][] ratings = [[0.7, 0.6, 0.8], [0.5, 0.55, 0.6], [0.9, 0.85, 0.95], [0.4, 0.5, 0.3], [0.65, 0.7, 0.6]];
        var line = new PassLine([.. ratings.SelectMany((row, f) => row.Select((share, j) => new Rating($"judge {j}", $"sort {f}", share * 20)))]);
        Assert.Equal([3.15 / 5, 3.2 / 5, 3.25 / 5], line.LineOf.Select(l => Math.Round(l, 12)));
        Assert.Equal(0.64, line.Line, 1e-12);
        Assert.Equal(0.0288675135 / 5, line.Error ?? 0, 1e-10);
        Assert.False(line.SetByOnePerson);
        Assert.Equal(0.80, PassLine.LineOfRule(StagedRule.Default), 0.005);
        Assert.False(line.Fits(StagedRule.Default));
    }

    /// <summary>Source: forms_oracles (another program, 200 Rasch cases, difficulties Normal(0, 1)): largest gap of expected scores of two papers of 30, 95th percentile: 3.21 at random, .56 with 3 from each tenth of difficulty. Simulated there and here: to within a quarter.</summary>
    [Fact]
    public void Papers_drawn_in_blocks_are_alike()
    {
        var rng = new Rng(3);
        var bank = Enumerable.Range(0, 200).Select(_ => rng.Normal()).ToList();
        var random = Gap(() => [.. Balanced.Shuffled(200, rng).Take(30).Select(i => bank[i])]);
        var sorted = bank.Order().Chunk(20).ToList();
        var blocks = Gap(() => [.. sorted.SelectMany(tenth => Balanced.Shuffled(20, rng).Take(3).Select(i => tenth[i]))]);
        Assert.InRange(random, 3.21 * 0.75, 3.21 * 1.25);
        Assert.InRange(blocks, 0.56 * 0.75, 0.56 * 1.25);
    }

    static double Gap(Func<double[]> paper) => Enumerable.Range(0, 400)
        .Select(_ => (A: paper(), B: paper())).Select(p => Enumerable.Range(-16, 33).Max(t => Math.Abs(RaschModel.Expected(p.A, t / 4.0) - RaschModel.Expected(p.B, t / 4.0))))
        .Order().ElementAt(379);

    static IReadOnlyList<IReadOnlyList<int>> Rows(string table)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Data", table == "sim" ? "sim_rasch_150x20.csv" : $"{table}_freq.csv")).Skip(1).ToList();
        return table == "sim"
            ? [.. lines.Select(l => (IReadOnlyList<int>)[.. l.Split(',').Select(int.Parse)])]
            : [.. lines.Select(l => l.Split(',')).SelectMany(l => Enumerable.Repeat((IReadOnlyList<int>)[.. l[0].Trim('"').Select(c => c - '0')], int.Parse(l[1])))];
    }
}
