using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Drawing.Figures;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>Drawings of a topic for a sheet: of each drawing the two kinds or findings that look least alike, as scalable pictures.</summary>
static class SheetPictures
{
    const string Letters = "ABCDEFGH";

    /// <summary>What the eye sees on a picture as wide as a finger is long: a shift by this share of its size.</summary>
    const double LeastSeen = 0.02;

    /// <summary>Caption and SVG of each drawing; text art is left out.</summary>
    public static IReadOnlyList<(string Caption, string Svg)> Of(Topic topic) => [.. topic.Drawings.SelectMany(d => Of(topic, d))];

    static IEnumerable<(string Caption, string Svg)> Of(Topic topic, TopicDrawing drawing)
    {
        var right = drawing.Datums.Where(d => d.Datum == 0).Take(Letters.Length).ToList();
        var legend = string.Concat(right.Select((d, i) => $" {Letters[i]}: {topic.Clues.First(c => c.Id == d.Clue).Name}."));
        if (drawing.IsAlike)
        {
            var sketch = DrawnPart.Of(topic, drawing.Id, DrawnChoice.Kind(drawing.Kinds[0].Of)).Sketch;
            yield return ($"{drawing.Title}.{legend}", SketchSvg.Of(sketch, drawing.Id, Spans(sketch, right)));
            yield break;
        }

        var choices = drawing.Kinds.Count > 0
            ? drawing.Kinds.Select(k => (Choice: DrawnChoice.Kind(k.Of), Name: topic.Parts.FirstOrDefault(p => p.Id == drawing.Part)?.Kinds.FirstOrDefault(x => x.Id == k.Of)?.Name ?? k.Of))
            : drawing.Findings.Select(f => (Choice: DrawnChoice.Finding(f.Of), Name: FindingName(topic, drawing, f.Of)));
        var drawn = choices.Select(c => (c.Choice, c.Name, DrawnPart.Of(topic, drawing.Id, c.Choice).Sketch)).Where(c => c.Sketch.Inks.Count > 0).ToList();
        var shown = LeastAlike(drawn);
        var alone = shown.Count == 1 && drawn.Count > 1;
        var room = shown.Count > 0 ? SketchSvg.RoomOf([.. shown.Select(s => s.Sketch)]) : default;
        foreach (var (choice, name, sketch) in shown)
            yield return (alone ? Words.Of("sheet.alike", ("title", drawing.Title), ("legend", legend)) : $"{drawing.Title}: {name}.{legend}", SketchSvg.Of(sketch, $"{drawing.Id}-{choice.Id}", Spans(sketch, right), room));
    }

    static List<(string Letter, Spot From, Spot To)> Spans(Sketch sketch, IReadOnlyList<DrawnDatum> right) =>
        [.. right.Select((d, i) => (Letters[i].ToString(), sketch.Points[d.From], sketch.Points[d.To]))];

    static List<(DrawnChoice Choice, string Name, Sketch Sketch)> LeastAlike(List<(DrawnChoice Choice, string Name, Sketch Sketch)> drawn)
    {
        if (drawn.Count < 2) return drawn;
        var (one, other) = Enumerable.Range(0, drawn.Count).SelectMany(a => Enumerable.Range(a + 1, drawn.Count - a - 1).Select(b => (a, b))).MaxBy(p => Apart(drawn[p.a].Sketch, drawn[p.b].Sketch));
        return Apart(drawn[one].Sketch, drawn[other].Sketch) < LeastSeen ? [drawn[one]] : [drawn[one], drawn[other]];
    }

    // Another number of lines tells more than any shift of the same ones; a shift counts against the size of the picture.
    static double Apart(Sketch one, Sketch other)
    {
        var lines = Math.Abs(one.Inks.Count - other.Inks.Count);
        var (low, high) = one.Bounds();
        var size = Math.Max(1, Math.Max(high.X - low.X, high.Y - low.Y));
        return lines + one.Inks.Zip(other.Inks, (a, b) => Shift(a, b) / size).DefaultIfEmpty(0).Max();
    }

    static double Shift(Ink one, Ink other) =>
        one.Path.Zip(other.Path, (a, b) => Math.Max(Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y))).DefaultIfEmpty(0).Max();

    static string FindingName(Topic topic, TopicDrawing drawing, string finding) => topic.Clues.Where(c => drawing.Clues.Contains(c.Id, StringComparer.Ordinal))
        .SelectMany(FindingText.FindingsOf).FirstOrDefault(f => f.Id == finding).Text ?? finding;
}
