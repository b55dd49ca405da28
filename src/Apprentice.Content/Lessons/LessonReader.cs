using Apprentice.Content.Pages;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Apprentice.Content.Lessons;

/// <summary>Reads lesson files: a title, a card, sections of paragraphs, points, tables and drawings. The format is told in DEVELOPERS.md.</summary>
public static class LessonReader
{
    const string Drawing = "drawing:";

    /// <summary>The lesson of a file, or null with a fault when it is nested too deeply or has no title; never an exception, whatever the text.</summary>
    /// <param name="path">Its path under lessons, with slashes.</param>
    /// <param name="text">The file's text.</param>
    public static (Lesson? Lesson, Fault? Fault) Read(string path, string text)
    {
        if (Markup.Read(text) is not { } document) return (null, new Fault(path, 1, $"{Markup.TooDeep}."));
        if (document.FirstOrDefault() is not HeadingBlock { Level: 1 } title)
            return (null, new Fault(path, 1, "A lesson begins with its title: write # and the title in the first line."));
        var sections = new List<Draft>();
        foreach (var block in document.Skip(1))
        {
            if (block is HeadingBlock heading) sections.Add(new Draft(LessonSpan.Plain(Spans(heading.Inline)), heading.Line + 1, []));
            else if (sections.Count == 0) sections.Add(new Draft("", block.Line + 1, [.. Blocks(block)]));
            else sections[^1].Blocks.AddRange(Blocks(block));
        }

        return (new Lesson(path, LessonSpan.Plain(Spans(title.Inline)), [.. sections.Select(s => new LessonSection(s.Heading, s.Line, s.Blocks))]), null);
    }

    static IEnumerable<LessonBlock> Blocks(Block block) => block switch
    {
        ParagraphBlock { Inline: { } inline } when inline.FirstChild is LinkInline { IsImage: true } picture && (picture.Url ?? "").StartsWith(Drawing, StringComparison.Ordinal) =>
            [PictureOf(picture, block.Line + 1)],
        ParagraphBlock paragraph => [new LessonBlock.Paragraph(block.Line + 1, Spans(paragraph.Inline))],
        ListBlock list => list.OfType<ListItemBlock>().Select(item => new LessonBlock.Point(
            item.Line + 1, list.IsOrdered ? item.Order : null, [.. item.OfType<ParagraphBlock>().SelectMany(p => Spans(p.Inline))])),
        Table table => [new LessonBlock.Table(block.Line + 1, [.. table.OfType<TableRow>().Select(RowOf)])],
        QuoteBlock quote => quote.SelectMany(Blocks),
        CodeBlock code => [new LessonBlock.Verbatim(block.Line + 1, code.Lines.ToString().Split('\n'))],
        _ => [],
    };

    static LessonBlock.Picture PictureOf(LinkInline picture, int line)
    {
        var parts = (picture.Url ?? "")[Drawing.Length..].Split('/', 2);
        return new LessonBlock.Picture(line, parts[0], parts.Length < 2 ? [] : parts[1].Split('+'), LessonSpan.Plain(Spans(picture)));
    }

    static IReadOnlyList<IReadOnlyList<LessonSpan>> RowOf(TableRow row) =>
        [.. row.OfType<TableCell>().Select(cell => (IReadOnlyList<LessonSpan>)[.. cell.OfType<ParagraphBlock>().SelectMany(p => Spans(p.Inline))])];

    static List<LessonSpan> Spans(ContainerInline? inlines)
    {
        var spans = new List<LessonSpan>();
        foreach (var inline in inlines ?? Enumerable.Empty<Inline>())
        {
            if (inline is LinkInline link) spans.Add(new LessonSpan(LessonSpan.Plain(Spans(link)), link.Url ?? ""));
            else if (inline is ContainerInline inner) spans.AddRange(Spans(inner));
            else if (TextOf(inline) is { Length: > 0 } text) spans.Add(new LessonSpan(text));
        }

        return Joined(spans);
    }

    static List<LessonSpan> Joined(List<LessonSpan> spans)
    {
        if (spans.Count < 2) return spans;
        var joined = new List<LessonSpan>();
        for (var at = 0; at < spans.Count;)
        {
            var end = at;
            while (end < spans.Count && spans[end].Link is null) end++;
            joined.Add(end > at + 1 ? new LessonSpan(LessonSpan.Plain(spans[at..end])) : spans[at]);
            at = Math.Max(end, at + 1);
        }

        return joined;
    }

    static string TextOf(Inline inline) => inline switch
    {
        LiteralInline literal => literal.Content.ToString(),
        CodeInline code => code.Content,
        HtmlEntityInline entity => entity.Transcoded.ToString(),
        AutolinkInline auto => auto.Url,
        LineBreakInline => " ",
        _ => "",
    };

    sealed record Draft(string Heading, int Line, List<LessonBlock> Blocks);
}
