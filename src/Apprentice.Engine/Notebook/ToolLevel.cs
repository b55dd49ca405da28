using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>How much a check asks for: 1 eyes and hands, 2 also a rule or a tape, 3 anything special.</summary>
public static class ToolLevel
{
    /// <summary>The highest level: everything is at hand.</summary>
    public const int All = 3;

    // Words of what a home rarely has: measuring tools, and what pulls a crank, presses a cup or is a known part to try.
    static readonly string[] Special =
        ["caliper", "gauge", "vernier", "micrometer", "remover", "tool", "key", "known", "new chain", "new nipple", "crank off", "out of the crank", "cups out"];

    /// <summary>The level of a tool, or of what must come off.</summary>
    /// <param name="tool">The words of the topic.</param>
    public static int Of(string tool) => tool switch
    {
        _ when Special.Any(s => Has(tool, s)) => All,
        _ when Has(tool, "rule") || Has(tool, "tape") => 2,
        _ => 1,
    };

    /// <summary>The level of a check: of its tool, and of what must come off for it.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="clue">One of its clues.</param>
    public static int Of(Topic topic, Clue clue) =>
        Math.Max(Of(clue.Tool), topic.Accesses.Where(a => a.Id == clue.Access).Select(a => Of(a.Name)).DefaultIfEmpty(1).Max());

    static bool Has(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
