namespace Apprentice.Drawing.Figures;

/// <summary>A round part, lying: its smooth middle, and on both sides places at which a caliper reads something else.</summary>
/// <remarks>As long as it is thick by a fixed ratio, so that no size can be seen; steps are drawn larger than they are.</remarks>
static class RoundPart
{
    const double Zone = 1.25;

    /// <summary>Draws it. The middle is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (radius, left, right) = (t["diameter"] / 2, t.Word("left"), t.Word("right"));
        var sketch = new Sketch();
        var half = Zone * radius;
        Side(sketch, left, radius, -half, -1);
        Side(sketch, right, radius, half, 1);
        sketch.Box(new(-half, -radius), new(half, radius)).Line(new(-half * 0.8, radius * 0.62), new(half * 0.8, radius * 0.62));
        var (onLeft, onRight) = (Edges(left, radius, -half, -1), Edges(right, radius, half, 1));
        return sketch
            .Point("middle-top", new(0, radius)).Point("middle-bottom", new(0, -radius))
            .Point("left-top", onLeft.Top).Point("left-bottom", onLeft.Bottom).Point("right-top", onRight.Top).Point("right-bottom", onRight.Bottom)
            .Say("figure.round-part.lies")
            .Say("figure.round-part.left", ("look", Content.Words.Of($"figure.round-part.{left}"))).Say("figure.round-part.right", ("look", Content.Words.Of($"figure.round-part.{right}")));
    }

    /// <summary>One side, from where the middle ends outwards.</summary>
    /// <param name="sketch">What is drawn so far.</param>
    /// <param name="look">How it looks.</param>
    /// <param name="r">Half the thickness of the middle, mm.</param>
    /// <param name="x">Where it begins, mm.</param>
    /// <param name="way">1 to the right, -1 to the left.</param>
    static void Side(Sketch sketch, string look, double r, double x, int way)
    {
        var (mid, end) = (x + (way * Zone * r), x + (way * 2 * Zone * r));
        _ = look switch
        {
            "thin" => sketch.Box(new(x, -0.84 * r), new(end, 0.84 * r)),
            "taper" => sketch.Shape(Fill.Clear, new(x, -r), new(x, r), new(end, 0.6 * r), new(end, -0.6 * r)),
            "wider" => sketch.Shape(Fill.Clear, new(x, -r), new(x, r), new(end, 1.3 * r), new(end, -1.3 * r)),
            "chamfer" => sketch.Shape(Fill.Clear, new(x, -r), new(x, r), new(mid, r), new(mid + (way * 0.5 * r), 0.5 * r), new(mid + (way * 0.5 * r), -0.5 * r), new(mid, -r)),
            "knurl" => sketch.Box(new(x, -1.06 * r), new(end, 1.06 * r), Fill.Half),
            "wrap" => sketch.Box(new(x, -r), new(end, r)).Box(new(x + (way * 0.5 * r), -1.25 * r), new(end, 1.25 * r), Fill.HatchBack),
            "sleeve" => sketch.Box(new(x, -r), new(end, r)).Box(new(mid - (0.5 * r), -1.3 * r), new(mid + (0.5 * r), 1.3 * r)),
            "worn" => sketch.Shape(Fill.Clear, [new(x, -r), new(x, r), .. Dip(mid, r), new(end, r), new(end, -r), .. Dip(mid, r).Reverse().Select(s => new Spot(s.X, -s.Y))]),
            "burr" => Bumps(sketch.Box(new(x, -r), new(end, r)), [mid - (0.3 * r), mid, mid + (0.3 * r)], r),
            "punched" => Bumps(sketch.Box(new(x, -r), new(end, r)), [mid - (0.8 * r), mid, mid + (0.8 * r)], r).Circle(new(mid, 0), r * 0.08, Fill.Solid).Circle(new(mid - (0.6 * r), 0.1 * r), r * 0.08, Fill.Solid),
            "thread" => Thread(sketch, r, x, end, way),
            "bend" => sketch.Tube(2 * r, Fill.Clear, Geometry.Rounded([new(x, 0), new(mid, 0), new(mid, 3.2 * r)], 1.4 * r)),
            _ => sketch.Box(new(x, -r), new(end, r)),
        };
    }

    static Spot[] Dip(double mid, double r) => [new(mid - (0.9 * r), r), new(mid - (0.4 * r), 0.82 * r), new(mid + (0.4 * r), 0.82 * r), new(mid + (0.9 * r), r)];

    static Sketch Bumps(Sketch sketch, double[] at, double r)
    {
        foreach (var x in at)
        {
            sketch.Shape(Fill.Solid, new(x - (0.14 * r), r), new(x, 1.22 * r), new(x + (0.14 * r), r));
            sketch.Shape(Fill.Solid, new(x - (0.14 * r), -r), new(x, -1.22 * r), new(x + (0.14 * r), -r));
        }
        return sketch;
    }

    static Sketch Thread(Sketch sketch, double r, double x, double end, int way)
    {
        var pitch = 0.28 * r;
        sketch.Box(new(x, -0.82 * r), new(end, 0.82 * r));
        for (var at = pitch; at < Math.Abs(end - x) - (pitch / 2); at += pitch)
            sketch.Line(new(x + (way * (at - (pitch / 2))), -0.82 * r), new(x + (way * at), -r), new(x + (way * at) + (pitch / 2), r), new(x + (way * at) + pitch, 0.82 * r));
        return sketch;
    }

    /// <summary>Where the jaws would lie on a side.</summary>
    static (Spot Top, Spot Bottom) Edges(string look, double r, double x, int way)
    {
        var mid = x + (way * Zone * r);
        if (look == "aslant") return (new(mid + (0.35 * r), r), new(mid - (0.35 * r), -r));
        if (look == "bend") return (new(mid - (way * r), r), new(mid + (way * 0.72 * r), -0.72 * r));
        if (look == "chamfer") return (new(mid + (way * 0.25 * r), 0.75 * r), new(mid + (way * 0.25 * r), -0.75 * r));
        var high = r * look switch { "thin" => 0.84, "taper" => 0.8, "wider" => 1.15, "knurl" => 1.06, "wrap" => 1.25, "sleeve" => 1.3, "worn" => 0.82, "burr" or "punched" => 1.22, _ => 1.0 };
        return (new(mid, high), new(mid, -high));
    }
}
