namespace Apprentice.Content.Lessons;

/// <summary>Searches lessons and glossary: every word of the query must stand in a section, under any of its names in the glossary.</summary>
public static class LessonSearch
{
    const int Around = 60;

    // Judgement: one slip in a short word and two in a longer one; in a word of three letters any slip makes another word.
    const int ShortWord = 4;
    const int LongWord = 7;

    /// <summary>Words of the glossary that match, by name, other name or meaning.</summary>
    public static IReadOnlyList<GlossaryWord> Words(Library library, string query)
    {
        var asked = Asked(query);
        return asked.Count == 0 ? [] : [.. library.Glossary.Words.Where(w => asked.All(a => w.All.Append(w.Meaning).Any(text => Has(text, a))))];
    }

    /// <summary>Words of the glossary that have a name, or a word of a name, nearly as it was typed: for what was misspelt. Nearest first.</summary>
    /// <param name="library">Where to search.</param>
    /// <param name="query">What was typed.</param>
    /// <param name="most">At most so many.</param>
    public static IReadOnlyList<GlossaryWord> Near(Library library, string query, int most)
    {
        var asked = query.Trim();
        var slips = asked.Any(char.IsDigit) || asked.Length < ShortWord ? 0 : asked.Length < LongWord ? 1 : 2;
        return
        [
            .. library.Glossary.Words.Select(w => (Word: w, Edits: Nearest.Edits(asked, w.All.SelectMany(n => Asked(n).Append(n)))))
                .Where(p => p.Edits > 0 && p.Edits <= slips).OrderBy(p => p.Edits).Select(p => p.Word).Take(most),
        ];
    }

    /// <summary>Sections that match, titles and headings first, then in the order of contents.</summary>
    /// <param name="library">Where to search.</param>
    /// <param name="query">Words; upper and lower case do not count.</param>
    /// <param name="most">At most so many.</param>
    public static IReadOnlyList<Hit> Sections(Library library, string query, int most)
    {
        var asked = SizeNames.Grouped(Asked(query)).Select(names => names.Count > 1 ? [.. names] : Names(library.Glossary, names[0])).ToList();
        if (asked.Count == 0) return [];
        var found = library.Lessons.SelectMany(lesson => lesson.Sections.Select((section, i) => (lesson, section, i)))
            .Select(p => (p.lesson, p.i, Head: $"{p.lesson.Title} {p.section.Heading}", Text: TextOf(p.section)))
            .Where(p => asked.TrueForAll(names => names.Exists(n => Has(p.Head, n) || Has(p.Text, n))));
        return [.. found.OrderBy(p => asked.TrueForAll(names => names.Exists(n => Has(p.Head, n))) ? 0 : 1).Take(most).Select(p => new Hit(p.lesson, p.i, Excerpt(p.Text, asked)))];
    }

    // A word stands for all its names: who asks for "block" finds "freewheel", who asks for "mech" finds "derailleur".
    static List<string> Names(Glossary glossary, string word) =>
        [word, .. glossary.Words.Where(w => w.All.Any(a => string.Equals(a, word, StringComparison.OrdinalIgnoreCase))).SelectMany(w => w.All)];

    static List<string> Asked(string query) => [.. query.Split(' ', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    // At the beginning of a word: "rim" is not found in "trim".
    static bool Has(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (at == 0 || !char.IsLetterOrDigit(text[at - 1]) || !char.IsLetterOrDigit(word[0])) return true;
        }

        return false;
    }

    static string Excerpt(string text, List<List<string>> asked)
    {
        var at = asked.SelectMany(names => names).Select(n => text.IndexOf(n, StringComparison.OrdinalIgnoreCase)).Where(i => i >= 0).DefaultIfEmpty(0).Min();
        var from = Math.Max(0, at - (Around / 3));
        if (from > 0) from = text.IndexOf(' ', from) is >= 0 and var space ? space + 1 : from;
        var to = Math.Min(text.Length, from + Around);
        if (to < text.Length && text.LastIndexOf(' ', to) is var end && end > from) to = end;
        return (from > 0 ? "… " : "") + text[from..to].Trim() + (to < text.Length ? " …" : "");
    }

    static string TextOf(LessonSection section) => string.Join(' ', section.Blocks.Select(b => b is LessonBlock.Table table ? string.Join("; ", table.Rows.Select(r => string.Join(", ", r.Select(LessonSpan.Plain)))) : b.Text));
}

/// <summary>A place that a search found.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Section">Index of the section.</param>
/// <param name="Excerpt">The words around it.</param>
public sealed record Hit(Lesson Lesson, int Section, string Excerpt);
