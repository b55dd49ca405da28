using Apprentice.Engine.Topics;

namespace Apprentice.Content.Lessons;

/// <summary>The form of a lesson: card, headings, length, cautions, last line.</summary>
static class LessonForm
{
    const int MostCardLines = 16;
    const int CardWidth = 78;
    const string Card = "Card";
    const string LastLine = "On the bike, the part decides. Ask if it disagrees.";

    static readonly string[] CardPoints = ["Look for", "From where to where", "Settles", "Does not settle", "Look-alike", "Safety"];
    static readonly string[] Examples = ["Worked example", "Two that do not go together", "Half finished", "Alone", "A worked decision", TryIt.Heading];
    static readonly string[] SafetyHeadings = ["Safety", "What can hurt", "Stop signs"];

    static readonly Dictionary<string, string[]> Headings = new(StringComparer.Ordinal)
    {
        ["overview"] = ["What is asked", "Why it matters", "The kinds", "What to order", "What can hurt", "When it is not settled"],
        ["weighing"] = ["Two that do not go together", "Half finished", "Alone", "Linked clues"],
        ["decision"] = ["What a wrong order costs", "Order now, two kinds, wait, or ask", "Stop signs", "A worked decision"],
    };

    static readonly string[] ClueHeadings = ["How to do it", "Worked example", "How it lies", "What it does not prove", "Minutes"];

    /// <summary>True for a section whose figures are readings of one invented bike.</summary>
    public static bool IsExample(string heading) => Examples.Contains(heading, StringComparer.Ordinal);

    /// <summary>Faults of the form.</summary>
    public static IEnumerable<Fault> Faults(string file, Lesson lesson, Topic topic)
    {
        if (lesson.Sections.Count == 0 || lesson.Sections[0].Heading != Card)
        {
            yield return new Fault(file, 1, "A lesson begins with its card: write ## Card below the title.");
            yield break;
        }

        var card = lesson.Sections[0];
        var points = card.Blocks.OfType<LessonBlock.Point>().Select(p => LessonSpan.Plain(p.Spans)).ToList();
        foreach (var name in CardPoints.Where(name => !points.Exists(p => p.StartsWith($"{name}:", StringComparison.Ordinal))))
            yield return new Fault(file, card.Line, $"The card needs the point \"- {name}: …\".");
        if (CardLines(lesson.Title, points) is > MostCardLines and var lines)
            yield return new Fault(file, card.Line, $"The card takes {lines} lines of {CardWidth} columns; at most {MostCardLines} fit.");
        foreach (var heading in Headings.GetValueOrDefault(lesson.Id, ClueHeadings).Where(h => lesson.Sections.All(s => s.Heading != h)))
            yield return new Fault(file, 1, $"The lesson needs the section \"## {heading}\".");
        if (LastOf(lesson) != LastLine) yield return new Fault(file, 1, $"The last line must be \"{LastLine}\"");
        if (NeedsCaution(lesson, topic) && !HasCaution(lesson))
            yield return new Fault(file, 1, "The topic can hurt here: a section \"## Safety\" (or \"What can hurt\", \"Stop signs\") must send the reader to the maker's instructions, local rules and a qualified mechanic.");
    }

    static int CardLines(string title, IReadOnlyList<string> points) =>
        (title.Length / CardWidth) + 1 + points.Sum(p => Wrapped(p, CardWidth - 2));

    static int Wrapped(string text, int width)
    {
        var (lines, used) = (1, 0);
        foreach (var word in text.Split(' '))
        {
            if (used > 0 && used + 1 + word.Length > width) (lines, used) = (lines + 1, 0);
            used += (used > 0 ? 1 : 0) + word.Length;
        }

        return lines;
    }

    static string LastOf(Lesson lesson) => lesson.Sections[^1].Blocks is [.., var last] ? LessonSpan.Plain(last.AllSpans).Trim() : "";

    static bool NeedsCaution(Lesson lesson, Topic topic) => lesson.Id is "overview" or "decision"
        ? topic.Spares.Any(s => s.Hazard) || topic.Clues.Any(c => c.Caution.Length > 0)
        : topic.Clues.Any(c => c.Id == lesson.Id && c.Caution.Length > 0);

    static bool HasCaution(Lesson lesson)
    {
        var text = string.Join(' ', lesson.Sections.Where(s => SafetyHeadings.Contains(s.Heading, StringComparer.Ordinal)).SelectMany(s => s.Blocks).Select(b => LessonSpan.Plain(b.AllSpans)));
        return ((string[])["maker", "rule", "mechanic"]).All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));
    }
}
