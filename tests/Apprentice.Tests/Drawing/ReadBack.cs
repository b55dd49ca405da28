using Apprentice.Drawing;

namespace Apprentice.Tests.Drawing;

/// <summary>Reads a drawn scale with nothing but its geometry: marks, figures, the edge, and which lines meet.</summary>
static class ReadBack
{
    /// <summary>Where the edge or the zero line stands, in mm, by counting marks from a figure and judging the rest by eye.</summary>
    public static double ByEye(ScaleView view)
    {
        var marks = view.Main;
        var perFigure = view.Scale is Scale.Ruled { Inches: true } ? 16 : 10;
        var figured = marks.ToList().FindIndex(m => m.Figure.Length > 0);
        Assert.True(figured >= 0, "no figure in the window");
        var perMark = view.Scale is Scale.Ruled { Inches: true } ? 1 : perFigure;
        var atFigure = int.Parse(marks[figured].Figure) * perFigure / perMark;
        var spacing = (double)(marks[^1].Dot - marks[0].Dot) / (marks.Count - 1);
        var left = marks.ToList().FindLastIndex(m => m.Dot <= view.Edge);
        var nearest = Math.Max(left, 0);
        return (atFigure + (nearest - figured) + ((view.Edge - marks[nearest].Dot) / spacing)) * view.Scale.Pitch;
    }

    /// <summary>A caliper's reading in mm, with its zero error: whole millimetres from afar, the line that meets from near, moving along the vernier.</summary>
    public static double Caliper(Scale.Vernier scale, double millimetres, int columns, bool closed)
    {
        var far = ByEye(ScaleView.Of(scale, millimetres, columns, new ScaleWindow(0, 0, closed)));
        var line = Meeting(scale, millimetres, columns, closed);
        var fraction = (double)line / Scale.Vernier.Lines;
        return fraction + Math.Round(far - fraction);
    }

    /// <summary>The first line of the vernier, from zero, that meets a mark.</summary>
    static int Meeting(Scale.Vernier scale, double millimetres, int columns, bool closed)
    {
        for (var shift = 0; shift <= Scale.Vernier.Lines; shift += 2)
        {
            var view = ScaleView.Of(scale, millimetres, columns, new ScaleWindow(scale.Zooms.Count - 1, shift, closed));
            var line = view.Vernier.ToList().FindIndex(v => v.Dot >= 0 && v.Dot < view.Width && view.Main.Any(m => m.Dot == v.Dot));
            if (line >= 0) return line % Scale.Vernier.Lines;
        }
        throw new InvalidOperationException("No line meets.");
    }
}
