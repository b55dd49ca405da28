namespace Apprentice.Content.Pages;

/// <summary>A heading and what stands beneath it.</summary>
/// <param name="Heading">The heading.</param>
sealed record Passage(Cell Heading)
{
    /// <summary>Points of lists.</summary>
    public List<Cell> Bullets { get; } = [];

    /// <summary>Tables.</summary>
    public List<Grid> Grids { get; } = [];

    /// <summary>Blocks of code: text art.</summary>
    public List<Art> Arts { get; } = [];

    /// <summary>Lines that look like a table and are none.</summary>
    public List<int> BrokenTables { get; } = [];

    /// <summary>Entries of a section: headings of the third rank.</summary>
    public List<Passage> Entries { get; } = [];
}

/// <summary>A block of code.</summary>
/// <param name="Heading">The word behind its opening marks.</param>
/// <param name="Lines">Its lines.</param>
sealed record Art(Cell Heading, IReadOnlyList<string> Lines);
