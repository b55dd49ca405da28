using Apprentice.Engine.Quantities;
using CsCheck;

namespace Apprentice.Engine.Tests.Quantities;

public sealed class RngTests
{
    // Source: M. E. O'Neill, pcg-c, test-high/expected/check-pcg32.out: seed 42, stream 54, five rounds of 155 numbers,
    // of which each round prints the first six.
    const int NumbersPerRound = 155;

    static readonly uint[][] Published =
    [
        [0xa15c02b7, 0x7b47f409, 0xba1d3330, 0x83d2f293, 0xbfa4784b, 0xcbed606e],
        [0x74ab93ad, 0x1c1da000, 0x494ff896, 0x34462f2f, 0xd308a3e5, 0x0fa83bab],
        [0x39af5f9f, 0x04196b18, 0xc3c3eb28, 0xc076c60c, 0xc693e135, 0xf8f63932],
        [0x55ce6851, 0x97a7726d, 0x17e10815, 0x58007d43, 0x962fb148, 0xb9bb55bd],
        [0xfcef7cd6, 0x1b488b5a, 0xd0daf7ea, 0x1d9a70f7, 0x241a37cf, 0x9a3857b7],
    ];

    [Fact]
    public void Numbers_are_those_of_the_published_sequence()
    {
        var rng = new Rng(42, 54);
        var numbers = Enumerable.Range(0, Published.Length * NumbersPerRound).Select(_ => rng.Next()).ToList();
        for (var round = 0; round < Published.Length; round++)
            Assert.Equal(Published[round], numbers.Skip(round * NumbersPerRound).Take(6));
    }

    [Fact]
    public void The_lowest_bits_are_the_published_tosses_of_a_coin()
    {
        var rng = new Rng(42);
        for (var i = 0; i < 6; i++) rng.Next();
        var tosses = string.Concat(Enumerable.Range(0, 65).Select(_ => rng.Next() % 2 == 1 ? 'H' : 'T'));
        Assert.Equal("HHTTTHTHHHTHTTTHHHHHTTTHHHTHTHTHTTHTTTHHHHHHTTTTHHTTTTTHTTTTTTTHT", tosses);
    }

    [Fact]
    public void Another_stream_is_another_sequence()
    {
        var (one, other) = (new Rng(42, 54), new Rng(42, 55));
        var alike = Enumerable.Range(0, 1000).Count(_ => one.Next() == other.Next());
        Assert.InRange(alike, 0, 2);
    }

    [Fact]
    public void Numbers_below_a_count_are_equally_likely()
    {
        var rng = new Rng(7);
        var seen = new int[12];
        for (var i = 0; i < 120_000; i++) seen[rng.Below(seen.Length)]++;
        Check.ChiSquared([.. seen.Select(_ => 10_000)], seen, 5);
    }

    [Fact]
    public void Picks_are_in_proportion_to_their_weights()
    {
        var rng = new Rng(11);
        double[] weights = [0.5, 2, 0, 0.25, 1.25];
        var seen = new int[weights.Length];
        for (var i = 0; i < 80_000; i++) seen[rng.Pick(weights)]++;
        Assert.Equal(0, seen[2]);
        Check.ChiSquared([10_000, 40_000, 5_000, 25_000], [seen[0], seen[1], seen[3], seen[4]], 5);
    }

    [Fact]
    public void A_pick_from_one_possible_choice_is_that_choice() => Check.Sample(
        Gen.Select(Gen.ULong, Gen.Int[0, 4]), (seed, only) =>
        {
            var weights = new double[5];
            weights[only] = 1e-300;
            return new Rng(seed).Pick(weights) == only;
        });

    [Fact]
    public void Units_stay_from_0_to_below_1_on_a_grid_of_2_to_the_minus_53() => Check.Sample(Gen.ULong, seed =>
    {
        var unit = new Rng(seed).Unit();
        var steps = unit * Math.Pow(2, 53);
        return unit is >= 0 and < 1 && steps == Math.Floor(steps);
    });

    [Fact]
    public void Normal_draws_have_the_moments_of_the_normal_law()
    {
        const int N = 200_000;
        var rng = new Rng(3);
        var draws = Enumerable.Range(0, N).Select(_ => rng.Normal()).ToList();
        var root = Math.Sqrt(N);
        Assert.InRange(draws.Average(), -4 / root, 4 / root);
        Assert.InRange(draws.Average(x => x * x), 1 - (4 * Math.Sqrt(2) / root), 1 + (4 * Math.Sqrt(2) / root));
        Assert.InRange(draws.Average(x => x * x * x), -4 * Math.Sqrt(15) / root, 4 * Math.Sqrt(15) / root);
        Assert.InRange(draws.Average(x => x * x * x * x), 3 - (4 * Math.Sqrt(96) / root), 3 + (4 * Math.Sqrt(96) / root));
    }

    [Fact]
    public void Normal_draws_fall_evenly_into_twenty_equally_likely_intervals()
    {
        var rng = new Rng(5);
        var seen = new int[20];
        for (var i = 0; i < 200_000; i++) seen[(int)(MathNet.Numerics.Distributions.Normal.CDF(0, 1, rng.Normal()) * 20)]++;
        Check.ChiSquared([.. seen.Select(_ => 10_000)], seen, 5);
    }

    [Fact]
    public void Successive_normal_draws_do_not_lean_on_each_other()
    {
        const int N = 100_000;
        var rng = new Rng(9);
        var draws = Enumerable.Range(0, N).Select(_ => rng.Normal()).ToList();
        var product = draws.Zip(draws.Skip(1), (a, b) => a * b).Average();
        Assert.InRange(product, -4 / Math.Sqrt(N), 4 / Math.Sqrt(N));
    }
}
