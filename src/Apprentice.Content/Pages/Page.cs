using System.Text;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Apprentice.Content.Pages;

/// <summary>A Markdown file as headings, points and tables; prose is left out.</summary>
sealed class Page
{
    static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().UsePreciseSourceLocation().Build();

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
        MarkdownDocument document;
        try
        {
            document = Markdown.Parse(text, Pipeline);
        }
        catch (ArgumentException)
        {
            return null;
        }

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
                _current.Arts.Add(new Art(new Cell(code.Info?.Trim() ?? "", code.Line + 1), [.. code.Lines.Lines.Take(code.Lines.Count).Select(line => line.ToString().TrimEnd())]));
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

    static Cell PointOf(ListItemBlock item) =>
        new(item.OfType<ParagraphBlock>().Select(paragraph => TextOf(paragraph.Inline)).FirstOrDefault(""), item.Line + 1);

    static Grid GridOf(Table table)
    {
        var rows = table.OfType<TableRow>().Select(CellsOf).ToArray();
        return new Grid(rows[0], rows[1..]);
    }

    static IReadOnlyList<Cell> CellsOf(TableRow row) =>
    [
        .. row.OfType<TableCell>().Select(cell => new Cell(
            string.Join(' ', cell.OfType<ParagraphBlock>().Select(paragraph => TextOf(paragraph.Inline))), row.Line + 1)),
    ];

    static string TextOf(ContainerInline? inlines, char lineBreak = ' ')
    {
        var text = new StringBuilder();
        foreach (var inline in inlines?.Descendants() ?? [])
        {
            _ = inline switch
            {
                LiteralInline literal => text.Append(literal.Content.AsSpan()),
                CodeInline code => text.Append(code.Content),
                HtmlEntityInline entity => text.Append(entity.Transcoded.AsSpan()),
                HtmlInline html => text.Append(html.Tag),
                AutolinkInline link => text.Append(link.Url),
                LineBreakInline => text.Append(lineBreak),
                _ => text,
            };
        }

        return text.ToString().Trim();
    }
}
