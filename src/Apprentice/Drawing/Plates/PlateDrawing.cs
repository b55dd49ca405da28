using Apprentice.Engine.Quantities;

namespace Apprentice.Drawing.Plates;

/// <summary>Draws a plate: its surface in dots, the writings in plain characters with their labels.</summary>
static class PlateDrawing
{
    const int Widest = 90;
    const int MostSpacing = 3;
    const int Side = 4;
    const int Columns = 2;
    const double DirtyShare = 0.015;

    /// <summary>The drawing, as wide as the room but for very wide ones; at least a row for two writings and one above and below.</summary>
    /// <param name="view">The plate.</param>
    /// <param name="columns">Columns at hand.</param>
    /// <param name="rows">Rows at hand.</param>
    public static IReadOnlyList<string> Rows(PlateView view, int columns, int rows)
    {
        var lines = Math.Max(1, (view.Markings.Count + Columns - 1) / Columns);
        var spacing = Math.Clamp((rows - 2) / lines, 1, MostSpacing);
        var canvas = new Canvas(Math.Min(columns, Widest), (lines * spacing) + 2);
        var rng = new Rng(view.Seed, stream: 9);
        PlateOutline.Draw(canvas, view.Surface);
        if (view.IsDirty) Dirt(canvas, rng);
        for (var i = 0; i < view.Markings.Count; i++) Write(canvas, view, i, spacing, rng);
        return canvas.Rows();
    }

    // A writing stands somewhere in its half of the row, with a space around it so that dirt never touches a character.
    static void Write(Canvas canvas, PlateView view, int at, int spacing, Rng rng)
    {
        var text = $" ({at + 1}) {view.Markings[at].Text} ";
        var half = ((canvas.Width / 2) - (2 * Side)) / Columns;
        var free = Math.Max(0, half - text.Length);
        var column = Side + (at % Columns * half) + rng.Below(Math.Min(free, half / 3) + 1);
        var row = 1 + (at / Columns * spacing) + (spacing == 1 ? 0 : rng.Below(spacing));
        canvas.Write(column, row, text);
    }

    static void Dirt(Canvas canvas, Rng rng)
    {
        var count = (int)(canvas.Width * canvas.Height * DirtyShare);
        for (var i = 0; i < count; i++) canvas.Dot(2 + rng.Below(canvas.Width - 4), 4 + rng.Below(canvas.Height - 8));
    }
}
