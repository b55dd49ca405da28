using Apprentice.Drawing;
using Apprentice.Engine.Quantities;

namespace Apprentice.Tests.Drawing;

/// <summary>Every scale, read back from its geometry, gives what it was drawn from.</summary>
public sealed class ScaleViewTests
{
    const int Count = 10_000;

    [Fact]
    public void Every_scale_reads_back_what_it_was_drawn_from_within_half_a_division()
    {
        var rng = new Rng(20261125);
        for (var n = 0; n < Count; n++)
        {
            var columns = 58 + rng.Below(141);
            var zeroError = (rng.Below(9) - 4) * 0.05;
            var scale = Some(rng, zeroError);
            var value = 0.5 + (rng.Unit() * (scale switch { Scale.Vernier => 149, Scale.Ruled { Tape: true } => 2990, _ => 590 }));
            var read = scale is Scale.Vernier vernier
                ? ReadBack.Caliper(vernier, value, columns, closed: false) - ReadBack.Caliper(vernier, value, columns, closed: true)
                : ReadBack.ByEye(Nearest(scale, value, columns, rng.Below(scale.Zooms.Count)));
            Assert.True(
                Math.Abs(read - value) <= (scale.Division / 2) + 1e-9,
                $"case {n}: {scale}, {columns} columns: {value} read as {read}");
        }
    }

    [Fact]
    public void A_forgotten_zero_error_is_seen_in_the_reading()
    {
        var rng = new Rng(7);
        for (var n = 0; n < 200; n++)
        {
            var value = 5 + (rng.Unit() * 100);
            var caliper = new Scale.Vernier(0.10);
            Assert.InRange(ReadBack.Caliper(caliper, value, 58, closed: false) - value, 0.10 - 0.0251, 0.10 + 0.0251);
        }
    }

    // Main 27, line 4 of a 1/20 vernier: 27.20; with zero error +0.05: 27.15.
    // Source: facts U7.1 (least count S112, sign of the zero error S112b), worked there.
    [Fact]
    public void The_worked_vernier_reads_27_20_and_with_its_zero_error_27_15()
    {
        var plain = new Scale.Vernier(0);
        Assert.Equal(27.20, ReadBack.Caliper(plain, 27.20, 58, closed: false), 9);
        Assert.Equal(0, ReadBack.Caliper(plain, 27.20, 58, closed: true), 9);
        var worn = new Scale.Vernier(0.05);
        Assert.Equal(27.20, ReadBack.Caliper(worn, 27.15, 58, closed: false), 9);
        Assert.Equal(0.05, ReadBack.Caliper(worn, 27.15, 58, closed: true), 9);
    }

    [Fact]
    public void A_positive_zero_error_stands_right_of_zero_and_a_negative_one_left()
    {
        Assert.True(Zero(0.05) > 0);
        Assert.Equal(0, Zero(0));
        Assert.True(Zero(-0.05) < 0);

        static int Zero(double zeroError)
        {
            var view = ScaleView.Of(new Scale.Vernier(zeroError), 31, 58, new ScaleWindow(2, 0, Closed: true));
            return view.Edge - view.Main[0].Dot;
        }
    }

    [Fact]
    public void Exactly_one_line_of_the_vernier_meets_a_mark_besides_the_last()
    {
        for (var steps = -3; steps < 400; steps++)
        {
            var view = ScaleView.Of(new Scale.Vernier(0), 30 + (steps * 0.05), 400, new ScaleWindow(2));
            Assert.Single(view.Vernier.Take(Scale.Vernier.Lines), v => view.Main.Any(m => m.Dot == v.Dot));
        }
    }

    [Fact]
    public void From_afar_the_whole_vernier_and_a_figure_are_seen_in_the_narrowest_window()
    {
        for (var value = 0.5; value < 150; value += 0.37)
        {
            var view = ScaleView.Of(new Scale.Vernier(0), value, 58, new ScaleWindow());
            Assert.True(view.HasFigure, $"{value}");
            Assert.All(view.Vernier, v => Assert.InRange(v.Dot, 0, view.Width - 1));
        }
    }

    [Fact]
    public void Moving_the_window_moves_marks_and_edge_alike()
    {
        var here = ScaleView.Of(new Scale.Ruled(Tape: false, Inches: false), 310.4, 78, new ScaleWindow());
        var moved = ScaleView.Of(new Scale.Ruled(Tape: false, Inches: false), 310.4, 78, new ScaleWindow(0, 10));
        Assert.Equal(here.Edge - 40, moved.Edge);
        Assert.Equal(ReadBack.ByEye(here), ReadBack.ByEye(moved), 9);
    }

    // Half a link is 12.7 mm (ISO 9633). Over 12 links: 304.8 mm new, 306.3 and 307.8 worn. Source: facts T7.
    [Theory]
    [InlineData(304.8)]
    [InlineData(306.3)]
    [InlineData(307.8)]
    public void The_pins_of_a_chain_lie_half_a_link_apart_and_the_last_one_is_read(double millimetres)
    {
        var view = ScaleView.Of(new Scale.Ruled(Tape: false, Inches: true) { Pins = true }, millimetres, 198, new ScaleWindow(3));
        Assert.Equal(25, view.Pins.Count);
        Assert.Equal(view.Edge, view.Pins[^1]);
        Assert.Equal(millimetres / 24, (view.Pins[^1] - view.Pins[0]) / view.DotsPerMm / 24, 1.0 / view.DotsPerMm / 24);
        Assert.InRange(view.DotOf(millimetres) - view.Edge, -1, 1);
    }

    static Scale Some(Rng rng, double zeroError) => rng.Below(8) switch
    {
        0 => new Scale.Ruled(Tape: false, Inches: false),
        1 => new Scale.Ruled(Tape: false, Inches: true),
        2 => new Scale.Ruled(Tape: true, Inches: false, Around: rng.Below(2) == 0),
        3 => new Scale.Ruled(Tape: true, Inches: true),
        4 => new Scale.Ruled(Tape: false, Inches: true) { Pins = true },
        5 or 6 => new Scale.Vernier(zeroError) { Inside = true },
        _ => new Scale.Vernier(zeroError),
    };

    /// <summary>The nearest zoom, not nearer than asked for, in which a figure is seen.</summary>
    static ScaleView Nearest(Scale scale, double value, int columns, int zoom) =>
        Enumerable.Range(0, zoom + 1).Reverse().Select(z => ScaleView.Of(scale, value, columns, new ScaleWindow(z))).First(v => v.HasFigure);
}
