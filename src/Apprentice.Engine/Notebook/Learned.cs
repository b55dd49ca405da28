namespace Apprentice.Engine.Notebook;

/// <summary>A figure of a topic, learned from bikes: before, what was seen, now.</summary>
/// <param name="Sort">What sort it is.</param>
/// <param name="Of">What it is the figure of: event or line; size; package.</param>
/// <param name="In">Where: provenance; kind; number of the build in its package.</param>
/// <param name="Before">The figure of the topic.</param>
/// <param name="Hits">How often it was seen; for spreads and windows the number of bikes.</param>
/// <param name="Bikes">Of how many bikes.</param>
/// <param name="Now">The mean of what is known now.</param>
/// <param name="Low">The figure lies above this 19 times of 20.</param>
/// <param name="High">The figure lies below this 19 times of 20.</param>
public sealed record Learned(LearnedSort Sort, string Of, string In, double Before, int Hits, int Bikes, double Now, double Low, double High)
{
    /// <summary>The figure's name: "event wheel-622 own".</summary>
    public string Key => $"{Sort switch { LearnedSort.EventRate => "event", LearnedSort.LineShare => "line", LearnedSort.Spread => "spread", _ => "window" }} {Of} {In}";
}

/// <summary>What sort of figure was learned.</summary>
public enum LearnedSort
{
    /// <summary>How often an event had happened: 0 to 1.</summary>
    EventRate,

    /// <summary>The share of a line: 0 to 1.</summary>
    LineShare,

    /// <summary>The spread of real parts of a kind, mm.</summary>
    Spread,

    /// <summary>By how many months a running change comes later than the topic says.</summary>
    Window,
}
