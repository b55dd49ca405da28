namespace Apprentice.Drawing.Figures;

/// <summary>A hole from its mouth, for inside jaws: through its middle, or beside it.</summary>
static class Bore
{
    const double Beside = 0.6;
    const double Tip = 0.86;
    const double Turn = 20;

    /// <summary>Draws it. The middle of the hole is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var radius = t["bore"] / 2;
        var (outer, middle) = (radius * 1.35, new Spot(0, 0));
        var sketch = new Sketch();
        if (t.Is("mouth", "slot"))
        {
            sketch.Box(new(-0.75 * radius, -outer * 1.5), new(0.75 * radius, -radius * 0.8), Fill.Grain).Circle(middle, outer, Fill.Grain)
                .Add(new Ink([new(-0.18 * radius, -outer * 1.6), new(0.18 * radius, -outer * 1.6), new(0.18 * radius, -radius * 0.9), new(-0.18 * radius, -radius * 0.9)], Closed: true, Fill.Clear, Pen.None))
                .Circle(middle, radius).Line(new(-0.18 * radius, -outer * 1.5), new(-0.18 * radius, -radius)).Line(new(0.18 * radius, -outer * 1.5), new(0.18 * radius, -radius))
                .Box(new(-1.05 * radius, -outer * 1.32), new(-0.75 * radius, -outer * 1.1), Fill.Half).Box(new(0.75 * radius, -outer * 1.32), new(1.05 * radius, -outer * 1.1), Fill.Half);
        }
        else if (t.Is("mouth", "steps"))
        {
            Steps(sketch, radius, outer);
        }
        else
        {
            sketch.Circle(middle, outer, Fill.Grain).Circle(middle, radius);
        }
        var (x, y) = (radius * Math.Sqrt(1 - (Beside * Beside)), Beside * radius);
        return sketch
            .Point("wide-left", new(-radius, 0)).Point("wide-right", new(radius, 0)).Point("beside-left", new(-x, y)).Point("beside-right", new(x, y))
            .Point("step-left", Geometry.At(middle, Tip * radius, 180 - Turn)).Point("step-right", Geometry.At(middle, Tip * radius, -Turn))
            .Say("figure.bore.lies").Say($"figure.bore.{t.Word("mouth")}");
    }
    /// <summary>Only both sides are drawn, where the wall goes in and out by turns; the rest in dashes.</summary>
    static void Steps(Sketch sketch, double radius, double outer)
    {
        var middle = new Spot(0, 0);
        sketch.Dashes(Geometry.Arc(middle, radius, 60, 120)).Dashes(Geometry.Arc(middle, radius, 240, 300));
        foreach (var side in (int[])[0, 180])
        {
            Spot[] inner = [.. Enumerable.Range(-2, 5).SelectMany(n => (Spot[])[Wall(side + (n * Turn) - 8, n), Wall(side + (n * Turn) + 8, n)])];
            sketch.Shape(Fill.Grain, [.. inner, .. Geometry.Arc(middle, outer, side + 48, side - 48)]);
        }
        Spot Wall(double degrees, int n) => Geometry.At(middle, n % 2 == 0 ? radius : Tip * radius, degrees);
    }
}
