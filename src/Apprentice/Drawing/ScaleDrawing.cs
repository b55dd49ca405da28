using Apprentice.Content;

namespace Apprentice.Drawing;

/// <summary>Draws a scale to rows of text: nothing is drawn that is not in the geometry.</summary>
static class ScaleDrawing
{
    const int Least = 6;
    const int Most = 12;
    const int JawRows = 5;

    /// <summary>The rows of text, each as wide as the view; at least 6, and no more than are of use.</summary>
    /// <param name="view">The geometry.</param>
    /// <param name="room">Rows at hand.</param>
    /// <param name="label">What the edge that is read belongs to: "part".</param>
    public static IReadOnlyList<string> Rows(ScaleView view, int room, string label)
    {
        var jaws = view.Scale is Scale.Vernier && room >= Least + JawRows + 2;
        var rows = Math.Clamp(room - (jaws ? JawRows : 0), Least, Most);
        var scale = view.Scale is Scale.Vernier ? Vernier(view, rows) : Ruled(view, rows, label);
        return !jaws ? scale : view.Scale is Scale.Vernier { Inside: true } ? [.. InsideJaws(view.Columns, label), .. scale] : [.. Jaws(view.Columns, label), .. scale];
    }

    /// <summary>Rows to stand above a scale: a line down to it at each place, with its word; a place outside the window is left out.</summary>
    /// <param name="view">The geometry.</param>
    /// <param name="places">Places on the scale in mm, with their words.</param>
    public static IReadOnlyList<string> Pointers(ScaleView view, IReadOnlyList<(double Millimetres, string Word)> places)
    {
        var canvas = new Canvas(view.Columns, places.Count + 1);
        for (var row = 0; row < places.Count; row++)
        {
            var (dot, word) = (view.DotOf(places[row].Millimetres), places[row].Word);
            if (dot < 0 || dot >= view.Width) continue;
            canvas.Down(dot, 4 * (row + 1), canvas.Height - 1);
            canvas.Write(Math.Clamp((dot / 2) - (word.Length / 2), 0, Math.Max(0, view.Columns - word.Length)), row, word);
        }
        return canvas.Rows();
    }

    /// <summary>First row of the marks of a rule or tape of some rows.</summary>
    public static int MarksRow(int rows) => Math.Max(1, (rows - 1) / 3);

    /// <summary>Rows above the line where main scale and vernier touch.</summary>
    public static int TouchRow(int rows) => 1 + ((rows - 2) / 2);

    static IReadOnlyList<string> Ruled(ScaleView view, int rows, string label)
    {
        var canvas = new Canvas(view.Columns, rows);
        var top = MarksRow(rows) * 4;
        var longest = canvas.Height - 4 - top;
        if (view.Pins.Count == 0) End(canvas, view, top);
        foreach (var pin in view.Pins) Pin(canvas, pin, top);
        if (view.Pins.Count > 0) canvas.Down(view.Edge, 0, top - 1);
        if (view.Edge / 2 > label.Length + 4) canvas.Write(Math.Min((view.Edge / 2) - label.Length - 3, view.Columns - label.Length - 2), 0, $" {label} ");
        if (view.Main.Count > 0) canvas.Across(top, view.Main[0].Dot, view.Width);
        foreach (var mark in view.Main)
        {
            canvas.Down(mark.Dot, top, top + (longest * mark.Tenths / 10) - 1);
            canvas.Write(ScaleView.FigureColumn(mark.Dot, mark.Figure), rows - 1, mark.Figure);
        }
        return canvas.Rows();
    }

    // What is measured, up to its edge; the end of a tape that lies aslant leans back from where it touches the marks.
    static void End(Canvas canvas, ScaleView view, int top)
    {
        for (var y = 0; y < top; y++)
        {
            var edge = view.Edge - (view.Scale is Scale.Ruled { Aslant: true } ? (top - 1 - y) / 2 : 0);
            canvas.Shade(0, y, edge, y);
            canvas.Dot(edge, y);
        }
    }

    // A pin seen from the side, its middle drawn down to the rule.
    static void Pin(Canvas canvas, int middle, int top)
    {
        canvas.Across(0, middle - 2, middle + 2);
        canvas.Across(2, middle - 2, middle + 2);
        canvas.Down(middle, 0, top - 1);
    }

    static IReadOnlyList<string> Vernier(ScaleView view, int rows)
    {
        var canvas = new Canvas(view.Columns, rows);
        var touch = 4 * TouchRow(rows);
        var above = touch - 4;
        var below = canvas.Height - 4 - touch;
        foreach (var mark in view.Main)
        {
            canvas.Down(mark.Dot, touch - (above * mark.Tenths / 10), touch - 1);
            canvas.Write(ScaleView.FigureColumn(mark.Dot, mark.Figure), 0, mark.Figure);
        }
        foreach (var mark in view.Vernier)
        {
            canvas.Down(mark.Dot, touch, touch + (below * mark.Tenths / 10) - 1);
            canvas.Write(ScaleView.FigureColumn(mark.Dot, mark.Figure), rows - 1, mark.Figure);
        }
        Name(canvas, 0, view.Main, Words.Of("scale.label-main"));
        Name(canvas, rows - 1, view.Vernier, Words.Of("scale.label-vernier"));
        return canvas.Rows();
    }

    /// <summary>The name of a scale at the left of its figures, where it covers none.</summary>
    static void Name(Canvas canvas, int row, IReadOnlyList<Mark> marks, string name)
    {
        if (marks.All(m => m.Figure.Length == 0 || ScaleView.FigureColumn(m.Dot, m.Figure) > name.Length)) canvas.Write(0, row, name);
    }

    /// <summary>The outside jaws, not to scale: closed when there is no label.</summary>
    static IReadOnlyList<string> Jaws(int columns, string label)
    {
        var canvas = new Canvas(columns, JawRows);
        var gap = label.Length == 0 ? 0 : 2 * (label.Length + 6);
        const int Left = 12;
        const int Wide = 6;
        canvas.Across(0, 0, canvas.Width);
        canvas.Across(5, Left + Wide, Left + Wide + gap);
        canvas.Across(5, Left + (2 * Wide) + gap, canvas.Width);
        foreach (var (from, to) in new[] { (Left, Left + Wide - 1), (Left + Wide + gap + 1, Left + (2 * Wide) + gap) })
        {
            canvas.Down(from, 5, 17);
            canvas.Down(to, 5, 17);
            canvas.Across(17, from, to);
        }
        if (gap > 0) canvas.Shade(Left + Wide, 8, Left + Wide + gap, 15);
        if (gap > 0) canvas.Write(((Left + Wide) / 2) + 2, 2, $" {label} ");
        return canvas.Rows();
    }

    /// <summary>The inside jaws, not to scale: they stand up into the bore and press outwards; closed when there is no label.</summary>
    static IReadOnlyList<string> InsideJaws(int columns, string label)
    {
        var canvas = new Canvas(columns, JawRows);
        const int Left = 24;
        const int Wide = 5;
        const int Beam = 16;
        var right = label.Length == 0 ? Left + Wide + 1 : Left + (2 * label.Length) + 24;
        canvas.Across(Beam, 0, canvas.Width);
        foreach (var (from, to) in new[] { (Left, Left + Wide), (right, right + Wide) })
        {
            canvas.Down(from, 2, Beam);
            canvas.Down(to, 2, Beam);
            canvas.Across(2, from, to);
        }
        if (label.Length == 0) return canvas.Rows();
        foreach (var (from, to) in new[] { (Left - 18, Left - 1), (right + Wide + 1, right + Wide + 18) }) canvas.Shade(from, 0, to, 11);
        canvas.Write((right + Wide + 22) / 2, 1, label);
        return canvas.Rows();
    }
}
