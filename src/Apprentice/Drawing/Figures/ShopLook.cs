using Apprentice.Engine.Quantities;

namespace Apprentice.Drawing.Figures;

/// <summary>A part as the shop sees it: one picture in three is dirty, worn in patches and lies at an angle. What decides stays clear: nothing is laid near a named point.</summary>
static class ShopLook
{
    const double Keep = 0.07;
    const int Specks = 60;
    const int Patches = 7;

    /// <summary>True for the seeds of pictures that look like the shop.</summary>
    public static bool IsWorn(ulong seed) => Luck(seed).Below(3) == 0;

    /// <summary>The sketch as a seed makes it look; the same seed, the same look.</summary>
    public static Sketch Of(Sketch sketch, ulong seed)
    {
        var rng = Luck(seed);
        if (rng.Below(3) != 0) return sketch;
        var degrees = (3 + (5 * rng.Unit())) * (rng.Below(2) == 0 ? 1 : -1);
        var (low, high) = sketch.Bounds();
        var turned = sketch.Moved(Turn(new((low.X + high.X) / 2, (low.Y + high.Y) / 2), degrees));
        var size = Math.Max(high.X - low.X, high.Y - low.Y);
        for (var i = 0; i < Patches; i++) Patch(turned, rng, size);
        for (var i = 0; i < Specks; i++) Speck(turned, rng, size);
        return turned.Say("figure.shop");
    }

    /// <summary>Wears a stroke away where it lies far from all named points.</summary>
    static void Patch(Sketch sketch, Rng rng, double size)
    {
        var strokes = sketch.Inks.Where(i => i.Pen != Pen.None).ToList();
        var stroke = strokes[rng.Below(strokes.Count)];
        var at = stroke.Path[rng.Below(stroke.Path.Count)];
        var radius = size * (0.006 + (0.008 * rng.Unit()));
        if (IsFree(sketch, at, size)) sketch.Add(new Ink(Geometry.Corners(at, radius, 7, 360 * rng.Unit()), Closed: true, Fill.Clear, Pen.None));
    }

    static void Speck(Sketch sketch, Rng rng, double size)
    {
        var (low, high) = sketch.Bounds();
        var at = new Spot(low.X + ((high.X - low.X) * rng.Unit()), low.Y + ((high.Y - low.Y) * rng.Unit()));
        if (IsFree(sketch, at, size)) sketch.Line(at, at.By(size * 0.004 * rng.Unit(), size * 0.003 * rng.Unit()));
    }

    static bool IsFree(Sketch sketch, Spot at, double size) => sketch.Points.Values.All(p => p.To(at) > Keep * size);

    static Func<Spot, Spot> Turn(Spot middle, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return s => new(middle.X + ((s.X - middle.X) * cos) - ((s.Y - middle.Y) * sin), middle.Y + ((s.X - middle.X) * sin) + ((s.Y - middle.Y) * cos));
    }

    // Neighbouring seeds of the generator are not independent in their first numbers.
    static Rng Luck(ulong seed)
    {
        var rng = new Rng(unchecked(seed * 0x9E3779B97F4A7C15UL), stream: 5);
        for (var i = 0; i < 8; i++) rng.Next();
        return rng;
    }
}
