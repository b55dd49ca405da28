using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>What a topic knows, as plain lines.</summary>
static class TopicText
{
    /// <summary>Writes it.</summary>
    public static void Write(TextWriter to, Topic topic)
    {
        to.WriteLine($"{topic.Id}: {topic.Title} ({Choose.Dashed(topic.State)})");
        if (topic.CheckedBy.Length > 0) to.WriteLine($"checked {topic.CheckedBy}");
        to.WriteLine($"version {topic.Version}");
        to.WriteLine(topic.Question);
        Section(to, "Where bikes come from", topic.Provenances.Select(p => $"{p.Id}: {p.Name}"));
        Section(to, "Parts and what they can be", topic.Parts.Select(OfPart));
        Section(to, "Clues", topic.Clues.SelectMany(OfClue));
        Section(to, "What is told first", topic.Openings.Select(o => $"{o.Id}: {o.Name} ({string.Join(", ", o.Clues.Select(c => $"{c.Clue} by {Choose.Dashed(c.Channel)}"))})"));
        Section(to, "What customers want", topic.Wants.Select(w => $"{w.Id}: {w.Name} (asks {string.Join(", ", w.Asks)}{(w.OrderLines.Count == 0 ? "" : $"; orders {string.Join(", ", w.OrderLines.Select(l => l.Id))}")})"));
        Section(to, "Spares", topic.Spares.Select(s => $"{s.Id}: {s.Name}, for {s.OrderLine}{(s.Hazard ? " (can hurt when it is the wrong one)" : "")}"));
    }

    static void Section(TextWriter to, string title, IEnumerable<string> lines)
    {
        to.WriteLine();
        to.WriteLine(title);
        foreach (var line in lines) to.WriteLine($"  {line}");
    }

    static string OfPart(Part part) =>
        $"{part.Id}: {string.Join(", ", part.Kinds.Select(k => k.Id))}{(part.NonePrior > 0 ? ", none" : "")}{(part.Asked ? "" : " (not asked)")}";

    static IEnumerable<string> OfClue(Clue clue)
    {
        yield return $"{clue.Id}: {clue.Name} ({clue.Tool}, {Spoken.Minutes(clue.Minutes)} min; {string.Join(", ", clue.Channels.Select(c => Choose.Dashed(c.Channel)))})";
        yield return clue.Shows is Shows.Measured m
            ? $"  a reading from {m.Low:0.##} to {m.High:0.##} mm, in steps of {m.Step:0.###} mm"
            : $"  {string.Join(", ", FindingText.FindingsOf(clue).Select(f => f.Id))}";
    }
}
