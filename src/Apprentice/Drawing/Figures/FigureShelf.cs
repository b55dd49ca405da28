using System.Collections.Frozen;

namespace Apprentice.Drawing.Figures;

/// <summary>Which sketch is made for which figure of the catalogue.</summary>
static class FigureShelf
{
    static readonly FrozenDictionary<string, Func<Traits, Sketch>> All = new Dictionary<string, Func<Traits, Sketch>>(StringComparer.Ordinal)
    {
        ["bar-side"] = BarSide.Draw,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Figures that can be drawn.</summary>
    public static IEnumerable<string> Ids => All.Keys;

    /// <summary>The sketch of a figure.</summary>
    /// <exception cref="ArgumentException">There is no such figure, or it is text art.</exception>
    public static Sketch Draw(Traits traits) =>
        All.TryGetValue(traits.Figure.Id, out var draw) ? draw(traits) : throw new ArgumentException($"The figure {traits.Figure.Id} cannot be drawn.", nameof(traits));
}
