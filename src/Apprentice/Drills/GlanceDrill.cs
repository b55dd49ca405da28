using System.Numerics;
using System.Runtime.CompilerServices;
using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Drills;

/// <summary>Two kinds of a drawing that the eye can tell apart: side by side with the difference marked, then one alone.</summary>
sealed record GlanceDrill() : DrillSkill("glance", "drill.glance", "drill.glance-note")
{
    const int LeastRows = 6;

    // So much of a drawing's longer side a named point has to lie elsewhere to be seen without a rule (judgement).
    const double Seen = 0.08;

    // So many characters of a usual picture have to differ (judgement).
    const int LeastCells = 3;

    static readonly PageSize Usual = new(78, 12);

    // Worked out once for a drawing: a list of skills asks often.
    static readonly ConditionalWeakTable<TopicDrawing, IReadOnlyList<(DrawnChoice, DrawnChoice)>> Known = [];

    /// <inheritdoc/>
    public override bool SameAgain => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches) =>
        [.. benches.SelectMany(b => b.Topic.Drawings.Where(d => !d.IsAlike && Pairs(b.Topic, d).Count > 0).Select(d => $"{b.Topic.Id}:{d.Id}"))];

    /// <summary>The pairs of a drawing that look different when each is drawn alone, to a size of its own.</summary>
    public static IReadOnlyList<(DrawnChoice First, DrawnChoice Second)> Pairs(Topic topic, TopicDrawing drawing)
    {
        if (Known.TryGetValue(drawing, out var known)) return known;
        var looks = (ByFinding(drawing) ? drawing.Findings : drawing.Kinds).Where(l => l.Art.Count == 0).ToList();
        var found = looks.SelectMany((one, i) => looks.Skip(i + 1).Where(two => IsSeen(topic, drawing, one, two)).Select(two => (Choice(drawing, one), Choice(drawing, two)))).ToList();
        Known.AddOrUpdate(drawing, found);
        return found;
    }

    /// <inheritdoc/>
    public override DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed)
    {
        var (bench, id) = Of(benches, family);
        var drawing = bench.Topic.Drawings.First(d => string.Equals(d.Id, id, StringComparison.Ordinal));
        var rng = Luck.Of(seed);
        var pairs = Pairs(bench.Topic, drawing);
        var (one, two) = pairs[rng.Below(pairs.Count)];
        var order = rng.Below(2) == 0 ? (one, two) : (two, one);
        return Item(bench.Topic, drawing, order, rng.Below(2), seed);
    }

    static DrillItem.Pick Item(Topic topic, TopicDrawing drawing, (DrawnChoice First, DrawnChoice Second) pair, int asked, ulong seed)
    {
        var byShape = HasOtherShape(LookOf(drawing, pair.First), LookOf(drawing, pair.Second));
        var pictures = (Words.Of("drill.glance-n", ("n", 1)), Words.Of("drill.glance-n", ("n", 2)));
        var named = DrawnPair.Of(topic, drawing.Id, pair.First, pair.Second, byShape: byShape);
        var (name, other) = asked == 0 ? named.Names : (named.Names.Second, named.Names.First);
        var alone = DrawnPart.Of(topic, drawing.Id, asked == 0 ? pair.First : pair.Second, seed: seed);
        var shown = new DrillItem.Pick
        {
            Prompt = Words.Of("drill.glance-alone", ("drawing", drawing.Title), ("topic", topic.Title)),
            Options = [named.Names.First, named.Names.Second],
            Right = asked,
            Why = Words.Of("drill.glance-is", ("name", name), ("other", other)),
            Picture = new DrillPicture(room => alone.Rows(room.Columns, Math.Max(LeastRows, room.Rows)), alone.Words),
            After = Picture(named),
        };
        return shown with
        {
            Prompt = Words.Of("drill.glance-pair", ("drawing", drawing.Title), ("topic", topic.Title), ("name", name)),
            Options = [pictures.Item1, pictures.Item2],
            Why = Words.Of("drill.glance-which", ("name", name), ("other", other), ("n", asked + 1)),
            Picture = Picture(DrawnPair.Of(topic, drawing.Id, pair.First, pair.Second, pictures, byShape)),
            Harder = shown,
        };
    }

    static DrillPicture Picture(DrawnPair pair) => new(room => pair.Rows(room.Columns, Math.Max(LeastRows, room.Rows)), pair.Words);

    static DrawnChoice Choice(TopicDrawing drawing, DrawnLook look) => ByFinding(drawing) ? DrawnChoice.Finding(look.Of) : DrawnChoice.Kind(look.Of);

    // What is seen says more of a picture than the name of a kind: "cast, two holes", not "third lever".
    static bool ByFinding(TopicDrawing drawing) => drawing.Findings.Count > 1 || drawing.Kinds.Count < 2;

    static DrawnLook LookOf(TopicDrawing drawing, DrawnChoice choice) =>
        TopicDrawing.Look(choice.IsFinding ? drawing.Findings : drawing.Kinds, choice.Id) ?? throw new InvalidOperationException($"{drawing.Id} has no {choice.Id}.");

    // A drawing with datums is there to be measured: what differs in its sizes alone has a rule to tell it, not the eye.
    static bool IsSeen(Topic topic, TopicDrawing drawing, DrawnLook one, DrawnLook two)
    {
        var (first, second) = (DrawnPart.Of(topic, drawing.Id, Choice(drawing, one)), DrawnPart.Of(topic, drawing.Id, Choice(drawing, two)));
        if (first.Points.Count == 0 || second.Points.Count == 0) return false;
        return Cells(first, second) >= LeastCells
            && (HasOtherShape(one, two) || (drawing.Datums.Count == 0 && first.Points.Keys.Where(second.Points.ContainsKey).Any(p => Place(first, p).To(Place(second, p)) >= Seen)));
    }

    // Characters of the usual picture in which one has clearly more ink: a line that is moved by a dot is not seen.
    static int Cells(DrawnPart one, DrawnPart two) =>
        one.Rows(Usual.Columns, Usual.Rows).Zip(two.Rows(Usual.Columns, Usual.Rows)).Sum(r => r.First.Zip(r.Second).Count(c => Math.Abs(Ink(c.First) - Ink(c.Second)) > 1));

    // Dots of a character.
    static int Ink(char c) => c is >= '\u2800' and <= '\u28ff' ? BitOperations.PopCount((uint)(c - '\u2800')) : 0;

    // A word of the figure is another one, or a number of things is.
    static bool HasOtherShape(DrawnLook one, DrawnLook two) => one.Values.Any(v => two.Values.TryGetValue(v.Key, out var other) && (v.Value, other) switch
    {
        (FigureValue.Word a, FigureValue.Word b) => !string.Equals(a.Text, b.Text, StringComparison.Ordinal),
        (FigureValue.Number a, FigureValue.Number b) => (a.Value < 0.5) != (b.Value < 0.5),
        _ => false,
    });

    // Where a point lies when the drawing fills a window: as a share of its longer side.
    static Drawing.Figures.Spot Place(DrawnPart part, string point)
    {
        var (low, high) = part.Sketch.Bounds();
        var side = Math.Max(high.X - low.X, high.Y - low.Y);
        var at = part.Points[point];
        return new((at.X - low.X) / side, (at.Y - low.Y) / side);
    }
}
