namespace Apprentice.Drawing.Figures;

/// <summary>The end of a bottom bracket spindle: from its end on the left, from the side on the right.</summary>
static class SpindleEnd
{
    /// <summary>Draws it. The tip of the side view is x = 0; the end view stands left of it.</summary>
    public static Sketch Draw(Traits t)
    {
        var (across, length, shape) = (t["across"], t["length"], t.Word("shape"));
        var shaft = Math.Max(across * 0.72, shape == "hollow" ? across / 2 : 8.5);
        var end = new Spot(-(2 * shaft) - 4, 0);
        var grown = (across / 2) + (length * Math.Tan(t["taper"] * Math.PI / 180) * (shape == "square" ? 1 : 0));
        var sketch = new Sketch().Circle(end, shaft).Box(new(length, -shaft), new(length + 30, shaft), Fill.Grain)
            .Shape(Fill.Clear, new(0, -across / 2), new(length, -grown), new(length, grown), new(0, across / 2));
        _ = shape switch
        {
            "square" => sketch.Shape(Fill.Hatch, Geometry.Rounded([.. Square(end, across / 2)], across * 0.12)).Circle(end, across * 0.3).Circle(end, across * 0.22, Fill.Solid),
            "cotter" => sketch.Circle(end, across / 2, Fill.Hatch).Box(end.By(-across * 0.5, across * 0.28), end.By(across * 0.5, across * 0.5)).Box(new(length * 0.3, across * 0.28), new(length * 0.8, across * 0.5), Fill.Half),
            "three-arm" => sketch.Shape(Fill.Hatch, Geometry.Teeth(end, across / 2, across * 0.28, 3, 0.45)).Circle(end, across * 0.16, Fill.Solid),
            "hollow" => Splined(sketch, end, across, t.Count("splines"), length).Circle(end, across * 0.36, Fill.Clear).Dashes(new(0, across * 0.36), new(length + 30, across * 0.36)).Dashes(new(0, -across * 0.36), new(length + 30, -across * 0.36)),
            _ => Splined(sketch, end, across, t.Count("splines"), length).Circle(end, across * 0.26).Circle(end, across * 0.18, Fill.Solid),
        };
        return sketch
            .Point("flat-left", end.By(-across / 2, 0)).Point("flat-right", end.By(across / 2, 0)).Point("tip", new(0, 0)).Point("shoulder", new(length, 0))
            .Say("figure.spindle-end.lies").Say($"figure.spindle-end.{shape}", ("n", t.Count("splines")));
    }

    static Spot[] Square(Spot middle, double half) =>
        [middle.By(0, half), middle.By(half, half), middle.By(half, -half), middle.By(-half, -half), middle.By(-half, half), middle.By(0, half)];

    static Sketch Splined(Sketch sketch, Spot end, double across, int splines, double length)
    {
        sketch.Shape(Fill.Hatch, Geometry.Teeth(end, across / 2, across * 0.43, splines, 0.5));
        for (var i = 0; i < splines; i++)
        {
            var y = across / 2 * Math.Cos(Math.PI * ((2 * i) + 1) / splines);
            sketch.Line(new(0, y), new(length * 0.8, y));
        }
        return sketch;
    }
}
