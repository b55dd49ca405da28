namespace Apprentice.Screens;

/// <summary>Lays a page out to a window: top and bottom stay, the body scrolls so that the marked line is seen.</summary>
static class Layout
{
    const int Margin = 1;

    /// <summary>The lines of a window, as many as it has rows.</summary>
    /// <param name="page">The page.</param>
    /// <param name="size">The window.</param>
    /// <param name="scroll">First line of the body to show, or null to follow the marked line.</param>
    public static IReadOnlyList<Line> Of(Page page, PageSize size, int? scroll = null)
    {
        if (size.Columns < PageSize.Smallest.Columns || size.Rows < PageSize.Smallest.Rows) return TooSmall(size);
        var width = size.Columns - (2 * Margin);
        var (body, foot, keys, room) = Fit(page, size, width);
        var top = Top(body, room, scroll);
        var shown = body.Skip(top).Take(room).ToList();
        while (shown.Count < room) shown.Add(new Line(""));
        var more = (Up: top > 0, Down: top + room < body.Count);
        return
        [
            new Line(Pad(TopLine(page, width))),
            new Line(Pad(new string('-', width))),
            .. shown.Select(l => l with { Text = Pad(l.Text) }),
            new Line(Pad(Across(more.Up, more.Down, width))),
            .. foot.Select(l => l with { Text = Pad(l.Text) }),
            .. keys.Select(k => new Line(Pad(k))),
        ];
    }

    /// <summary>How far the body can be scrolled: the largest first line.</summary>
    public static int Furthest(Page page, PageSize size)
    {
        var width = Math.Max(size.Columns, PageSize.Smallest.Columns) - (2 * Margin);
        var (body, _, _, room) = Fit(page, size, width);
        return Math.Max(0, body.Count - room);
    }

    /// <summary>Breaks text at words to a width; a word longer than that is cut.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' '))
        {
            var rest = word;
            if (line.Length > 0 && Cells.Width(line) + 1 + Cells.Width(rest) > width)
            {
                lines.Add(line);
                line = "";
            }
            while (Cells.Width(rest) > width && Cells.Cut(rest, width) is var start && start.Length < rest.Length)
            {
                lines.Add(start);
                rest = rest[start.Length..];
            }
            line = line.Length == 0 ? rest : $"{line} {rest}";
        }
        lines.Add(line);
        return lines;
    }

    /// <summary>The parts of a window; what may go is left out when the body does not fit.</summary>
    static (List<Line> Body, List<Line> Foot, List<string> Keys, int Room) Fit(Page page, PageSize size, int width)
    {
        var keys = KeyLines(page.Keys, width);
        var foot = Foot(page, size, width);
        var room = size.Rows - 3 - keys.Count;
        var body = Body(page.Body, width, room - foot.Count - Math.Min(foot.Count, 1));
        if (body.Count + foot.Count + 1 <= room && foot.Count > 0) foot.Add(new Line(new string('-', width)));
        else if (body.Count + foot.Count > room) body = Body([.. page.Body.Where(b => b is not (Block.Rule { Drop: true } or Block.Gap { Drop: true } or Block.Table { Drop: true }))], width, room - foot.Count);
        return (body, foot, keys, room - foot.Count);
    }

    /// <summary>The lines of the body; a picture gets the rows that the rest leaves free.</summary>
    static List<Line> Body(IReadOnlyList<Block> blocks, int width, int room)
    {
        var free = room - blocks.Where(b => b is not Block.Picture).Sum(b => Lines(b, width).Count());
        return [.. blocks.SelectMany(b => b is Block.Picture picture ? picture.Draw(new PageSize(width, free)).Select(l => new Line(l)) : Lines(b, width))];
    }

    static IEnumerable<Line> Lines(Block block, int width) => block switch
    {
        Block.Text text => Wrap(text.Words[text.Hang..], width - text.Indent - text.Hang)
            .Select((l, i) => new Line(new string(' ', text.Indent) + (i == 0 ? text.Words[..text.Hang] : new string(' ', text.Hang)) + l)),
        Block.Rule => [new Line(new string('-', width))],
        Block.Table table => TableLayout.Lines(table, width),
        _ => [new Line("")],
    };

    static int Top(List<Line> body, int room, int? scroll)
    {
        var furthest = Math.Max(0, body.Count - room);
        if (scroll is { } wanted) return Math.Clamp(wanted, 0, furthest);
        var marked = body.FindLastIndex(l => l.Marked);
        return Math.Clamp(marked - room + 2, 0, furthest);
    }

    static string TopLine(Page page, int width)
    {
        string[] rights = [page.Right, page.Right[(page.Right.LastIndexOf("   ", StringComparison.Ordinal) + 1)..].Trim()];
        var right = rights.FirstOrDefault(r => Cells.Width(r) + Cells.Width(page.Title) + 2 <= width) ?? "";
        var title = Cells.Width(page.Title) > width ? Cells.Cut(page.Title, width) : page.Title;
        return Cells.PadRight(title, width - Cells.Width(right)) + right;
    }

    static List<Line> Foot(Page page, PageSize size, int width) => [.. page.Foot.SelectMany(b => Lines(b, width)).Take(size.Rows * 2 / 5)];

    static string Across(bool up, bool down, int width)
    {
        var word = (up, down) switch
        {
            (true, true) => " more above and below: Page Up, Page Down ",
            (true, false) => " more above: Page Up ",
            (false, true) => " more below: Page Down ",
            _ => "",
        };
        return new string('-', width - word.Length - 2) + word + "--";
    }

    static List<string> KeyLines(IReadOnlyList<string> all, int width)
    {
        var keys = all.Where(k => k.Length > 0).ToList();
        foreach (var gap in (string[])["   ", "  "])
        {
            var line = string.Join(gap, keys);
            if (Cells.Width(line) <= width) return [line];
        }
        var lines = new List<string> { "" };
        foreach (var key in keys)
        {
            if (lines[^1].Length == 0) lines[^1] = key;
            else if (Cells.Width(lines[^1]) + 2 + Cells.Width(key) <= width) lines[^1] += $"  {key}";
            else lines.Add(key);
        }
        return lines;
    }

    static string Pad(string text) => text.Length == 0 ? "" : new string(' ', Margin) + text;

    static Line[] TooSmall(PageSize size)
    {
        string[] words = ["This window is too small.", $"{PageSize.Smallest.Columns} x {PageSize.Smallest.Rows} at least.", "Nothing is lost."];
        var lines = words.SelectMany(w => Wrap(w, Math.Max(1, size.Columns))).Take(size.Rows).Select(w => new Line(w)).ToList();
        while (lines.Count < size.Rows) lines.Add(new Line(""));
        return [.. lines];
    }
}
