namespace Apprentice.Drawing.Figures;

/// <summary>A length of chain from the side, pulled straight. Wear is drawn to scale: it is small.</summary>
static class ChainSide
{
    const double Pitch = 12.7;

    /// <summary>Draws it. The first pin is 0. Source of the pitch: facts T4.</summary>
    public static Sketch Draw(Traits t)
    {
        var (links, plate, step) = (t.Count("links"), t["plate"], Pitch * (1 + t["wear"]));
        var sketch = new Sketch();
        for (var i = 1; i < links; i += 2) Plate(sketch, i * step, step, plate * 0.92);
        for (var i = 0; i < links; i += 2) Plate(sketch, i * step, step, plate);
        for (var i = 0; i <= links; i++) sketch.Circle(new(i * step, 0), plate * 0.22, Fill.Half);
        return sketch.Point("pin-first", new(0, 0)).Point("pin-last", new(links * step, 0)).Say("figure.chain-side.lies", ("n", links + 1));
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
