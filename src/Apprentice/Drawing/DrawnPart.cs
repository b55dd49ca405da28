using Apprentice.Drawing.Figures;
using Apprentice.Engine.Topics;

namespace Apprentice.Drawing;

/// <summary>A part as a picture: drawn true to scale from the figures of its topic, said in words, with named points to measure between. Pure.</summary>
sealed class DrawnPart
{
    readonly Sketch _sketch;
    readonly IReadOnlyList<string> _art;

    DrawnPart(Sketch sketch, IReadOnlyList<string> art) => (_sketch, _art) = (sketch, art);

    /// <summary>The picture in sentences, exact enough to work from: places and shapes, never a reading, an answer or a kind's name.</summary>
    public IReadOnlyList<string> Words => _art.Count > 0 ? [Content.Words.Of("figure.art"), .. _art] : [.. _sketch.Says, .. PointWords.Of(_sketch)];

    /// <summary>The picture in sentences with its lettered points alone.</summary>
    /// <param name="letters">Letter by point.</param>
    public IReadOnlyList<string> WordsWith(IReadOnlyDictionary<string, string> letters) => [.. _sketch.Says, .. PointWords.Of(_sketch, letters)];

    /// <summary>True for text art, which has no geometry to be said in words.</summary>
    public bool IsArt => _art.Count > 0;

    /// <summary>Named points, mm from a place of the figure's own: x to the right, y up as it is drawn. None for text art.</summary>
    public IReadOnlyDictionary<string, Spot> Points => _sketch.Points;

    /// <summary>The sketch it is drawn from.</summary>
    public Sketch Sketch => _sketch;

    /// <summary>A picture of a topic.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="drawing">Short name of one of its drawings.</param>
    /// <param name="choice">Which kind or finding.</param>
    /// <param name="sizes">True size per dimension of the topic, in order (<c>Truth.Sizes</c>), mm; null for the nominals of the kinds.</param>
    /// <param name="seed">Draws one picture in three as the shop sees it: dirty, worn, at an angle; null for a clean one.</param>
    /// <exception cref="ArgumentException">The topic has no such drawing, or the drawing no such kind or finding.</exception>
    public static DrawnPart Of(Topic topic, string drawing, DrawnChoice choice, IReadOnlyList<double>? sizes = null, ulong? seed = null)
    {
        var plan = topic.Drawings.FirstOrDefault(d => d.Id == drawing) ?? throw new ArgumentException($"The topic {topic.Id} has no drawing {drawing}.", nameof(drawing));
        var look = LookOf(plan, choice);
        if (look.Art.Count > 0) return new DrawnPart(new Sketch(), look.Art);
        var sketch = FigureShelf.Draw(TraitsOf(topic, plan, look, choice, sizes));
        return new DrawnPart(seed is { } luck ? ShopLook.Of(sketch, luck) : sketch, []);
    }

    /// <summary>A figure with all its defaults.</summary>
    /// <param name="figure">The figure.</param>
    public static DrawnPart Usual(Figure figure) => new(FigureShelf.Draw(Traits.Usual(figure)), []);

    /// <summary>The rows of text: each as wide as the room, no more than are needed.</summary>
    /// <param name="columns">Columns at hand.</param>
    /// <param name="rows">Rows at hand; text art may take more.</param>
    /// <param name="marks">Letters to set at named points, a letter each; null for none.</param>
    public IReadOnlyList<string> Rows(int columns, int rows, IReadOnlyList<(string Point, string Text)>? marks = null) =>
        _art.Count > 0 ? Art(columns) : SketchDrawing.Rows(_sketch, columns, rows, marks ?? []);

    /// <summary>Where the picture lies in a room: dots per mm, and the dot of a point.</summary>
    public Placing Place(int columns, int rows, bool marked = false) => Placing.Of(_sketch, columns, rows, marked || _sketch.Captions.Count > 0);

    IReadOnlyList<string> Art(int columns)
    {
        var left = Math.Max(0, (columns - _art.Max(l => l.Length)) / 2);
        return [.. _art.Select(l => (new string(' ', left) + l).PadRight(columns)[..columns])];
    }

    static DrawnLook LookOf(TopicDrawing plan, DrawnChoice choice)
    {
        var looks = choice.IsFinding ? plan.Findings : plan.Kinds;
        return TopicDrawing.Look(looks, choice.Id)
            ?? throw new ArgumentException($"The drawing {plan.Id} has no {(choice.IsFinding ? "finding" : "kind")} {choice.Id}.", nameof(choice));
    }

    static Traits TraitsOf(Topic topic, TopicDrawing plan, DrawnLook look, DrawnChoice choice, IReadOnlyList<double>? sizes)
    {
        var figure = FigureCatalogue.Of(plan.Figure) ?? throw new ArgumentException($"There is no figure {plan.Figure}.", nameof(plan));
        var (numbers, words) = (new Dictionary<string, double>(StringComparer.Ordinal), new Dictionary<string, string>(StringComparer.Ordinal));
        foreach (var (name, value) in plan.Fixed.Concat(look.Values))
        {
            if (value is FigureValue.Word word) words[name] = word.Text;
            else if (NumberOf(topic, value, choice, sizes) is { } number) numbers[name] = number;
        }
        return new Traits(figure, numbers, words);
    }

    static double? NumberOf(Topic topic, FigureValue value, DrawnChoice choice, IReadOnlyList<double>? sizes)
    {
        if (value is not FigureValue.Size size) return value is FigureValue.Number number ? number.Value : null;
        var index = topic.Dimensions.ToList().FindIndex(d => d.Id == size.Dimension);
        if (sizes is not null) return sizes[index];
        var dimension = topic.Dimensions[index];
        var kinds = topic.Parts.First(p => p.Id == dimension.Part).Kinds;
        var at = kinds.ToList().FindIndex(k => choice.Names(dimension.Part, k.Id));
        return at >= 0 ? dimension.Nominals[at] : dimension.Nominals.FirstOrDefault(n => n is not null);
    }
}

/// <summary>What a picture shows: a kind of its part, or exactly what a finding says.</summary>
/// <param name="Id">Short name of the kind or finding.</param>
/// <param name="IsFinding">True for a finding.</param>
/// <param name="Others">Kinds of other parts in the picture, as part and kind: their nominal sizes are drawn. A size of a part that is not named here is that of its first kind.</param>
sealed record DrawnChoice(string Id, bool IsFinding, IReadOnlyList<(string Part, string Kind)> Others)
{
    /// <summary>A kind of the drawing's part.</summary>
    public static DrawnChoice Kind(string id, params IReadOnlyList<(string Part, string Kind)> others) => new(id, IsFinding: false, others);

    /// <summary>A finding of the drawing's clue.</summary>
    public static DrawnChoice Finding(string id) => new(id, IsFinding: true, []);

    /// <summary>True when the picture shows this kind of this part.</summary>
    internal bool Names(string part, string kind) =>
        Others.Any(o => o.Part == part) ? Others.Contains((part, kind)) : !IsFinding && Id == kind;
}
