using Apprentice.Drawing;
using Apprentice.Drawing.Plates;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Something to be looked at: all that the screens need, and what follows.</summary>
/// <param name="Title">Top line.</param>
/// <param name="Clue">The clue: read off a plate, or seen, felt or heard.</param>
/// <param name="Asked">The parts that are asked, in words; empty when it is not asked what a writing tells of them.</param>
sealed record LookTask(string Title, Clue Clue, string Asked)
{
    /// <summary>The plate, or null when nothing is read.</summary>
    public PlateView? Plate { get; init; }

    /// <summary>What is seen, felt or heard, in a mechanic's words, or the picture in words; empty for a plate.</summary>
    public IReadOnlyList<string> Told { get; init; } = [];

    /// <summary>The part as it is drawn, or null.</summary>
    public Func<PageSize, IReadOnlyList<string>>? Draw { get; init; }

    /// <summary>The screen to go back to.</summary>
    public required Screen Below { get; init; }

    /// <summary>What follows once it was looked at.</summary>
    public required Func<World, OwnLook, Turn> Done { get; init; }

    /// <summary>Number of the job, or null.</summary>
    public int? Job { get; init; }

    /// <summary>Short names and words of the findings, in the topic's order.</summary>
    public IReadOnlyList<(string Id, string Text)> Findings => FindingsOf(Clue);

    /// <summary>Sentences that stand above the question.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Short names and words of the findings of a clue, in the topic's order.</summary>
    public static IReadOnlyList<(string Id, string Text)> FindingsOf(Clue clue) => clue.Shows switch
    {
        Shows.Table table => [.. table.Findings.Select(f => (f.Id, f.Text))],
        Shows.Code code => [.. code.Findings.Select(f => (f.Id, f.Text))],
        _ => [],
    };

    /// <summary>The finding that the writing is not there at all, or null when the clue has none.</summary>
    public (string Id, string Text)? NotThere =>
        PlateView.Looks(Clue).Where(f => f.Looks is Engine.Topics.Plate.Nothing).Select(f => ((string, string)?)Findings.First(x => Same(x.Id, f.Id))).FirstOrDefault();

    /// <summary>The task of a clue, or null where what it shows is told: hidden, measured, or neither read off a plate, drawn nor described.</summary>
    /// <param name="title">Top line.</param>
    /// <param name="topic">The topic.</param>
    /// <param name="clue">The clue.</param>
    /// <param name="asked">The parts that are asked, in words.</param>
    /// <param name="made">The case.</param>
    /// <param name="nth">0 for the first look.</param>
    /// <param name="below">The screen to go back to.</param>
    /// <param name="done">What follows once it was looked at.</param>
    public static LookTask? Of(string title, Topic topic, Clue clue, string asked, Case made, int nth, Screen below, Func<World, OwnLook, Turn> done)
    {
        if (made.Look(clue.Id, nth).Seen is not Seen.Named shown) return null;
        var seed = unchecked(made.Job.Seed + (ulong)clue.Id.Aggregate(7L, (sum, c) => (sum * 31) + c));
        var task = new LookTask(title, clue, asked) { Below = below, Done = done };
        if (clue.Plate is { } plate) return task with { Plate = PlateView.Of(clue, plate, w => made.Written(clue.Id, nth, w), seed) };
        var ways = clue.Shows is Shows.Table table ? table.Findings.First(f => Same(f.Id, shown.Id)).Described : [];
        IReadOnlyList<string> described = ways.Count > 0 ? [ways[(int)(seed % (ulong)ways.Count)]] : [];
        if (topic.Drawings.FirstOrDefault(d => d.Clues.Contains(clue.Id, StringComparer.Ordinal) && TopicDrawing.Look(d.Findings, shown.Id) is not null) is { } drawing)
        {
            var part = DrawnPart.Of(topic, drawing.Id, DrawnChoice.Finding(shown.Id), seed: seed);
            return task with { Draw = room => part.Rows(room.Columns, room.Rows), Told = part.IsArt && described.Count > 0 ? described : part.Words };
        }

        return described.Count > 0 ? task with { Told = described } : null;
    }

    /// <summary>The first screen: which writing, or what is seen.</summary>
    public Screen Start() => Plate is null ? new LookScreen(this, null) : new PlateScreen(this);

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);
}

/// <summary>What a learner says that they found.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Writing">The writing that they went by, or null where there was no choice.</param>
/// <param name="Bearing">What they say it tells, or null where it was not asked.</param>
sealed record OwnLook(string Finding, int? Writing = null, Bearing? Bearing = null);
