using System.Globalization;
using System.Net;
using System.Text;
using Apprentice.Drawing.Figures;

namespace Apprentice.Drawing;

/// <summary>A sketch as a scalable picture for print: the same geometry as on the screen, in mm.</summary>
static class SketchSvg
{
    const double Margin = 0.04;
    const double ThinShare = 0.004;

    /// <summary>The SVG element of a sketch.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <param name="id">A name that no other picture of the page has: fills are called after it.</param>
    /// <param name="spans">Where measured clues are taken: a letter, from a spot to a spot; the same spot twice for a tape laid round there.</param>
    /// <param name="room">Width and height of the picture, so that two stand at one scale; null for just the sketch.</param>
    public static string Of(Sketch sketch, string id, IReadOnlyList<(string Letter, Spot From, Spot To)>? spans = null, (double Width, double Height)? room = null)
    {
        var (low, high) = sketch.Bounds();
        var (width, height) = room ?? RoomOf([sketch]);
        low = new Spot((low.X + high.X - width) / 2, (low.Y + high.Y - height) / 2);
        high = new Spot(low.X + width, low.Y + height);
        var size = Math.Max(width, height);
        var edge = size * Margin;
        var pen = size * ThinShare;
        var svg = new StringBuilder($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"{N(low.X - edge)} {N(-high.Y - edge)} {N(width + (2 * edge))} {N(height + (2 * edge))}\" role=\"img\">");
        _ = svg.Append("<defs>").Append(Pattern($"{id}-hatch", size / 40, pen, "M0,0 L1,-1 M-.25,.25 L.25,-.25 M.75,-.75 L1.25,-1.25")).Append(Pattern($"{id}-back", size / 40, pen, "M0,-1 L1,0 M-.25,-.75 L.25,-.25 M.75,-.25 L1.25,.25")).Append("</defs>");
        foreach (var ink in sketch.Inks) _ = svg.Append(PathOf(ink, id, pen));
        foreach (var caption in sketch.Captions)
            _ = svg.Append($"<text x=\"{N(caption.At.X)}\" y=\"{N(-caption.At.Y)}\" font-size=\"{N(size / 22)}\" text-anchor=\"middle\" dominant-baseline=\"middle\">{WebUtility.HtmlEncode(caption.Text.Trim())}</text>");
        foreach (var (letter, from, to) in spans ?? []) _ = svg.Append(Span(letter, from, to, size));
        return svg.Append("</svg>").ToString();
    }

    /// <summary>Width and height that hold each of the sketches.</summary>
    public static (double Width, double Height) RoomOf(IReadOnlyList<Sketch> sketches)
    {
        var bounds = sketches.Select(s => s.Bounds()).ToList();
        return (Math.Max(1, bounds.Max(b => b.High.X - b.Low.X)), Math.Max(1, bounds.Max(b => b.High.Y - b.Low.Y)));
    }

    // A line with a dot at each end, white beneath so that it stands out on anything, and its letter in the middle.
    static string Span(string letter, Spot from, Spot to, double size)
    {
        var line = $"x1=\"{N(from.X)}\" y1=\"{N(-from.Y)}\" x2=\"{N(to.X)}\" y2=\"{N(-to.Y)}\"";
        var (x, y, dot) = (N((from.X + to.X) / 2), N((-from.Y - to.Y) / 2), N(size / 70));
        string End(Spot at) => $"<circle cx=\"{N(at.X)}\" cy=\"{N(-at.Y)}\" r=\"{dot}\" stroke=\"#fff\" stroke-width=\"{N(size / 300)}\"/>";
        return $"<line {line} stroke=\"#fff\" stroke-width=\"{N(size / 60)}\"/><line {line} stroke=\"#000\" stroke-width=\"{N(size / 130)}\"/>{End(from)}{End(to)}"
            + $"<circle cx=\"{x}\" cy=\"{y}\" r=\"{N(size / 28)}\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"{N(size / 250)}\"/>"
            + $"<text x=\"{x}\" y=\"{y}\" font-size=\"{N(size / 18)}\" font-weight=\"bold\" text-anchor=\"middle\" dominant-baseline=\"central\">{letter}</text>";
    }

    static string Pattern(string id, double step, double pen, string path) =>
        $"<pattern id=\"{id}\" width=\"{N(step)}\" height=\"{N(step)}\" patternUnits=\"userSpaceOnUse\"><path d=\"{path}\" transform=\"scale({N(step)}) translate(0 1)\" stroke=\"#000\" stroke-width=\"{N(pen / step)}\" fill=\"none\"/></pattern>";

    static string PathOf(Ink ink, string id, double pen)
    {
        var path = string.Join(' ', ink.Path.Select((s, i) => $"{(i == 0 ? "M" : "L")}{N(s.X)},{N(-s.Y)}")) + (ink.Closed ? " Z" : "");
        var fill = ink.Fill switch
        {
            Fill.None => "none",
            Fill.Clear => "#fff",
            Fill.Solid => "#000",
            Fill.Hatch => $"url(#{id}-hatch)",
            Fill.HatchBack => $"url(#{id}-back)",
            Fill.Half => "#999",
            _ => "#ddd",
        };
        var width = ink.Pen switch { Pen.None => 0, Pen.Bold => 2 * pen, _ => pen };
        var dashes = ink.Pen == Pen.Dashed ? $" stroke-dasharray=\"{N(6 * pen)} {N(4 * pen)}\"" : "";
        // What is hatched hides what lies behind it.
        var behind = ink.Fill is Fill.Hatch or Fill.HatchBack ? $"<path d=\"{path}\" fill=\"#fff\"/>" : "";
        return $"{behind}<path d=\"{path}\" fill=\"{(ink.Closed ? fill : "none")}\" stroke=\"#000\" stroke-width=\"{N(width)}\"{dashes}/>";
    }

    static string N(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
