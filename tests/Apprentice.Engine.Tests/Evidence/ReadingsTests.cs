using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Apprentice.Engine.Tests.Evidence;

/// <summary>Law 3: readings of one true size, against integration over that size by an adaptive rule of a library.</summary>
public sealed class ReadingsTests
{
    const double Tolerance = 1e-9;
    static readonly Shows.Measured Tape =
        Some.Measured(1, 0.8, 240, 400, new Slip("to the edge", 0.05, 1, -14, null), new Slip("half of it", 0.02, 0.5, 120, null)) with { Blunder = 0.004 };

    // Laid round: the reading is π times the size and a bit.
    static readonly Shows.Measured Round = Some.Measured(2, 1.5, 800, 1200) with { Scale = Math.PI, Offset = 3 };
    static readonly Shows.Measured Caliper = Some.Measured(0.05, 0.03, 280, 360);
    static readonly ClueChannel Phone = new(Channel.Phone, 3, 0.1);
    static readonly Topic Topic = Stems();
    static readonly Scene Scene = Some.Scene(Topic);

    public static TheoryData<string, double[]> Groups => new()
    {
        { "one reading", [310] },
        { "two that agree", [310, 311] },
        { "two that do not", [310, 322] },
        { "one at the wrong datum", [335, 321] },
        { "both at the wrong datum", [321, 321] },
        { "a blunder", [250, 334] },
        { "three", [309, 311, 296] },
        { "four", [335, 336, 334, 321] },
        { "two at the upper end of the range", [359, 360] },
        { "two at the lower end of the range", [270, 270] },
    };

    [Theory]
    [MemberData(nameof(Groups))]
    public void Told_readings_are_integrated_over_the_true_size(string what, double[] values) =>
        AssertIntegrated(what, [.. values.Select(v => Some.Read("tape", v, Channel.Phone))]);

    [Theory]
    [MemberData(nameof(Groups))]
    public void Readings_on_the_bench_are_integrated_over_the_true_size(string what, double[] values) =>
        AssertIntegrated(what, [.. values.Select(v => Some.Read("tape", v))]);

    [Theory]
    [MemberData(nameof(Groups))]
    public void Readings_at_a_chosen_datum_have_no_slip(string what, double[] values) =>
        AssertIntegrated(what, [.. values.Select((v, i) => Some.Read("tape", v, Channel.Bench, i % 2))]);

    [Fact]
    public void Two_tools_share_the_true_size()
    {
        AssertIntegrated("tape and round", [Some.Read("tape", 310), Some.Read("round", 978)]);
        AssertIntegrated("tape and caliper", [Some.Read("tape", 335), Some.Read("caliper", 335.4)]);
        AssertIntegrated("all three", [Some.Read("caliper", 310.15), Some.Read("round", 976), Some.Read("tape", 296, Channel.Phone)]);
        AssertIntegrated("twice by caliper", [Some.Read("caliper", 334.1), Some.Read("caliper", 334.15)]);
    }

    [Fact]
    public void One_reading_that_must_be_right_counts_neither_slip_nor_blunder()
    {
        Finding[] readings = [Some.Read("tape", 310), Some.Read("tape", 321)];
        for (var right = -1; right < 2; right++)
        {
            var likelihood = Scene.Reader.Measured("size", readings, right).Parts[0] ?? [];
            foreach (var (state, p) in likelihood.Index()) AssertSame(Integral(state, readings, right), p, $"state {state}, right {right}");
        }
    }

    [Fact]
    public void A_second_reading_of_the_same_size_is_no_second_witness()
    {
        // Given the kind the two are not independent: the part's own spread is shared.
        Finding[] twice = [Some.Read("tape", 313), Some.Read("tape", 313)];
        var both = Scene.Reader.SetOf(twice);
        var (one, two) = (both.Of(1).Parts[0], both.All.Parts[0]);
        Assert.NotNull(one);
        Assert.NotNull(two);
        Assert.True(two[0] > 1.3 * one[0] * one[0], $"{two[0]} {one[0]}");
    }

    static void AssertIntegrated(string what, IReadOnlyList<Finding> readings)
    {
        var likelihood = Scene.Reader.SetOf(readings).All.Parts[0];
        Assert.NotNull(likelihood);
        Assert.Equal(Scene.Table.States[0].Count, likelihood.Length);
        foreach (var (state, p) in likelihood.Index()) AssertSame(Integral(state, readings, -1), p, $"{what}, state {state}");
    }

    // Within a 1e-9th of the number, as far as it counts beside blunders.
    static void AssertSame(double expected, double actual, string what) =>
        Assert.True(Math.Abs(expected - actual) <= Tolerance * (expected + 1e-9), $"{what}: {expected:R} {actual:R}");

    static double Integral(int state, IReadOnlyList<Finding> readings, int right)
    {
        double Product(double size) => readings.Select((r, i) => Step(r, size, right == i)).Aggregate(1.0, (a, b) => a * b);
        var kind = Scene.Table.States[0][state].Kind;
        var size = Topic.Dimensions[0];
        var piece = readings.Any(r => r.Clue == "caliper") ? 0.1 : 1;
        if (kind == 2) return Pieces(size.Low, size.High, piece, t => Product(t) / (size.High - size.Low));
        var (mean, sigma) = (kind == 0 ? 310.0 : 335.0, kind == 0 ? 2.0 : 2.5);
        if (Scene.Table.States[0][state].Events != 0) (mean, sigma) = (mean - 3, Math.Sqrt((sigma * sigma) + 1));
        return Pieces(mean - (10 * sigma), mean + (10 * sigma), piece, t => Product(t) * Normal.PDF(mean, sigma, t));
    }

    // In short pieces, since the integrand of a fine tool is narrow.
    static double Pieces(double low, double high, double piece, Func<double, double> f)
    {
        var pieces = (int)Math.Ceiling((high - low) / piece);
        var width = (high - low) / pieces;
        return Enumerable.Range(0, pieces).Sum(i => GaussKronrodRule.Integrate(f, low + (i * width), low + ((i + 1) * width), out _, out _, 1e-11, 4, 15));
    }

    // P(the step of the reading | true size), from the model's words: shares of slips, rounding to the step, blunders flat over the steps of the range.
    static double Step(Finding reading, double size, bool right)
    {
        var tool = reading.Clue switch { "tape" => Tape, "round" => Round, _ => Caliper };
        var told = reading.Channel == Channel.Phone;
        var u = told ? Math.Sqrt((tool.Uncertainty * tool.Uncertainty) + 9) : tool.Uncertainty;
        var value = ((Seen.Reading)reading.Seen).Millimetres;
        double At(double centre) => Normal.CDF(centre, u, value + (tool.Step / 2)) - Normal.CDF(centre, u, value - (tool.Step / 2));
        var correct = (tool.Scale * size) + tool.Offset;
        var named = tool.Slips.Sum(s => s.Share);
        var slips = named == 0 ? 0 : told ? named + 0.1 : named;
        var centres = tool.Slips.Select(s => (Share: s.Share / named * slips, Centre: (correct * s.Factor) + s.Offset)).Prepend((Share: 1 - slips - tool.Blunder, Centre: correct)).ToList();
        if (reading.Datum is { } datum) centres = [(1 - tool.Blunder, centres[datum].Centre)];
        if (right) return centres[0].Share * At(correct);
        return centres.Sum(c => c.Share * At(c.Centre)) + (tool.Blunder / (Math.Round((tool.High - tool.Low) / tool.Step) + 1));
    }

    static Topic Stems()
    {
        var stem = Some.Part("stem", "older", "newer") with { NonePrior = 0.02 };
        return Some.Topic(
            [Some.Line("any", 1)], [stem], [Some.Built(stem, ("", [0.5, 0.5]))],
            Some.Clue("tape", new Node.OfPart("stem"), Tape) with { Channels = [new ClueChannel(Channel.Bench, 0, 0), Phone] },
            Some.Clue("round", new Node.OfPart("stem"), Round),
            Some.Clue("caliper", new Node.OfPart("stem"), Caliper)) with
        {
            Dimensions = [new Dimension("size", "stem", "length", [310, 335], [2, 2.5], 270, 360, "judgement")],
            Events = [Some.Event("filed", 0.1, new Effect.Shift("size", -3, 1))],
        };
    }
}
