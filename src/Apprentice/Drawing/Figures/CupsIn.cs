namespace Apprentice.Drawing.Figures;

/// <summary>A bottom bracket shell from below with its cups in: a flange stands out on the right, a guard's plate lies under the one on the left.</summary>
static class CupsIn
{
    const double Axle = 9;

    /// <summary>Draws it. The left face of the shell is x = 0, its axis y = 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (width, flange, plate, tall) = (t["width"], t["flange"], t["plate"], t["outside"] / 2);
        return new Sketch()
            .Box(new(-plate - flange - 26, -Axle), new(width + flange + 26, Axle))
            .Box(new(-plate - flange, -tall * 0.92), new(-plate, tall * 0.92), Fill.Half).Box(new(-plate, -tall * 1.7), new(0, tall * 1.25), Fill.Clear)
            .Box(new(width, -tall * 0.92), new(width + flange, tall * 0.92), Fill.Half)
            .Box(new(0, -tall), new(width, tall), Fill.Grain).Line(new(width * 0.3, tall), new(width * 0.22, tall * 1.7)).Line(new(width * 0.7, tall), new(width * 0.78, tall * 1.7))
            .Point("face-left", new(0, 0)).Point("face-right", new(width, 0)).Point("flange-right", new(width + flange, 0)).Point("plate-left", new(-plate, 0))
            .Say("figure.cups-in.lies").Say("figure.cups-in.flange").Say("figure.cups-in.plate");
    }
}
