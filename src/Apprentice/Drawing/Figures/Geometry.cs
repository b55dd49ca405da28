namespace Apprentice.Drawing.Figures;

/// <summary>Shapes as corners, mm and degrees.</summary>
static class Geometry
{
    const double StepDegrees = 5;

    /// <summary>The spot at a distance and an angle from another, degrees from the right, anticlockwise.</summary>
    public static Spot At(Spot middle, double radius, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(middle.X + (radius * cos), middle.Y + (radius * sin));
    }

    /// <summary>Part of a circle as short lines, both ends exact.</summary>
    public static IReadOnlyList<Spot> Arc(Spot middle, double radius, double from, double to)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(to - from) / StepDegrees));
        return [.. Enumerable.Range(0, steps + 1).Select(i => At(middle, radius, from + ((to - from) * i / steps)))];
    }

    /// <summary>The corners of a regular shape.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="radius">From the middle to a corner.</param>
    /// <param name="count">Corners.</param>
    /// <param name="first">Angle of the first.</param>
    public static IReadOnlyList<Spot> Corners(Spot middle, double radius, int count, double first) =>
        [.. Enumerable.Range(0, count).Select(i => At(middle, radius, first + (360.0 * i / count)))];

    /// <summary>A ring of teeth or splines: corners out and in by turns.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="outer">Radius of the tips.</param>
    /// <param name="inner">Radius of the roots.</param>
    /// <param name="count">Teeth.</param>
    /// <param name="share">Share of a tooth's turn that its tip takes, 0 to 1.</param>
    public static IReadOnlyList<Spot> Teeth(Spot middle, double outer, double inner, int count, double share)
    {
        var turn = 360.0 / count;
        return [.. Enumerable.Range(0, count).SelectMany(i => (Spot[])
        [
            At(middle, inner, (turn * i) - (turn * (0.5 - (0.15 * share)))), At(middle, outer, (turn * i) - (turn * share / 2)),
            At(middle, outer, (turn * i) + (turn * share / 2)), At(middle, inner, (turn * i) + (turn * (0.5 - (0.15 * share)))),
        ])];
    }

    /// <summary>A line with its corners rounded off.</summary>
    /// <param name="path">The line.</param>
    /// <param name="radius">How far from a corner the rounding begins, mm; less where a leg is short.</param>
    public static IReadOnlyList<Spot> Rounded(IReadOnlyList<Spot> path, double radius)
    {
        var round = new List<Spot> { path[0] };
        for (var i = 1; i < path.Count - 1; i++)
        {
            var (before, corner, after) = (path[i - 1], path[i], path[i + 1]);
            var reach = Math.Min(radius, Math.Min(before.To(corner), corner.To(after)) / 2);
            var (start, end) = (Towards(corner, before, reach), Towards(corner, after, reach));
            for (var k = 0; k <= 6; k++) round.Add(Bent(start, corner, end, k / 6.0));
        }
        round.Add(path[^1]);
        return round;
    }

    /// <summary>The outline of a tube along its middle line.</summary>
    public static IReadOnlyList<Spot> Sides(IReadOnlyList<Spot> middle, double width)
    {
        var left = Enumerable.Range(0, middle.Count).Select(i => Beside(middle, i, width / 2));
        var right = Enumerable.Range(0, middle.Count).Reverse().Select(i => Beside(middle, i, -width / 2));
        return [.. left, .. right];
    }

    /// <summary>The spot on the way from one to another.</summary>
    /// <param name="from">From here.</param>
    /// <param name="to">Towards there.</param>
    /// <param name="millimetres">So far.</param>
    public static Spot Towards(Spot from, Spot to, double millimetres)
    {
        var all = from.To(to);
        return all == 0 ? from : new(from.X + ((to.X - from.X) * millimetres / all), from.Y + ((to.Y - from.Y) * millimetres / all));
    }

    static Spot Bent(Spot start, Spot corner, Spot end, double t)
    {
        var (a, b, c) = ((1 - t) * (1 - t), 2 * t * (1 - t), t * t);
        return new((a * start.X) + (b * corner.X) + (c * end.X), (a * start.Y) + (b * corner.Y) + (c * end.Y));
    }

    /// <summary>The spot beside a corner, where the sides of both legs meet.</summary>
    static Spot Beside(IReadOnlyList<Spot> middle, int i, double away)
    {
        var at = middle[i];
        var before = Direction(middle[Math.Max(0, i - 1)], middle[Math.Max(1, i)]);
        var after = Direction(middle[Math.Min(i, middle.Count - 2)], middle[Math.Min(i + 1, middle.Count - 1)]);
        var (x, y) = (-(before.Y + after.Y), before.X + after.X);
        var stretch = 2 / Math.Max(0.5, (x * x) + (y * y));
        return at.By(x * away * stretch, y * away * stretch);
    }

    static Spot Direction(Spot from, Spot to)
    {
        var length = from.To(to);
        return length == 0 ? new(1, 0) : new((to.X - from.X) / length, (to.Y - from.Y) / length);
    }
}
