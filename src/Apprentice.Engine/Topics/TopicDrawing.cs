namespace Apprentice.Engine.Topics;

/// <summary>A picture of a part, as the topic describes it: a figure and its parameters, so that picture and figures cannot disagree. Belief does not depend on it.</summary>
public sealed record TopicDrawing
{
    /// <summary>Short name.</summary>
    public required string Id { get; init; }

    /// <summary>Title: "Bar and stem from the side".</summary>
    public required string Title { get; init; }

    /// <summary>Short name of the figure, one of <see cref="FigureCatalogue"/>.</summary>
    public required string Figure { get; init; }

    /// <summary>Clues whose look it shows; may be empty.</summary>
    public required IReadOnlyList<string> Clues { get; init; }

    /// <summary>The part whose kinds it shows, or null when it shows findings only.</summary>
    public string? Part { get; init; }

    /// <summary>Parameters that are the same for every kind and finding, by name.</summary>
    public IReadOnlyDictionary<string, FigureValue> Fixed { get; init; } = new Dictionary<string, FigureValue>(StringComparer.Ordinal);

    /// <summary>A look per kind of the part, in the part's order; empty when it shows findings only.</summary>
    public IReadOnlyList<DrawnLook> Kinds { get; init; } = [];

    /// <summary>A look per finding of its clue, in the clue's order; empty when it shows kinds only.</summary>
    public IReadOnlyList<DrawnLook> Findings { get; init; } = [];

    /// <summary>From where to where the measured clue can be taken on the figure: the right datum and named slips. Empty when the topic does not say.</summary>
    public IReadOnlyList<DrawnDatum> Datums { get; init; } = [];

    /// <summary>True when no kind has a look of its own: only their sizes differ, and the drawing says from where to where.</summary>
    public bool IsAlike => Kinds.Count > 0 && Kinds.All(k => k.Values.Count == 0 && k.Art.Count == 0);

    /// <summary>The look of a kind or finding, or null.</summary>
    /// <param name="looks">Kinds or findings of the drawing.</param>
    /// <param name="of">Short name of the kind or finding.</param>
    public static DrawnLook? Look(IReadOnlyList<DrawnLook> looks, string of) => looks.FirstOrDefault(l => string.Equals(l.Of, of, StringComparison.Ordinal));
}

/// <summary>How a kind or a finding looks.</summary>
/// <param name="Of">Short name of the kind or finding.</param>
/// <param name="Values">Parameters that are its own, by name.</param>
/// <param name="Art">Lines of text art; empty for a figure that is drawn.</param>
public sealed record DrawnLook(string Of, IReadOnlyDictionary<string, FigureValue> Values, IReadOnlyList<string> Art);

/// <summary>From where to where on a figure.</summary>
/// <param name="Clue">The measured clue.</param>
/// <param name="Datum">0 for the right datum, n for the clue's n-th named slip.</param>
/// <param name="From">A named point of the figure.</param>
/// <param name="To">A named point of the figure; the same as <paramref name="From"/> for a tape laid round there.</param>
public sealed record DrawnDatum(string Clue, int Datum, string From, string To);
