using System.Runtime.InteropServices;
using Apprentice.Content;

namespace Apprentice.Drawing.Figures;

/// <summary>A figure as geometry in mm, x to the right and y up: what later ink covers lies behind. It also says itself in sentences.</summary>
sealed class Sketch
{
    readonly List<Ink> _inks = [];
    readonly List<Caption> _captions = [];
    readonly Dictionary<string, Spot> _points = new(StringComparer.Ordinal);
    readonly List<string> _says = [];

    (Spot Low, Spot High)? _frame;

    /// <summary>True for a hole: letters stand in it, not outside its wall.</summary>
    public bool IsHole { get; private set; }

    /// <summary>Lines and areas, back to front.</summary>
    public IReadOnlyList<Ink> Inks => _inks;

    /// <summary>Words in the picture.</summary>
    public IReadOnlyList<Caption> Captions => _captions;

    /// <summary>Named points, mm.</summary>
    public IReadOnlyDictionary<string, Spot> Points => _points;

    /// <summary>The picture in sentences: places and shapes, never what follows from them.</summary>
    public IReadOnlyList<string> Says => _says;

    /// <summary>Adds ink in front.</summary>
    public Sketch Add(Ink ink)
    {
        _inks.Add(ink);
        return this;
    }

    /// <summary>A line through some spots.</summary>
    public Sketch Line(params IReadOnlyList<Spot> path) => Add(new Ink(path, Closed: false));

    /// <summary>A line of dashes: an edge that is hidden, an axis.</summary>
    public Sketch Dashes(params IReadOnlyList<Spot> path) => Add(new Ink(path, Closed: false, Fill.None, Pen.Dashed));

    /// <summary>A line twice as thick.</summary>
    public Sketch Bold(params IReadOnlyList<Spot> path) => Add(new Ink(path, Closed: false, Fill.None, Pen.Bold));

    /// <summary>A closed shape.</summary>
    public Sketch Shape(Fill fill, params IReadOnlyList<Spot> corners) => Add(new Ink(corners, Closed: true, fill));

    /// <summary>A rectangle by two opposite corners.</summary>
    public Sketch Box(Spot one, Spot other, Fill fill = Fill.Clear) => Shape(fill, one, new(other.X, one.Y), other, new(one.X, other.Y));

    /// <summary>A circle.</summary>
    public Sketch Circle(Spot middle, double radius, Fill fill = Fill.Clear) => Shape(fill, Geometry.Arc(middle, radius, 0, 360));

    /// <summary>Part of a circle, anticlockwise from an angle to another, degrees from the right.</summary>
    public Sketch Arc(Spot middle, double radius, double from, double to) => Line(Geometry.Arc(middle, radius, from, to));

    /// <summary>A straight or bent tube along its middle line, as wide as given.</summary>
    public Sketch Tube(double width, Fill fill, params IReadOnlyList<Spot> middle) => Shape(fill, Geometry.Sides(middle, width));

    /// <summary>A bolt's head with its hexagon socket.</summary>
    public Sketch Bolt(Spot middle, double radius) => Circle(middle, radius).Shape(Fill.Half, Geometry.Corners(middle, radius * 0.55, 6, 30));

    /// <summary>A word, its middle at a spot.</summary>
    public Sketch Write(Spot at, string text)
    {
        _captions.Add(new Caption(at, text));
        return this;
    }

    /// <summary>Shows only what lies in a frame; what reaches over it is cut off above and below.</summary>
    public Sketch Frame(Spot low, Spot high)
    {
        _frame = (low, high);
        return this;
    }

    /// <summary>Says that it is a hole, measured from inside.</summary>
    public Sketch Hole()
    {
        IsHole = true;
        return this;
    }

    /// <summary>Gives a spot a name.</summary>
    public Sketch Point(string name, Spot at)
    {
        _points[name] = at;
        return this;
    }

    /// <summary>Adds a sentence as it stands; nothing for an empty one.</summary>
    public Sketch Told(string sentence)
    {
        if (sentence.Length > 0) _says.Add(sentence);
        return this;
    }

    /// <summary>Adds a sentence of the words file.</summary>
    public Sketch Say(string key, params (string Name, object Value)[] values) => Told(Words.Of(key, values));

    /// <summary>The same sketch with every spot moved, its sentences with it.</summary>
    public Sketch Moved(Func<Spot, Spot> move)
    {
        var moved = new Sketch { _frame = _frame, IsHole = IsHole };
        foreach (var ink in _inks) moved.Add(ink with { Path = [.. ink.Path.Select(move)] });
        foreach (var caption in _captions) moved.Write(move(caption.At), caption.Text);
        foreach (var (name, at) in _points) moved.Point(name, move(at));
        foreach (var sentence in _says) moved.Told(sentence);
        return moved;
    }

    /// <summary>Left and bottom, right and top of the frame, or else of all ink, mm.</summary>
    public (Spot Low, Spot High) Bounds()
    {
        if (_frame is { } frame) return frame;
        var spots = _inks.Where(i => i.Pen != Pen.None || i.Fill != Fill.Clear).SelectMany(i => i.Path).Concat(_captions.Select(c => c.At)).ToList();
        return (new(spots.Min(s => s.X), spots.Min(s => s.Y)), new(spots.Max(s => s.X), spots.Max(s => s.Y)));
    }
}

/// <summary>A place, mm: x to the right, y up.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Up.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct Spot(double X, double Y)
{
    /// <summary>The place so far on.</summary>
    public Spot By(double x, double y) => new(X + x, Y + y);

    /// <summary>The distance to another place, mm.</summary>
    public double To(Spot other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}

/// <summary>A line or an area.</summary>
/// <param name="Path">Its corners, mm.</param>
/// <param name="Closed">True when the last corner is joined to the first.</param>
/// <param name="Fill">What it is filled with.</param>
/// <param name="Pen">How its line is drawn.</param>
sealed record Ink(IReadOnlyList<Spot> Path, bool Closed, Fill Fill = Fill.None, Pen Pen = Pen.Thin);

/// <summary>A word in the picture.</summary>
/// <param name="At">Where its middle stands, mm.</param>
/// <param name="Text">The word.</param>
sealed record Caption(Spot At, string Text);

/// <summary>What an area is filled with.</summary>
enum Fill
{
    /// <summary>Nothing: what is behind shows through.</summary>
    None,

    /// <summary>Nothing, and it hides what is behind.</summary>
    Clear,

    /// <summary>Every dot.</summary>
    Solid,

    /// <summary>Slanting lines, upwards to the right: metal that is cut.</summary>
    Hatch,

    /// <summary>Slanting lines, downwards to the right: another piece of metal that is cut.</summary>
    HatchBack,

    /// <summary>Every second dot: rubber, holes in shade.</summary>
    Half,

    /// <summary>One dot in eight: a surface.</summary>
    Grain,
}

/// <summary>How a line is drawn.</summary>
enum Pen
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>One dot.</summary>
    Thin,

    /// <summary>Two dots.</summary>
    Bold,

    /// <summary>In dashes.</summary>
    Dashed,
}
