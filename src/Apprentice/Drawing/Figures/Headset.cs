namespace Apprentice.Drawing.Figures;

/// <summary>A head tube with its bearings, lying: the fork on the left, the upper end on the right.</summary>
static class Headset
{
    /// <summary>Draws it. The lower end of the head tube is x = 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (head, radius, up, down) = (t["head"], t["tube"] / 2, t["stack-up"], t["stack-down"]);
        var (outside, steerer) = (t.Is("cups", "outside"), radius * 0.72);
        var sketch = new Sketch()
            .Shape(Fill.Grain, new(-down - 26, -radius * 1.6), new(-down, -radius), new(-down, radius), new(-down - 26, radius * 1.6))
            .Box(new(-down, -steerer), new(head + up, steerer)).Box(new(0, -radius), new(head, radius), Fill.Grain);
        Bearing(sketch, -down, 0, radius, outside);
        Bearing(sketch, head, head + (up * 0.55), radius, outside);
        if (t.Is("top", "nut")) Nut(sketch, head + (up * 0.55), head + up, radius, steerer);
        else Cap(sketch, head + (up * 0.55), head + up, radius, steerer);
        return sketch
            .Point("tube-bottom", new(0, 0)).Point("tube-top", new(head, 0)).Point("stack-bottom", new(-down, 0)).Point("stack-top", new(head + up, 0))
            .Say("figure.headset.lies").Say($"figure.headset.{t.Word("cups")}").Say($"figure.headset.{t.Word("top")}");
    }

    static void Bearing(Sketch sketch, double from, double to, double radius, bool outside)
    {
        var wide = outside ? radius * 1.25 : radius * 0.98;
        sketch.Box(new(from, -wide), new(to, wide), outside ? Fill.Hatch : Fill.Clear);
        if (outside) sketch.Line(new((from + to) / 2, -wide), new((from + to) / 2, wide));
    }

    /// <summary>A nut with flats, and the smooth quill that goes down inside.</summary>
    static void Nut(Sketch sketch, double from, double to, double radius, double steerer) => sketch
        .Box(new(from, -radius * 1.1), new(from + ((to - from) * 0.25), radius * 1.1), Fill.Half)
        .Box(new(from + ((to - from) * 0.25), -radius), new(to, radius)).Line(new(from + ((to - from) * 0.25), radius * 0.5), new(to, radius * 0.5)).Line(new(from + ((to - from) * 0.25), -radius * 0.5), new(to, -radius * 0.5))
        .Box(new(to, -steerer * 0.88), new(to + 40, steerer * 0.88));

    /// <summary>A spacer, the stem's clamp with two bolts, and the cap with one bolt in its end.</summary>
    static void Cap(Sketch sketch, double from, double to, double radius, double steerer) => sketch
        .Box(new(from, -steerer * 1.15), new(to, steerer * 1.15))
        .Box(new(to, -radius * 1.05), new(to + 34, radius * 1.05))
        .Bolt(new(to + 9, -radius * 0.65), 4).Bolt(new(to + 25, -radius * 0.65), 4)
        .Shape(Fill.Half, new(to + 34, -radius * 0.95), new(to + 39, -radius * 0.7), new(to + 39, radius * 0.7), new(to + 34, radius * 0.95))
        .Box(new(to + 39, -3.5), new(to + 42, 3.5));
}
