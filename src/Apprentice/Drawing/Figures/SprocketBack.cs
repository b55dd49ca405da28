namespace Apprentice.Drawing.Figures;

/// <summary>Sprockets seen along the axle from the right: the smallest sprocket, and inside it what a tool takes hold of.</summary>
static class SprocketBack
{
    const double Pitch = 12.7;
    static readonly Spot Middle = new(0, 0);

    /// <summary>A freewheel: notches or splines in its inner body.</summary>
    public static Sketch Freewheel(Traits t)
    {
        var (notches, splines, radius) = (t.Count("notches"), t.Count("splines"), t["across"] / 2);
        var sketch = Sprocket(t.Count("teeth"), out var root);
        sketch.Circle(Middle, Math.Min(root - 2, radius + 5));
        if (notches > 0) Notches(sketch, notches, radius);
        else Splines(sketch, splines, radius);
        sketch.Circle(Middle, 5).Circle(Middle, 2.6, Fill.Solid);
        Turns(sketch, t.Is("turns", "sprockets") ? root + 3 : radius * 0.72);
        return Named(sketch, radius).Say("figure.sprocket.lies").Told(Inside(notches, splines))
            .Told(Content.Words.Of(t.Is("turns", "sprockets") ? "figure.sprocket.turns-round" : "figure.sprocket.turns-all"));
    }

    /// <summary>A cassette: a lockring with splines, or the splined body without one.</summary>
    public static Sketch Cassette(Traits t)
    {
        var (splines, radius, ring) = (t.Count("splines"), t["across"] / 2, t.Is("lockring", "yes"));
        var sketch = Sprocket(t.Count("teeth"), out var root);
        if (ring) sketch.Shape(Fill.Grain, Geometry.Teeth(Middle, Math.Min(root - 1, radius + 4.5), Math.Min(root - 2, radius + 3.6), 36, 0.5));
        Splines(sketch, splines, radius);
        sketch.Circle(Middle, 7).Circle(Middle, 5).Circle(Middle, 2.6, Fill.Solid);
        Turns(sketch, t.Is("turns", "all") ? radius * 0.75 : root + 3);
        return Named(sketch, radius).Say("figure.sprocket.lies").Told(Content.Words.Of(ring ? "figure.sprocket.ring" : "figure.sprocket.no-ring")).Told(Inside(0, splines))
            .Told(Content.Words.Of(t.Is("turns", "all") ? "figure.sprocket.turns-all" : "figure.sprocket.turns-round"));
    }

    static Sketch Named(Sketch sketch, double radius) => sketch.Frame(new(-radius - 24, -radius - 8), new(radius + 24, radius + 8)).Point("middle", Middle).Point("tool-edge", new(radius, 0));

    static string Inside(int notches, int splines) => notches > 0
        ? Content.Words.Of("figure.sprocket.notches", ("n", notches))
        : splines > 0 ? Content.Words.Of("figure.sprocket.splines", ("n", splines)) : Content.Words.Of("figure.sprocket.smooth");

    static Sketch Sprocket(int teeth, out double root)
    {
        var radius = Pitch / 2 / Math.Sin(Math.PI / teeth);
        root = radius - 4;
        return new Sketch().Shape(Fill.Grain, Geometry.Teeth(Middle, radius + 3.2, root, teeth, 0.3));
    }

    static void Notches(Sketch sketch, int count, double radius)
    {
        sketch.Circle(Middle, radius, Fill.Grain).Circle(Middle, radius * 0.7);
        foreach (var at in Enumerable.Range(0, count).Select(i => 90 + (360.0 * i / count)))
        {
            var (inner, outer) = (radius * 0.7, radius + 0.8);
            sketch.Shape(Fill.Solid, Geometry.At(Middle, inner, at - 13), Geometry.At(Middle, outer, at - 9), Geometry.At(Middle, outer, at + 9), Geometry.At(Middle, inner, at + 13));
        }
    }

    static void Splines(Sketch sketch, int count, double radius) => sketch.Shape(Fill.Clear, count == 0 ? Geometry.Arc(Middle, radius, 0, 360) : Geometry.Teeth(Middle, radius, radius - 1.9, count, 0.5));

    /// <summary>An arrow round the part that turns when the sprockets are turned back.</summary>
    static void Turns(Sketch sketch, double radius)
    {
        var tip = Geometry.At(Middle, radius, -30);
        sketch.Add(new Ink(Geometry.Arc(Middle, radius, -30, 30), Closed: false, Fill.None, Pen.Bold)).Line(Geometry.At(Middle, radius - 2.6, -18), tip, Geometry.At(Middle, radius + 2.6, -18));
    }
}
