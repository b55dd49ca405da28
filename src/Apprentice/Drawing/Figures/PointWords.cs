using Apprentice.Content;

namespace Apprentice.Drawing.Figures;

/// <summary>Where the named points of a sketch lie, in tenths of the picture, so that a picture can be worked from without being seen.</summary>
static class PointWords
{
    /// <summary>A sentence a point; none for a sketch without points.</summary>
    public static IEnumerable<string> Of(Sketch sketch)
    {
        if (sketch.Points.Count == 0) yield break;
        var (low, high) = sketch.Bounds();
        var longest = Math.Max(high.X - low.X, high.Y - low.Y);
        yield return Words.Of("figure.points", ("wide", Tenths(high.X - low.X, longest)), ("high", Tenths(high.Y - low.Y, longest)));
        foreach (var (name, at) in sketch.Points)
            yield return Words.Of("figure.point", ("name", name.Replace('-', ' ')), ("x", Tenths(at.X - low.X, longest)), ("y", Tenths(at.Y - low.Y, longest)));
    }

    static string Tenths(double from, double all) => (Math.Round(20 * from / all) / 2).ToString("0.#");
}
