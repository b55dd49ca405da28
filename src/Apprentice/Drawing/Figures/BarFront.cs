namespace Apprentice.Drawing.Figures;

/// <summary>A handlebar from the front: the clamp in the middle, its two arms, the grips at the ends.</summary>
static class BarFront
{
    const double Hand = 16;

    /// <summary>Draws it. The clamp's middle is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (rise, bar, grip, half) = (t["rise"], t["bar"], t["grip"], t["width"] / 2);
        var run = Math.Min(rise / Math.Tan(t["slope"] * Math.PI / 180), Math.Max(5, half - Hand - (grip * 0.6)));
        var (knee, end) = (new Spot(Hand + run, rise - (bar / 2)), new Spot(half, rise - (bar / 2)));
        var sketch = new Sketch().Box(new(-17, -70), new(17, -10));
        foreach (var side in (int[])[-1, 1])
        {
            sketch.Tube(bar, Fill.Clear, Geometry.Rounded([At(side, new(0, 0)), At(side, new(Hand, 0)), At(side, knee), At(side, end)], bar * 1.3))
                .Tube(bar * 1.4, Fill.Half, At(side, end.By(-grip, 0)), At(side, end));
        }
        return sketch
            .Box(new(-22, -18), new(22, 18)).Bolt(new(0, 0), 8)
            .Point("clamp-centre", new(0, 0))
            .Point("bend-left", new(-Hand - run, rise)).Point("bend-right", new(Hand + run, rise))
            .Point("end-left", new(-half, rise - (bar / 2))).Point("end-right", end)
            .Say("figure.bar-front.lies")
            .Say("figure.bar-front.arms", ("angle", Ratios.Degrees(Math.Atan2(rise, run) * 180 / Math.PI)))
            .Say("figure.bar-front.wide", ("times", Ratios.Times(2 * half, Math.Max(1, rise))));
    }

    static Spot At(int side, Spot spot) => new(side * spot.X, spot.Y);
}
