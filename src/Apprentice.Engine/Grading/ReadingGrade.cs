namespace Apprentice.Engine.Grading;

/// <summary>A reading of the learner's own, graded once.</summary>
public sealed record ReadingGrade
{
    /// <summary>The look, with the datum chosen and what was read.</summary>
    public required Look Look { get; init; }

    /// <summary>What the learner read, mm.</summary>
    public required double Read { get; init; }

    /// <summary>What the scale showed from the right datum, mm, without a zero error.</summary>
    public required double Right { get; init; }

    /// <summary>What went wrong, or <see cref="Mistake.None"/>.</summary>
    public required Mistake Mistake { get; init; }

    /// <summary>The datum it was taken from: 0 right, n the n-th slip.</summary>
    public required int Datum { get; init; }

    /// <summary>The kind that this reading alone points at, "none" when it fits none.</summary>
    public required string Leads { get; init; }

    /// <summary>The mark with its remark and rule.</summary>
    public required GradePart Part { get; init; }
}
