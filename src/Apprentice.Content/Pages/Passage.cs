namespace Apprentice.Content.Pages;

/// <summary>A heading and what stands beneath it.</summary>
/// <param name="Heading">The heading.</param>
sealed record Passage(Cell Heading)
{
    /// <summary>Points of lists.</summary>
    public List<Cell> Bullets { get; } = [];

    /// <summary>Tables.</summary>
    public List<Grid> Grids { get; } = [];

    /// <summary>Lines that look like a table and are none.</summary>
    public List<int> BrokenTables { get; } = [];

    /// <summary>Entries of a section: headings of the third rank.</summary>
    public List<Passage> Entries { get; } = [];
}
