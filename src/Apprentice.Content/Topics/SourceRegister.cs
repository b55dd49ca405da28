using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>The register of sources: a file with tables "key | source".</summary>
public static class SourceRegister
{
    /// <summary>The sources of a register, in the order of the file; rows of one cell are left out, and a text that cannot be read has none.</summary>
    /// <param name="text">The file's text.</param>
    public static IReadOnlyList<Source> Read(string text)
    {
        var sources = new List<Source>();
        if (Page.Of(text) is not { } page) return sources;
        Add(page.Head, sources);
        foreach (var section in page.Sections)
        {
            Add(section, sources);
            foreach (var entry in section.Entries) Add(entry, sources);
        }

        return sources;
    }

    static void Add(Passage passage, List<Source> to)
    {
        foreach (var grid in passage.Grids)
        {
            foreach (var row in grid.Rows)
            {
                if (row.Count >= 2) to.Add(new Source(row[0].Text, row[1].Text));
            }
        }
    }
}
