using System.Text.Json;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Tests.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

public sealed class MeasuredModelTests
{
    static readonly ClueChannel Bench = new(Channel.Bench, 0, 0);
    static readonly JsonElement Oracle = JsonDocument.Parse(File.ReadAllText(Network.FileOf("misc_oracles.json"))).RootElement;
    static readonly Shows.Measured Tape =
        Some.Measured(1, 1, 200, 420, new Slip("to the edge", 0.05, 1, -14, null), new Slip("twice", 0.01, 1.1, 3, null)) with { Blunder = 0.01 };

    public static TheoryData<double?, double> Spreads => new() { { 310, 2 }, { 335, 4 }, { 250, 0.3 }, { null, 0 } };

    [Theory]
    [MemberData(nameof(Spreads))]
    public void Steps_of_the_range_add_up_to_1(double? mean, double sigma)
    {
        foreach (var model in Models())
        {
            var spread = new SizeSpread(mean, sigma, 240, 360);
            var half = model.Step / 2;
            Assert.Equal(1, StepsOf(model).Sum(r => model.Between(r - half, r + half, spread)), 1e-9);
        }
    }

    [Theory]
    [InlineData(310)]
    [InlineData(335.3)]
    [InlineData(250)]
    public void Steps_add_up_to_1_for_a_given_size(double size)
    {
        foreach (var model in Models()) Assert.Equal(1, StepsOf(model).Sum(r => model.Given(r, size)), 1e-9);
    }

    [Fact]
    public void A_flat_spread_is_the_mean_over_its_sizes()
    {
        var model = new MeasuredModel(Tape, Bench, null);
        var spread = new SizeSpread(null, 0, 300, 304);
        for (var reading = 280.0; reading < 345; reading++)
        {
            var mean = MathNet.Numerics.Integration.GaussKronrodRule.Integrate(t => model.Given(reading, t), 300, 304, out _, out _, 1e-13) / 4;
            Assert.Equal(mean, model.Between(reading - 0.5, reading + 0.5, spread), 1e-12);
        }
    }

    [Fact]
    public void A_channel_adds_its_error_as_a_root_sum_of_squares_and_its_slips_in_proportion()
    {
        var model = new MeasuredModel(Tape, new ClueChannel(Channel.Phone, 0.75, 0.12), null);
        Assert.All(model.Ways, w => Assert.Equal(1.25, w.Uncertainty, 1e-12));
        Assert.Equal([0.81, 0.15, 0.03], model.Ways.Select(w => Math.Round(w.Share, 12)));
        Assert.Equal(0.01, model.Blunder);
    }

    [Fact]
    public void Without_named_slips_a_channel_adds_to_the_blunders()
    {
        var model = new MeasuredModel(Tape with { Slips = [] }, new ClueChannel(Channel.Phone, 0, 0.1), null);
        Assert.Equal((0.11, 0.89), (Math.Round(model.Blunder, 12), Math.Round(Assert.Single(model.Ways).Share, 12)));
    }

    [Fact]
    public void Part_spread_and_reading_error_are_folded_into_one_normal_law()
    {
        // Check value "measurement_clue_posterior": densities, here as steps of a hundred-thousandth.
        var value = Oracle.GetProperty("measurement_clue_posterior");
        var (x, u) = (value.GetProperty("x").GetDouble(), value.GetProperty("u").GetDouble());
        const double Step = 1e-5;
        var model = new MeasuredModel(Some.Measured(Step, u, 9, 12) with { Blunder = 0 }, Bench, null);
        var densities = Numbers(value, "mu").Zip(Numbers(value, "sd"), (mu, sd) => model.Between(x - (Step / 2), x + (Step / 2), new SizeSpread(mu, sd, 9, 12)) / Step).ToList();
        foreach (var (expected, actual) in Numbers(value, "lik").Zip(densities)) Assert.Equal(expected, actual, 1e-8);
        var joint = densities.Zip(Numbers(value, "prior"), (d, p) => d * p).ToList();
        Assert.Equal(value.GetProperty("marginal").GetDouble(), joint.Sum(), 1e-8);
        foreach (var (expected, actual) in Numbers(value, "posterior").Zip(joint)) Assert.Equal(expected, actual / joint.Sum(), 1e-8);
    }

    [Fact]
    public void A_flat_spread_with_reading_error_has_the_density_of_the_check_value()
    {
        var value = Oracle.GetProperty("measurement_rect_conv_normal");
        var x = value.GetProperty("x").GetDouble();
        const double Step = 1e-5;
        var spread = new SizeSpread(null, 0, value.GetProperty("lo").GetDouble(), value.GetProperty("hi").GetDouble());
        Assert.Equal(value.GetProperty("density").GetDouble(), spread.Between(x - (Step / 2), x + (Step / 2), 1, value.GetProperty("u").GetDouble()) / Step, 1e-8);
    }

    [Fact]
    public void A_reading_is_as_likely_as_its_whole_step()
    {
        var value = Oracle.GetProperty("rounded_reading");
        var tool = Some.Measured(value.GetProperty("r").GetDouble(), value.GetProperty("s").GetDouble(), 9, 11) with { Blunder = 0 };
        Assert.Equal(value.GetProperty("p").GetDouble(), new MeasuredModel(tool, Bench, null).Given(value.GetProperty("x").GetDouble(), value.GetProperty("mu").GetDouble()), 1e-12);
    }

    [Theory]
    [InlineData(13.6, 1.8, 12.5, double.PositiveInfinity, 0.7294369877641658)]
    [InlineData(-5.47, 0.05, double.NegativeInfinity, -5.40, 0.9192433407662273)]
    [InlineData(0.9, 0.1, 0, 1, 0.8413447460685429)]
    [InlineData(1.1, 0.1, 0, 1, 0.15865525393145685)]
    public void The_chance_of_lying_within_limits_is_that_of_the_check_values(double y, double u, double low, double high, double chance)
    {
        // JCGM 106:2012, conformity: recomputed values, see Data/README.md.
        var spread = new SizeSpread(y, u, 0, 0);
        Assert.Equal(chance, spread.Between(Math.Max(low, -1e6), Math.Min(high, 1e6), 1, 1e-12), 1e-12);
    }

    static IEnumerable<MeasuredModel> Models() =>
    [
        new(Tape, Bench, null), new(Tape, Bench, 0), new(Tape, Bench, 1), new(Tape, new ClueChannel(Channel.Phone, 2, 0.1), null),
        new(Tape with { Slips = [] }, new ClueChannel(Channel.Photo, 1, 0.05), null),
        new(Tape with { Step = 0.5, Uncertainty = 0.1 }, Bench, null),
        new(Tape with { Step = 5 }, Bench, null),
        new(Tape with { Scale = 1.05, Offset = -7, Slips = [] }, Bench, null),
    ];

    static IEnumerable<double> StepsOf(MeasuredModel model)
    {
        var (low, high) = model.Range;
        return Enumerable.Range(0, (int)Math.Round((high - low) / model.Step) + 1).Select(i => low + (i * model.Step));
    }

    static List<double> Numbers(JsonElement value, string name) => [.. value.GetProperty(name).EnumerateArray().Select(x => x.GetDouble())];
}
