using Apprentice.Engine.Topics;

namespace Apprentice.Content;

/// <summary>Where a check is done, in a line: only what is measured has a from and a to.</summary>
public static class ClueWhere
{
    /// <summary>"From where to where: …." for what is measured; else where to look, where and how to feel, or whose words they are.</summary>
    /// <param name="clue">The check.</param>
    /// <param name="measured">Key of the words for what is measured.</param>
    public static string Of(Clue clue, string measured = "where.measured") =>
        Words.Of(Key(clue.Family, measured), ("where", clue.FromTo.TrimEnd('.')));

    static string Key(ClueFamily family, string measured) => family switch
    {
        ClueFamily.Measured => measured,
        ClueFamily.FeltOrHeard => "where.felt",
        ClueFamily.Told => "where.told",
        _ => "where.seen",
    };
}
