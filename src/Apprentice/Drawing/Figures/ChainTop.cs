namespace Apprentice.Drawing.Figures;

/// <summary>A piece of chain from above: an inner link on both sides of an outer one, then a joining link.</summary>
static class ChainTop
{
    // Shorter than a pitch, so that the plates can be told apart.
    const double Pitch = 9;
    const double Gap = 0.15;

    /// <summary>Draws it. The first pin is x = 0. Widths are to scale, lengths are not; how far pins stand out is common practice, no source.</summary>
    public static Sketch Draw(Traits t)
    {
        var (pin, inside) = (t["pin"] / 2, Math.Min(t["inside"], t["pin"] * 0.6) / 2);
        var plate = Math.Max(0.3, (pin - 0.3 - inside - Gap) / 2);
        var (between, outside) = (inside + plate + Gap, inside + (2 * plate) + Gap);
        var sketch = new Sketch();
        foreach (var side in (int[])[1, -1])
        {
            foreach (var link in (int[])[0, 2])
                sketch.Box(new((link * Pitch) - 2.6, side * inside), new(((link + 1) * Pitch) + 2.6, side * (inside + plate)), Fill.Clear);
            foreach (var link in (int[])[1, 3])
                sketch.Box(new((link * Pitch) - 2.9, side * between), new(((link + 1) * Pitch) + 2.9, side * outside), Fill.Clear);
        }
        for (var n = 0; n <= 4; n++)
        {
            if (n < 4) sketch.Box(new((n * Pitch) - 1.9, -inside), new((n * Pitch) + 1.9, inside), Fill.Half);
            var (from, to) = n == 0 ? (inside, inside + plate) : (inside, n > 2 ? pin + 0.5 : pin);
            foreach (var side in (int[])[1, -1]) sketch.Box(new((n * Pitch) - 1.2, side * Math.Max(from, outside)), new((n * Pitch) + 1.2, side * Math.Max(to, outside + 0.05)), Fill.Solid);
        }
        return sketch
            .Point("pin-top", new(Pitch, pin)).Point("pin-bottom", new(Pitch, -pin)).Point("join-top", new(3 * Pitch, pin + 0.5)).Point("join-bottom", new(3 * Pitch, -pin - 0.5))
            .Point("plate-top", new(1.5 * Pitch, outside)).Point("plate-bottom", new(1.5 * Pitch, -outside))
            .Point("inner-top", new(Pitch / 2, inside)).Point("inner-bottom", new(Pitch / 2, -inside)).Point("outer-top", new(3.5 * Pitch, between)).Point("outer-bottom", new(3.5 * Pitch, -between))
            .Say("figure.chain-top.lies").Say("figure.chain-top.join");
    }
}
