namespace Apprentice.Engine.Topics;

/// <summary>All figures that topics can name, as data: parameters with ranges and defaults, and the points that have names.</summary>
/// <remarks>Defaults are common practice, no source, and only stand in where a topic gives nothing. A topic gives the sizes that matter.</remarks>
public static class FigureCatalogue
{
    /// <summary>All figures, by alphabet of their short names.</summary>
    public static IReadOnlyList<Figure> All { get; } = [.. Front().Concat(Wheel()).Concat(Drive()).Concat(Frame()).Concat(Jaws()).OrderBy(f => f.Id, StringComparer.Ordinal)];

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
            [Word("fixing", "plain", "bolt", "two-bolts", "left-out"), Length("length", 60, 180, 120), Length("grip", 26, 40, 32), Length("bar", 18, 26, 22.2), Length("cap", 0, 15, 7)],
            ["inner-end", "outer-end", "cap-end", "ring"], "ring"),
        new("lever",
            [Word("body", "cast", "sheet", "left-out"), Count("holes", 0, 3, 0), Length("pull", 12, 45, 28), Length("seat", 2, 6, 3), Length("blade", 60, 140, 95), Length("bar", 18, 36, 22.2)],
            ["pivot", "pivot-edge", "cable-centre", "cable-edge", "cable-far", "holes", "blade-end"], "holes"),
    ];

    static IEnumerable<Figure> Wheel() =>
    [
        new("rim-section",
            [
                Word("shape", "straight", "hooked", "left-out"), Length("inner-width", 12, 50, 19), Length("flange", 3, 10, 5), Length("depth", 8, 45, 20),
                Length("well", 1, 10, 4), Length("tape", 0, 3, 0),
            ],
            ["seat", "flange-tip", "tape-top", "wall-left", "wall-right"], "flange-tip"),
        new("tyre-on-rim",
            [Word("sits", "even", "low", "uneven", "lifted", "levered"), Length("seat", 200, 700, 622), Length("tyre", 18, 70, 37), Length("flange", 3, 10, 5)],
            ["rim-edge", "line", "tyre-top"], "line"),
        new("wheel-side",
            [Length("seat", 200, 700, 622), Length("tips", 200, 720, 632), Length("outside", 250, 850, 692), Length("track", 100, 360, 311), Length("chord", 0, 40, 9)],
            ["axle", "floor", "tyre-top", "tyre-left", "tyre-right", "tip-left", "tip-right", "chord-left", "chord-right", "block", "seat-left", "seat-right"], "tip-right"),
        new("valve", [Word("shape", "broad", "narrow", "middle"), Length("length", 25, 100, 42)], ["base", "tip"], "tip"),
        new("hub-axle",
            [Word("ends", "nuts", "quick-release", "through", "left-out"), Length("width", 70, 200, 100), Length("axle", 5, 25, 9.5), Length("flange", 30, 110, 45), Length("tips", 0, 230, 0)],
            ["face-left", "face-right", "end-left", "end-right"], "face-right"),
        new("spoke",
            [Word("head", "elbow", "straight"), Word("body", "plain", "butted", "flat"), Length("gauge", 1.2, 3.5, 2), Length("middle", 1, 3.5, 1.6), Length("flats", 2.8, 5, 3.3)],
            ["head", "thread-end", "flats-top", "flats-bottom"], "head"),
        new("brake-mount", [Word("shape", "post", "tabs", "flat", "bosses", "bolt", "points"), Length("distance", 20, 110, 74), Word("adapter", "no", "yes")], ["fixing-1", "fixing-2", "edge-1", "edge-2", "adapter-1", "adapter-2"], "fixing-1"),
    ];

    static IEnumerable<Figure> Drive() =>
    [
        new("shell",
            [
                Length("width", 50, 150, 68), Length("inner", 25, 55, 34), Length("wall", 1.5, 8, 3),
                Word("right-thread", "left-hand", "right-hand", "none"), Word("left-thread", "right-hand", "left-hand", "none"),
            ],
            ["face-left", "face-right", "bore-top", "bore-bottom"], "face-right"),
        new("freewheel-back", [Count("notches", 0, 4, 0), Count("splines", 0, 24, 20), Length("across", 15, 40, 22), Count("teeth", 11, 20, 14), Word("turns", "sprockets", "all")], ["middle", "tool-edge"], "tool-edge"),
        new("cassette-back", [Count("splines", 0, 24, 12), Length("across", 15, 40, 23.4), Word("lockring", "yes", "no"), Count("teeth", 10, 20, 11), Word("turns", "all", "sprockets")], ["middle", "tool-edge"], "tool-edge"),
        new("spindle-end",
            [Word("shape", "square", "splines", "three-arm", "hollow", "cotter"), Count("splines", 6, 48, 8), Length("across", 8, 40, 12.6), Length("length", 10, 60, 28), Angle("taper", 0, 5, 2)],
            ["flat-left", "flat-right", "tip", "shoulder"], "flat-right"),
        new("chainring", [Count("bolts", 3, 6, 5), Length("hole-distance", 15, 130, 76.4), Count("teeth", 18, 60, 42), Word("spread", "even", "unequal")], ["middle", "hole-1", "hole-2", "hole-3"], "hole-1"),
        new("chain-side", [Count("links", 2, 24, 8), Share("wear", 0, 0.03, 0), Length("plate", 6, 12, 8.2), Word("cut", "no", "yes")], ["pin-first", "pin-edge", "pin-last", "pin-after"], "pin-last"),
    ];

    static IEnumerable<Figure> Frame() =>
    [
        new("post", [Length("diameter", 20, 40, 27.2), Length("depth", 20, 200, 100), Length("mark", 20, 150, 75), Length("out", 40, 300, 120), Length("wall", 1, 6, 2)], ["side-top", "side-bottom", "tube-edge", "mark", "lower-end"], "mark"),
        new("headset",
            [Word("top", "nut", "cap"), Word("cups", "outside", "inside"), Length("stack-up", 4, 40, 22), Length("stack-down", 2, 30, 12), Length("tube", 28, 70, 36), Length("head", 60, 220, 120)],
            ["tube-top", "tube-bottom", "stack-top", "stack-bottom"], "stack-top"),
        new("hanger", [Word("hole", "threaded", "plain", "slot"), Word("axle", "slot", "through"), Word("stop", "yes", "no"), Length("drop", 18, 45, 28), Length("diameter", 6, 16, 10)], ["axle", "hole", "stop"], "hole"),
        new(Figure.PlainArt, [], []),
    ];

    /// <summary>Parts and holes as a tool takes them: where a jaw can lie.</summary>
    static IEnumerable<Figure> Jaws() =>
    [
        new("bolt",
            [Word("head", "hexagon", "socket", "star", "crank", "none"), Length("across", 1, 80, 6), Length("pitch", 0.2, 12, 1), Word("end", "clean", "worn")],
            ["crest-top", "crest-bottom", "groove-top", "end-top", "end-bottom", "shank-top", "shank-bottom", "crest-0", "crest-1", "crest-10"], "crest-top"),
        new("bore", [Length("bore", 1, 90, 34), Word("mouth", "closed", "slot", "steps")], ["wide-left", "wide-right", "beside-left", "beside-right", "step-left", "step-right"], "wide-right"),
        new("chain-top",
            [Length("pin", 4, 12, 7.3), Length("inside", 1.5, 5, 2.4)],
            ["pin-top", "pin-bottom", "join-top", "join-bottom", "plate-top", "plate-bottom", "inner-top", "inner-bottom", "outer-top", "outer-bottom"], "pin-top"),
        new("cups-in", [Length("width", 50, 150, 68), Length("flange", 1, 6, 2), Length("plate", 1, 6, 3), Length("outside", 30, 70, 40)], ["face-left", "face-right", "flange-right", "plate-left"], "face-right"),
        new("hole-cut",
            [Length("bore", 1, 90, 27.2), Word("mouth", "plain", "slot", "rounded"), Word("inside", "smooth", "thread"), Word("deep", "even", "narrow")],
            ["inside-top", "inside-bottom", "mouth-top", "mouth-bottom", "deep-top", "deep-bottom", "groove-top", "groove-bottom"], "inside-top"),
        new("hole-row", [Length("hole-distance", 15, 130, 76.4)], ["right-1", "right-2", "right-3", "left-2"], "right-2"),
        new("rear-ends", [Length("gap", 80, 210, 130), Length("plate", 3, 14, 6)], ["inner-left", "inner-right", "outer-left", "outer-right", "ridge-right"], "inner-right"),
        new("round-part",
            [Length("diameter", 1, 90, 25.4), .. Sides("left"), .. Sides("right")],
            ["middle-top", "middle-bottom", "left-top", "left-bottom", "right-top", "right-bottom"], "right-top"),
        new("sprocket-stack", [Length("width", 8, 60, 36), Count("sprockets", 2, 13, 9), Length("ring", 1, 5, 2)], ["big-face", "small-face", "ring-face"], "small-face"),
        new("tooth-edge", [Length("thickness", 0.8, 5, 1.8)], ["half-left", "half-right", "tip-left", "tip-right"], "half-right"),
        new("two-places", [Word("thing", "cable", "wheel"), Length("way", 1, 60, 8)], ["first-place", "last-place", "place-after"], "last-place"),
    ];

    static FigureParameter[] Sides(string name) =>
        [Word(name, "plain", "aslant", "thin", "taper", "wider", "chamfer", "knurl", "wrap", "sleeve", "worn", "burr", "punched", "thread", "bend")];

    static FigureParameter Length(string name, double low, double high, double usual) => new(name, ParameterSort.Length, low, high, usual, []);

    static FigureParameter Angle(string name, double low, double high, double usual) => new(name, ParameterSort.Angle, low, high, usual, []);

    static FigureParameter Count(string name, int low, int high, int usual) => new(name, ParameterSort.Count, low, high, usual, []);

    static FigureParameter Share(string name, double low, double high, double usual) => new(name, ParameterSort.Share, low, high, usual, []);

    /// <summary>A choice of words, the first of which stands in.</summary>
    static FigureParameter Word(string name, params IReadOnlyList<string> words) => new(name, ParameterSort.Word, 0, 0, 0, words);
}
