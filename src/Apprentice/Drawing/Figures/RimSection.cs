namespace Apprentice.Drawing.Figures;

/// <summary>A rim cut through: the two edges up, the bed between them, the side of the spokes down.</summary>
static class RimSection
{
    const double Wall = 1.8;

    /// <summary>Draws it. The seat of the tyre's wire is y = 0, the middle of the rim x = 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (half, flange, depth, well, tape) = (t["inner-width"] / 2, t["flange"], t["depth"], t["well"], t["tape"]);
        var floor = Math.Min(well, depth - 4);
        var right = Right(half, flange, floor, t.Is("shape", "hooked"));
        var under = new[] { new Spot(half + Wall, -4), new Spot(half * 0.45, -depth), new Spot(-half * 0.45, -depth), new Spot(-half - Wall, -4) };
        var left = right.Reverse().Select(s => new Spot(-s.X, s.Y));
        var sketch = new Sketch().Shape(Fill.Hatch, [.. under, .. left, .. right]);
        if (depth > floor + (3 * Wall)) sketch.Shape(Fill.Clear, new(half - 1, -floor - Wall - 0.6), new(half * 0.4, -depth + Wall), new(-half * 0.4, -depth + Wall), new(1 - half, -floor - Wall - 0.6));
        sketch.Dashes(new(0, -floor), new(0, -depth - 4));
        if (tape > 0) sketch.Box(new(0.3 - half, 0), new(half - 0.3, tape), Fill.Solid);
        return sketch
            .Point("seat", new(1.7 - half, 0)).Point("flange-tip", new(-half - (Wall / 2), flange)).Point("tape-top", new(0, tape))
            .Point("wall-left", new(-half, flange * 0.4)).Point("wall-right", new(half, flange * 0.4))
            .Say("figure.rim-section.lies").Say($"figure.rim-section.{t.Word("shape")}")
            .Say("figure.rim-section.wide", ("times", Ratios.Times(2 * half, flange)))
            .Told(tape > 0 ? Content.Words.Of("figure.rim-section.tape") : "");
    }

    /// <summary>The right edge from outside, over its top, down to the seat and into the bed.</summary>
    static IReadOnlyList<Spot> Right(double half, double flange, double floor, bool hooked) =>
    [
        new(half - 6, -floor), new(half - 3.8, -0.6), new(half - 3.4, 0), new(half, 0),
        .. hooked ? (Spot[])[new(half, flange - 2.4), new(half - 1.3, flange - 1.6), new(half - 1.3, flange - 0.4)] : [],
        new(half - (hooked ? 0.6 : 0), flange), new(half + Wall, flange),
    ];
}
