namespace Apprentice.Engine.Learning;

/// <summary>A drill of the log. Its times are those of the log's entries alone.</summary>
/// <param name="Started">How it began.</param>
public sealed record PastDrill(LogEntry.DrillStarted Started)
{
    /// <summary>How long a drill runs; it ends with the answer under way.</summary>
    public static TimeSpan Length { get; } = TimeSpan.FromMinutes(3);

    /// <summary>Answers in order.</summary>
    public IReadOnlyList<DrillAnswer> Answers { get; init; } = [];

    /// <summary>The item that waits for an answer, or null.</summary>
    public DrillDraw? Open { get; init; }

    /// <summary>Time spent, pauses left out.</summary>
    public TimeSpan Spent { get; init; }

    /// <summary>Time of the last entry of this drill, or null since a pause.</summary>
    public DateTimeOffset? Since { get; init; }

    /// <summary>True when it was ended or left.</summary>
    public bool IsOver { get; init; }

    /// <summary>True when its time is up.</summary>
    public bool IsUp => Spent >= Length;

    /// <summary>How many of its answers were right.</summary>
    public int RightCount => Answers.Count(a => a.Right);

    internal PastDrill With(DrillDraw item, DateTimeOffset at) => At(at) with { Open = item };

    internal PastDrill With(LogEntry.DrillAnswered answered, DateTimeOffset at) => Open is { } item
        ? At(at) with { Open = null, Answers = [.. Answers, new DrillAnswer(item, answered.Given, answered.Right, at - Since)] }
        : this;

    // A clock that was set back gives no time rather than a negative one.
    PastDrill At(DateTimeOffset at) => this with { Since = at, Spent = Spent + (Since is { } since && at > since ? at - since : TimeSpan.Zero) };
}

/// <summary>An item of a drill: which sort, and the seed of its figures.</summary>
/// <param name="Family">The sort of item within the skill.</param>
/// <param name="Seed">Seed of its figures.</param>
/// <param name="Back">Number of the earlier item that it brings back, from 1, or null for a new one.</param>
public sealed record DrillDraw(string Family, ulong Seed, int? Back);

/// <summary>An answer in a drill.</summary>
/// <param name="Item">The item.</param>
/// <param name="Given">What was given.</param>
/// <param name="Right">True when it was right.</param>
/// <param name="Time">Time from the item shown to the answer, or null when a pause lay between.</param>
public sealed record DrillAnswer(DrillDraw Item, string Given, bool Right, TimeSpan? Time);
