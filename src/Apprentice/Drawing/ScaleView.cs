using System.Runtime.InteropServices;

namespace Apprentice.Drawing;

/// <summary>The geometry of a drawn scale, in dots: all that the drawing shows, and all that can be read back from it.</summary>
/// <param name="Scale">The tool.</param>
/// <param name="Columns">Width of the window in characters; a character is two dots wide.</param>
/// <param name="Edge">The edge that is read, or the vernier's zero line: dots from the left, outside the window when it was moved away.</param>
/// <param name="Main">Marks of the main scale in the window, from left to right.</param>
/// <param name="Vernier">Lines of the vernier from zero to the last, those outside the window with them; none for a rule or tape.</param>
sealed record ScaleView(Scale Scale, int Columns, int Edge, IReadOnlyList<Mark> Main, IReadOnlyList<Mark> Vernier)
{
    const double HalfLink = 12.7;

    /// <summary>Dots from the zero of the scale to the left of the window.</summary>
    public required int Origin { get; init; }

    /// <summary>Dots a mm, for places along the scale.</summary>
    public required double DotsPerMm { get; init; }

    /// <summary>Pins of a chain along the rule: dots from the left, those outside the window with them.</summary>
    public IReadOnlyList<int> Pins { get; init; } = [];

    /// <summary>Width in dots.</summary>
    public int Width => 2 * Columns;

    /// <summary>True when a figure of the main scale is seen.</summary>
    public bool HasFigure => Main.Any(m => m.Figure.Length > 0);

    /// <summary>The part of a scale that a window shows.</summary>
    /// <param name="scale">The tool.</param>
    /// <param name="millimetres">What lies between the edges or jaws, without the tool's zero error.</param>
    /// <param name="columns">Width in characters.</param>
    /// <param name="window">Zoom and place.</param>
    public static ScaleView Of(Scale scale, double millimetres, int columns, ScaleWindow window)
    {
        var dots = scale.Zooms[window.Zoom];
        var steps = scale is Scale.Vernier vernier ? vernier.Steps(window.Closed ? 0 : millimetres) : 0;
        var edge = scale is Scale.Vernier ? Dots(steps, dots) : Nearest(millimetres / scale.Pitch * dots);
        var anchor = scale is Scale.Vernier ? columns / 2 : columns;
        var origin = edge - anchor + Nearest(window.Shift / scale.Pitch * dots);
        var first = Math.Max(0, (int)Math.Ceiling((double)origin / dots));
        var last = (int)Math.Floor((origin + (2.0 * columns) - 1) / dots);
        var main = Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(k => MainMark(scale, k, (k * dots) - origin, columns));
        var lines = Enumerable.Range(0, scale is Scale.Vernier ? Scale.Vernier.Lines + 1 : 0)
            .Select(j => VernierMark(j, Dots(steps + ((Scale.Vernier.Lines - 1) * j), dots) - origin, columns));
        return new ScaleView(scale, columns, edge - origin, [.. main], [.. lines])
        {
            Origin = origin,
            DotsPerMm = dots / scale.Pitch,
            Pins = scale is Scale.Ruled { Pins: true } ? PinsOf(millimetres, dots / scale.Pitch, origin) : [],
        };
    }

    /// <summary>Dots from the left of the window to a place on the main scale; outside the window below 0 or beyond its width.</summary>
    /// <param name="millimetres">The place, mm.</param>
    public int DotOf(double millimetres) => Nearest(millimetres * DotsPerMm) - Origin;

    // A chain's pins are nominally half an inch apart; a worn chain's a little more, all alike. Source: ISO 9633 (pitch 12.7 mm).
    static IReadOnlyList<int> PinsOf(double millimetres, double dots, int origin)
    {
        var count = Math.Max(1, Nearest(millimetres / HalfLink));
        return [.. Enumerable.Range(0, count + 1).Select(k => Nearest(millimetres * k / count * dots) - origin)];
    }

    /// <summary>First column of a figure whose middle stands at a mark.</summary>
    public static int FigureColumn(int dot, string figure) => (int)Math.Floor(dot / 2.0) - ((figure.Length - 1) / 2);

    static Mark MainMark(Scale scale, int k, int dot, int columns) => scale is Scale.Ruled { Inches: true }
        ? new Mark(dot, InchTenths(k), k % 16 == 0 ? Whole($"{k / 16}", dot, columns) : "")
        : new Mark(dot, k % 10 == 0 ? 10 : k % 5 == 0 ? 7 : 4, k % 10 == 0 ? Whole($"{k}", dot, columns) : "");

    static int InchTenths(int sixteenths) => (sixteenths % 16, sixteenths % 8, sixteenths % 4, sixteenths % 2) switch
    {
        (0, _, _, _) => 10,
        (_, 0, _, _) => 8,
        (_, _, 0, _) => 6,
        (_, _, _, 0) => 4,
        _ => 2,
    };

    static Mark VernierMark(int j, int dot, int columns) => new(dot, j % 10 == 0 ? 10 : j % 2 == 0 ? 7 : 4, j % 2 == 0 ? Whole($"{j / 2}", dot, columns) : "");

    static string Whole(string figure, int dot, int columns) =>
        FigureColumn(dot, figure) is var column && column >= 0 && column + figure.Length <= columns ? figure : "";

    /// <summary>Twentieths of a main division in dots, in whole numbers, so that lines that meet meet in every window.</summary>
    static int Dots(int steps, int dots) => (int)Math.Floor(((2.0 * steps * dots) + Scale.Vernier.Lines) / (2 * Scale.Vernier.Lines));

    static int Nearest(double dots) => (int)Math.Floor(dots + 0.5);
}

/// <summary>A mark of a scale.</summary>
/// <param name="Dot">Dots from the left of the window.</param>
/// <param name="Tenths">Its length in tenths of the longest.</param>
/// <param name="Figure">The figure at it, or empty: a figure that would not stand whole in the window is left out.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct Mark(int Dot, int Tenths, string Figure);

/// <summary>Which part of a scale is shown.</summary>
/// <param name="Zoom">Index into <see cref="Scale.Zooms"/>.</param>
/// <param name="Shift">How far the window was moved to the right, mm.</param>
/// <param name="Closed">True to show a caliper with its jaws closed.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct ScaleWindow(int Zoom = 0, double Shift = 0, bool Closed = false);
