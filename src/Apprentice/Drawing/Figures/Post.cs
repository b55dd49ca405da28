namespace Apprentice.Drawing.Figures;

/// <summary>A seatpost in its tube, lying: the tube cut open on the left, the saddle's end on the right.</summary>
static class Post
{
    const double Slack = 0.4;

    /// <summary>Draws it. The edge of the tube is x = 0.</summary>
    public static Sketch Draw(Traits t)
    {
        var (radius, depth, mark, above, wall) = (t["diameter"] / 2, t["depth"], t["mark"], t["out"], t["wall"]);
        var back = Math.Max(depth + 30, 90);
        var bore = radius + Slack;
        return new Sketch()
            .Box(new(-back, bore), new(0, bore + wall), Fill.Hatch).Box(new(-back, -bore - wall), new(0, -bore), Fill.Hatch)
            .Box(new(-depth, -radius), new(above, radius))
            .Bold(new(mark - depth, -radius), new(mark - depth, -radius * 0.3)).Bold(new(mark - depth, radius * 0.3), new(mark - depth, radius))
            .Box(new(-22, bore + wall), new(0, bore + wall + 5)).Box(new(-22, -bore - wall - 5), new(0, -bore - wall))
            .Box(new(-16, -bore - wall - 12), new(-6, -bore - wall - 5), Fill.Half)
            .Shape(Fill.Grain, new(above, -radius * 0.8), new(above + 14, -radius * 1.5), new(above + 24, -radius * 1.5), new(above + 24, radius * 1.5), new(above + 14, radius * 1.5), new(above, radius * 0.8))
            .Point("side-top", new(above / 2, radius)).Point("side-bottom", new(above / 2, -radius))
            .Point("tube-edge", new(0, radius)).Point("mark", new(mark - depth, radius)).Point("lower-end", new(-depth, radius))
            .Say("figure.post.lies").Told(Content.Words.Of(mark > depth ? "figure.post.mark-out" : "figure.post.mark-in", ("times", Ratios.Times(Math.Abs(mark - depth), 2 * radius))))
            .Say("figure.post.depth", ("times", Ratios.Times(depth, 2 * radius)));
    }
}
