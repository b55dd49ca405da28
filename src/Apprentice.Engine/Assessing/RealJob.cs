using Apprentice.Engine.Notebook;

namespace Apprentice.Engine.Assessing;

/// <summary>A real bike of another workshop at the end of a paper. It is an unscored item: no rule, count, time or statistic takes it in, since its truth chose it (MODEL 5).</summary>
/// <param name="Place">Place among the real bikes of the paper, from 1.</param>
/// <param name="Version">Version of the topic.</param>
/// <param name="Part">The part that is asked.</param>
/// <param name="Case">The bike with its truth: for sealed files, never for the log of a sitting.</param>
public sealed record RealJob(int Place, string Version, string Part, RealCase Case);

/// <summary>A real bike of a sitting: what was opened and said. It holds nothing of what is true.</summary>
/// <param name="Place">Place among the real bikes of the paper.</param>
public sealed record SittingReal(int Place)
{
    /// <summary>Indices of the checks that were opened, in order.</summary>
    public IReadOnlyList<int> Opened { get; init; } = [];

    /// <summary>The kind that was said, or null for "not settled".</summary>
    public string? Kind { get; init; }

    /// <summary>How sure, of 10; null while there is no answer.</summary>
    public int? Tenths { get; init; }

    /// <summary>True once something of the bike was seen or said.</summary>
    public bool IsMet => Opened.Count > 0 || Tenths is not null;
}
