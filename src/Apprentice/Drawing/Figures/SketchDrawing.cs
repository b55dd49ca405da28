namespace Apprentice.Drawing.Figures;

/// <summary>Draws a sketch to rows of text.</summary>
static class SketchDrawing
{
    /// <summary>Where a letter is tried, in columns and rows from its point: away from the middle first, so that it stands outside the part. Written for a point in the upper half.</summary>
    static readonly (int Right, int Away)[] Places =
    [
        (0, -2), (0, -1), (0, 2), (-2, -2), (2, -2), (-2, 2), (2, 2), (0, -3), (0, 3), (-4, -2), (4, -2), (-4, 2), (4, 2), (-3, 0), (3, 0), (0, 1), (-3, -1), (3, -1), (-3, 1), (3, 1), (-5, 0), (5, 0),
    ];

    /// <summary>The rows of text, each as wide as the room; no more than are needed.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <param name="columns">Columns at hand.</param>
    /// <param name="rows">Rows at hand.</param>
    /// <param name="marks">Letters to set beside named points: name of the point and what to write.</param>
    public static IReadOnlyList<string> Rows(Sketch sketch, int columns, int rows, IReadOnlyList<(string Point, string Text)> marks) =>
        Rows(sketch, columns, Placing.Of(sketch, columns, Math.Max(1, rows), marks.Count > 0 || sketch.Captions.Count > 0), marks);

    /// <summary>The rows of text of a sketch that was placed before.</summary>
    public static IReadOnlyList<string> Rows(Sketch sketch, int columns, Placing placing, IReadOnlyList<(string Point, string Text)> marks)
    {
        var canvas = new Canvas(columns, placing.Rows);
        foreach (var ink in sketch.Inks) Draw(canvas, placing, ink);
        foreach (var caption in sketch.Captions) Write(canvas, columns, placing.Dot(caption.At), caption.Text);
        var taken = new HashSet<(int Column, int Row)>();
        var spots = marks.Where(m => sketch.Points.ContainsKey(m.Point)).Select(m => (Dot: placing.Dot(sketch.Points[m.Point]), m.Text)).ToList();
        var (low, high) = sketch.Bounds();
        var middle = placing.Dot(new((low.X + high.X) / 2, (low.Y + high.Y) / 2)).Y;
        foreach (var (dot, text) in spots) Letter(canvas, columns, placing.Rows, dot, text, taken, dot.Y < middle != sketch.IsHole);
        return canvas.Rows();
    }

    static void Draw(Canvas canvas, Placing placing, Ink ink)
    {
        var dots = ink.Path.Select(placing.Dot).ToArray();
        if (ink.Closed && ink.Fill != Fill.None) Shade(canvas, dots, ink.Fill);
        if (ink.Pen == Pen.None) return;
        for (var i = ink.Closed ? 0 : 1; i < dots.Length; i++)
        {
            var (from, to) = (dots[(i + dots.Length - 1) % dots.Length], dots[i]);
            canvas.Line(from, to, ink.Pen == Pen.Dashed ? 5 : 8);
            if (ink.Pen == Pen.Bold) canvas.Line((from.X + 1, from.Y), (to.X + 1, to.Y));
            if (ink.Pen == Pen.Bold) canvas.Line((from.X, from.Y + 1), (to.X, to.Y + 1));
        }
    }

    /// <summary>Fills a shape line by line: a dot is inside where an odd number of sides lies left of it.</summary>
    static void Shade(Canvas canvas, (int X, int Y)[] corners, Fill fill)
    {
        var crossings = new List<double>();
        for (var y = Math.Max(0, corners.Min(c => c.Y)); y <= Math.Min(canvas.Height - 1, corners.Max(c => c.Y)); y++)
        {
            crossings.Clear();
            for (var i = 0; i < corners.Length; i++)
            {
                var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
                if (a.Y <= y != b.Y <= y) crossings.Add(a.X + ((double)(y - a.Y) * (b.X - a.X) / (b.Y - a.Y)));
            }
            crossings.Sort();
            for (var i = 0; i + 1 < crossings.Count; i += 2) Span(canvas, y, (int)Math.Ceiling(crossings[i]), (int)Math.Floor(crossings[i + 1]), fill);
        }
    }

    static void Span(Canvas canvas, int y, int left, int right, Fill fill)
    {
        for (var x = Math.Max(0, left); x <= Math.Min(right, canvas.Width - 1); x++)
        {
            if (IsInked(x, y, fill)) canvas.Dot(x, y);
            else canvas.Wipe(x, y);
        }
    }

    static bool IsInked(int x, int y, Fill fill) => fill switch
    {
        Fill.Solid => true,
        Fill.Half => (x + y) % 2 == 0,
        Fill.Hatch => (x + y) % 5 == 0,
        Fill.HatchBack => (x + 5000 - y) % 5 == 0,
        Fill.Grain => y % 4 == 0 && (x + y) % 8 == 0,
        _ => false,
    };

    /// <summary>A figure round its spot, moved inwards where it would be cut off: half a unit would be read as another.</summary>
    static void Write(Canvas canvas, int columns, (int X, int Y) dot, string text) =>
        canvas.Write(Math.Clamp((dot.X / 2) - (text.Length / 2), 0, Math.Max(0, columns - text.Length)), (int)Math.Floor(dot.Y / 4.0), text);

    /// <summary>A letter near its point, where no other stands, and a line to the point.</summary>
    static void Letter(Canvas canvas, int columns, int rows, (int X, int Y) dot, string text, HashSet<(int Column, int Row)> taken, bool up)
    {
        var (column, row) = ((int)Math.Floor(dot.X / 2.0), (int)Math.Floor(dot.Y / 4.0));
        foreach (var (right, away) in Places)
        {
            var down = up ? away : -away;
            var (c, r) = (column + right, row + down);
            if (c < 0 || r < 0 || c >= columns || r >= rows || taken.Contains((c - 1, r)) || taken.Contains((c + 1, r)) || !taken.Add((c, r))) continue;
            canvas.Line(dot, ((2 * c) + (right > 0 ? -1 : right < 0 ? 2 : dot.X % 2), (4 * r) + (down > 0 ? -1 : down < 0 ? 4 : 2)));
            canvas.Write(c, r, text);
            return;
        }
    }
}
