namespace Apprentice.Drawing.Figures;

/// <summary>A piece of a ring with three of its bolt holes, close by: how many there are all round is not to be seen.</summary>
static class HoleRow
{
    // How far the row bends from hole to hole, degrees, and half of a hole, mm (judgement; common practice, no source).
    const double Bend = 36;
    const double Hole = 5;

    /// <summary>Draws it. The second hole is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var apart = t["hole-distance"];
        Spot[] holes = [Geometry.At(new(0, 0), apart, 180 + Bend), new(0, 0), Geometry.At(new(0, 0), apart, -Bend)];
        var before = Geometry.Towards(holes[0], holes[1], -14);
        var after = Geometry.Towards(holes[2], holes[1], -14);
        var sketch = new Sketch().Tube(26, Fill.Grain, Geometry.Rounded([before, holes[1].By(0, 6), after], apart * 0.6));
        foreach (var hole in holes) sketch.Circle(hole, Hole + 1).Circle(hole, Hole, Fill.Solid);
        return sketch
            .Point("right-1", Geometry.Towards(holes[0], holes[1], Hole)).Point("right-2", Geometry.Towards(holes[1], holes[0], -Hole)).Point("left-2", Geometry.Towards(holes[1], holes[0], Hole))
            .Point("right-3", Geometry.Towards(holes[2], holes[0], -Hole))
            .Say("figure.hole-row.lies").Say("figure.hole-row.holes", ("times", Ratios.Times(apart, 2 * Hole)));
    }
}
