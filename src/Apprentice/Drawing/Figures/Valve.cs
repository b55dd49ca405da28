namespace Apprentice.Drawing.Figures;

/// <summary>A valve from the side, lying: the rim on the left, the tip on the right.</summary>
static class Valve
{
    /// <summary>Draws it. The rim's surface is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var length = t["length"];
        var sketch = new Sketch().Box(new(-7, -14), new(0, 14), Fill.Hatch);
        _ = t.Word("shape") switch
        {
            "broad" => Broad(sketch, length),
            "narrow" => Narrow(sketch, length),
            _ => Middle(sketch, length),
        };
        return sketch.Point("base", new(0, 0)).Point("tip", new(length, 0)).Say("figure.valve.lies").Say($"figure.valve.{t.Word("shape")}");
    }

    static Sketch Broad(Sketch sketch, double length)
    {
        sketch.Box(new(0, -4.4), new(length - 11, 4.4)).Box(new(length - 11, -3.8), new(length, 3.8));
        Threads(sketch, length - 10, length - 1, 3.8);
        return sketch.Box(new(length - 4, -1.6), new(length, 1.6), Fill.Solid);
    }

    static Sketch Narrow(Sketch sketch, double length)
    {
        sketch.Box(new(0, -3), new(length - 11, 3));
        Threads(sketch, 1, length - 12, 3);
        return sketch.Box(new(1, -6.5), new(4.5, 6.5), Fill.Clear).Line(new(1, 2), new(4.5, 2)).Line(new(1, -2), new(4.5, -2))
            .Box(new(length - 11, -2.4), new(length - 7, 2.4)).Box(new(length - 7, -0.9), new(length, 0.9))
            .Shape(Fill.Half, new(length - 6, -2.2), new(length - 3, -2.2), new(length - 2, -1), new(length - 2, 1), new(length - 3, 2.2), new(length - 6, 2.2));
    }

    static Sketch Middle(Sketch sketch, double length)
    {
        sketch.Box(new(0, -4), new(length - 14, 4));
        Threads(sketch, 1, length - 15, 4);
        return sketch.Box(new(1, -7.5), new(5, 7.5), Fill.Clear).Line(new(1, 2.5), new(5, 2.5)).Line(new(1, -2.5), new(5, -2.5))
            .Box(new(length - 18, -5.6), new(length - 8, 5.6), Fill.Half)
            .Shape(Fill.Clear, new(length - 8, -3.4), new(length - 2, -2.4), new(length, -2.4), new(length, 2.4), new(length - 2, 2.4), new(length - 8, 3.4))
            .Box(new(length - 1.6, -1), new(length, 1), Fill.Solid);
    }

    static void Threads(Sketch sketch, double from, double to, double radius)
    {
        for (var x = from; x < to; x += 1.6) sketch.Line(new(x, -radius), new(x + 0.5, radius));
    }
}
