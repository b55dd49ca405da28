using Apprentice.Content.Lessons;

namespace Apprentice.Screens;

/// <summary>The blocks of a section of a lesson as they stand on a page.</summary>
static class LessonBlocks
{
    /// <summary>The blocks.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="section">The section.</param>
    /// <param name="links">Links that have a number, in order; the number stands behind the words that lead there.</param>
    /// <param name="inWords">True to say drawings in words.</param>
    public static IEnumerable<Block> Of(World world, Lesson lesson, LessonSection section, IReadOnlyList<string> links, bool inWords)
    {
        LessonBlock? before = null;
        foreach (var block in section.Blocks)
        {
            if (before is not null && !(before is LessonBlock.Point && block is LessonBlock.Point)) yield return new Block.Gap(Drop: true);
            if (block is LessonBlock.Verbatim or LessonBlock.Picture)
            {
                var lines = block is LessonBlock.Verbatim verbatim ? verbatim.Lines.Select(l => new Block.Text(l, 2)) : LessonPictures.Of(world, lesson, (LessonBlock.Picture)block, inWords);
                foreach (var line in lines) yield return line;
            }
            else
            {
                yield return block switch
                {
                    LessonBlock.Point { Number: { } n } point => new Block.Text($"{n}  {Text(point.Spans, links)}", 2, $"{n}  ".Length),
                    LessonBlock.Point point => new Block.Text($"-  {Text(point.Spans, links)}", 2, 3),
                    LessonBlock.Table table => TableOf(table, links),
                    LessonBlock.Paragraph paragraph => new Block.Text(Text(paragraph.Spans, links)),
                    _ => new Block.Gap(),
                };
            }

            before = block;
        }
    }

    static Block.Table TableOf(LessonBlock.Table table, IReadOnlyList<string> links)
    {
        var width = table.Rows.Max(r => r.Count);
        return new Block.Table(
            [.. Enumerable.Range(0, width).Select(c => new Column(c < table.Rows[0].Count ? Text(table.Rows[0][c], links) : ""))],
            [.. table.Rows.Skip(1).Select(r => new Row("", Marked: false, [.. Enumerable.Range(0, width).Select(c => c < r.Count ? Text(r[c], links) : "")]))]);
    }

    static string Text(IReadOnlyList<LessonSpan> spans, IReadOnlyList<string> links) => string.Concat(spans.Select(s => Number(s, links) is { } n ? $"{s.Text} [{n}]" : s.Text));

    static int? Number(LessonSpan span, IReadOnlyList<string> links) => links.ToList().FindIndex(l => string.Equals(l, span.Link, StringComparison.Ordinal)) is >= 0 and var at ? at + 1 : null;
}
