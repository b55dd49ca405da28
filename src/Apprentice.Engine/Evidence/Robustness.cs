using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>Moves the judged figures of a topic within reason, to see whether an answer hangs on them.</summary>
public static class Robustness
{
    const double MostRate = 0.9;

    /// <summary>Judged event rates all halved and all doubled (to 0.9 at most), part spreads × ⅔ and × 1.5, prices halved and doubled.</summary>
    public static IReadOnlyList<Topic> VariantsOf(Topic topic) =>
    [
        Rates(topic, 0.5), Rates(topic, 2), Spreads(topic, 2.0 / 3), Spreads(topic, 1.5), Prices(topic, 0.5), Prices(topic, 2),
    ];

    static Topic Rates(Topic topic, double factor) => topic with
    {
        Events = [.. topic.Events.Select(e => e.RateSource == "judgement" ? e with { Rates = [.. e.Rates.Select(r => Math.Min(MostRate, r * factor))] } : e)],
    };

    static Topic Spreads(Topic topic, double factor) => topic with
    {
        Dimensions = [.. topic.Dimensions.Select(d => d with { Spreads = [.. d.Spreads.Select(s => s * factor)] })],
    };

    static Topic Prices(Topic topic, double factor) => topic with
    {
        Spares = [.. topic.Spares.Select(s => s with { Price = s.Price * factor, ReturnCost = s.ReturnCost * factor })],
    };
}
