namespace Apprentice.Drawing.Figures;

/// <summary>One tooth of a sprocket, seen on its edge: thin at its tip, thickest below.</summary>
static class ToothEdge
{
    /// <summary>Draws it. The root is y = 0. Height by thickness is a fixed ratio, so that no size can be seen.</summary>
    public static Sketch Draw(Traits t)
    {
        var half = t["thickness"] / 2;
        var tall = 5.2 * half;
        return new Sketch()
            .Box(new(-9 * half, -1.6 * half), new(-half, 0), Fill.Grain).Box(new(half, -1.6 * half), new(9 * half, 0), Fill.Grain)
            .Shape(Fill.Hatch, new(-half, -1.6 * half), new(-half, tall * 0.66), new(-0.45 * half, tall), new(0.45 * half, tall), new(half, tall * 0.66), new(half, -1.6 * half))
            .Point("half-left", new(-half, tall / 2)).Point("half-right", new(half, tall / 2)).Point("tip-left", new(-0.55 * half, tall * 0.94)).Point("tip-right", new(0.55 * half, tall * 0.94))
            .Say("figure.tooth-edge.lies");
    }
}
