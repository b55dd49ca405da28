using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Assessing;

/// <summary>A questioned job.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Place">The job.</param>
/// <param name="Text">What the candidate says.</param>
/// <param name="At">When.</param>
public sealed record Appeal(string Paper, int Place, string Text, DateTimeOffset At)
{
    /// <summary>Days after the result in which any job can be questioned.</summary>
    public const int Days = 14;

    /// <summary>The decision, or null while it is open.</summary>
    public LogEntry.AppealDecided? Decided { get; init; }

    /// <summary>Why a job cannot be questioned, as a sentence, or null when it can.</summary>
    /// <param name="assessments">All papers.</param>
    /// <param name="paper">Number of the paper.</param>
    /// <param name="place">The job.</param>
    /// <param name="text">What the candidate says.</param>
    /// <param name="now">The moment.</param>
    public static string? Fault(Assessments assessments, string paper, int place, string text, DateTimeOffset now)
    {
        if (assessments.Result(paper) is not { } result || assessments.PublishedAt(paper) is not { } published) return $"paper {paper} has no published result yet";
        if (result.Jobs.All(j => j.Place != place)) return $"paper {paper} has no job {place}; it has the jobs 1 to {result.Jobs.Count}";
        if (string.IsNullOrWhiteSpace(text)) return "say in one sentence what is not right";
        if (now > published.AddDays(Days)) return $"a job can be questioned for {Days} days after the result; that was until {published.AddDays(Days):yyyy-MM-dd}";
        return assessments.Appeals.Any(a => a.Paper == paper && a.Place == place) ? $"job {place} of paper {paper} is questioned already" : null;
    }

    /// <summary>Why somebody cannot decide, as a sentence, or null when they can.</summary>
    /// <param name="by">The second person.</param>
    /// <param name="lead">The lead who made and marked the paper.</param>
    /// <param name="candidate">The candidate.</param>
    /// <param name="reason">The reason, which is kept.</param>
    public static string? DecisionFault(string by, string lead, string candidate, string reason)
    {
        if (string.IsNullOrWhiteSpace(by)) return "the second person must give a name";
        if (Same(by, lead) || Same(by, candidate)) return "a second person decides: not the lead who marked, and not the candidate";
        return string.IsNullOrWhiteSpace(reason) ? "give the reason in a sentence; it is kept" : null;
    }

    static bool Same(string a, string b) => string.Equals(a.Trim(), b.Trim(), StringComparison.OrdinalIgnoreCase);
}

/// <summary>What a second person decides about a questioned job.</summary>
public enum AppealDecision
{
    /// <summary>Found unfair: counted as sound.</summary>
    CountedSound,

    /// <summary>The mark stays.</summary>
    Stays,

    /// <summary>Found unfair: a new job.</summary>
    NewJob,
}
