using Apprentice.Assess;
using Apprentice.Content.Changes;
using Apprentice.Content.Lessons;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>What every screen may know: the topics at hand and what was done so far.</summary>
/// <param name="Benches">Topics made ready, in the order of their files.</param>
/// <param name="History">What the log amounts to.</param>
sealed record World(IReadOnlyList<Workbench> Benches, History History)
{
    /// <summary>Lessons, words and sources.</summary>
    public Library Library { get; init; } = Library.Empty;

    /// <summary>The shipped topics and lessons with the workshop's changes over them.</summary>
    public WorkshopCopy Copy { get; init; } = WorkshopCopy.Empty;

    /// <summary>True when pages are said as lines: pictures are in words from the start, and a number takes its line in long lists too.</summary>
    public bool Plain { get; init; }

    /// <summary>When the page that is shown was made; what is due depends on it.</summary>
    public DateTimeOffset Now { get; init; }

    /// <summary>The key of the lead's desk while it is open, or null: in memory only.</summary>
    public byte[]? DeskKey { get; init; }

    /// <summary>The paper that is sat at this machine now, or null: in memory only. While it is there nothing else can be reached.</summary>
    public Seat? Seat { get; init; }

    /// <summary>The sitting at this machine now, or null before it has begun.</summary>
    public Sitting? Sitting => Seat is { } seat ? History.Assessments.SittingOf(seat.Paper.Id) : null;

    /// <summary>The person at the machine, or null.</summary>
    public string? Person => History.Current;

    /// <summary>The name for the top line, or empty: in a sitting that of the candidate.</summary>
    public string Who => History.Called.Of(Seat?.Paper.Candidate) ?? Person ?? "";

    /// <summary>Topics that are practised here: the workshop's choice, or all.</summary>
    public IReadOnlyList<Workbench> Practised => History.Workshop is { } workshop && Benches.Any(b => workshop.Topics.Contains(b.Topic.Id, StringComparer.Ordinal))
        ? [.. Benches.Where(b => workshop.Topics.Contains(b.Topic.Id, StringComparer.Ordinal))]
        : Benches;

    /// <summary>Topics in the versions of a paper, whatever was changed since it was made.</summary>
    public IReadOnlyList<Workbench> BenchesOf(Engine.Assessing.Paper paper) => Copy.Frozen(Benches, paper);

    /// <summary>This world with more changes over its topics and lessons.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="keeping">Writes them to their file, or null.</param>
    public World With(IReadOnlyList<Change> changes, Keeping? keeping)
    {
        var copy = Copy.With(changes);
        keeping?.Changes(copy.Changes);
        Workbench[] benches = [.. Benches.Select(b => copy.Topic(b.Topic.Id) is { } topic && !string.Equals(topic.Version, b.Topic.Version, StringComparison.Ordinal) ? new Workbench(topic) : b)];
        return this with { Copy = copy, Benches = benches, Library = copy.Library([.. benches.Select(b => b.Topic)]) };
    }

    /// <summary>All topics, in the order of their files.</summary>
    public IReadOnlyList<Engine.Topics.Topic> Topics => [.. Benches.Select(b => b.Topic)];

    readonly Dictionary<string, (Workbench From, object Prices, Workbench Made)> _priced = new(StringComparer.Ordinal);

    /// <summary>The topic of a name with the lead's own prices, for real bikes; null when there is none.</summary>
    public Workbench? Stand(string topic)
    {
        if (Bench(topic) is not { } bench) return null;
        var prices = History.Notebook.Prices;
        if (_priced.TryGetValue(topic, out var known) && ReferenceEquals(known.From, bench) && ReferenceEquals(known.Prices, prices)) return known.Made;
        var priced = History.Notebook.Priced(bench.Topic);
        var made = ReferenceEquals(priced, bench.Topic) ? bench : new Workbench(priced);
        _priced[topic] = (bench, prices, made);
        return made;
    }

    /// <summary>The topic of a name, or null.</summary>
    public Workbench? Bench(string topic) => Benches.FirstOrDefault(b => string.Equals(b.Topic.Id, topic, StringComparison.Ordinal));
}
