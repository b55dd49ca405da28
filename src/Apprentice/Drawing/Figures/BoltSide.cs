namespace Apprentice.Drawing.Figures;

/// <summary>A bolt, or any threaded end: its head from above on the left, then head, smooth shank and thread from the side.</summary>
static class BoltSide
{
    const int Turns = 12;
    const double Coarsest = 0.34;
    const double Finest = 0.2;

    /// <summary>Draws it. The side view begins at x = 0 with the shank, its axis is y = 0.</summary>
    /// <remarks>A thread that would be too fine to be seen is drawn coarser: its crests count, not how close they stand. Depth of a thread: 0.61 pitches (ISO 724, d - d3 by 2, rounded).</remarks>
    public static Sketch Draw(Traits t)
    {
        var (radius, head) = (t["across"] / 2, t.Word("head"));
        var pitch = Math.Clamp(t["pitch"], Finest * 2 * radius, Coarsest * 2 * radius);
        var (shank, depth) = (1.1 * radius, Math.Min(0.61 * pitch, 0.3 * radius));
        var sketch = new Sketch();
        Head(sketch, head, radius);
        sketch.Box(new(0, depth - radius), new(shank, radius - depth));
        var crests = Thread(sketch, shank, pitch, radius, depth, t.Is("end", "worn"));
        var end = shank + ((Turns - 1) * pitch);
        var low = t.Is("end", "worn") ? radius - (depth * 0.8) : radius;
        return sketch
            .Point("crest-top", new(crests(6), radius)).Point("crest-bottom", new(crests(6) - (pitch / 2), -radius)).Point("groove-top", new(crests(6) + (pitch / 2), radius - depth))
            .Point("end-top", new(end, low)).Point("end-bottom", new(end - (pitch / 2), -low))
            .Point("shank-top", new(shank / 2, radius - depth)).Point("shank-bottom", new(shank / 2, depth - radius))
            .Point("crest-0", new(crests(0), radius)).Point("crest-1", new(crests(1), radius)).Point("crest-10", new(crests(10), radius))
            .Say("figure.bolt.lies").Say($"figure.bolt.{head}").Say(t.Is("end", "worn") ? "figure.bolt.worn" : "figure.bolt.clean").Say("figure.bolt.coarse");
    }

    /// <summary>Zigzag above and below, a slanting line a crest; gives where the n-th crest stands.</summary>
    static Func<double, double> Thread(Sketch sketch, double from, double pitch, double radius, double depth, bool worn)
    {
        double At(double n) => from + ((n + 0.5) * pitch);
        List<Spot> above = [new(from, radius - depth)];
        List<Spot> below = [new(from, depth - radius)];
        for (var n = 0; n < Turns; n++)
        {
            var high = worn && n > Turns - 4 ? radius - (depth * 0.8) : radius;
            above.AddRange([new(At(n), high), new(At(n + 0.5), radius - depth)]);
            below.AddRange([new(At(n - 0.5), -high), new(At(n), depth - radius)]);
        }
        sketch.Shape(Fill.Clear, [.. above, .. below.AsEnumerable().Reverse()]);
        for (var n = 0; n < Turns; n++) sketch.Line(new(At(n), radius - (depth * 0.3)), new(At(n - 0.5), (depth * 0.3) - radius));
        return At;
    }

    static void Head(Sketch sketch, string head, double r)
    {
        var (tall, wide) = (1.1 * r, 1.55 * r);
        if (head == "none")
        {
            sketch.Box(new(-1.6 * r, -0.8 * r), new(0, 0.8 * r)).Add(new Ink([new(-1.7 * r, -r), new(-1.4 * r, -0.3 * r), new(-1.7 * r, 0.3 * r), new(-1.4 * r, r), new(-2.4 * r, r), new(-2.4 * r, -r)], Closed: true, Fill.Clear, Pen.None))
                .Line(new(-1.6 * r, -0.9 * r), new(-1.4 * r, -0.3 * r), new(-1.7 * r, 0.3 * r), new(-1.5 * r, 0.9 * r));
            return;
        }
        var end = new Spot(-tall - (2.2 * r), 0);
        sketch.Box(new(-tall, -wide), new(0, wide));
        _ = head switch
        {
            "hexagon" => sketch.Shape(Fill.Grain, Geometry.Corners(end, wide, 6, 30)).Line(new(-tall, -wide * 0.5), new(0, -wide * 0.5)).Line(new(-tall, wide * 0.5), new(0, wide * 0.5)),
            "socket" => sketch.Circle(end, wide, Fill.Grain).Shape(Fill.Solid, Geometry.Corners(end, wide * 0.6, 6, 30)),
            "star" => sketch.Circle(end, wide, Fill.Grain).Shape(Fill.Solid, Geometry.Teeth(end, wide * 0.6, wide * 0.42, 6, 0.55)),
            _ => sketch.Circle(end, wide * 1.25, Fill.Grain).Circle(end, wide).Shape(Fill.Solid, Geometry.Corners(end, wide * 0.6, 6, 30)).Box(new(-0.25 * r, -wide * 1.25), new(0, wide * 1.25)),
        };
    }
}
