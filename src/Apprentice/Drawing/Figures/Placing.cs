using System.Runtime.InteropServices;

namespace Apprentice.Drawing.Figures;

/// <summary>Where a sketch lies on a canvas, true to scale: a dot is as high as wide, because a cell is twice as high as wide and holds 2 x 4 dots.</summary>
/// <param name="DotsPerMm">Dots per mm, the same both ways.</param>
/// <param name="Left">Dots from the canvas's left to x = 0.</param>
/// <param name="Top">Dots from the canvas's top to y = 0.</param>
/// <param name="Rows">Rows of characters that are needed.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct Placing(double DotsPerMm, double Left, double Top, int Rows)
{
    const int Across = 4;
    const int Down = 4;

    /// <summary>The largest placing of a sketch that fits, in the middle from left to right.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <param name="columns">Columns of characters.</param>
    /// <param name="rows">Rows of characters at hand.</param>
    /// <param name="marked">True when letters or words stand in it, which need a margin.</param>
    public static Placing Of(Sketch sketch, int columns, int rows, bool marked)
    {
        var (low, high) = sketch.Bounds();
        var (side, edge) = marked ? (Across, Down) : (0, 0);
        var (wide, tall) = (Math.Max(1, (2 * columns) - 1 - (2 * side)), Math.Max(1, (4 * rows) - 1 - (2 * edge)));
        return At(sketch, columns, rows, marked, Math.Min(wide / Math.Max(1e-6, high.X - low.X), tall / Math.Max(1e-6, high.Y - low.Y)));
    }

    /// <summary>The placing of a sketch at a scale that fits, in the middle from left to right.</summary>
    public static Placing At(Sketch sketch, int columns, int rows, bool marked, double scale)
    {
        var (low, high) = sketch.Bounds();
        var edge = marked ? Down : 0;
        var left = (((2 * columns) - 1 - ((high.X - low.X) * scale)) / 2) - (low.X * scale);
        var needed = (int)Math.Ceiling((((high.Y - low.Y) * scale) + 1 + (2 * edge) - 1e-6) / 4);
        return new Placing(scale, left, edge + (high.Y * scale), Math.Clamp(needed, 1, Math.Max(1, rows)));
    }

    /// <summary>The dot of a spot: dots from the left and from the top.</summary>
    public (int X, int Y) Dot(Spot spot) => (Nearest(Left + (spot.X * DotsPerMm)), Nearest(Top - (spot.Y * DotsPerMm)));

    // A last bit that differs from machine to machine moves no dot.
    static int Nearest(double dots) => (int)Math.Floor(Math.Round(dots, 6) + 0.5);
}
