namespace Apprentice.Drawing.Figures;

/// <summary>A grip on the end of a bar, seen from below: the inner end on the left.</summary>
static class GripEnd
{
    const double Ring = 10;

    /// <summary>Draws it. The rubber's inner end is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (length, radius, bar, cap) = (t["length"], t["grip"] / 2, t["bar"] / 2, t["cap"]);
        var sketch = new Sketch().Box(new(-55, -bar), new(0, bar)).Box(new(0, -radius), new(length, radius), Fill.Grain);
        for (var x = 6.0; x < length - 3; x += 6) sketch.Line(new(x, -radius * 0.75), new(x, radius * 0.75));
        if (cap > 0) sketch.Shape(Fill.Clear, new(length, -radius), new(length + cap, -radius * 0.8), new(length + cap, radius * 0.8), new(length, radius));
        if (t.Is("fixing", "bolt") || t.Is("fixing", "two-bolts")) Fixing(sketch, -Ring / 2, radius);
        if (t.Is("fixing", "left-out")) sketch.Dashes(new(0, radius * 1.1), new(-Ring, radius * 1.1), new(-Ring, -radius * 1.1), new(0, -radius * 1.1));
        if (t.Is("fixing", "two-bolts")) Fixing(sketch, length - (Ring / 2), radius);
        return sketch
            .Point("inner-end", new(0, 0)).Point("outer-end", new(length, 0)).Point("cap-end", new(length + cap, 0)).Point("ring", new(-Ring / 2, -radius * 0.4))
            .Say("figure.grip-end.lies")
            .Say($"figure.grip-end.{t.Word("fixing")}")
            .Say("figure.grip-end.long", ("times", Ratios.Times(length, 2 * radius)));
    }

    /// <summary>The ring round the bar with the head of its bolt and the gap that the bolt closes.</summary>
    static void Fixing(Sketch sketch, double x, double radius) => sketch
        .Box(new(x - (Ring / 2), -radius * 1.1), new(x + (Ring / 2), radius * 1.1))
        .Line(new(x - (Ring / 2), -radius * 0.75), new(x + (Ring / 2), -radius * 0.75))
        .Bolt(new(x, -radius * 0.3), Ring * 0.38);
}
