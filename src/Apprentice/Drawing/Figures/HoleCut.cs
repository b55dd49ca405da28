namespace Apprentice.Drawing.Figures;

/// <summary>A hole or a tube cut along its axis, its mouth on the right: for inside jaws at its mouth, inside, and deep in it.</summary>
static class HoleCut
{
    /// <summary>Draws it. The mouth is x = 0, the axis y = 0. Steps are drawn larger than they are.</summary>
    public static Sketch Draw(Traits t)
    {
        var (radius, mouth, deep) = (t["bore"] / 2, t.Word("mouth"), t.Is("deep", "narrow"));
        var (wall, length, thread) = (0.4 * radius, 4.4 * radius, t.Is("inside", "thread"));
        var end = mouth switch { "rounded" => radius + (wall * 0.75), "slot" => radius * 0.9, _ => radius };
        var narrow = deep ? radius * 0.8 : radius;
        var sketch = new Sketch();
        foreach (var side in (int[])[1, -1])
        {
            Spot[] inner = [new(-length, side * narrow), new(-0.7 * length, side * narrow), new(-0.55 * length, side * radius), new(-0.2 * length, side * radius), new(0, side * end)];
            sketch.Shape(Fill.Hatch, [.. thread ? Thread(radius, length, side) : inner, new(0, side * (radius + wall)), new(-length, side * (radius + wall))]);
        }
        sketch.Line(new(0, -end), new(0, end));
        if (mouth == "slot") sketch.Box(new(-0.32 * length, -0.12 * radius), new(0, 0.12 * radius), Fill.Half);
        var x = -0.38 * length;
        var at = mouth == "rounded" ? -0.04 * length : mouth == "slot" ? -0.06 * length : -0.1 * length;
        var high = mouth == "plain" ? radius : radius + ((end - radius) * (1 + (at / (0.2 * length))));
        return sketch.Hole()
            .Point("inside-top", new(x, radius)).Point("inside-bottom", new(x, -radius)).Point("mouth-top", new(at, high)).Point("mouth-bottom", new(at, -high))
            .Point("deep-top", new(-0.85 * length, narrow)).Point("deep-bottom", new(-0.85 * length, -narrow))
            .Point("groove-top", new(x - Half(radius), thread ? radius * 1.14 : radius)).Point("groove-bottom", new(x - Half(radius), thread ? -radius * 1.14 : -radius))
            .Say("figure.hole-cut.lies").Say($"figure.hole-cut.{mouth}").Say(thread ? "figure.hole-cut.thread" : "figure.hole-cut.smooth").Say(deep ? "figure.hole-cut.narrow" : "figure.hole-cut.even");
    }

    static double Half(double radius) => 0.19 * radius;

    /// <summary>Crests and grooves by turns, so that a crest stands at the place that is measured.</summary>
    static Spot[] Thread(double radius, double length, int side)
    {
        var first = -0.38 * length;
        return [.. Enumerable.Range(-14, 23).Select(n => new Spot(first + (n * Half(radius)), side * radius * (n % 2 == 0 ? 1 : 1.14))).Where(s => s.X > -length && s.X < 0).Append(new Spot(0, side * radius))];
    }
}
