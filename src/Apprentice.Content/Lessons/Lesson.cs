namespace Apprentice.Content.Lessons;

/// <summary>A lesson: a card and the sections below it.</summary>
/// <param name="Path">Its path under lessons, with slashes: "rim-size/bed-tape.md".</param>
/// <param name="Title">Title in the trade's words.</param>
/// <param name="Sections">Sections in the order of the file; the first is the card.</param>
public sealed record Lesson(string Path, string Title, IReadOnlyList<LessonSection> Sections)
{
    /// <summary>Short name of its topic: the folder.</summary>
    public string Topic => Path.Contains('/') ? Path[..Path.IndexOf('/')] : "";

    /// <summary>Short name: the file without its ending. A clue's lesson is named after the clue.</summary>
    public string Id => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>Index of the section with an anchor, or 0 for the card when there is none.</summary>
    public int SectionOf(string anchor) => Math.Max(0, Sections.ToList().FindIndex(s => string.Equals(s.Anchor, anchor, StringComparison.Ordinal)));
}

/// <summary>A section of a lesson.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Line">Line of the heading in the file, from 1.</param>
/// <param name="Blocks">What stands in it.</param>
public sealed record LessonSection(string Heading, int Line, IReadOnlyList<LessonBlock> Blocks)
{
    /// <summary>Where a link leads: the heading in lower case, letters and digits, hyphens between words.</summary>
    public string Anchor => AnchorOf(Heading);

    /// <summary>The anchor of a heading.</summary>
    public static string AnchorOf(string heading) =>
        string.Join('-', new string([.. heading.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>A block of a lesson.</summary>
/// <param name="Line">Line in the file, from 1.</param>
public abstract record LessonBlock(int Line)
{
    /// <summary>A paragraph.</summary>
    /// <param name="Line">Line in the file.</param>
    /// <param name="Spans">Its text.</param>
    public sealed record Paragraph(int Line, IReadOnlyList<LessonSpan> Spans) : LessonBlock(Line);

    /// <summary>A point of a list.</summary>
    /// <param name="Line">Line in the file.</param>
    /// <param name="Number">Its number, or null for a plain point.</param>
    /// <param name="Spans">Its text.</param>
    public sealed record Point(int Line, int? Number, IReadOnlyList<LessonSpan> Spans) : LessonBlock(Line);

    /// <summary>A table.</summary>
    /// <param name="Line">Line in the file.</param>
    /// <param name="Rows">Rows of cells, the header first; a cell is a run of text.</param>
    public sealed record Table(int Line, IReadOnlyList<IReadOnlyList<IReadOnlyList<LessonSpan>>> Rows) : LessonBlock(Line);

    /// <summary>A drawing of the topic.</summary>
    /// <param name="Line">Line in the file.</param>
    /// <param name="Drawing">Its short name.</param>
    /// <param name="Kinds">What is drawn: one kind or finding, or two side by side.</param>
    /// <param name="Caption">What it is called.</param>
    public sealed record Picture(int Line, string Drawing, IReadOnlyList<string> Kinds, string Caption) : LessonBlock(Line);

    /// <summary>Lines that stand as they are written: an example of a file.</summary>
    /// <param name="Line">Line in the file.</param>
    /// <param name="Lines">The lines.</param>
    public sealed record Verbatim(int Line, IReadOnlyList<string> Lines) : LessonBlock(Line);

    /// <summary>The text of this block; cells of a table stand apart.</summary>
    public string Text => this is Table table
        ? string.Join(" | ", table.Rows.SelectMany(r => r).Select(LessonSpan.Plain))
        : LessonSpan.Plain(AllSpans);

    /// <summary>All runs of text in this block.</summary>
    public IEnumerable<LessonSpan> AllSpans => this switch
    {
        Paragraph paragraph => paragraph.Spans,
        Point point => point.Spans,
        Table table => table.Rows.SelectMany(r => r).SelectMany(c => c),
        _ => [],
    };
}

/// <summary>A run of text.</summary>
/// <param name="Text">The text.</param>
/// <param name="Link">Where it leads: "size:bead-seat/622", "bed-tape.md#how-it-lies", "word:freewheel"; null for plain text.</param>
public sealed record LessonSpan(string Text, string? Link = null)
{
    /// <summary>Runs of text as one text.</summary>
    public static string Plain(IEnumerable<LessonSpan> spans) => string.Concat(spans.Select(s => s.Text));
}
