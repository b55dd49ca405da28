using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>A graded answer with what the rules of observation ask about it.</summary>
sealed class Watched
{
    /// <summary>A finding says something from so many decibans on: "some" on the screen.</summary>
    public const double Says = 3;

    const double Right = 0.5;
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
        return named == belief.Leading || belief.Classes[named].Belief >= belief.Highest - (Right * (1 - belief.SettleAt));
    }

    /// <summary>Index of the true class of a part.</summary>
    public int TrueClass(int part) => Parts[part].ClassOf(Made.Truth.Kinds[Scene.Table.Names.Part(Parts[part].Part)]);

    /// <summary>What one finding alone says of a part asked.</summary>
    /// <param name="part">Index of the part asked.</param>
    /// <param name="finding">Index of the finding.</param>
    /// <returns>Log likelihoods per class up to a constant; null when the finding says nothing of the part.</returns>
    public IReadOnlyList<double>? Alone(int part, int finding)
    {
        var index = Scene.Table.Names.Part(Parts[part].Part);
        var before = _before[part] ??= Scene.ClassWeights(index, Scene.Nothing);
        var after = Scene.ClassWeights(index, Scene.Reader.SetOf([Grade.Findings[finding]]).All);
        if (!(after.Sum() > 0)) return null;
        return [.. after.Select((w, c) => before[c] > 0 ? Quantities.Real.Log(Math.Max(w, 1e-300) / before[c]) : double.NegativeInfinity)];
    }
}
