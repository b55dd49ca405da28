using Apprentice.Engine.Assessing;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Tests.Assessing;

/// <summary>Each place keeps its natural law (MODEL 5), and papers are alike.</summary>
public class BalancedTests
{
    [Fact]
    public void Each_place_takes_each_of_its_draws_equally_often()
    {
        const int Papers = 20_000;
        const int Draws = 8;
        var rng = new Rng(4);
        var pools = Enumerable.Range(0, 5).Select(place => (IReadOnlyList<int>)[.. Enumerable.Range(0, Draws)]).ToList();
        var counts = new int[pools.Count, Draws];
        for (var p = 0; p < Papers; p++)
        {
            var chosen = Balanced.Choose(pools, x => x * x, rng);
            for (var place = 0; place < pools.Count; place++) counts[place, chosen[place]]++;
        }

        foreach (var count in counts) Assert.Equal(Papers / Draws, count, 4.5 * Math.Sqrt(Papers * (1.0 / Draws) * (1 - (1.0 / Draws))));
    }

    [Fact]
    public void Papers_of_the_same_draws_are_alike_even_where_the_chance_jumps()
    {
        var rng = new Rng(9);
        var pools = Enumerable.Range(0, 30).Select(place => (IReadOnlyList<double>)[.. Enumerable.Range(0, 60).Select(i => i < 3 + (place * 50 / 30) ? 0.5 : 1.0)]).ToList();
        var mean = pools.Sum(p => p.Average());
        for (var paper = 0; paper < 200; paper++) Assert.Equal(mean, Balanced.Choose(pools, c => c, rng).Sum(), 0.51);
    }

    [Fact]
    public void Unequal_draws_are_refused() => Assert.Throws<ArgumentException>(() => Balanced.Choose([[1.0, 2, 3], [1.0, 2]], x => x, new Rng(1)));
}
