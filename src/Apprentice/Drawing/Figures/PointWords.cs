using Apprentice.Content;

namespace Apprentice.Drawing.Figures;

/// <summary>Where the named points of a sketch lie, in hundredths of its longer side, so that a picture can be worked from without being seen.</summary>
static class PointWords
{
    /// <summary>The name of a point as it is said.</summary>
    public static string Name(string point) => Words.Of($"figure.at.{point}");

    /// <summary>A sentence a point; none for a sketch without points.</summary>
    public static IEnumerable<string> Of(Sketch sketch)
    {
        if (sketch.Points.Count == 0) yield break;
        var (low, high) = sketch.Bounds();
        var longest = Math.Max(high.X - low.X, high.Y - low.Y);
        yield return Words.Of("figure.points", ("wide", Hundredths(high.X - low.X, longest)), ("high", Hundredths(high.Y - low.Y, longest)));
        foreach (var (name, at) in sketch.Points)
            yield return Words.Of("figure.point", ("name", Name(name)), ("x", Hundredths(at.X - low.X, longest)), ("y", Hundredths(at.Y - low.Y, longest)));
    }

    /// <summary>A sentence a lettered point, by the alphabet of the letters.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <param name="letters">Letter by point.</param>
    public static IEnumerable<string> Of(Sketch sketch, IReadOnlyDictionary<string, string> letters)
    {
        var (low, high) = sketch.Bounds();
        var longest = Math.Max(high.X - low.X, high.Y - low.Y);
        yield return Words.Of("figure.points", ("wide", Hundredths(high.X - low.X, longest)), ("high", Hundredths(high.Y - low.Y, longest)));
        foreach (var (name, letter) in letters.OrderBy(l => l.Value, StringComparer.Ordinal))
        {
            var at = sketch.Points[name];
            yield return Words.Of("scale.point", ("letter", letter), ("point", Name(name)), ("x", Hundredths(at.X - low.X, longest)), ("y", Hundredths(at.Y - low.Y, longest)));
        }
    }

    static int Hundredths(double from, double all) => (int)Math.Round(100 * from / all);
}
