namespace Apprentice.Drawing.Figures;

/// <summary>A whole wheel from the side with its tyre, standing on the floor.</summary>
static class WheelSide
{
    /// <summary>Draws it. The axle is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (seat, tips, outside, track, chord) = (t["seat"] / 2, t["tips"] / 2, t["outside"] / 2, t["track"], t["chord"]);
        var (half, axle) = (tips - (chord / 2), new Spot(0, 0));
        var off = Math.Sqrt(Math.Max(0, (tips * tips) - (half * half)));
        var sketch = new Sketch().Circle(axle, outside, Fill.Grain).Circle(axle, tips).Circle(axle, Math.Max(seat - 18, seat * 0.8));
        foreach (var spoke in Geometry.Corners(axle, Math.Max(seat - 18, seat * 0.8), 16, 11)) sketch.Line(Geometry.Towards(axle, spoke, 20), spoke);
        return sketch
            .Circle(axle, 20).Circle(axle, 5, Fill.Solid)
            .Line(new(-outside * 1.9, -outside), new(outside * 1.9, -outside))
            .Box(new(-25, track - 5), new(25, track + 5), Fill.Half)
            .Point("axle", axle).Point("floor", new(0, -outside)).Point("tyre-top", new(0, outside))
            .Point("tyre-left", new(-outside, 0)).Point("tyre-right", new(outside, 0)).Point("tip-left", new(-tips, 0)).Point("tip-right", new(tips, 0))
            .Point("chord-left", new(-half, -off)).Point("chord-right", new(half, -off)).Point("block", new(0, track))
            .Point("seat-left", new(-seat, 0)).Point("seat-right", new(seat, 0))
            .Say("figure.wheel-side.lies").Say("figure.wheel-side.tyre", ("times", Ratios.Times(outside - tips, outside)));
    }
}
