namespace Apprentice.Drawing.Figures;

/// <summary>Where a brake is fixed: the tube lies, its upper end on the left; bosses and the single bolt are seen along the wheel.</summary>
static class BrakeMount
{
    // Half of a hole, and how far the holes of an adapter stand outside those of the frame, mm (common practice, no source).
    const double Hole = 3;
    const double Further = 11.5;

    /// <summary>Draws it. The middle between the holes is 0; the single bolt is 0, and the middle of the pads lies below it.</summary>
    public static Sketch Draw(Traits t)
    {
        var (half, shape) = (t["distance"] / 2, t.Word("shape"));
        var single = shape == "bolt";
        var sketch = shape switch
        {
            "post" => Posts(half),
            "tabs" => Tabs(half),
            "flat" => Flat(half),
            "bosses" => Bosses(half),
            "points" => Points(half),
            _ => Bolt(2 * half),
        };
        if (t.Is("adapter", "yes")) Adapter(sketch, half, single);
        Spot At(double along) => single ? new(0, along - half) : new(along, 0);
        var end = single ? -1 : 1;
        return sketch
            .Point("fixing-1", At(-half * end)).Point("fixing-2", At(half * end)).Point("edge-1", At(-(half + Hole) * end)).Point("edge-2", At((half + Hole) * end))
            .Point("adapter-1", Beside(At(-(half + Further) * end), single)).Point("adapter-2", Beside(At((half + Further) * end), single))
            .Say($"figure.brake-mount.{shape}").Told(t.Is("adapter", "yes") ? Content.Words.Of("figure.brake-mount.adapter") : "");
    }

    static Spot Beside(Spot at, bool single) => single ? at.By(-14, 0) : at.By(0, 14);

    static Sketch Leg(double half, double low) => new Sketch().Box(new(-half - 55, low - 20), new(half + 45, low), Fill.Grain);

    /// <summary>A piece between frame and brake, in dashes: its holes stand further apart.</summary>
    static void Adapter(Sketch sketch, double half, bool single)
    {
        var apart = half + Further;
        Spot[] corners = single
            ? [new(-21, apart + 7 - half), new(-7, apart + 7 - half), new(-7, -apart - 7 - half), new(-21, -apart - 7 - half)]
            : [new(-apart - 7, 7), new(apart + 7, 7), new(apart + 7, 21), new(-apart - 7, 21)];
        sketch.Dashes([.. corners, corners[0]]);
        foreach (var along in (double[])[-apart, apart]) sketch.Circle(single ? new(-14, along - half) : new(along, 14), Hole);
    }

    /// <summary>Two short pillars with a threaded hole each, which point to the viewer's upper side.</summary>
    static Sketch Posts(double half)
    {
        var sketch = Leg(half, -14);
        foreach (var x in (double[])[-half, half])
        {
            sketch.Shape(Fill.Clear, new(x - 12, -15), new(x - 8, 0), new(x + 8, 0), new(x + 12, -15))
                .Dashes(new(x - Hole, 0), new(x - Hole, -14)).Dashes(new(x + Hole, 0), new(x + Hole, -14)).Bold(new(x - 8, 0), new(x + 8, 0));
        }
        return sketch;
    }

    /// <summary>Two flat ears with holes through them, seen as rings.</summary>
    static Sketch Tabs(double half)
    {
        var sketch = Leg(half, -13);
        foreach (var x in (double[])[-half, half])
            sketch.Shape(Fill.Clear, [new(x - 13, -14), .. Geometry.Arc(new(x, 0), 9, 160, 20), new(x + 13, -14)]).Circle(new(x, 0), Hole, Fill.Solid);
        return sketch;
    }

    /// <summary>A flat face on the tube; the bolts come through the tube from below.</summary>
    static Sketch Flat(double half)
    {
        var sketch = Leg(half, 0).Shape(Fill.Clear, new(-half - 20, 0), new(-half - 16, 4), new(half + 16, 4), new(half + 20, 0)).Bold(new(-half - 16, 4), new(half + 16, 4));
        foreach (var x in (double[])[-half, half])
            sketch.Box(new(x - Hole, -20), new(x + Hole, 4), Fill.Clear).Box(new(x - 5, -26), new(x + 5, -20), Fill.Half);
        return sketch;
    }

    /// <summary>Two fixing points and nothing of their form.</summary>
    static Sketch Points(double half)
    {
        var sketch = new Sketch().Box(new(-half - 30, -10), new(half + 30, 10), Fill.Grain);
        foreach (var x in (double[])[-half, half]) sketch.Circle(new(x, 0), Hole + 2).Circle(new(x, 0), Hole).Line(new(x - 1, 0), new(x + 1, 0)).Line(new(x, -1), new(x, 1));
        return sketch;
    }

    /// <summary>The two sides of fork or frame along the wheel, a pin on each.</summary>
    static Sketch Bosses(double half)
    {
        var sketch = new Sketch().Box(new(-half - 14, 46), new(half + 14, 62), Fill.Grain);
        foreach (var x in (double[])[-half, half])
            sketch.Box(new(x - 11, -34), new(x + 11, 46), Fill.Grain).Circle(new(x, 0), 9).Circle(new(x, 0), Hole, Fill.Half).Circle(new(x, 8.5), 1.6, Fill.Solid);
        return sketch;
    }

    /// <summary>The crown of a fork, or a bridge, along the wheel: one hole in its middle. The rim and its pads hang below.</summary>
    static Sketch Bolt(double reach) => new Sketch()
        .Box(new(-46, -reach - 22), new(-28, 0), Fill.Grain).Box(new(28, -reach - 22), new(46, 0), Fill.Grain)
        .Shape(Fill.Grain, Geometry.Rounded([new(-46, -10), new(-46, 14), new(-14, 22), new(14, 22), new(46, 14), new(46, -10), new(20, -12), new(-20, -12), new(-46, -10)], 8))
        .Box(new(-11, -reach - 22), new(11, -reach + 7), Fill.Clear)
        .Box(new(-20, -reach - 5), new(-11, -reach + 5), Fill.Half).Box(new(11, -reach - 5), new(20, -reach + 5), Fill.Half)
        .Dashes(new(-24, -reach), new(24, -reach))
        .Circle(new(0, 0), 6).Circle(new(0, 0), Hole, Fill.Solid);
}
