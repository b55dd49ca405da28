namespace Apprentice.Drawing;

/// <summary>Draws gauges to rows of text: nothing is drawn that is not in the geometry.</summary>
static class GaugeDrawing
{
    const int LeastRows = 6;
    const int MostRows = 14;
    const int Body = 3;
    const int Light = 3;
    const int Bar = 9;

    /// <summary>Rows of a thread and a leaf: the thread hangs from above, the leaf's teeth stand up into its grooves.</summary>
    /// <param name="thread">Pitch of the thread, mm.</param>
    /// <param name="leaf">Pitch of the leaf, mm; null for no leaf.</param>
    /// <param name="label">The name on the leaf.</param>
    /// <param name="room">Columns and rows at hand.</param>
    /// <param name="zoom">Index into <see cref="ThreadView.Turns"/>.</param>
    public static IReadOnlyList<string> Thread(double thread, double? leaf, string label, (int Columns, int Rows) room, int zoom)
    {
        var view = ThreadView.Of(thread, leaf ?? thread, room.Columns, Math.Clamp(room.Rows, LeastRows, MostRows) - 2, zoom);
        var rows = 2 + (int)Math.Ceiling((Body + Light + (2 * view.Depth)) / 4);
        var canvas = new Canvas(room.Columns, rows);
        var lift = (int)Math.Round(view.Lift) + Light;
        for (var x = 0; x < view.Width; x++)
        {
            var tip = Body + (int)Math.Round(view.Depth * ThreadView.Tooth(x, view.Thread));
            Column(canvas, x, 0, tip);
            if (leaf is not null) Edge(canvas, x, Body + lift, view);
        }
        if (leaf is not null) canvas.Write(Math.Max(0, (room.Columns - label.Length) / 2), rows - 1, label);
        return canvas.Rows();
    }

    /// <summary>Rows of one end of a chain gauge between two rollers.</summary>
    /// <param name="view">The geometry.</param>
    /// <param name="label">The figure on the bar.</param>
    /// <param name="columns">Columns at hand.</param>
    /// <param name="rows">Rows at hand.</param>
    public static IReadOnlyList<string> Chain(ChainView view, string label, int columns, int rows)
    {
        var height = Math.Clamp(rows, LeastRows, MostRows + 4);
        var canvas = new Canvas(columns, height);
        var dots = (canvas.Height - Bar - 2) / (ChainView.Radius + ChainView.Tooth + 3);
        var middle = canvas.Height - 1 - (ChainView.Radius * dots);
        var tooth = canvas.Width / 2.0;
        var roller = tooth + ((view.Play + ChainView.Radius) * dots);
        foreach (var link in (int[])[-2, -1, 0, 1, 2]) Circle(canvas, (roller + (link * ChainView.Link * dots), middle), ChainView.Radius * dots);
        var under = (int)Math.Round(middle - (view.Bar * dots));
        var bottom = (int)Math.Round(middle - ((view.Bar - ChainView.Tooth) * dots));
        var left = (int)Math.Round(tooth - (ChainView.Thick * dots));
        foreach (var y in (int[])[Math.Max(0, under - Bar), under]) canvas.Across(y, 0, Math.Min(canvas.Width - 1, (int)tooth));
        canvas.Down((int)tooth, Math.Max(0, under - Bar), bottom);
        canvas.Down(left, under, bottom);
        canvas.Across(bottom, left, (int)tooth);
        canvas.Shade(left, under, (int)tooth, bottom);
        canvas.Write(2, Math.Max(0, (under - 5) / 4), $" {label} ");
        return canvas.Rows();
    }

    static void Column(Canvas canvas, int x, int top, int tip)
    {
        for (var y = top; y < tip; y++)
        {
            if ((x + y) % 2 == 0) canvas.Dot(x, y);
        }
        canvas.Dot(x, tip);
    }

    // The upper edge of the leaf, joined to its neighbour on the right, two dots thick; under it a few dots for the leaf.
    static void Edge(Canvas canvas, int x, int top, ThreadView view)
    {
        var (here, next) = (Height(x), Height(x + 1));
        canvas.Down(x, Math.Min(here, next), Math.Max(here, next) + 1);
        for (var y = here + 4; y < canvas.Height; y++)
        {
            if (x % 4 == 0 && y % 4 == 0) canvas.Dot(x, y);
        }

        int Height(int at) => top + (int)Math.Round(view.Depth * ThreadView.Tooth(at, view.Leaf));
    }

    static void Circle(Canvas canvas, (double X, double Y) middle, double radius)
    {
        var steps = (int)Math.Ceiling(8 * radius);
        for (var i = 0; i < steps; i++)
        {
            var angle = 2 * Math.PI * i / steps;
            canvas.Dot((int)Math.Round(middle.X + (radius * Math.Cos(angle))), (int)Math.Round(middle.Y + (radius * Math.Sin(angle))));
        }
    }
}
