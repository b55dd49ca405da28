namespace Apprentice.Engine.Topics;

/// <summary>All figures that topics can name, as data: parameters with ranges and defaults, and the points that have names.</summary>
/// <remarks>Defaults are common practice, no source, and only stand in where a topic gives nothing. A topic gives the sizes that matter.</remarks>
public static class FigureCatalogue
{
    /// <summary>All figures, by alphabet of their short names.</summary>
    public static IReadOnlyList<Figure> All { get; } = [.. Front().Concat(Wheel()).Concat(Drive()).Concat(Frame()).OrderBy(f => f.Id, StringComparer.Ordinal)];

    /// <summary>A figure by its short name, or null.</summary>
    public static Figure? Of(string id) => All.FirstOrDefault(f => string.Equals(f.Id, id, StringComparison.Ordinal));

    static IEnumerable<Figure> Front() =>
    [
        new("bar-side",
            [
                Length("rise", 20, 300, 120), Length("stem", 40, 450, 300), Length("sweep", 0, 120, 0), Length("bar", 18, 36, 22.2),
                Length("post", 20, 50, 34), Length("clamp-up", 8, 30, 17), Length("clamp-down", 8, 30, 16), Length("plate", 4, 20, 11),
            ],
            ["hinge-upper", "hinge-lower", "clamp-centre", "clamp-upper", "clamp-lower", "bend-top", "bend-underside"], "bend-top"),
        new("bar-front",
            [Length("rise", 0, 300, 120), Length("width", 300, 820, 520), Angle("slope", 10, 90, 60), Length("bar", 18, 36, 22.2), Length("grip", 60, 180, 110)],
            ["clamp-centre", "bend-left", "bend-right", "end-left", "end-right"], "bend-right"),
        new("grip-end",
            [Word("fixing", "plain", "bolt", "two-bolts"), Length("length", 60, 180, 120), Length("grip", 26, 40, 32), Length("bar", 18, 26, 22.2), Length("cap", 0, 15, 7)],
            ["inner-end", "outer-end", "cap-end", "ring"], "ring"),
        new("lever",
            [Word("body", "cast", "sheet"), Count("holes", 0, 3, 0), Length("pull", 12, 45, 28), Length("seat", 2, 6, 3), Length("blade", 60, 140, 95), Length("bar", 18, 36, 22.2)],
            ["pivot", "cable-centre", "cable-edge", "holes", "blade-end"], "holes"),
    ];

    static IEnumerable<Figure> Wheel() => [];

    static IEnumerable<Figure> Drive() => [];

    static IEnumerable<Figure> Frame() => [new(Figure.PlainArt, [], [])];

    static FigureParameter Length(string name, double low, double high, double usual) => new(name, ParameterSort.Length, low, high, usual, []);

    static FigureParameter Angle(string name, double low, double high, double usual) => new(name, ParameterSort.Angle, low, high, usual, []);

    static FigureParameter Count(string name, int low, int high, int usual) => new(name, ParameterSort.Count, low, high, usual, []);

    static FigureParameter Share(string name, double low, double high, double usual) => new(name, ParameterSort.Share, low, high, usual, []);

    /// <summary>A choice of words, the first of which stands in.</summary>
    static FigureParameter Word(string name, params IReadOnlyList<string> words) => new(name, ParameterSort.Word, 0, 0, 0, words);
}
