using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>What the engine makes of findings, for scripts. Findings are referred to by their index, from 0.</summary>
static class ReasoningJson
{
    /// <summary>The answer to an enquiry.</summary>
    public static object Of(Topic topic, Enquiry enquiry, IReadOnlyList<Finding> findings, Reasoning reasoning) => new
    {
        Json.Schema,
        Topic = topic.Id,
        topic.Version,
        enquiry.Provenance,
        enquiry.Channel,
        enquiry.Want,
        Findings = findings.Select(Json.Of),
        Parts = reasoning.Parts.Select(Of),
        Conflict = Of(reasoning.Conflict),
        Odd = reasoning.Odd.Select(o => new { o.Finding, Slip = o.SlipProbability, o.Tail, o.Stands }),
        reasoning.Stops,
        reasoning.Ripe,
        reasoning.Gain,
        Decisions = reasoning.Decisions.Select(Of),
        Next = reasoning.Next.Select(n => new { n.Clue, n.With, n.Bits, n.Minutes, BitsPerMinute = n.Again ? null : Json.Finite(n.Score), n.Settles, n.Again }),
    };

    /// <summary>Belief in one part.</summary>
    public static object Of(PartBelief part) => new
    {
        part.Part,
        Classes = part.Classes.Select(c => new { c.Kinds, c.Belief }),
        part.Leading,
        part.SettleAt,
        part.Settled,
        part.Survivors,
        part.DecidingSet,
        Weights = part.Weights.Select((w, i) => new { Finding = i, w.Alone, w.Share, w.Without }),
    };

    /// <summary>Decisions for one order line, best first.</summary>
    public static object Of(LineDecision decision) => new
    {
        decision.OrderLine,
        Options = decision.Options.Select(o => new { Choice = Json.Of(o.Choice), o.Loss, o.WrongShare, o.Money, o.Days }),
    };

    static object Of(Conflict conflict) => new
    {
        Score = Json.Finite(conflict.Score),
        Clashes = conflict.Clashes.Select(Json.Finite),
        conflict.Shown,
        Explanations = conflict.Explanations.Select(e => new { e.Story, e.Before, e.After }),
    };
}
