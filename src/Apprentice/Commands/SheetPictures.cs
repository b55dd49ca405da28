using Apprentice.Drawing;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>Drawings of a topic for a sheet: every kind or finding of each drawing, as scalable pictures.</summary>
static class SheetPictures
{
    const int MostOfADrawing = 2;

    /// <summary>Caption and SVG of each drawing; text art is left out.</summary>
    public static IReadOnlyList<(string Caption, string Svg)> Of(Topic topic) => [.. topic.Drawings.SelectMany(d => Of(topic, d))];

    static IEnumerable<(string Caption, string Svg)> Of(Topic topic, TopicDrawing drawing)
    {
        if (drawing.IsAlike)
        {
            yield return (drawing.Title, SketchSvg.Of(DrawnPart.Of(topic, drawing.Id, DrawnChoice.Kind(drawing.Kinds[0].Of)).Sketch, drawing.Id));
            yield break;
        }
        var choices = drawing.Kinds.Count > 0
            ? drawing.Kinds.Select(k => (Choice: DrawnChoice.Kind(k.Of), Name: topic.Parts.FirstOrDefault(p => p.Id == drawing.Part)?.Kinds.FirstOrDefault(x => x.Id == k.Of)?.Name ?? k.Of))
            : drawing.Findings.Select(f => (Choice: DrawnChoice.Finding(f.Of), Name: FindingName(topic, drawing, f.Of)));
        foreach (var (choice, name) in choices.Take(MostOfADrawing))
        {
            var part = DrawnPart.Of(topic, drawing.Id, choice);
            if (part.Sketch.Inks.Count > 0) yield return ($"{drawing.Title}: {name}", SketchSvg.Of(part.Sketch, $"{drawing.Id}-{choice.Id}"));
        }
    }

    static string FindingName(Topic topic, TopicDrawing drawing, string finding) => topic.Clues.Where(c => drawing.Clues.Contains(c.Id, StringComparer.Ordinal))
        .SelectMany(FindingText.FindingsOf).FirstOrDefault(f => f.Id == finding).Text ?? finding;
}
