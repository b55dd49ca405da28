using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>A real bike as the log tells it.</summary>
/// <param name="Put">How it came.</param>
/// <param name="At">When.</param>
public sealed record Bike(LogEntry.BikePut Put, DateTimeOffset At)
{
    /// <summary>Its number.</summary>
    public int Number => Put.Bike;

    /// <summary>How it is seen now.</summary>
    public Channel Channel { get; init; } = Put.Channel;

    /// <summary>Tools at hand, 1 to 3.</summary>
    public int Tools { get; init; } = Put.Tools;

    /// <summary>Questions put to it, oldest first; one a topic and want.</summary>
    public IReadOnlyList<LogEntry.BikeAsked> Asked { get; init; } = [];

    /// <summary>All findings, oldest first, those taken back too.</summary>
    public IReadOnlyList<BikeFinding> Findings { get; init; } = [];

    /// <summary>Decisions, oldest first; the last of an order line holds.</summary>
    public IReadOnlyList<BikeDecision> Decisions { get; init; } = [];

    /// <summary>What it really was, one a topic.</summary>
    public IReadOnlyList<LogEntry.BikeConfirmed> Truths { get; init; } = [];

    /// <summary>True when the truth of every question is known.</summary>
    public bool IsDone => Asked.Count > 0 && Asked.All(a => TruthOf(a.Topic) is not null);

    /// <summary>What it really was in a topic, or null while it is not known.</summary>
    public LogEntry.BikeConfirmed? TruthOf(string topic) => Truths.FirstOrDefault(t => string.Equals(t.Topic, topic, StringComparison.Ordinal));

    /// <summary>The decision that holds for an order line, or null.</summary>
    public BikeDecision? DecisionOf(string topic, string line) =>
        Decisions.LastOrDefault(d => string.Equals(d.What.Topic, topic, StringComparison.Ordinal) && string.Equals(d.What.Line, line, StringComparison.Ordinal));

    /// <summary>This bike with an entry of its own.</summary>
    public Bike With(Logged entry) => entry.What switch
    {
        LogEntry.BikeAsked e => this with { Asked = [.. Asked.Where(a => a.Topic != e.Topic || a.Want != e.Want), e] },
        LogEntry.BikeSeenBy e => this with { Channel = e.Channel, Tools = e.Tools },
        LogEntry.BikeFound e => this with { Findings = [.. Findings, new BikeFinding(e.Topic, e.Finding, e.Words, entry.At, IsStruck: false)] },
        LogEntry.BikeStruck e => this with { Findings = [.. Findings.Select((f, i) => i == e.Finding ? f with { IsStruck = true } : f)] },
        LogEntry.BikeDecided e => this with { Decisions = [.. Decisions, new BikeDecision(e, entry.At)] },
        LogEntry.BikeConfirmed e => this with { Truths = [.. Truths.Where(t => t.Topic != e.Topic), e] },
        _ => this,
    };
}

/// <summary>Something found on a real bike.</summary>
/// <param name="Topic">The topic whose check it was.</param>
/// <param name="Finding">The finding.</param>
/// <param name="Words">Its words in that topic; empty where they matter to no other.</param>
/// <param name="At">When.</param>
/// <param name="IsStruck">True when it was taken back.</param>
public sealed record BikeFinding(string Topic, Finding Finding, string Words, DateTimeOffset At, bool IsStruck);

/// <summary>A decision.</summary>
/// <param name="What">The decision.</param>
/// <param name="At">When.</param>
public sealed record BikeDecision(LogEntry.BikeDecided What, DateTimeOffset At);
