using Apprentice.Content.Pages;

namespace Apprentice.Content.Topics;

/// <summary>Checks of the page before anything in it is understood: titles, headings, tables.</summary>
static class PageChecks
{
    static readonly IReadOnlyList<string> ClueTables = ["finding", "code", "slip", "decoy", "writing"];
    static readonly IReadOnlyList<string> DrawingTables = ["kind", "finding", "datum"];
    static readonly IReadOnlyList<string> AskedTables = ["like", "line", "event"];

    /// <summary>Notes what is wrong with the headings and tables.</summary>
    public static void Check(Page page, Faults faults)
    {
        if (page.Head.Heading.IsBlank) faults.Add(1, "The title is missing: begin with \"# \" and the title.");
        foreach (var line in page.MoreTitles) faults.Add(line, "A file has one title, before everything else: use ## for sections.");
        foreach (var line in page.StrayEntries) faults.Add(line, "This entry stands in no section: put it beneath a ## heading.");
        foreach (var heading in Headings.Needed.Where(heading => !page.Sections.Exists(section => section.Heading.Is(heading))))
            faults.Add(1, $"The section \"## {heading}\" is missing.");
        Broken(page.Head, faults);
        foreach (var section in page.Sections) Check(page, section, faults);
    }

    static void Check(Page page, Passage section, Faults faults)
    {
        var known = Headings.All.FirstOrDefault(section.Heading.Is);
        if (known is null)
        {
            var nearest = Nearest.Of(section.Heading.Text, Headings.All, 3).Select(heading => $"\"{heading}\"");
            faults.Add(section.Heading, $"There is no section \"{section.Heading.Text}\": use {Nearest.Or([.. nearest])}; prose may stand in \"{Headings.Notes}\".");
            return;
        }

        if (!ReferenceEquals(section, page.Sections.Find(other => other.Heading.Is(known))))
            faults.Add(section.Heading, $"The section \"{known}\" stands twice: put both together.");
        if (known.Equals(Headings.Notes, StringComparison.Ordinal)) return;
        if (!Headings.WithEntries.Contains(known, StringComparer.Ordinal))
        {
            foreach (var entry in section.Entries) faults.Add(entry.Heading, $"\"{known}\" has no entries: it is a table.");
        }

        Broken(section, faults);
        foreach (var entry in section.Entries) Broken(entry, faults);
        Unread(section, known, faults);
    }

    static void Broken(Passage passage, Faults faults)
    {
        foreach (var line in passage.BrokenTables)
            faults.Add(line, "This looks like a table and is none: it needs an empty line before it and a line of dashes, |---|---|, under its header.");
    }

    static void Unread(Passage section, string known, Faults faults)
    {
        if (known.Equals(Headings.Clues, StringComparison.Ordinal))
        {
            foreach (var grid in section.Entries.SelectMany(entry => entry.Grids).Where(grid => !grid.Header.Any(cell => ClueTables.Any(cell.Is))))
                faults.Add(grid.Line, "This table is read by nobody: the tables of a clue have a column finding, code, slip, decoy or writing.");
        }

        if (known.Equals(Headings.Drawings, StringComparison.Ordinal))
        {
            foreach (var grid in section.Entries.SelectMany(entry => entry.Grids).Where(grid => !grid.Header.Any(cell => DrawingTables.Any(cell.Is))))
                faults.Add(grid.Line, "This table is read by nobody: the tables of a drawing have a column kind, finding or datum.");
        }

        if (known.Equals(Headings.Sizes, StringComparison.Ordinal))
        {
            foreach (var grid in section.Grids.Where(grid => !grid.Header.Any(cell => cell.Is("id") || cell.Is("size"))))
                faults.Add(grid.Line, "This table is read by nobody: sizes have a column id, their kinds a column size.");
        }

        if (known.Equals(Headings.Asked, StringComparison.Ordinal))
        {
            foreach (var grid in section.Grids.Where(grid => !grid.Header.Any(cell => AskedTables.Any(cell.Is))))
                faults.Add(grid.Line, "This table is read by nobody: the tables of bikes that were asked about have a column like, line or event.");
        }
    }
}
