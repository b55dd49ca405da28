using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Histories;

/// <summary>All histories of the bikes of one topic and provenance, merged: spine rows, part tables, and what their numbers mean.</summary>
public sealed class HistoryTable
{
    HistoryTable(Topic topic, int provenance, HistoryBuilder built)
    {
        Topic = topic;
        Provenance = provenance;
        Names = built.Names;
        Tags = built.Tags;
        Scopes = built.Scopes;
        Rows = [.. built.Rows];
        Segments = built.Segments;
        States = [.. built.States.Select(s => (IReadOnlyList<PartState>)s)];
        Model = built.Model();
    }

    /// <summary>The topic.</summary>
    public Topic Topic { get; }

    /// <summary>Index of the provenance.</summary>
    public int Provenance { get; }

    /// <summary>The numbers.</summary>
    public Model Model { get; }

    /// <summary>Story tags; the n-th is bit n. The topic's events come first, in order.</summary>
    public IReadOnlyList<Tag> Tags { get; }

    /// <summary>Spine rows, as in the model.</summary>
    public IReadOnlyList<SpineRow> Rows { get; }

    /// <summary>Segments of build months.</summary>
    public IReadOnlyList<Segment> Segments { get; }

    /// <summary>Per part, what its states are.</summary>
    public IReadOnlyList<IReadOnlyList<PartState>> States { get; }

    /// <summary>Short names to indices.</summary>
    public TopicIndex Names { get; }

    /// <summary>Per event, the part that it concerns alone, or −1 when it joins the spine.</summary>
    public IReadOnlyList<int> Scopes { get; }

    /// <summary>Enumerates and merges the histories of one provenance.</summary>
    public static HistoryTable Of(Topic topic, int provenance) => new(topic, provenance, new HistoryBuilder(topic, provenance));
}

/// <summary>A pitfall that a history can contain.</summary>
/// <param name="Id">Short name: that of the event, <c>line:x</c>, <c>change:package</c> or <c>family:part:kind</c>.</param>
/// <param name="Pitfall">Its pitfall.</param>
public sealed record Tag(string Id, string Pitfall);

/// <summary>A spine row.</summary>
/// <param name="Line">Index of the line.</param>
/// <param name="Segment">Index of the segment of build months.</param>
/// <param name="Events">Events of the spine that happened, as bits.</param>
/// <param name="Choices">Per package, the build taken when it is drawn in the spine, else −1.</param>
public sealed record SpineRow(int Line, int Segment, ulong Events, IReadOnlyList<int> Choices);

/// <summary>What the clues of a part can tell apart.</summary>
/// <param name="Kind">Index of the kind; the number of kinds of the part for "none of these".</param>
/// <param name="Events">Events that happened and matter for its clues, as bits.</param>
public sealed record PartState(int Kind, ulong Events);

/// <summary>Build months of a line that are alike in everything but their weight.</summary>
/// <param name="Line">Index of the line.</param>
/// <param name="Months">The months, empty for a topic without dates.</param>
/// <param name="Weights">Their weights, adding up to the segment's share of the line; a single 1 without dates.</param>
/// <param name="Facts">What they share.</param>
public sealed record Segment(int Line, IReadOnlyList<Month> Months, IReadOnlyList<double> Weights, MonthFacts Facts);
