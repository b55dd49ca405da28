namespace Apprentice.Drawing.Figures;

/// <summary>A chainring from the side with the holes of its bolts.</summary>
static class Chainring
{
    const double Pitch = 12.7;
    const double Near = 65;

    /// <summary>Draws it. The middle is 0.</summary>
    /// <remarks>Circle of the holes: D = a / sin(180° / n). Pitch circle of the teeth: 12.7 mm / sin(180° / z). Source: facts U5.3.</remarks>
    public static Sketch Draw(Traits t)
    {
        var (bolts, teeth, middle) = (t.Count("bolts"), t.Count("teeth"), new Spot(0, 0));
        var unequal = t.Is("spread", "unequal") && bolts == 4;
        var holes = t["hole-distance"] / 2 / Math.Sin(unequal ? Near / 2 * Math.PI / 180 : Math.PI / bolts);
        var outer = Math.Max(Pitch / 2 / Math.Sin(Math.PI / teeth), holes + 14);
        var spots = Angles(bolts, unequal).Select(a => Geometry.At(middle, holes, a)).ToArray();
        var sketch = new Sketch().Shape(Fill.Grain, Geometry.Teeth(middle, outer + 4, outer - 4, teeth, 0.3)).Circle(middle, Math.Max(holes + 6, outer - 16));
        foreach (var spot in spots) sketch.Tube(18, Fill.Grain, Geometry.Towards(middle, spot, outer - 12), Geometry.Towards(middle, spot, holes - 8)).Circle(spot, 5.5, Fill.Clear).Circle(spot, 4, Fill.Solid);
        sketch.Point("middle", middle);
        for (var i = 0; i < 3; i++) sketch.Point($"hole-{i + 1}", spots[i % spots.Length]);
        return sketch
            .Say("figure.chainring.lies", ("n", bolts)).Told(Content.Words.Of(unequal ? "figure.chainring.unequal" : "figure.chainring.even"))
            .Say("figure.chainring.holes", ("times", Ratios.Times(t["hole-distance"], 10))).Say("figure.chainring.teeth", ("n", teeth));
    }

    static IEnumerable<double> Angles(int bolts, bool unequal) => unequal
        ? [90 + (Near / 2), 90 - (Near / 2), 270 + (Near / 2), 270 - (Near / 2)]
        : Enumerable.Range(0, bolts).Select(i => 90 + (180.0 / bolts) - (360.0 * i / bolts));
}
