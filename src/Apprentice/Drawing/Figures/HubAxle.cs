namespace Apprentice.Drawing.Figures;

/// <summary>A front hub from the front: the shell with its two flanges, the faces that lie between the fork ends, and what sticks out.</summary>
static class HubAxle
{
    /// <summary>Draws it. The middle of the hub is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (half, axle, flange, ends) = (t["width"] / 2, t["axle"] / 2, t["flange"] / 2, t.Word("ends"));
        var outside = ends switch { "nuts" => 20.0, "left-out" => LeftOut(half, t["tips"]), "quick-release" => 5, _ => 0 };
        var (tube, shell) = (new Sketch(), half * 0.62);
        if (ends == "left-out") Outline(tube, half, outside);
        else tube.Box(new(-half - outside, -axle), new(half + outside, axle));
        tube.Box(new(-half, -axle - 4), new(half, axle + 4))
            .Box(new(-half + 4, -axle - 6), new(half - 4, axle + 6))
            .Box(new(-shell, -flange * 0.45), new(shell, flange * 0.45))
            .Box(new(-shell - 3, -flange), new(-shell, flange), Fill.Half).Box(new(shell, -flange), new(shell + 3, flange), Fill.Half);
        if (ends == "nuts") Nuts(tube, half, axle);
        if (ends == "quick-release") Lever(tube, half, axle);
        if (ends == "through") tube.Box(new(-half, -axle * 0.7), new(-half + 6, axle * 0.7), Fill.Solid).Box(new(half - 6, -axle * 0.7), new(half, axle * 0.7), Fill.Solid);
        return tube
            .Point("face-left", new(-half, 0)).Point("face-right", new(half, 0)).Point("end-left", new(-half - outside, 0)).Point("end-right", new(half + outside, 0))
            .Say("figure.hub-axle.lies").Say($"figure.hub-axle.{ends}").Say("figure.hub-axle.wide", ("times", Ratios.Times(2 * half, 2 * flange)));
    }

    /// <summary>How far the dashes go: to the tips where they are given, else as far as most axles stand out.</summary>
    static double LeftOut(double half, double tips) => tips > 2 * half ? (tips / 2) - half : 12;

    static void Outline(Sketch sketch, double half, double outside)
    {
        foreach (var side in (int[])[-1, 1])
        {
            sketch.Dashes(new(side * half, 9), new(side * (half + outside), 9), new(side * (half + outside), -9), new(side * half, -9));
        }
    }

    static void Nuts(Sketch sketch, double half, double axle)
    {
        foreach (var side in (int[])[-1, 1])
        {
            for (var x = half + 1; x < half + 19; x += 2) sketch.Line(new(side * x, -axle), new(side * (x + 0.6), axle));
            sketch.Box(new(side * (half + 7), -axle - 5), new(side * (half + 15), axle + 5)).Line(new(side * (half + 7), axle * 0.6), new(side * (half + 15), axle * 0.6))
                .Line(new(side * (half + 7), -axle * 0.6), new(side * (half + 15), -axle * 0.6));
        }
    }

    static void Lever(Sketch sketch, double half, double axle)
    {
        sketch.Box(new(-half - 5, -axle * 0.5), new(-half - 14, axle * 0.5)).Box(new(-half - 24, -9), new(-half - 14, 9), Fill.Clear)
            .Tube(7, Fill.Clear, new(-half - 20, 4), new(-half - 26, 30), new(-half - 22, 48))
            .Box(new(half + 5, -axle * 0.5), new(half + 12, axle * 0.5)).Box(new(half + 12, -8), new(half + 22, 8), Fill.Half).Line(new(half + 22, -2), new(half + 28, -2), new(half + 28, 2), new(half + 22, 2));
    }
}
