namespace Apprentice.Drawing.Figures;

/// <summary>All rear sprockets seen on their edges from behind: the biggest on the left, the lockring outside the smallest.</summary>
static class SprocketStack
{
    /// <summary>Draws it. The outer face of the biggest sprocket is x = 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (width, count, ring) = (t["width"], t.Count("sprockets"), t["ring"]);
        var each = width / ((2 * count) - 1);
        var sketch = new Sketch().Box(new(-8, -4), new(width + ring + 10, 4), Fill.Grain);
        for (var i = 0; i < count; i++)
        {
            var tall = 20 - (11.0 * i / Math.Max(1, count - 1));
            var x = 2 * i * each;
            sketch.Box(new(x, -tall), new(x + each, tall));
        }
        return sketch.Box(new(width, -7.5), new(width + ring, 7.5), Fill.Solid)
            .Point("big-face", new(0, 6)).Point("small-face", new(width, 6)).Point("ring-face", new(width + ring, 6))
            .Say("figure.sprocket-stack.lies", ("n", count));
    }
}
