namespace Apprentice.Drawing.Figures;

/// <summary>The right rear end of a frame from the outside: where the axle sits, and below it the hole for the gear.</summary>
static class Hanger
{
    /// <summary>Draws it. The axle is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (axle, hole, radius, kind) = (new Spot(0, 0), new Spot(7, -t["drop"]), t["diameter"] / 2, t.Word("hole"));
        var edge = radius + 6;
        var sketch = new Sketch()
            .Tube(15, Fill.Grain, new(14, 8), new(86, 14)).Tube(13, Fill.Grain, new(10, 12), new(52, 62))
            .Shape(Fill.Clear, Geometry.Rounded([new(-16, 6), new(-10, 18), new(14, 22), new(24, 6), new(20, -12), hole.By(edge, 4), hole.By(edge, -edge), hole.By(-edge, -edge), hole.By(-edge, 6), new(-10, -12), new(-16, 6)], 9));
        if (t.Is("axle", "slot")) sketch.Shape(Fill.Half, [new(-30, -5), .. Geometry.Arc(axle, 5, -90, 90), new(-30, 5)]).Add(new Ink([new(-31, -7), new(-15, -7), new(-15, 7), new(-31, 7)], Closed: true, Fill.Clear, Pen.None)).Line(new(-15, 5), new(0, 5)).Line(new(-15, -5), new(0, -5));
        else sketch.Circle(axle, 8).Circle(axle, 6, Fill.Half);
        if (kind == "slot") sketch.Shape(Fill.Solid, new Spot[] { hole.By(radius, 0), hole.By(radius, -edge - 1), hole.By(-radius, -edge - 1), hole.By(-radius, 0), hole.By(-radius * 0.6, radius * 0.8), hole.By(radius * 0.6, radius * 0.8) });
        else sketch.Circle(hole, radius, Fill.Solid);
        if (kind == "threaded") sketch.Circle(hole, radius * 0.8).Circle(hole, radius * 0.6).Circle(hole, radius * 0.35, Fill.Solid);
        var stop = hole.By(-edge, -3);
        if (t.Is("stop", "yes")) sketch.Shape(Fill.Half, stop, stop.By(-6, -1), stop.By(-6, -6), stop.By(1, -6));
        return sketch
            .Point("axle", axle).Point("hole", hole).Point("stop", stop)
            .Say("figure.hanger.lies").Say($"figure.hanger.axle-{t.Word("axle")}").Say($"figure.hanger.hole-{kind}")
            .Say($"figure.hanger.stop-{t.Word("stop")}");
    }
}
