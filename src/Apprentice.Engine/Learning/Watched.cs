using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>A graded answer with what the rules of observation ask about it.</summary>
sealed class Watched
{
    /// <summary>A finding says something from so many decibans on: "some" on the screen.</summary>
    public const double Says = 3;

    const double Half = 0.5;
    const double Twice = 2;
    const double Tiny = 1e-300;
    readonly double[]?[] _before;

    public Watched(Workbench bench, Case made, Answer answer, Grade grade)
    {
        (Bench, Made, Answer, Grade) = (bench, made, answer, grade);
        Scene = bench.SceneOf(made.Job.Request.Provenance);
        _before = new double[]?[answer.Parts.Count];
        Want = bench.Topic.Wants.First(w => w.Id == made.Job.Request.Want);
    }

    public Workbench Bench { get; }

    public Case Made { get; }

    public Answer Answer { get; }

    public Grade Grade { get; }

    public Scene Scene { get; }

    public Want Want { get; }

    public Topic Topic => Bench.Topic;

    public IReadOnlyList<PartBelief> Parts => Grade.Reasoning.Parts;

    /// <summary>True when answering now could be defended.</summary>
    public bool Ripe => MarkOf(Aspect.Stopping) is null or >= 1;

    public double? MarkOf(Aspect aspect) => Grade.Parts.FirstOrDefault(p => p.Aspect == aspect)?.Mark;

    public Clue ClueOf(string id) => Scene.Table.Names.ClueOf(id);

    public bool Looked(string clue) => Answer.Looks.Any(l => l.Clue == clue);

    /// <summary>The class that the learner named for a part, or null for "not settled".</summary>
    public int? Named(int part) => Answer.Parts[part].Kind is { } kind ? Parts[part].ClassOf(kind) : null;

    /// <summary>True when the learner's word on a part is what the checks say: the leading class of a settled part, "not settled" of an open one.</summary>
    public bool Follows(int part)
    {
        var belief = Parts[part];
        if (Named(part) is not { } named) return !belief.Settled;
        return named == belief.Leading || belief.Classes[named].Belief >= belief.Highest - (Half * (1 - belief.SettleAt));
    }

    /// <summary>Index of the true class of a part.</summary>
    public int TrueClass(int part) => Parts[part].ClassOf(Made.Truth.Kinds[Scene.Table.Names.Part(Parts[part].Part)]);

    public PitfallClass? ClassOf(string pitfall) => Topic.Pitfalls.FirstOrDefault(p => p.Id == pitfall)?.Class;

    /// <summary>Tags of lines that kept the old part, with their bits.</summary>
    public IEnumerable<(Tag Tag, int Bit)> KeptOldTags => Scene.Table.Tags.Select((t, i) => (t, i)).Where(t => ClassOf(t.t.Pitfall) == PitfallClass.KeptOldLine);

    /// <summary>The class at which one finding alone points, when it is not the leading one and fits the finding at least twice as well as that; else null.</summary>
    public int? PointsElsewhere(int part, int finding)
    {
        if (Alone(part, finding) is not { } alone) return null;
        var before = Before(part);
        var best = Enumerable.Range(0, alone.Count).MaxBy(c => alone[c] + Real.Log(Math.Max(before[c], Tiny)));
        return best != Parts[part].Leading && alone[best] - alone[Parts[part].Leading] >= Real.Log(Twice) ? best : null;
    }

    /// <summary>What the findings would amount to if each were taken by itself: the likeliest class and its chance; null when they rule each other out.</summary>
    public (int Class, double Chance)? OneByOne(int part)
    {
        var logs = Before(part).Select(w => Real.Log(Math.Max(w, Tiny))).ToArray();
        for (var f = 0; f < Grade.Findings.Count; f++)
        {
            if (Alone(part, f) is not { } alone) return null;
            for (var c = 0; c < logs.Length; c++) logs[c] += alone[c];
        }

        var best = Array.IndexOf(logs, logs.Max());
        return (best, 1 / logs.Sum(l => Real.Exp(l - logs[best])));
    }

    /// <summary>True when two findings read different parts that one event changes together.</summary>
    public bool HasLinked(IReadOnlyList<Finding> findings) => findings.Where((f, i) => LinksTo(f, findings.Take(i))).Any();

    /// <summary>True when an event that changes several parts together links a finding to an earlier one of another part.</summary>
    public bool LinksTo(Finding finding, IEnumerable<Finding> earlier)
    {
        if (ClueOf(finding.Clue).Node is not Node.OfPart node) return false;
        var others = earlier.Select(f => ClueOf(f.Clue).Node).OfType<Node.OfPart>().Select(n => n.Part).Where(p => p != node.Part).ToHashSet(StringComparer.Ordinal);
        return Topic.Events.Select(e => e.Effects.OfType<Effect.ChangeKind>().Select(c => c.Part).ToList()).Any(parts => parts.Contains(node.Part) && parts.Any(others.Contains));
    }

    double[] Before(int part) => _before[part] ??= Scene.ClassWeights(Scene.Table.Names.Part(Parts[part].Part), Scene.Nothing);

    // Log likelihood of one finding per class; null when nothing allows it.
    List<double>? Alone(int part, int finding)
    {
        var before = Before(part);
        var after = Scene.ClassWeights(Scene.Table.Names.Part(Parts[part].Part), Scene.Reader.SetOf([Grade.Findings[finding]]).All);
        return after.Sum() > 0 ? [.. after.Select((w, c) => Real.Log(Math.Max(w, Tiny) / Math.Max(before[c], Tiny)))] : null;
    }
}
