using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>What to do about one line of an order.</summary>
/// <param name="Line">The order line.</param>
/// <param name="Best">The choice that is expected to lose least.</param>
/// <param name="Now">The best choice that orders now, or null.</param>
/// <param name="Check">The best check to wait for, or null.</param>
/// <param name="FitsAll">Spares that fit whatever of the survivors it is, cheapest first.</param>
/// <param name="Hurts">What would happen to the rider when a wrong one is fitted; empty when none of the line can hurt.</param>
public sealed record OrderAdvice(OrderLine Line, Option Best, Option? Now, Option? Check, IReadOnlyList<Spare> FitsAll, IReadOnlyList<string> Hurts)
{
    /// <summary>What ordering now loses against one more check, in the workshop's money; 0 when ordering now loses no more.</summary>
    public double CostOfHaste => Now is { } now && Check is { } check ? Math.Max(0, now.Loss - check.Loss) : 0;

    /// <summary>Advice per order line. A stop sign leaves only to ask.</summary>
    /// <param name="topic">The topic, with the lead's prices.</param>
    /// <param name="want">What the customer wants.</param>
    /// <param name="reasoning">What the findings amount to.</param>
    public static IReadOnlyList<OrderAdvice> Of(Topic topic, Want want, Reasoning reasoning) =>
        [.. reasoning.Decisions.Select(d => Of(topic, want.OrderLines.First(l => l.Id == d.OrderLine), d, reasoning))];

    static OrderAdvice Of(Topic topic, OrderLine line, LineDecision decision, Reasoning reasoning)
    {
        var spares = topic.Spares.Where(s => s.OrderLine == line.Id).ToList();
        return new OrderAdvice(
            line, decision.Best,
            decision.Options.FirstOrDefault(o => o.Choice is Choice.Order or Choice.OrderTwo),
            decision.Options.FirstOrDefault(o => o.Choice is Choice.Wait),
            reasoning.Stops.Count > 0 || reasoning.Conflict.Impossible ? [] : [.. spares.Where(s => FitsAllOf(s, reasoning.Parts)).OrderBy(s => s.Price)],
            [.. spares.Where(s => s.Hazard).Select(s => s.HazardText).Distinct(StringComparer.Ordinal)]);
    }

    // "None of these" is left out of the survivors here: no spare fits it, and it is always said beside the order.
    static bool FitsAllOf(Spare spare, IReadOnlyList<PartBelief> parts) => parts.All(p =>
        spare.Fits.FirstOrDefault(f => f.Part == p.Part).Kinds is not { } kinds
        || p.Survivors.Select(s => p.Classes[s].Kinds).Where(k => !k.Contains(Kind.NoneId)).All(k => k.Any(kinds.Contains)));
}
