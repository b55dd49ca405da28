using Apprentice.Drawing;
using Apprentice.Engine.Quantities;

namespace Apprentice.Tests.Drawing;

/// <summary>What stands in the text is what stands in the geometry: dots are taken out of the characters again.</summary>
public sealed class ScaleDrawingTests
{
    [Fact]
    public void A_rule_shows_every_mark_where_it_is_and_the_edge_too()
    {
        var rng = new Rng(11);
        for (var n = 0; n < 500; n++)
        {
            var scale = new Scale.Ruled(rng.Below(2) == 0, rng.Below(2) == 0) { Aslant = n % 3 == 0 };
            var view = ScaleView.Of(scale, 1 + (rng.Unit() * 600), 58 + rng.Below(100), new ScaleWindow(rng.Below(4)));
            var rows = ScaleDrawing.Rows(view, 6 + rng.Below(7), "");
            var top = 4 * ScaleDrawing.MarksRow(rows.Count);
            Assert.Equal(view.Main.Select(m => m.Dot), Dots(rows, top + 1));
            Assert.Equal(view.Edge, Dots(rows, top - 1).Max());
            Assert.All(view.Main.Where(m => m.Figure.Length > 0), m => Assert.Equal(m.Figure, rows[^1].Substring(ScaleView.FigureColumn(m.Dot, m.Figure), m.Figure.Length)));
        }
    }

    [Fact]
    public void A_caliper_shows_both_scales_touching()
    {
        var rng = new Rng(12);
        for (var n = 0; n < 500; n++)
        {
            var view = ScaleView.Of(new Scale.Vernier(0), rng.Unit() * 140, 58 + rng.Below(100), new ScaleWindow(rng.Below(3), rng.Below(10), rng.Below(4) == 0));
            var rows = ScaleDrawing.Rows(view, 6 + rng.Below(7), "part");
            var touch = 4 * ScaleDrawing.TouchRow(rows.Count);
            Assert.Equal(view.Main.Select(m => m.Dot), Dots(rows, touch - 1));
            Assert.Equal(view.Vernier.Select(m => m.Dot).Where(d => d >= 0 && d < view.Width).Distinct(), Dots(rows, touch));
        }
    }

    [Fact]
    public void Every_row_is_as_wide_as_the_window()
    {
        foreach (var scale in (Scale[])[new Scale.Vernier(0.05), new Scale.Vernier(-0.2) { Inside = true }, new Scale.Ruled(Tape: false, Inches: true) { Pins = true }, new Scale.Ruled(Tape: true, Inches: false), new Scale.Ruled(Tape: false, Inches: true)])
        {
            foreach (var room in (int[])[0, 6, 9, 13, 40])
                Assert.All(ScaleDrawing.Rows(ScaleView.Of(scale, 31.42, 58, new ScaleWindow()), room, "part"), r => Assert.Equal(58, r.Length));
        }
    }

    [Fact]
    public void A_figure_never_stands_cut_in_the_window()
    {
        for (var shift = 0.0; shift < 20; shift += 0.25)
        {
            var rows = ScaleDrawing.Rows(ScaleView.Of(new Scale.Ruled(Tape: true, Inches: false), 1955.3, 58, new ScaleWindow(0, shift)), 8, "part");
            Assert.All(rows[^1].Split(' ', StringSplitOptions.RemoveEmptyEntries), f => Assert.Equal(4, f.Length));
        }
    }

    [Fact]
    public void A_pointer_stands_over_its_place_and_none_is_drawn_outside_the_window()
    {
        var view = ScaleView.Of(new Scale.Ruled(Tape: false, Inches: false), 310, 58, new ScaleWindow());
        var rows = ScaleDrawing.Pointers(view, [(310, "right"), (300, "you"), (900, "far")]);
        Assert.Equal(new[] { view.DotOf(300), view.DotOf(310) }, Dots(rows, (4 * rows.Count) - 1));
        Assert.DoesNotContain("far", string.Concat(rows), StringComparison.Ordinal);
    }

    static IEnumerable<int> Dots(IReadOnlyList<string> rows, int y)
    {
        int[] bits = [0x01, 0x08, 0x02, 0x10, 0x04, 0x20, 0x40, 0x80];
        var row = rows[y / 4];
        for (var x = 0; x < 2 * row.Length; x++)
        {
            if (row[x / 2] >= 0x2800 && ((row[x / 2] - 0x2800) & bits[(y % 4 * 2) + (x % 2)]) != 0) yield return x;
        }
    }
}
