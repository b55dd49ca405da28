namespace Apprentice.Drawing.Figures;

/// <summary>A thing that moves, at its first and at its last place: a mark on a bare cable, or the upper wheel of a rear mech from behind.</summary>
static class TwoPlaces
{
    /// <summary>Draws it. The first place is x = 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (way, cable) = (t["way"], t.Is("thing", "cable"));
        var sketch = new Sketch();
        if (cable)
        {
            var tall = way * 0.3;
            sketch.Box(new(-way * 1.5, -tall * 0.5), new(-way * 0.35, tall * 0.5), Fill.HatchBack).Box(new(-way * 0.35, -tall * 0.14), new(way * 2, tall * 0.14));
            foreach (var x in (double[])[0, way]) sketch.Bold(new(x, -tall * 0.4), new(x, tall * 0.4));
            sketch.Dashes(new(way * 4 / 3, -tall * 0.4), new(way * 4 / 3, tall * 0.4));
        }
        else
        {
            foreach (var x in (double[])[0, way])
                sketch.Box(new(x - (way * 0.06), -way * 0.42), new(x + (way * 0.06), way * 0.42), Fill.Half);
            sketch.Dashes(new(0, -way * 0.6), new(0, way * 0.6)).Dashes(new(way, -way * 0.6), new(way, way * 0.6)).Line(new(way * 0.2, 0), new(way * 0.8, 0)).Line(new(way * 0.72, way * 0.05), new(way * 0.8, 0), new(way * 0.72, -way * 0.05));
        }
        return sketch
            .Point("first-place", new(0, 0)).Point("last-place", new(way, 0)).Point("place-after", new(way * 4 / 3, 0))
            .Say(cable ? "figure.two-places.cable" : "figure.two-places.wheel");
    }
}
