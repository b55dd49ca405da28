namespace Apprentice.Engine.Topics;

/// <summary>What a clue reads.</summary>
public abstract record Node
{
    Node()
    {
    }

    /// <summary>The kind of a part.</summary>
    /// <param name="Part">The part.</param>
    public sealed record OfPart(string Part) : Node;

    /// <summary>The build date.</summary>
    public sealed record OfDate : Node;

    /// <summary>The model line.</summary>
    public sealed record OfLine : Node;

    /// <summary>Whether an event happened.</summary>
    /// <param name="Event">The event.</param>
    public sealed record OfEvent(string Event) : Node;
}
