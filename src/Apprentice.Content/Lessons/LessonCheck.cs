using Apprentice.Content.Pages;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Apprentice.Content.Lessons;

/// <summary>Checks lessons: a paragraph is one line, so that every window can wrap it, and links lead somewhere.</summary>
public static class LessonCheck
{
    /// <summary>The faults of a lesson, in the order of its lines; never an exception, whatever the text.</summary>
    /// <param name="file">The file's name as faults tell it.</param>
    /// <param name="text">The file's text.</param>
    /// <param name="isThere">Whether a relative link, its anchor left out, leads to something.</param>
    public static IReadOnlyList<Fault> Faults(string file, string text, Func<string, bool> isThere)
    {
        if (Markup.Read(text) is not { } document) return [new Fault(file, 1, $"{Markup.TooDeep}.")];
        var breaks = document.Descendants<LineBreakInline>()
            .Select(b => new Fault(file, b.Line + 1, "A line ends in the middle of a paragraph: write each paragraph or point in one line."));
        var links = document.Descendants<LinkInline>().Where(l => IsDead(l.Url ?? "", isThere))
            .Select(l => new Fault(file, l.Line + 1, $"The link '{l.Url}' leads nowhere: write the path from this file to one that is there."));
        var raw = document.Descendants<LiteralInline>().Where(l => l.Content.ToString().Contains("](", StringComparison.Ordinal))
            .Select(l => new Fault(file, l.Line + 1, "A link is not read as one, because there is a space in its target: write a hyphen for it, as in word:crown-race."));
        return [.. breaks.Concat(links).Concat(raw).Concat(RunTogether(file, text)).OrderBy(f => f.Line)];
    }

    // A header under a row of another table would be read as one more row of it.
    static IEnumerable<Fault> RunTogether(string file, string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        for (var i = 2; i < lines.Length; i++)
        {
            if (lines[i].StartsWith('|') && lines[i].Contains("--", StringComparison.Ordinal) && lines[i].All(c => c is '|' or '-' or ':' or ' ') && lines[i - 2].StartsWith('|'))
                yield return new Fault(file, i, "Two tables run together: put an empty line between them.");
        }
    }

    // Links to figures, words and drawings are checked with the topic beside them.
    static bool IsDead(string link, Func<string, bool> isThere)
    {
        if (link.Length == 0) return true;
        if (FigureLink.IsFigure(link) || link.StartsWith("word:", StringComparison.Ordinal) || link.StartsWith("drawing:", StringComparison.Ordinal)) return false;
        if (link.StartsWith('#') || Uri.TryCreate(link, UriKind.Absolute, out var address) && address.Scheme is "http" or "https" or "mailto") return false;
        var path = Uri.UnescapeDataString(link.Split('#')[0]);
        return !isThere(path);
    }
}
