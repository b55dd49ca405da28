namespace Apprentice.Drawing.Figures;

/// <summary>Both ends of a spoke, lying: the head on the left, the nipple on the right, the long middle cut out.</summary>
static class Spoke
{
    const double Length = 74;

    /// <summary>Draws it. The inside of the elbow, or the underside of a straight head, is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (gauge, flats) = (t["gauge"], t["flats"]);
        var middle = t.Is("body", "butted") ? t["middle"] : t.Is("body", "flat") ? gauge * 1.6 : gauge;
        var nipple = Length - 14;
        var sketch = new Sketch()
            .Box(new(0, -gauge / 2), new(16, gauge / 2)).Box(new(nipple - 16, -gauge / 2), new(Length - 3, gauge / 2))
            .Shape(Fill.Clear, new(15, -gauge / 2), new(19, -middle / 2), new(29, -middle / 2), new(29, middle / 2), new(19, middle / 2), new(15, gauge / 2))
            .Shape(Fill.Clear, new(33, -middle / 2), new(nipple - 20, -middle / 2), new(nipple - 15, -gauge / 2), new(nipple - 15, gauge / 2), new(nipple - 20, middle / 2), new(33, middle / 2))
            .Line(new(28.5, -4), new(30, -1), new(28, 1), new(29.5, 4)).Line(new(32.5, -4), new(34, -1), new(32, 1), new(33.5, 4));
        if (t.Is("head", "elbow")) sketch.Tube(gauge, Fill.Clear, Geometry.Rounded([new(1, 0), new(-1.2, 0), new(-1.2, 7)], 2.5)).Tube(2, Fill.Half, new(-3.6, 7), new(1.2, 7));
        else sketch.Box(new(-2, -2.2), new(0, 2.2), Fill.Half);
        for (var x = nipple - 8; x < nipple; x += 0.9) sketch.Line(new(x, -gauge / 2), new(x + 0.3, gauge / 2));
        sketch.Box(new(nipple, -flats / 2), new(nipple + 9, flats / 2)).Line(new(nipple, 0), new(nipple + 9, 0))
            .Shape(Fill.Clear, new(nipple + 9, -3), new(nipple + 11, -3), new(nipple + 13, -1.8), new(nipple + 13, 1.8), new(nipple + 11, 3), new(nipple + 9, 3));
        return sketch
            .Point("head", new(0, 0)).Point("thread-end", new(nipple, 0)).Point("flats-top", new(nipple + 4, flats / 2)).Point("flats-bottom", new(nipple + 4, -flats / 2))
            .Say("figure.spoke.lies").Say($"figure.spoke.{t.Word("head")}").Say($"figure.spoke.{t.Word("body")}")
            .Say("figure.spoke.flats", ("times", Ratios.Times(flats, gauge)));
    }
}
