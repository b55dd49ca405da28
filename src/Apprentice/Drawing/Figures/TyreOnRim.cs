namespace Apprentice.Drawing.Figures;

/// <summary>The upper part of a wheel from the side: rim below, tyre above, and the thin moulded line of the tyre beside the rim's edge.</summary>
static class TyreOnRim
{
    const double Wide = 250;
    const double LineUp = 8;

    /// <summary>Draws it. The rim's edge in the middle is 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (edge, tyre, sits) = ((t["seat"] / 2) + t["flange"], t["tyre"] - t["flange"], t.Word("sits"));
        var reach = Math.Asin(Math.Min(0.9, Wide / 2 / edge)) * 180 / Math.PI;
        var lift = sits == "lifted" ? 9.0 : 0;
        var sketch = new Sketch()
            .Shape(Fill.Grain, [.. Path(edge, reach, a => lift * Bump(a / reach)), .. Path(edge, reach, _ => tyre + (lift * 0.8)).Reverse()])
            .Shape(Fill.Clear, [.. Path(edge, reach, _ => -18), .. Path(edge, reach, _ => 0).Reverse()])
            .Line(Path(edge, reach, _ => 0));
        for (var a = -reach * 0.9; a < reach; a += reach * 0.3) sketch.Line(Polar(edge, a, -18), Polar(edge, a, -30));
        Line(sketch, edge, reach, sits, lift);
        if (sits == "levered") Levers(sketch, edge, reach);
        return sketch
            .Point("rim-edge", new(0, 0)).Point("line", new(0, Up(sits, 0, lift))).Point("tyre-top", new(0, tyre + (lift * 0.8)))
            .Say("figure.tyre-on-rim.lies").Say($"figure.tyre-on-rim.{sits}");
    }

    /// <summary>The moulded line: hidden where it lies below the rim's edge.</summary>
    static void Line(Sketch sketch, double edge, double reach, string sits, double lift)
    {
        var run = new List<Spot>();
        for (var i = -60; i <= 60; i++)
        {
            var up = Up(sits, i / 60.0, lift);
            if (up > 0.5) run.Add(Polar(edge, reach * i / 60, up));
            if ((up > 0.5 && i < 60) || run.Count < 2) continue;
            sketch.Line([.. run]);
            run.Clear();
        }
    }

    /// <summary>How far the line lies over the rim's edge, mm; place from -1 to 1.</summary>
    static double Up(string sits, double place, double lift) => sits switch
    {
        "low" => LineUp - (13 * Bump(place)),
        "uneven" => LineUp + (3.5 * Math.Sin(place * 7)),
        _ => LineUp + (lift * Bump(place)),
    };

    static double Bump(double place) => Math.Exp(-place * place * 5);

    static void Levers(Sketch sketch, double edge, double reach)
    {
        foreach (var side in (int[])[-1, 1])
            sketch.Tube(6, Fill.Clear, Polar(edge, side * reach * 0.35, 9), Polar(edge, side * reach * 0.38, -2), Polar(edge, side * reach * 0.55, -30));
    }

    static IReadOnlyList<Spot> Path(double edge, double reach, Func<double, double> up) => [.. Enumerable.Range(-30, 61).Select(i => Polar(edge, reach * i / 30, up(reach * i / 30)))];

    static Spot Polar(double edge, double degrees, double up) => Geometry.At(new(0, -edge), edge + up, 90 - degrees);
}
