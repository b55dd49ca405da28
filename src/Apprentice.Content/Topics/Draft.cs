using Apprentice.Content.Pages;

namespace Apprentice.Content.Topics;

/// <summary>A topic file while it is read: its page, the faults found so far, and the names that one section needs of another.</summary>
sealed class Draft(Page page, Faults faults)
{
    readonly Dictionary<object, int> _lines = new(ReferenceEqualityComparer.Instance);

    /// <summary>Faults found so far.</summary>
    public Faults Faults => faults;

    /// <summary>Reads single values.</summary>
    public Cells Cells { get; } = new(faults);

    /// <summary>The title and the points beneath it.</summary>
    public Passage Head => page.Head;

    /// <summary>Where bikes come from.</summary>
    public Names Provenances { get; set; } = Names.None("provenance");

    /// <summary>Model lines.</summary>
    public Names Lines { get; set; } = Names.None("line");

    /// <summary>Parts.</summary>
    public Names Parts { get; set; } = Names.None("part");

    /// <summary>Kinds of each part.</summary>
    public Dictionary<string, Names> Kinds { get; } = new(StringComparer.Ordinal);

    /// <summary>Events.</summary>
    public Names Events { get; set; } = Names.None("event");

    /// <summary>True sizes.</summary>
    public Names Dimensions { get; set; } = Names.None("size");

    /// <summary>What must come off.</summary>
    public Names Accesses { get; set; } = Names.None("thing to take off");

    /// <summary>Clues.</summary>
    public Names Clues { get; set; } = Names.None("clue");

    /// <summary>Pitfalls.</summary>
    public Names Pitfalls { get; set; } = Names.None("pitfall");

    /// <summary>Sources.</summary>
    public Names Sources { get; set; } = Names.None("source");

    /// <summary>Lines of orders.</summary>
    public Names OrderLines { get; set; } = Names.None("order line");

    /// <summary>A section by its heading, or null.</summary>
    public Passage? Section(string heading) => page.Sections.Find(section => section.Heading.Is(heading));

    /// <summary>Entries of a section, none when it is missing.</summary>
    public IReadOnlyList<Passage> Entries(string heading) => Section(heading)?.Entries ?? [];

    /// <summary>Remembers the line of a value; returns the value.</summary>
    public T At<T>(int line, T value)
        where T : notnull
    {
        _lines[value] = line;
        return value;
    }

    /// <summary>Line of a value that was remembered, otherwise 1.</summary>
    public int LineOf(object value) => _lines.GetValueOrDefault(value, 1);

    /// <summary>True when the sections are there as far as they are needed and nothing is wrong in them: their values can be checked against one another.</summary>
    public bool Sound(params string[] headings)
    {
        foreach (var heading in headings)
        {
            var index = page.Sections.FindIndex(section => section.Heading.Is(heading));
            if (index < 0 && Headings.Needed.Contains(heading, StringComparer.Ordinal)) return false;
            if (index < 0) continue;
            var end = index + 1 < page.Sections.Count ? page.Sections[index + 1].Heading.Line : int.MaxValue;
            if (faults.AnyWithin(page.Sections[index].Heading.Line, end)) return false;
        }

        return true;
    }

    /// <summary>Kinds of a part, none for an unknown one.</summary>
    public Names KindsOf(string part) => Kinds.TryGetValue(part, out var kinds) ? kinds : Names.None("kind");

    /// <summary>Rows of the table of a section; a fault when the section is there and the table is not.</summary>
    public IReadOnlyList<Row> Rows(string heading, Shape shape) =>
        Section(heading) is { } section ? Rows(section, shape, needed: true) : [];

    /// <summary>Names of one sort that the table of a section gives in a column.</summary>
    public Names NamesIn(string heading, string what, IReadOnlyList<Row> rows, params string[] reserved)
    {
        if (rows.Count > 0) return NamesOf(what, rows.Select(row => row["id"]), reserved);
        var needed = Headings.Needed.Contains(heading, StringComparer.Ordinal);
        if (Section(heading) is { } section && needed && !faults.AnyWithin(section.Heading.Line, section.Heading.Line + 1) && section.BrokenTables.Count == 0)
            faults.Add(section.Heading, $"The table of \"{heading}\" has no rows.");
        return new Names(what, [], unread: needed || Section(heading) is not null);
    }

    /// <summary>Rows of the tables of a shape in a passage.</summary>
    /// <param name="passage">The passage.</param>
    /// <param name="shape">Their columns.</param>
    /// <param name="needed">True when there must be one.</param>
    /// <param name="lenient">True to let unknown columns pass, because not all valid ones are known.</param>
    public IReadOnlyList<Row> Rows(Passage passage, Shape shape, bool needed, bool lenient = false)
    {
        var grids = passage.Grids.Where(shape.Fits).ToArray();
        if (grids.Length == 0 && needed && passage.BrokenTables.Count == 0)
            faults.Add(passage.Heading, $"\"{passage.Heading.Text}\" needs a table with the columns {string.Join(", ", shape.Needed)}.");
        return [.. grids.SelectMany(grid => shape.RowsOf(grid, faults, lenient || Provenances.Unread || Lines.Unread))];
    }

    /// <summary>Names of one sort as given in a file: notes missing, misshapen and repeated ones.</summary>
    public Names NamesOf(string what, IEnumerable<Cell> given, params string[] reserved)
    {
        var cells = given.ToArray();
        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var cell in cells)
        {
            if (!WellShaped(cell.Text)) faults.Add(cell, $"\"{cell.Text}\" is no short name of a {what}: use lower-case letters, digits and hyphens.");
            else if (reserved.Contains(cell.Text)) faults.Add(cell, $"\"{cell.Text}\" has a meaning of its own: give this {what} another short name.");
            else if (!first.TryAdd(cell.Text, cell.Line)) faults.Add(cell, $"The {what} \"{cell.Text}\" stands twice: also on line {first[cell.Text]}.");
        }

        return new Names(what, cells);
    }

    /// <summary>True for a short name: lower-case letters, digits and hyphens, at most 40.</summary>
    public static bool WellShaped(string id) =>
        id.Length is > 0 and <= 40 && id[0] != '-' && id[^1] != '-' && id.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-');
}
