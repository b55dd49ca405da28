namespace Apprentice.Drawing.Figures;

/// <summary>The two rear ends of a frame from behind, the wheel out.</summary>
static class RearEnds
{
    /// <summary>Draws it. The middle between the ends is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (half, plate) = (t["gap"] / 2, t["plate"]);
        var sketch = new Sketch();
        foreach (var side in (int[])[1, -1])
        {
            sketch.Tube(12, Fill.Grain, new(side * (half + (plate / 2)), 14), new(side * half * 0.55, 60))
                .Box(new(side * half, -26), new(side * (half + plate), 18), Fill.Clear).Box(new(side * half, -5), new(side * (half + plate), 5), Fill.Half);
        }
        sketch.Shape(Fill.Solid, new(half, -14), new(half - 2.5, -17), new(half, -20)).Dashes(new(-half - plate - 14, 0), new(half + plate + 14, 0));
        return sketch
            .Point("inner-left", new(-half, 0)).Point("inner-right", new(half, 0)).Point("outer-left", new(-half - plate, 0)).Point("outer-right", new(half + plate, 0))
            .Point("ridge-right", new(half - 2.5, -17))
            .Say("figure.rear-ends.lies").Say("figure.rear-ends.ridge").Say("figure.rear-ends.wide", ("times", Ratios.Times(2 * half, plate)));
    }
}
