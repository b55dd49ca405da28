using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Real parts that lie in any workshop, to be measured in the hand.</summary>
/// <param name="Id">Short name for the log.</param>
/// <param name="Parts">Number of parts.</param>
/// <param name="Name">Key of their name: "three seatposts".</param>
/// <param name="Note">Key of what is measured.</param>
/// <param name="FromTo">Key of the datum.</param>
/// <param name="Tool">The tool.</param>
/// <param name="Low">Lowest reading that can be meant, mm.</param>
/// <param name="High">Highest reading that can be meant, mm.</param>
sealed record RealSet(string Id, int Parts, string Name, string Note, string FromTo, RealTool Tool, double Low, double High)
{
    /// <summary>All sets. Which parts and windows is workshop judgement; the windows only catch a wrong unit.</summary>
    public static IReadOnlyList<RealSet> All { get; } =
    [
        new("seatposts", 3, "real.seatposts", "real.seatposts-note", "real.seatposts-from", RealTool.Caliper, 15, 50),
        new("spokes", 5, "real.spokes", "real.spokes-note", "real.spokes-from", RealTool.Rule, 80, 330),
        new("chains", 2, "real.chains", "real.chains-note", "real.chains-from", RealTool.Rule, 290, 320),
        new("axles", 4, "real.axles", "real.axles-note", "real.axles-from", RealTool.Caliper, 5, 25),
    ];

    /// <summary>The set of a short name, or null.</summary>
    public static RealSet? Of(string id) => All.FirstOrDefault(s => string.Equals(s.Id, id, StringComparison.Ordinal));

    /// <summary>The name of the tool.</summary>
    public string ToolName => Words.Of(Tool.Name);
}

/// <summary>A tool and what it allows.</summary>
/// <param name="Name">Key of its name.</param>
/// <param name="Step">How fine it is read, mm.</param>
/// <param name="Limit">Limit of error of the tool itself, mm.</param>
/// <param name="Example">A reading as it may be typed.</param>
sealed record RealTool(string Name, double Step, double Limit, string Example)
{
    /// <summary>Vernier caliper 0.05 mm. Limit of DIN 862 up to 300 mm. Source: facts U7.1 (S99, value by a secondary source).</summary>
    public static RealTool Caliper { get; } = new("real.caliper", 0.05, 0.05, "27.15");

    /// <summary>Steel rule read to 1 mm. Limit of JIS B 7516 class 1 up to 0.5 m. Source: facts U7.2 (S101, value by a secondary source).</summary>
    public static RealTool Rule { get; } = new("real.rule", 1, 0.15, "288");

    /// <summary>How far two good readings of one part may lie apart, mm: each within the limit, or within half a step where that is more.</summary>
    public double Allows => 2 * Math.Max(Limit, Step / 2);
}
