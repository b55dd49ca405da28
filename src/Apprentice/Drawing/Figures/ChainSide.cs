namespace Apprentice.Drawing.Figures;

/// <summary>A length of chain from the side, pulled straight. Wear is drawn to scale: it is small.</summary>
static class ChainSide
{
    const double Pitch = 12.7;
    const int AtEachEnd = 2;

    /// <summary>Draws it. The first pin is 0. Source of the pitch: facts T4. Of a long chain only both ends may be drawn.</summary>
    public static Sketch Draw(Traits t)
    {
        var (links, plate, step) = (t.Count("links"), t["plate"], Pitch * (1 + t["wear"]));
        var cut = t.Is("cut", "yes") && links > (2 * AtEachEnd) + 1;
        var drawn = cut ? (2 * AtEachEnd) + 1 : links;
        var sketch = new Sketch();
        for (var i = 1; i <= drawn; i += 2) Plate(sketch, i * step, step, plate * 0.92);
        for (var i = 0; i <= drawn; i += 2) Plate(sketch, i * step, step, plate);
        for (var i = 0; i <= drawn + 1; i++) sketch.Circle(new(i * step, 0), Pin(plate), Fill.Half);
        if (cut) Break(sketch, (AtEachEnd + 0.5) * step, plate);
        return sketch
            .Point("pin-first", new(0, 0)).Point("pin-edge", new(-Pin(plate), 0)).Point("pin-last", new(drawn * step, 0)).Point("pin-after", new((drawn + 1) * step, 0))
            .Say("figure.chain-side.lies", ("n", links + 2)).Told(cut ? Content.Words.Of("figure.chain-side.cut", ("n", links)) : "");
    }

    static double Pin(double plate) => plate * 0.22;

    /// <summary>Two wavy edges with nothing between them.</summary>
    static void Break(Sketch sketch, double x, double plate)
    {
        Spot[] Edge(double at) => [new(at - 1, -plate), new(at + 1, -plate * 0.35), new(at - 1, plate * 0.35), new(at + 1, plate)];
        sketch.Add(new Ink([.. Edge(x - 1.6), .. Edge(x + 1.6).Reverse()], Closed: true, Fill.Clear, Pen.None)).Line(Edge(x - 1.6)).Line(Edge(x + 1.6));
    }

    /// <summary>A plate with its waist.</summary>
    static void Plate(Sketch sketch, double x, double step, double height)
    {
        var r = height / 2;
        sketch.Shape(Fill.Clear,
        [
            .. Geometry.Arc(new(x, 0), r, 55, 305), new(x + (step / 2), -r * 0.62),
            .. Geometry.Arc(new(x + step, 0), r, 235, 485), new(x + (step / 2), r * 0.62),
        ]);
    }
}
