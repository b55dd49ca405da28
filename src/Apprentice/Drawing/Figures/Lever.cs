namespace Apprentice.Drawing.Figures;

/// <summary>A brake lever from below, beside the bar: the clamp on the left, the blade to the right.</summary>
static class Lever
{
    const double Bar = 34;
    const double Pin = 4;

    /// <summary>Draws it. The pivot is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (pull, seat, blade, bar) = (t["pull"], t["seat"], t["blade"], t["bar"]);
        var (sheet, leftOut) = (t.Is("body", "sheet"), t.Is("body", "left-out"));
        var sketch = new Sketch()
            .Box(new(-62, Bar - (bar / 2)), new(pull + (blade * 0.7), Bar + (bar / 2)))
            .Box(new(-46, Bar - (bar * 0.75)), new(-14, Bar + (bar * 0.75)), sheet || leftOut ? Fill.Clear : Fill.Grain)
            .Bolt(new(-30, Bar), 4.5);
        Blade(sketch, pull, blade, t.Word("body"));
        if (leftOut) sketch.Shape(Fill.Clear, new(-46, 22), new(-46, -12), new(-8, -12), new(10, 4), new(10, 22));
        else if (sheet) sketch.Shape(Fill.Clear, new(-44, 22), new(-44, -8), new(-8, -8), new(8, 6), new(8, 22)).Line(new(-41, 19), new(-41, -5), new(-9, -5), new(5, 7), new(5, 19));
        else sketch.Shape(Fill.Grain, Geometry.Rounded([new(-46, 24), new(-48, -12), new(-10, -16), new(10, 4), new(14, 24), new(-46, 24)], 9));
        var holes = leftOut ? 0 : t.Count("holes");
        for (var i = 0; i < holes; i++) sketch.Circle(Hole(i, holes), 4.2).Circle(Hole(i, holes), 2.6, Fill.Solid);
        sketch
            .Circle(new(0, 0), Pin).Circle(new(0, 0), 1.5, Fill.Solid)
            .Circle(Seat(pull), seat, Fill.Half)
            .Dashes(Seat(pull), new(-6, 14), new(-60, 14))
            .Point("pivot", new(0, 0)).Point("pivot-edge", Geometry.Towards(new(0, 0), Seat(pull), Pin)).Point("cable-centre", Seat(pull))
            .Point("cable-edge", Geometry.Towards(Seat(pull), new(0, 0), seat)).Point("cable-far", Geometry.Towards(Seat(pull), new(0, 0), -seat))
            .Point("holes", new(-30, 4)).Point("blade-end", new(pull + blade, -8))
            .Say("figure.lever.lies").Say($"figure.lever.{t.Word("body")}");
        if (!leftOut) sketch.Say("figure.lever.holes", ("n", holes));
        return sketch.Say("figure.lever.pull", ("times", Ratios.Times(pull, 2 * seat)));
    }

    static Spot Seat(double pull) => new(Math.Sqrt((pull * pull) - 4), -2);

    static Spot Hole(int i, int count) => new(-30 + (14 * (i - ((count - 1) / 2.0))), 4);

    static void Blade(Sketch sketch, double pull, double blade, string body)
    {
        Spot[] middle = [new(-2, 0), new(pull + 12, -4), new(pull + (blade * 0.6), -14), new(pull + blade, -8)];
        sketch.Tube(body == "sheet" ? 11 : 13, Fill.Clear, Geometry.Rounded(middle, 20));
        if (body == "sheet") sketch.Tube(6, Fill.None, Geometry.Rounded(middle, 20));
        if (body == "cast") sketch.Circle(middle[^1], 8);
    }
}
