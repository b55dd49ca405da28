using Apprentice.Content;

namespace Apprentice.Drawing;

/// <summary>A drawn scale as text: where the edge stands among the marks, never the reading.</summary>
static class ScaleWords
{
    /// <summary>The picture in sentences, worked out from the nearest zoom, so that they say no more than can be seen.</summary>
    /// <param name="scale">The tool.</param>
    /// <param name="millimetres">What lies between the edges or jaws.</param>
    /// <param name="closed">True for a caliper with its jaws closed.</param>
    public static IReadOnlyList<string> Of(Scale scale, double millimetres, bool closed) => scale switch
    {
        Scale.Vernier vernier => [Words.Of(closed ? "scale.words-closed" : vernier.Inside ? "scale.words-inside" : "scale.words-caliper"), .. Vernier(vernier.Steps(closed ? 0 : millimetres))],
        Scale.Ruled ruled => [Words.Of(ruled.Inches ? "scale.words-inches" : "scale.words-mm"), Ruled(ruled, millimetres), .. ruled.Pins ? [Words.Of("scale.words-pins")] : ruled.Aslant ? [Words.Of("scale.words-aslant")] : Array.Empty<string>()],
        _ => [],
    };

    static string Ruled(Scale.Ruled scale, double millimetres)
    {
        var dots = scale.Zooms[^1];
        var edge = (int)Math.Floor((Math.Max(0, millimetres) / scale.Pitch * dots) + 0.5);
        var (mark, past) = (Math.DivRem(edge, dots).Quotient, edge % dots);
        var key = (past, 2 * past - dots) switch
        {
            (0, _) => "",
            (_, < -3) => "scale.words-nearer-low",
            (_, > 3) => "scale.words-nearer-high",
            _ => "scale.words-half",
        };
        var what = Words.Of(scale.Around ? "scale.end-of-tape" : scale.Pins ? "scale.last-pin" : "scale.edge-of-part");
        if (key.Length == 0) return OnMark(scale, what, mark);
        var between = Words.Of("scale.words-between", ("edge", what), ("low", Name(scale, mark)), ("high", Name(scale, mark + 1)));
        return $"{between} {Words.Of(key)}";
    }

    static string OnMark(Scale.Ruled scale, string what, int mark)
    {
        var perFigure = scale.Inches ? 16 : 10;
        var (figure, after) = (mark / perFigure, mark % perFigure);
        var name = scale.Inches ? $"{figure}" : $"{figure * perFigure}";
        return after == 0
            ? Words.Of("scale.words-on-figure", ("edge", what), ("figure", name))
            : Words.Of("scale.words-on", ("edge", what), ("n", after), ("figure", name));
    }

    static string Name(Scale.Ruled scale, int mark)
    {
        if (!scale.Inches) return $"{mark}";
        var (inches, sixteenths) = (mark / 16, mark % 16);
        var bottom = 16;
        while (sixteenths > 0 && sixteenths % 2 == 0) (sixteenths, bottom) = (sixteenths / 2, bottom / 2);
        return sixteenths == 0 ? $"{inches}" : inches == 0 ? $"{sixteenths}/{bottom}" : $"{inches} {sixteenths}/{bottom}";
    }

    static IEnumerable<string> Vernier(int steps)
    {
        var mark = (int)Math.Floor((double)steps / Scale.Vernier.Lines);
        var line = steps - (mark * Scale.Vernier.Lines);
        if (line == 0)
        {
            yield return mark % 10 == 0
                ? Words.Of("scale.words-zero-figure", ("figure", mark))
                : Words.Of("scale.words-zero-on", ("n", mark % 10), ("figure", mark - (mark % 10)));
            yield break;
        }
        yield return mark < 0 ? Words.Of("scale.words-zero-left") : Words.Of("scale.words-zero", ("low", mark), ("high", mark + 1));
        yield return Words.Of("scale.words-line", ("n", line));
    }
}
