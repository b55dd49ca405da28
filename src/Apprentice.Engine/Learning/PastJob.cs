using Apprentice.Engine.Grading;

namespace Apprentice.Engine.Learning;

/// <summary>A job of the log.</summary>
/// <param name="Started">How it began.</param>
/// <param name="At">When.</param>
public sealed record PastJob(LogEntry.JobStarted Started, DateTimeOffset At)
{
    /// <summary>Whose it is, or null for nobody known.</summary>
    public string? Person { get; init; } = Started.Person;

    /// <summary>Looks in the order taken.</summary>
    public IReadOnlyList<Look> Looks { get; init; } = [];

    /// <summary>The answer, or null while it is unfinished.</summary>
    public Given? Given { get; init; }

    /// <summary>The grade in short, or null while it is unfinished.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>What the answer showed; empty while it is unfinished and in old entries.</summary>
    public IReadOnlyList<Observed> Observed { get; init; } = [];

    /// <summary>How sure the learner was before and after a check, where that was asked.</summary>
    public IReadOnlyList<LogEntry.Updated> Updates { get; init; } = [];

    /// <summary>When it was answered, or null.</summary>
    public DateTimeOffset? Ended { get; init; }

    /// <summary>Lines for the lead.</summary>
    public IReadOnlyList<string> Questions { get; init; } = [];

    /// <summary>True when it was answered and was not guided.</summary>
    public bool Counts => Given is not null && !Started.Guided;
}
