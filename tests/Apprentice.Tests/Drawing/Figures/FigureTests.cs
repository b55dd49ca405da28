using Apprentice.Drawing;
using Apprentice.Drawing.Figures;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Drawing.Figures;

/// <summary>Every figure of the catalogue can be drawn, from all that its parameters can be, true to scale.</summary>
public sealed class FigureTests
{
    static IEnumerable<Figure> Drawn => FigureCatalogue.All.Where(f => f.Id != Figure.PlainArt);

    /// <summary>Figures, two of their points, and what lies between them by the parameters alone, mm.</summary>
    static readonly (string Figure, string From, string To, Func<Traits, double> Millimetres)[] Lengths =
    [
        ("bar-side", "hinge-upper", "clamp-centre", t => t["stem"]),
        ("bar-side", "clamp-centre", "bend-top", t => t["rise"]),
        ("bar-side", "bend-underside", "bend-top", t => t["bar"]),
        ("bar-side", "clamp-lower", "clamp-upper", t => t["clamp-up"] + t["clamp-down"]),
        ("bar-side", "hinge-lower", "hinge-upper", t => t["plate"]),
        ("bar-front", "end-left", "end-right", t => t["width"]),
        ("grip-end", "inner-end", "outer-end", t => t["length"]),
        ("grip-end", "outer-end", "cap-end", t => t["cap"]),
        ("lever", "pivot", "cable-centre", t => t["pull"]),
        ("lever", "cable-centre", "cable-edge", t => t["seat"]),
        ("rim-section", "wall-left", "wall-right", t => t["inner-width"]),
        ("wheel-side", "tip-left", "tip-right", t => t["tips"]),
        ("wheel-side", "seat-left", "seat-right", t => t["seat"]),
        ("wheel-side", "floor", "tyre-top", t => t["outside"]),
        ("wheel-side", "axle", "block", t => t["track"]),
        ("wheel-side", "chord-left", "chord-right", t => t["tips"] - t["chord"]),
        ("valve", "base", "tip", t => t["length"]),
        ("hub-axle", "face-left", "face-right", t => t["width"]),
        ("spoke", "flats-top", "flats-bottom", t => t["flats"]),
        ("shell", "face-left", "face-right", t => t["width"]),
        ("shell", "bore-top", "bore-bottom", t => t["inner"]),
        ("freewheel-back", "middle", "tool-edge", t => t["across"] / 2),
        ("cassette-back", "middle", "tool-edge", t => t["across"] / 2),
        ("spindle-end", "flat-left", "flat-right", t => t["across"]),
        ("chainring", "hole-1", "hole-2", t => t["hole-distance"]),
        ("chain-side", "pin-first", "pin-last", t => t["links"] * 12.7 * (1 + t["wear"])),
        ("post", "side-top", "side-bottom", t => t["diameter"]),
        ("post", "tube-edge", "lower-end", t => t["depth"]),
        ("post", "mark", "lower-end", t => t["mark"]),
        ("brake-mount", "fixing-1", "fixing-2", t => t["distance"]),
        ("brake-mount", "edge-1", "edge-2", t => t["distance"] + 6),
        ("brake-mount", "adapter-1", "adapter-2", t => t["distance"] + 23),
        ("lever", "pivot", "cable-far", t => t["pull"] + t["seat"]),
        ("lever", "pivot-edge", "cable-centre", t => t["pull"] - 4),
        ("bore", "wide-left", "wide-right", t => t["bore"]),
        ("chain-top", "pin-top", "pin-bottom", t => t["pin"]),
        ("cups-in", "face-left", "face-right", t => t["width"]),
        ("cups-in", "face-left", "flange-right", t => t["width"] + t["flange"]),
        ("cups-in", "plate-left", "face-right", t => t["width"] + t["plate"]),
        ("hole-cut", "inside-top", "inside-bottom", t => t["bore"]),
        ("hole-row", "right-1", "right-2", t => t["hole-distance"]),
        ("hole-row", "right-1", "left-2", t => t["hole-distance"] - 10),
        ("rear-ends", "inner-left", "inner-right", t => t["gap"]),
        ("rear-ends", "inner-left", "outer-right", t => t["gap"] + t["plate"]),
        ("rear-ends", "outer-left", "outer-right", t => t["gap"] + (2 * t["plate"])),
        ("round-part", "middle-top", "middle-bottom", t => t["diameter"]),
        ("sprocket-stack", "big-face", "small-face", t => t["width"]),
        ("sprocket-stack", "big-face", "ring-face", t => t["width"] + t["ring"]),
        ("tooth-edge", "half-left", "half-right", t => t["thickness"]),
        ("two-places", "first-place", "last-place", t => t["way"]),
        ("headset", "tube-bottom", "tube-top", t => t["head"]),
        ("headset", "tube-top", "stack-top", t => t["stack-up"]),
        ("headset", "stack-bottom", "tube-bottom", t => t["stack-down"]),
    ];

    [Fact]
    public void The_shelf_draws_what_the_catalogue_names() => Assert.Equal(Drawn.Select(f => f.Id), FigureShelf.Ids.Order(StringComparer.Ordinal));

    [Fact]
    public void Every_figure_is_drawn_from_any_values_and_fills_its_room()
    {
        var rng = new Rng(41);
        foreach (var figure in Drawn)
        {
            for (var n = 0; n < 40; n++)
            {
                var sketch = FigureShelf.Draw(Any(figure, rng));
                Assert.Equal(figure.Points.Order(StringComparer.Ordinal), sketch.Points.Keys.Order(StringComparer.Ordinal));
                Assert.Contains(figure.Key, figure.Points);
                Assert.NotEmpty(sketch.Says);
                var (columns, rows) = (58 + rng.Below(143), 10 + rng.Below(51));
                var text = SketchDrawing.Rows(sketch, columns, rows, []);
                Assert.All(text, r => Assert.Equal(columns, r.Length));
                Assert.InRange(text.Count, 1, rows);
                Assert.Contains(text, r => r.Any(c => c > 0x2800));
            }
        }
    }

    [Fact]
    public void Drawn_lengths_are_those_of_the_parameters_within_a_dot()
    {
        var rng = new Rng(42);
        foreach (var (id, from, to, millimetres) in Lengths)
        {
            for (var n = 0; n < 60; n++)
            {
                var traits = Any(FigureOf(id), rng);
                if (id == "chain-side" && traits.Is("cut", "yes")) continue;
                if (id == "chainring" && traits.Is("spread", "unequal") && traits.Count("bolts") != 4) continue;
                var sketch = FigureShelf.Draw(traits);
                var placing = Placing.Of(sketch, 58 + rng.Below(143), 10 + rng.Below(51), marked: rng.Below(2) == 0);
                var (a, b) = (placing.Dot(sketch.Points[from]), placing.Dot(sketch.Points[to]));
                var dots = Math.Sqrt(((a.X - b.X) * (double)(a.X - b.X)) + ((a.Y - b.Y) * (double)(a.Y - b.Y)));
                Assert.True(Math.Abs(dots - (millimetres(traits) * placing.DotsPerMm)) <= 1.5, $"{id} {from} to {to}: {dots} dots for {millimetres(traits)} mm at {placing.DotsPerMm}");
                Assert.Equal(millimetres(traits), sketch.Points[from].To(sketch.Points[to]), 6);
            }
        }
    }

    [Fact]
    public void Holes_of_a_chainring_lie_on_their_circle()
    {
        // Source: facts U5.3, a = BCD x sin(180 / n): 130 mm and 5 bolts are 76.4 mm; 104 mm and 4 bolts 73.5 mm.
        foreach (var (bolts, apart, circle) in (ReadOnlySpan<(double, double, double)>)[(5, 76.41, 130), (4, 73.54, 104)])
        {
            var sketch = FigureShelf.Draw(With("chainring", ("bolts", bolts), ("hole-distance", apart)));
            Assert.Equal(circle / 2, sketch.Points["middle"].To(sketch.Points["hole-1"]), 1);
        }
    }

    [Fact]
    public void A_worn_chain_is_as_long_as_the_tables_say()
    {
        // Source: facts T4, wear table for 24 pitches: 304.80 new, 306.32 at 0.5 of 100, 307.85 at 1 of 100.
        foreach (var (wear, millimetres) in (ReadOnlySpan<(double, double)>)[(0, 304.80), (0.005, 306.32), (0.01, 307.85)])
        {
            var sketch = FigureShelf.Draw(With("chain-side", ("links", 24), ("wear", wear)));
            Assert.Equal(millimetres, sketch.Points["pin-first"].To(sketch.Points["pin-last"]), 2);
        }
    }

    [Fact]
    public void Ten_pitches_of_a_bolt_are_ten_and_its_crests_stand_as_far_apart_as_it_is_thick()
    {
        // A thread of 0.25 of the thickness is drawn as it is: 2 mm on 8 mm.
        var points = FigureShelf.Draw(With("bolt", ("across", 8), ("pitch", 2))).Points;
        Assert.Equal(20, points["crest-0"].To(points["crest-10"]), 6);
        Assert.Equal(18, points["crest-1"].To(points["crest-10"]), 6);
        Assert.Equal(8, points["crest-top"].Y - points["crest-bottom"].Y, 6);
        Assert.True(points["groove-top"].Y < points["crest-top"].Y);
    }

    [Fact]
    public void A_picture_is_never_said_in_figures_that_are_read()
    {
        foreach (var figure in Drawn) Assert.All(DrawnPart.Usual(figure).Words, w => Assert.DoesNotContain(" mm", w, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Figures_look_like_this(int columns, int rows)
    {
        var text = new List<string>();
        foreach (var figure in Drawn)
        {
            var part = DrawnPart.Usual(figure);
            text.AddRange([$"== {figure.Id}", .. part.Rows(columns - 2, rows - 8).Select(r => r.TrimEnd()), .. rows == 24 ? part.Words : []]);
        }
        Screens.Golden.Same($"figures-{columns}x{rows}", string.Join('\n', text) + "\n");
    }

    static Figure FigureOf(string id) => FigureCatalogue.Of(id) ?? throw new ArgumentException(id, nameof(id));

    static Traits With(string figure, params (string Name, double Value)[] values) =>
        new(FigureOf(figure), values.ToDictionary(v => v.Name, v => v.Value, StringComparer.Ordinal), new Dictionary<string, string>(StringComparer.Ordinal));

    static Traits Any(Figure figure, Rng rng) => new(
        figure,
        figure.Parameters.Where(p => p.Sort != ParameterSort.Word).ToDictionary(p => p.Name, p => Within(p, rng), StringComparer.Ordinal),
        figure.Parameters.Where(p => p.Sort == ParameterSort.Word).ToDictionary(p => p.Name, p => p.Words[rng.Below(p.Words.Count)], StringComparer.Ordinal));

    static double Within(FigureParameter p, Rng rng)
    {
        var value = rng.Below(6) switch { 0 => p.Low, 1 => p.High, _ => p.Low + ((p.High - p.Low) * rng.Unit()) };
        return p.Sort == ParameterSort.Count ? Math.Round(value) : value;
    }
}
