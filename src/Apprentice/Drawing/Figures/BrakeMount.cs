namespace Apprentice.Drawing.Figures;

/// <summary>Where a brake is fixed: the tube lies, its upper end on the left; for bosses and the single bolt the fork is seen from the front.</summary>
static class BrakeMount
{
    /// <summary>Draws it. The middle between the holes is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (half, shape) = (t["distance"] / 2, t.Word("shape"));
        var sketch = shape switch
        {
            "post" => Posts(half),
            "tabs" => Tabs(half),
            "flat" => Flat(half),
            "bosses" => Bosses(half),
            _ => Bolt(),
        };
        if (shape == "bolt") half = 0;
        return sketch.Point("hole-1", new(-half, 0)).Point("hole-2", new(half, 0)).Say($"figure.brake-mount.{shape}");
    }

    static Sketch Leg(double half, double low) => new Sketch().Box(new(-half - 55, low - 30), new(half + 45, low), Fill.Grain);

    /// <summary>Two short pillars with a threaded hole each, which point to the viewer's upper side.</summary>
    static Sketch Posts(double half)
    {
        var sketch = Leg(half, -14);
        foreach (var x in (double[])[-half, half])
        {
            sketch.Shape(Fill.Clear, new(x - 12, -15), new(x - 8, 0), new(x + 8, 0), new(x + 12, -15))
                .Dashes(new(x - 3, 0), new(x - 3, -14)).Dashes(new(x + 3, 0), new(x + 3, -14)).Bold(new(x - 8, 0), new(x + 8, 0));
        }
        return sketch;
    }

    /// <summary>Two flat ears with holes through them, seen as rings.</summary>
    static Sketch Tabs(double half)
    {
        var sketch = Leg(half, -13);
        foreach (var x in (double[])[-half, half])
            sketch.Shape(Fill.Clear, [new(x - 13, -14), .. Geometry.Arc(new(x, 0), 9, 160, 20), new(x + 13, -14)]).Circle(new(x, 0), 3.2, Fill.Solid);
        return sketch;
    }

    /// <summary>A flat face on the tube; the bolts come through the tube from below.</summary>
    static Sketch Flat(double half)
    {
        var sketch = Leg(half, 0).Shape(Fill.Clear, new(-half - 20, 0), new(-half - 16, 4), new(half + 16, 4), new(half + 20, 0)).Bold(new(-half - 16, 4), new(half + 16, 4));
        foreach (var x in (double[])[-half, half])
            sketch.Box(new(x - 2.5, -30), new(x + 2.5, 4), Fill.Clear).Box(new(x - 5, -36), new(x + 5, -30), Fill.Half);
        return sketch;
    }

    /// <summary>Two fork blades from the front, a pin on each.</summary>
    static Sketch Bosses(double half)
    {
        var sketch = new Sketch().Box(new(-half - 14, 46), new(half + 14, 62), Fill.Grain);
        foreach (var x in (double[])[-half, half])
            sketch.Box(new(x - 11, -34), new(x + 11, 46), Fill.Grain).Circle(new(x, 0), 9).Circle(new(x, 0), 4, Fill.Half).Circle(new(x, 8.5), 1.6, Fill.Solid);
        return sketch;
    }

    /// <summary>A fork crown from the front with one hole in its middle.</summary>
    static Sketch Bolt() => new Sketch()
        .Box(new(-46, -60), new(-28, 0), Fill.Grain).Box(new(28, -60), new(46, 0), Fill.Grain)
        .Shape(Fill.Grain, Geometry.Rounded([new(-46, -10), new(-46, 14), new(-14, 22), new(14, 22), new(46, 14), new(46, -10), new(20, -12), new(-20, -12), new(-46, -10)], 8))
        .Circle(new(0, 0), 6).Circle(new(0, 0), 3.2, Fill.Solid);
}
