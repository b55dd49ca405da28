namespace Apprentice.Drawing.Figures;

/// <summary>All rear sprockets seen on their edges from behind: the biggest on the left, the lockring outside the smallest.</summary>
static class SprocketStack
{
    /// <summary>Draws it. The outer face of the biggest sprocket is x = 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (width, count, ring) = (t["width"], t.Count("sprockets"), t["ring"]);
        var each = width / ((2 * count) - 1);
        var sketch = new Sketch().Box(new(-12, -8), new(width + ring + 16, 8), Fill.Grain);
        for (var i = 0; i < count; i++)
        {
            var tall = 52 - (32.0 * i / Math.Max(1, count - 1));
            var x = 2 * i * each;
            sketch.Box(new(x, -tall), new(x + each, tall), Fill.Half);
        }
        return sketch.Box(new(width, -14), new(width + ring, 14), Fill.Solid)
            .Point("big-face", new(0, 11)).Point("small-face", new(width, 11)).Point("ring-face", new(width + ring, 11))
            .Say("figure.sprocket-stack.lies", ("n", count));
    }
}
