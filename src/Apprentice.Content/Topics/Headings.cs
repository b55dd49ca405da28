namespace Apprentice.Content.Topics;

/// <summary>Headings of the sections of a topic file.</summary>
static class Headings
{
    public const string Provenances = "Where bikes come from";
    public const string Asked = "Bikes we asked about";
    public const string Lines = "Lines";
    public const string Years = "Years";
    public const string Parts = "Parts";
    public const string Kinds = "Kinds";
    public const string AsBuilt = "As built";
    public const string Events = "What can have happened";
    public const string FitRules = "What cannot be fitted";
    public const string Sizes = "Sizes";
    public const string Accesses = "What must come off";
    public const string Clues = "Clues";
    public const string Drawings = "Drawings";
    public const string Openings = "What is told first";
    public const string Wants = "What customers want";
    public const string Spares = "Spares";
    public const string Pitfalls = "Pitfalls";
    public const string Costs = "What time costs";
    public const string Published = "Published sizes";
    public const string Sources = "Sources";
    public const string Notes = "Notes";

    /// <summary>Sections that every file needs.</summary>
    public static IReadOnlyList<string> Needed { get; } =
        [Provenances, Lines, Parts, Kinds, Clues, Wants, Spares, Costs];

    /// <summary>All sections; "Notes" is prose and read by nobody.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Provenances, Lines, Years, Asked, Parts, Kinds, AsBuilt, Events, FitRules, Sizes, Accesses, Clues, Drawings, Openings, Wants, Spares, Pitfalls, Costs,
        Published, Sources, Notes,
    ];

    /// <summary>Sections made of entries with headings of the third rank.</summary>
    public static IReadOnlyList<string> WithEntries { get; } = [Clues, Drawings, Wants, Notes];
}
