using Apprentice.Engine.Assessing;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Tests.Assessing;

/// <summary>Each place keeps its natural law (MODEL 5), and papers are alike.</summary>
public class BalancedTests
{
    [Theory]
    [InlineData(new[] { 0, 0, 0, 1, 1, 1, 2, 2, 2 })]
    [InlineData(new[] { 0, 0, 0, 0, 1, 1, 2 })]
    public void Each_place_takes_each_block_equally_often(int[] sorts)
    {
        const int Papers = 20_000;
        var rng = new Rng(4);
        var pool = Enumerable.Range(0, sorts.Length).Select(i => (double)i).ToList();
        var counts = new int[sorts.Length, sorts.Length];
        for (var p = 0; p < Papers; p++)
        {
            var chosen = Balanced.Choose([.. sorts.Select(_ => pool)], sorts, x => x, rng);
            Assert.Equal(sorts.Length, chosen.Distinct().Count());
            for (var place = 0; place < sorts.Length; place++) counts[place, (int)chosen[place]]++;
        }

        var share = 1.0 / sorts.Length;
        foreach (var count in counts) Assert.Equal(Papers * share, count, 4.5 * Math.Sqrt(Papers * share * (1 - share)));
    }

    [Fact]
    public void Draws_that_cannot_be_cut_are_refused() =>
        Assert.Throws<ArgumentException>(() => Balanced.Choose([[1.0, 2, 3], [1.0, 2]], [0, 0], x => x, new Rng(1)));
}
