using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Grading;

/// <summary>The judgement of an answer, with its reasons.</summary>
public sealed record Grade
{
    /// <summary>Which of the six sentences opens it.</summary>
    public required InShort InShort { get; init; }

    /// <summary>Arguments of that sentence, see <see cref="Remark"/>.</summary>
    public required Remark InShortRemark { get; init; }

    /// <summary>The parts of the grade, in the order of the screen; parts that were not asked are left out.</summary>
    public required IReadOnlyList<GradePart> Parts { get; init; }

    /// <summary>True when a part that can hurt was ordered on readings that did not support it, a part was forced, or a stop sign was passed over.</summary>
    public required bool SafetyError { get; init; }

    /// <summary>True when the case is open to argument: the judged figures, moved within reason, change the best answer; the other answer is accepted too.</summary>
    public required bool OpenToArgument { get; init; }

    /// <summary>True when the answer is sound: the right class or a right "not settled", a decision within tolerance, no safety error.</summary>
    public required bool Sound { get; init; }

    /// <summary>What the engine makes of the findings looked at.</summary>
    public required Reasoning Reasoning { get; init; }

    /// <summary>Findings looked at: the opening first, then the looks in order. Weights and clashes refer to them by index.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Bench minutes spent, safety looks and second readings left out.</summary>
    public required double Minutes { get; init; }

    /// <summary>Bench minutes of the engine's own path.</summary>
    public required double PathMinutes { get; init; }

    /// <summary>The checks of the engine's own path, in order.</summary>
    public required IReadOnlyList<string> Path { get; init; }

    /// <summary>Safety looks on offer that were not taken, and of which nothing was told.</summary>
    public required IReadOnlyList<string> SafetyLeft { get; init; }

    /// <summary>The learner's own readings, in the order taken.</summary>
    public IReadOnlyList<ReadingGrade> Readings { get; init; } = [];

    /// <summary>The figures behind the marks for part and order.</summary>
    public required Judged Judged { get; init; }

    /// <summary>At most three remarks, the most useful first: what was right, one thing to change, how.</summary>
    public required IReadOnlyList<Remark> Remarks { get; init; }
}

/// <summary>The six sentences that open a grade.</summary>
public enum InShort
{
    /// <summary>Right, and for the right reason.</summary>
    RightForTheRightReason,

    /// <summary>Sound, but this bike was the odd one.</summary>
    GoodJudgementOddBike,

    /// <summary>Right by luck.</summary>
    RightByLuck,

    /// <summary>The checks pointed the other way.</summary>
    ChecksPointedOtherWay,

    /// <summary>Stopped too early.</summary>
    StoppedTooEarly,

    /// <summary>Rightly not settled.</summary>
    RightToWait,
}

/// <summary>What a part of the grade judges.</summary>
public enum Aspect
{
    /// <summary>Reading of scales and plates.</summary>
    Reading,

    /// <summary>Going on or stopping.</summary>
    Stopping,

    /// <summary>Which one.</summary>
    Identification,

    /// <summary>How sure.</summary>
    Certainty,

    /// <summary>Reasons: the check that settled it, the check set aside, what happened.</summary>
    Evidence,

    /// <summary>What to order.</summary>
    Decision,

    /// <summary>Minutes.</summary>
    Economy,
}

/// <summary>The word of a mark.</summary>
public enum MarkWord
{
    /// <summary>Below one half.</summary>
    NotYet,

    /// <summary>From one half.</summary>
    Partly,

    /// <summary>From 0.85.</summary>
    Good,
}

/// <summary>One part of a grade.</summary>
/// <param name="Aspect">What it judges.</param>
/// <param name="Mark">Mark; at most 1, for certainty possibly below 0.</param>
/// <param name="Remark">What to say, with its figures.</param>
/// <param name="Rule">Key of the rule's sentence in the words file, with the figures it used.</param>
public sealed record GradePart(Aspect Aspect, double Mark, Remark Remark, Remark Rule)
{
    /// <summary>The word of the mark.</summary>
    public MarkWord Word => Mark >= 0.85 ? MarkWord.Good : Mark >= 0.5 ? MarkWord.Partly : MarkWord.NotYet;
}
