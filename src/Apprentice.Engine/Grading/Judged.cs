using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Grading;

/// <summary>What the marks of an answer rest on, so that they can be worked out again by hand.</summary>
/// <param name="Parts">Per part asked.</param>
/// <param name="Orders">Per order line.</param>
/// <param name="Safety">Why somebody could have been hurt, or not.</param>
/// <param name="Stops">Stop signs on show, in the topic's words.</param>
/// <param name="Early">The check that was worth taking first, or null.</param>
/// <param name="EarlyMinutes">Its minutes.</param>
/// <param name="Thin">Of a part ordered on too little that can hurt: the share of bikes like this that need another one, and its level; else null.</param>
public sealed record Judged(
    IReadOnlyList<PartJudged> Parts, IReadOnlyList<OrderJudged> Orders, SafetyFault Safety, IReadOnlyList<string> Stops, string? Early, double EarlyMinutes,
    (double Wrong, double Level)? Thin)
{
    /// <summary>The figures of two judgements: each part and each order takes the better mark.</summary>
    internal static Judged Of(Judgement shown, Judgement own, Answer answer, SafetyFault safety) => new(
        [.. answer.Parts.Select((_, i) => own.Identification(i) > shown.Identification(i) ? own.PartOf(i, own: true) : shown.PartOf(i, own: false))],
        [.. answer.Orders.Select((_, i) => own.Decision(i) > shown.Decision(i) ? own.OrderOf(i, shown: false) : shown.OrderOf(i, shown: true))],
        safety,
        [.. shown.Reasoning.Stops.Concat(own.Reasoning.Stops).Distinct(StringComparer.Ordinal)],
        shown.Ripe || shown.Reasoning.Next.Count == 0 ? null : shown.Reasoning.Next[0].Clue,
        shown.Ripe || shown.Reasoning.Next.Count == 0 ? 0 : shown.Reasoning.Next[0].Minutes,
        safety is SafetyFault.TooThin ? own.Thin() : null);

    /// <summary>Why somebody could have been hurt. An order stands on the learner's own readings; where all of them are right, what the bench showed supports it as well.</summary>
    internal static SafetyFault SafetyOf(Judgement shown, Judgement own, Answer answer, bool isReadRight) =>
        answer.Forced ? SafetyFault.Forced
        : own.PassesOverStop || shown.PassesOverStop ? SafetyFault.StopSign
        : own.Unsafe() && !(isReadRight && !shown.Unsafe()) ? SafetyFault.TooThin : SafetyFault.None;
}

/// <summary>By what a mark was given.</summary>
public enum JudgedBy
{
    /// <summary>The formula, from the figures.</summary>
    Formula,

    /// <summary>Full marks: it is what the figures, or figures moved within reason, say is best.</summary>
    Accepted,

    /// <summary>Full marks: a stop sign was seen and nothing was named.</summary>
    StopSign,

    /// <summary>None: a check that was worth taking was left.</summary>
    TooEarly,
}

/// <summary>The figures of one part's mark, on the findings that are the better ones for the learner.</summary>
/// <remarks>The formula: 1 − (max(highest, level) − named) / (1 − level), at least 0; named is the share of the class named, or the level for "not settled".</remarks>
/// <param name="Part">The part.</param>
/// <param name="Said">Kind named, "none", or null for "not settled".</param>
/// <param name="Classes">Order classes with their shares, 0 to 1.</param>
/// <param name="Level">Settle level, 0 to 1.</param>
/// <param name="Mark">The mark, 0 to 1.</param>
/// <param name="By">How it came about.</param>
/// <param name="Own">True when the learner's own readings gave the better mark.</param>
public sealed record PartJudged(string Part, string? Said, IReadOnlyList<ClassBelief> Classes, double Level, double Mark, JudgedBy By, bool Own)
{
    /// <summary>The likeliest class.</summary>
    public ClassBelief Leading => Classes.MaxBy(c => c.Belief) ?? throw new InvalidOperationException("a part without classes");

    /// <summary>Share of the class named; the settle level for "not settled".</summary>
    public double Named => Said is null ? Level : Classes.First(c => c.Kinds.Contains(Said)).Belief;
}

/// <summary>The figures of one order's mark.</summary>
/// <remarks>The formula: 1 − (loss − least loss) / cost of asking, at least 0.</remarks>
/// <param name="Line">The order line.</param>
/// <param name="Chosen">What was chosen.</param>
/// <param name="Loss">Its expected loss in the workshop's money, or null when it is no answer.</param>
/// <param name="Best">What loses least.</param>
/// <param name="Least">Its expected loss.</param>
/// <param name="Asking">What asking costs.</param>
/// <param name="Wrong">Share of bikes like this in which what was ordered does not fit, 0 to 1.</param>
/// <param name="HurtLevel">Settle level of a part ordered that can hurt, or null when none can.</param>
/// <param name="Mark">The mark, 0 to 1.</param>
/// <param name="By">How it came about.</param>
/// <param name="Own">True when the learner's own readings gave the better mark.</param>
public sealed record OrderJudged(
    string Line, Choice Chosen, double? Loss, Choice Best, double Least, double Asking, double Wrong, double? HurtLevel, double Mark, JudgedBy By, bool Own);

/// <summary>Why an answer could have hurt somebody.</summary>
public enum SafetyFault
{
    /// <summary>It did not.</summary>
    None,

    /// <summary>A part was forced.</summary>
    Forced,

    /// <summary>Something was ordered although a stop sign was on show.</summary>
    StopSign,

    /// <summary>A part that can hurt was ordered with more doubt than its level allows.</summary>
    TooThin,
}
