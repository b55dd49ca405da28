using Apprentice.Drawing.Figures;
using Apprentice.Engine.Topics;

namespace Apprentice.Drawing;

/// <summary>Two kinds of a part at one scale, one above or beside the other, with the difference marked: an arrow with its figure where a size differs, a letter where a shape does. Pure.</summary>
sealed class DrawnPair
{
    const int Between = 3;
    const string Letter = "A";

    readonly Sketch _first;
    readonly Sketch _second;
    readonly (string First, string Second) _names;
    readonly IReadOnlyList<(string Point, string Text)> _marks;

    DrawnPair(Sketch first, Sketch second, (string First, string Second) names, IReadOnlyList<(string Point, string Text)> marks, IReadOnlyList<string> words) =>
        (_first, _second, _names, _marks, Words) = (first, second, names, marks, words);

    /// <summary>Both pictures and the difference in sentences, each picture under its name.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>What stands above each picture.</summary>
    public (string First, string Second) Names => _names;

    /// <summary>A pair of kinds of a topic's drawing.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="drawing">Short name of one of its drawings; no text art.</param>
    /// <param name="first">A kind, with kinds of other parts as wanted.</param>
    /// <param name="second">Another kind.</param>
    /// <param name="names">What stands above each, or null for the names of the kinds.</param>
    /// <param name="byShape">True to mark the shape, not a size, where the figure says at which point.</param>
    /// <exception cref="ArgumentException">The topic has no such drawing, or the drawing no such kind.</exception>
    public static DrawnPair Of(Topic topic, string drawing, DrawnChoice first, DrawnChoice second, (string First, string Second)? names = null, bool byShape = false)
    {
        var plan = topic.Drawings.FirstOrDefault(d => d.Id == drawing) ?? throw new ArgumentException($"The topic {topic.Id} has no drawing {drawing}.", nameof(drawing));
        var (one, other) = (DrawnPart.Of(topic, drawing, first), DrawnPart.Of(topic, drawing, second));
        if (one.Points.Count == 0 || other.Points.Count == 0) throw new ArgumentException($"The drawing {drawing} is text art or has no points: it cannot be laid beside another.", nameof(drawing));
        var said = names ?? (NameOf(topic, plan, first), NameOf(topic, plan, second));
        var key = FigureCatalogue.Of(plan.Figure)?.Key ?? "";
        var datum = byShape && key.Length > 0 ? null : plan.Datums.FirstOrDefault(d => d.Datum == 0 && d.From != d.To && Differ(one, other, d));
        return datum is not null
            ? new DrawnPair(Arrow(one.Sketch, datum), Arrow(other.Sketch, datum), said, [], Said(said, one, other, Difference(one, other, datum)))
            : new DrawnPair(one.Sketch, other.Sketch, said, key.Length > 0 ? [(key, Letter)] : [], Said(said, one, other, Content.Words.Of("figure.pair-look", ("letter", Letter))));
    }

    /// <summary>The rows of text: each as wide as the room.</summary>
    /// <param name="columns">Columns at hand, at least 20.</param>
    /// <param name="rows">Rows at hand, at least 6.</param>
    public IReadOnlyList<string> Rows(int columns, int rows)
    {
        var half = (columns - Between) / 2;
        var above = Scale(columns, (rows - 2) / 2);
        var beside = Scale(half, rows - 1);
        if (above >= beside)
        {
            return [.. Alone(_first, _names.First, columns, (rows - 2) / 2, above, Shift(columns, above)), .. Alone(_second, _names.Second, columns, (rows - 2) / 2, above, 0)];
        }
        var (left, right) = (Alone(_first, _names.First, half, rows - 1, beside, 0), Alone(_second, _names.Second, half, rows - 1, beside, 0));
        var blank = new string(' ', half);
        return [.. Enumerable.Range(0, Math.Max(left.Count, right.Count)).Select(i => ((i < left.Count ? left[i] : blank) + new string(' ', Between) + (i < right.Count ? right[i] : blank)).PadRight(columns))];
    }

    double Scale(int columns, int rows) =>
        Math.Min(Placing.Of(_first, columns, Math.Max(1, rows), marked: true).DotsPerMm, Placing.Of(_second, columns, Math.Max(1, rows), marked: true).DotsPerMm);

    /// <summary>Dots by which the first is moved so that its first point stands over that of the second, as far as there is room.</summary>
    double Shift(int columns, double scale)
    {
        var (one, other) = (Placing.At(_first, columns, 1, marked: true, scale), Placing.At(_second, columns, 1, marked: true, scale));
        var name = _first.Points.Keys.First();
        var wanted = other.Left + (_second.Points[name].X * scale) - one.Left - (_first.Points[name].X * scale);
        var (low, high) = _first.Bounds();
        var (least, most) = (4 - one.Left - (low.X * scale), (2 * columns) - 5 - one.Left - (high.X * scale));
        return least > most ? 0 : Math.Clamp(wanted, least, most);
    }

    IReadOnlyList<string> Alone(Sketch sketch, string name, int columns, int rows, double scale, double shift)
    {
        var placing = Placing.At(sketch, columns, Math.Max(1, rows), marked: true, scale);
        var title = (name.Length > columns ? name[..columns] : name).PadRight(columns);
        return [title, .. SketchDrawing.Rows(sketch, columns, placing with { Left = placing.Left + shift }, _marks)];
    }

    static bool Differ(DrawnPart one, DrawnPart other, DrawnDatum d) => Math.Abs(Long(one, d) - Long(other, d)) > 0.05;

    static double Long(DrawnPart part, DrawnDatum d) => part.Points[d.From].To(part.Points[d.To]);

    static string Difference(DrawnPart one, DrawnPart other, DrawnDatum d) =>
        Content.Words.Of("figure.pair-size", ("first", Millimetres(Long(one, d))), ("second", Millimetres(Long(other, d))), ("apart", Millimetres(Math.Abs(Long(one, d) - Long(other, d)))));

    static string Millimetres(double size) => Content.Words.Of("spoken.mm", ("n", size.ToString("0.#")));

    static IReadOnlyList<string> Said((string First, string Second) names, DrawnPart one, DrawnPart other, string difference) =>
        [$"{names.First}:", .. one.Words, $"{names.Second}:", .. other.Words, difference];

    // A kind by its name, a finding by what it says.
    static string NameOf(Topic topic, TopicDrawing plan, DrawnChoice choice)
    {
        var kinds = choice.IsFinding ? [] : topic.Parts.FirstOrDefault(p => p.Id == plan.Part)?.Kinds ?? [];
        var findings = topic.Clues.Where(c => plan.Clues.Contains(c.Id, StringComparer.Ordinal)).SelectMany(c => c.Shows is Shows.Table table ? table.Findings : []);
        return kinds.FirstOrDefault(k => k.Id == choice.Id)?.Name ?? findings.FirstOrDefault(f => f.Id == choice.Id)?.Text ?? choice.Id;
    }

    /// <summary>Adds an arrow with its length in mm beside the part, from one point to the other.</summary>
    static Sketch Arrow(Sketch sketch, DrawnDatum datum)
    {
        var drawn = sketch.Moved(s => s);
        var (low, high) = sketch.Bounds();
        var (from, to) = (sketch.Points[datum.From], sketch.Points[datum.To]);
        var (away, tip) = (0.1 * Math.Max(high.X - low.X, high.Y - low.Y), 0.015 * Math.Max(high.X - low.X, high.Y - low.Y));
        var flat = Math.Abs(to.X - from.X) >= Math.Abs(to.Y - from.Y);
        var (start, end) = flat ? (new Spot(from.X, low.Y - away), new Spot(to.X, low.Y - away)) : (new Spot(high.X + away, from.Y), new Spot(high.X + away, to.Y));
        var (x, y) = flat ? (Math.Sign(end.X - start.X) * tip, tip) : (tip, Math.Sign(end.Y - start.Y) * tip);
        return drawn.Dashes(from, start).Dashes(to, end).Line(start, end)
            .Line(start.By(x, y), start, flat ? start.By(x, -y) : start.By(-x, y))
            .Line(end.By(-x, -y), end, flat ? end.By(-x, y) : end.By(x, -y))
            .Write(new((start.X + end.X) / 2, (start.Y + end.Y) / 2), $" {Millimetres(from.To(to))} ");
    }
}
