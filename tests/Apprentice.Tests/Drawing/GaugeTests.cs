using Apprentice.Drawing;
using Apprentice.Engine.Quantities;

namespace Apprentice.Tests.Drawing;

/// <summary>A gauge, read back from its geometry alone, gives what it was drawn from.</summary>
public sealed class GaugeTests
{
    const double Inch = 25.4;

    // Leaves of cycle threads: 0.75 to 2 mm, 20 to 30 turns an inch.
    static readonly double[] Leaves = [0.75, 0.8, Inch / 30, Inch / 28, Inch / 26, 1, Inch / 24, Inch / 22, 1.25, Inch / 20, 1.5, 1.75, 2];

    [Fact]
    public void The_leaf_that_stands_off_least_is_the_one_that_the_thread_was_drawn_with()
    {
        var rng = new Rng(31);
        for (var n = 0; n < 10_000; n++)
        {
            var (columns, rows, zoom) = (58 + rng.Below(141), 8 + rng.Below(7), rng.Below(ThreadView.Turns.Count));
            var thread = Leaves[rng.Below(Leaves.Length)];
            var fits = Leaves.MinBy(leaf => ThreadView.Of(thread, leaf, columns, rows, zoom).Lift);
            Assert.True(thread == fits, $"case {n}: a thread of {thread} mm in {columns} columns took the leaf of {fits} mm");
            Assert.Equal(0, ThreadView.Of(thread, thread, columns, rows, zoom).Lift, 1e-9);
        }
    }

    // 24 turns an inch is 1.058 mm; against a leaf of 1.00 mm ten turns come to 10.583 and 10.000 mm. Source: facts U1.1 and U1.3 d.
    [Fact]
    public void Twenty_four_turns_an_inch_drift_by_more_than_half_a_tooth_of_one_millimetre_in_ten_turns()
    {
        var view = ThreadView.Of(Inch / 24, 1, 58, 10, zoom: 2);
        Assert.Equal(10.583 / 10.000, view.Thread / view.Leaf, 1e-4);
        var drift = 10 * (view.Thread - view.Leaf) / view.Thread;
        Assert.InRange(drift, 0.5, 0.6);
        Assert.InRange(10 * (view.Thread - view.Leaf), 6, 7); // dots in the narrowest window
        Assert.True(view.Lift > view.Depth / 2);
    }

    [Fact]
    public void The_words_say_the_drift_after_five_and_ten_turns_and_not_the_thread()
    {
        Assert.Equal(
            ["The leaf 1 mm lies along the thread. Its first tooth is in a groove.", "After 5 turns its tooth stands 3 tenths of a turn before the groove.", "After 10 turns its tooth stands 6 tenths of a turn before the groove."],
            GaugeWords.Thread(Inch / 24, 1, "1 mm"));
        Assert.Equal("After 10 turns its tooth is in a groove too.", GaugeWords.Thread(1, 1, "1 mm")[2]);
    }

    // Over eight links, 101.6 mm: 0.25 of 100 is 0.25 mm.
    [Theory]
    [InlineData(0.60, 0.5, true, 0.1016)]
    [InlineData(0.60, 0.75, false, -0.1524)]
    [InlineData(1.00, 1.0, true, 0)]
    [InlineData(0.10, 0.5, false, -0.4064)]
    public void An_end_drops_in_when_the_chain_is_at_least_as_long_as_it_is_made_for(double stretch, double end, bool drops, double play)
    {
        var view = new ChainView(stretch, end);
        Assert.Equal(drops, view.DropsIn);
        Assert.Equal(play, view.Play, 1e-9);
    }

    [Fact]
    public void A_tooth_that_stands_on_a_roller_touches_it_and_raises_the_bar()
    {
        var view = new ChainView(0.6, 0.75);
        var (across, up) = (ChainView.Radius + view.Play, view.Bar - ChainView.Tooth);
        Assert.Equal(ChainView.Radius, Math.Sqrt((across * across) + (up * up)), 1e-9);
        Assert.True(view.Bar > new ChainView(0.8, 0.75).Bar);
    }

    [Fact]
    public void Every_row_is_as_wide_as_the_window_and_the_bar_is_seen_lower_when_it_drops_in()
    {
        foreach (var columns in (int[])[58, 97, 198])
        {
            Assert.All(GaugeDrawing.Thread(1, Inch / 24, "24 tpi", (columns, 9), 0), r => Assert.Equal(columns, r.Length));
            var (low, high) = (GaugeDrawing.Chain(new ChainView(0.8, 0.75), "0.75", columns, 14), GaugeDrawing.Chain(new ChainView(0.6, 0.75), "0.75", columns, 14));
            Assert.All(low.Concat(high), r => Assert.Equal(columns, r.Length));
            Assert.True(LabelRow(low) > LabelRow(high));
        }
    }

    static int LabelRow(IReadOnlyList<string> rows) => rows.ToList().FindIndex(r => r.Contains("0.75", StringComparison.Ordinal));
}
