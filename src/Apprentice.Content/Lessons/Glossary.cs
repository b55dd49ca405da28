namespace Apprentice.Content.Lessons;

/// <summary>The words of the trade, from the tables "word | also called | meaning".</summary>
/// <param name="Words">Words by alphabet.</param>
public sealed record Glossary(IReadOnlyList<GlossaryWord> Words)
{
    /// <summary>An empty glossary.</summary>
    public static Glossary Empty { get; } = new([]);

    /// <summary>Name of the files that hold words.</summary>
    public const string FileName = "words.md";

    /// <summary>The word of a name, whatever its case; null when there is none.</summary>
    public GlossaryWord? Find(string name) => Words.FirstOrDefault(w => w.All.Any(a => string.Equals(a, name, StringComparison.OrdinalIgnoreCase)));

    /// <summary>Reads words from lesson files named words.md; a word that stands twice keeps its first meaning and all its other names.</summary>
    /// <param name="files">The read files.</param>
    public static Glossary Of(IEnumerable<Lesson> files)
    {
        var rows = files.SelectMany(f => f.Sections).SelectMany(s => s.Blocks).OfType<LessonBlock.Table>().SelectMany(t => t.Rows.Skip(1)).Where(r => r.Count >= 3);
        var words = rows.Select(r => new GlossaryWord(Text(r[0]), [.. Text(r[1]).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)], Text(r[2])));
        return new Glossary(
        [
            .. words.Where(w => w.Name.Length > 0).GroupBy(w => w.Name, StringComparer.OrdinalIgnoreCase)
                .Select(g => g.First() with { Also = [.. g.SelectMany(w => w.Also).Distinct(StringComparer.OrdinalIgnoreCase)] })
                .OrderBy(w => w.Name, StringComparer.OrdinalIgnoreCase),
        ]);
    }

    /// <summary>Faults of a words file.</summary>
    public static IEnumerable<Fault> Faults(string file, Lesson words)
    {
        var tables = words.Sections.SelectMany(s => s.Blocks).OfType<LessonBlock.Table>().ToList();
        if (tables.Count == 0) yield return new Fault(file, 1, "A words file needs a table with the columns word, also called, meaning.");
        foreach (var table in tables)
        {
            string[] needed = ["word", "also called", "meaning"];
            if (!table.Rows[0].Select(Text).SequenceEqual(needed, StringComparer.OrdinalIgnoreCase))
                yield return new Fault(file, table.Line, "The columns of a words table are word, also called, meaning, in this order.");
            foreach (var row in table.Rows.Skip(1).Where(r => r.Count < 3 || Text(r[0]).Length == 0 || Text(r[2]).Length == 0))
                yield return new Fault(file, table.Line, $"The word \"{(row.Count == 0 ? "" : Text(row[0]))}\" needs a name and a meaning.");
        }
    }

    static string Text(IReadOnlyList<LessonSpan> cell) => LessonSpan.Plain(cell).Trim();
}

/// <summary>A word of the trade.</summary>
/// <param name="Name">The word.</param>
/// <param name="Also">Other words for it: UK and US, inch and metric.</param>
/// <param name="Meaning">What it means, in a sentence.</param>
public sealed record GlossaryWord(string Name, IReadOnlyList<string> Also, string Meaning)
{
    /// <summary>The word and its other names.</summary>
    public IEnumerable<string> All => Also.Prepend(Name);
}
