using System.Text;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Apprentice.Content.Pages;

/// <summary>A Markdown file as headings, points and tables; prose is left out.</summary>
sealed class Page
{
    Passage _current;

    Page()
    {
        Head = new Passage(new Cell("", 1));
        _current = Head;
    }

    /// <summary>The title and the points beneath it.</summary>
    public Passage Head { get; private set; }

    /// <summary>Sections in the order of the file.</summary>
    public List<Passage> Sections { get; } = [];

    /// <summary>Lines of titles after the first.</summary>
    public List<int> MoreTitles { get; } = [];

    /// <summary>Lines of entries that stand in no section.</summary>
    public List<int> StrayEntries { get; } = [];

    /// <summary>The page of a text, or null when it is nested too deeply to be read.</summary>
    public static Page? Of(string text)
    {
        if (Markup.Read(text) is not { } document) return null;
        var page = new Page();
        foreach (var block in document) page.Add(block);
        return page;
    }

    void Add(Block block)
    {
        switch (block)
        {
            case HeadingBlock heading:
                Add(heading);
                break;
            case Table table:
                _current.Grids.Add(GridOf(table));
                break;
            case FencedCodeBlock code:
                _current.Arts.Add(new Art(new Cell(code.Info?.Trim() ?? "", code.Line + 1), LinesOf(code)));
                break;
            case ListBlock list:
                _current.Bullets.AddRange(list.OfType<ListItemBlock>().Select(PointOf));
                break;
            case ParagraphBlock paragraph when LooksLikeTable(TextOf(paragraph.Inline, '\n')):
                _current.BrokenTables.Add(paragraph.Line + 1);
                break;
            default:
                break;
        }
    }

    void Add(HeadingBlock heading)
    {
        var cell = new Cell(TextOf(heading.Inline), heading.Line + 1);
        switch (heading.Level)
        {
            case 1 when Head.Heading.IsBlank && Sections.Count == 0:
                _current = Head = new Passage(cell);
                break;
            case 1:
                MoreTitles.Add(cell.Line);
                break;
            case 2:
                Sections.Add(_current = new Passage(cell));
                break;
            case 3 when Sections.Count > 0:
                Sections[^1].Entries.Add(_current = new Passage(cell));
                break;
            case 3:
                StrayEntries.Add(cell.Line);
                break;
            default:
                break;
        }
    }

    static bool LooksLikeTable(string text) =>
        text.Split('\n').Any(line => line.TrimStart().StartsWith('|')) && text.Any(letter => !"|-: \n".Contains(letter));

    static string[] LinesOf(FencedCodeBlock code)
    {
        var lines = new string[code.Lines.Count];
        for (var at = 0; at < lines.Length; at++) lines[at] = code.Lines.Lines[at].ToString().TrimEnd();
        return lines;
    }

    static Cell PointOf(ListItemBlock item) =>
        new(item.OfType<ParagraphBlock>().Select(paragraph => TextOf(paragraph.Inline)).FirstOrDefault(""), item.Line + 1);

    static Grid GridOf(Table table)
    {
        var rows = table.OfType<TableRow>().Select(CellsOf).ToArray();
        return new Grid(rows[0], rows[1..]);
    }

    static IReadOnlyList<Cell> CellsOf(TableRow row)
    {
        var cells = new Cell[row.Count];
        for (var at = 0; at < cells.Length; at++) cells[at] = new Cell(row[at] is TableCell cell ? TextOf(cell) : "", row.Line + 1);
        return cells;
    }

    static string TextOf(TableCell cell) => cell is [ParagraphBlock only]
        ? TextOf(only.Inline)
        : string.Join(' ', cell.OfType<ParagraphBlock>().Select(paragraph => TextOf(paragraph.Inline)));

    static string TextOf(ContainerInline? inlines, char lineBreak = ' ')
    {
        if (inlines?.FirstChild is LiteralInline { NextSibling: null } only) return only.Content.AsSpan().Trim().ToString();
        var text = new StringBuilder();
        Write(inlines, text, lineBreak);
        return text.ToString().Trim();
    }

    static void Write(ContainerInline? inlines, StringBuilder text, char lineBreak)
    {
        for (var inline = inlines?.FirstChild; inline is not null; inline = inline.NextSibling)
        {
            switch (inline)
            {
                case LiteralInline literal:
                    _ = text.Append(literal.Content.AsSpan());
                    break;
                case CodeInline code:
                    _ = text.Append(code.Content);
                    break;
                case HtmlEntityInline entity:
                    _ = text.Append(entity.Transcoded.AsSpan());
                    break;
                case HtmlInline html:
                    _ = text.Append(html.Tag);
                    break;
                case AutolinkInline link:
                    _ = text.Append(link.Url);
                    break;
                case LineBreakInline:
                    _ = text.Append(lineBreak);
                    break;
                case ContainerInline container:
                    Write(container, text, lineBreak);
                    break;
                default:
                    break;
            }
        }
    }
}
