using Apprentice.Content;

namespace Apprentice.Drawing.Figures;

/// <summary>A folding post with its bar from the side, lying on its back on the bench: the hinge on the left, the bend of the bar on the right.</summary>
static class BarSide
{
    /// <summary>Draws it. x runs up the post from the upper edge of the hinge plate.</summary>
    public static Sketch Draw(Traits t)
    {
        var (rise, stem, sweep, bar, post) = (t["rise"], t["stem"], t["sweep"], t["bar"], t["post"]);
        var (up, down, plate) = (t["clamp-up"], t["clamp-down"], t["plate"]);
        var (clamp, top) = (new Spot(stem, 0), new Spot(stem + rise, 0));
        var grip = top.By(-bar / 2, -sweep);
        var sketch = new Sketch()
            .Box(new(-plate - 26, -post * 0.62), new(-plate, post * 0.62), Fill.Grain)
            .Box(new(-plate, -post * 0.8), new(0, post * 0.8), Fill.Hatch)
            .Circle(new(-plate / 2, -post * 0.8), plate * 0.45, Fill.Clear)
            .Box(new(0, -post / 2), new(stem - down, post / 2))
            .Tube(bar, Fill.Clear, clamp, top.By(-bar / 2, 0));
        if (sweep > 1) sketch.Tube(bar, Fill.Clear, top.By(-bar / 2, bar / 2), grip);
        return sketch
            .Circle(grip, bar / 2, Fill.Half)
            .Circle(top.By(-bar / 2, -sweep), bar * 0.3, Fill.Clear)
            .Box(new(stem - down, -post * 0.75), new(stem + up, post * 0.75))
            .Line(new(stem, -post * 0.75), new(stem, post * 0.75))
            .Bolt(clamp, Math.Min(up, down) * 0.6)
            .Point("hinge-upper", new(0, 0)).Point("hinge-lower", new(-plate, 0))
            .Point("clamp-centre", clamp).Point("clamp-upper", clamp.By(up, 0)).Point("clamp-lower", clamp.By(-down, 0))
            .Point("bend-top", top).Point("bend-underside", top.By(-bar, 0))
            .Say("figure.bar-side.lies")
            .Say("figure.bar-side.stem", ("times", Ratios.Times(stem, up + down)))
            .Say("figure.bar-side.rise", ("times", Ratios.Times(rise, up + down)))
            .Told(sweep > bar / 2 ? Words.Of("figure.bar-side.sweep", ("times", Ratios.Times(sweep, bar))) : "");
    }
}
