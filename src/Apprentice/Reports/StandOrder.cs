using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;

namespace Apprentice.Reports;

/// <summary>The order in sentences, the same on the screen, on the job card and in commands.</summary>
static class StandOrder
{
    const double Worth = 0.005;

    /// <summary>The order of a question: stop signs alone where there are any.</summary>
    /// <param name="notebook">The notebook, for the lead's list.</param>
    /// <param name="view">The question.</param>
    public static IReadOnlyList<string> Of(BenchNotebook notebook, StandView view)
    {
        if (view.Reasoning.Stops.Count > 0) return [.. StandWords.Stops(view), .. StandWords.AfterStop()];
        var advice = OrderAdvice.Of(view.Topic, view.Want, view.Reasoning);
        return
        [
            .. Cautions(view),
            .. advice.SelectMany(a => OfLine(notebook, view, a)),
            .. view.Want.AlsoChanges.Length > 0 ? [Words.Of("own.also", ("text", view.Want.AlsoChanges))] : Array.Empty<string>(),
            .. advice.Any(a => a.Hurts.Count > 0) ? [.. advice.SelectMany(a => a.Hurts).Distinct(StringComparer.Ordinal), Words.Of("own.hurt")] : Array.Empty<string>(),
            .. view.Topic.Spares.Any(s => notebook.Prices.ContainsKey((view.Topic.Id, s.Id))) ? Array.Empty<string>() : [Words.Of("stand.example-prices")],
            Words.Of("stand.not-listed"),
        ];
    }

    /// <summary>Safety looks that were not taken, those that cannot be seen among them, or found something though no stop sign.</summary>
    public static IEnumerable<string> Cautions(StandView view) =>
    [
        .. SafetyLook.NotTaken(view.Topic, view.Findings).Select(c => Words.Of("own.not-looked", ("look", c.Name))),
        .. SafetyLook.NotSound(view.Topic, view.Findings).Select(f => Words.Of("own.not-sound", ("look", new TopicWords(view.Topic).Clue(f.Clue)), ("seen", StandWords.Finding(view.Topic, f)))),
    ];

    /// <summary>What a choice is expected to lose. Where a wrong one can hurt nothing is said in money.</summary>
    public static string Loses(OrderAdvice advice, Option option) => advice.Hurts.Count > 0 ? "" : option.WrongShare < Worth || option.Choice is Choice.Wait or Choice.Ask
        ? Words.Of("stand.loses", ("money", Spoken.Money(option.Loss)))
        : Words.Of("stand.loses-wrong", ("money", Spoken.Money(option.Loss)), ("tenths", Spoken.Twentieths(option.WrongShare)));

    /// <summary>A decision with the day until which the part goes back.</summary>
    public static string Decided(BenchNotebook notebook, Engine.Topics.Topic topic, BikeDecision decision)
    {
        var choice = new TopicWords(topic).Choice(decision.What.Choice);
        return ReturnDays(notebook, topic.Id, decision.What.Choice) is { } days
            ? Words.Of("stand.decided-until", ("choice", choice), ("day", StandWords.Day(decision.At.AddDays(days))))
            : choice;
    }

    static IEnumerable<string> OfLine(BenchNotebook notebook, StandView view, OrderAdvice advice)
    {
        var words = new TopicWords(view.Topic);
        yield return Words.Of("stand.line", ("line", advice.Line.Name), ("choice", words.Choice(advice.Best.Choice)));
        foreach (var spare in Spares(view, advice.Best.Choice))
            yield return "  " + Words.Of("stand.spare", ("spare", spare.Name), ("price", Spoken.Money(spare.Price)), ("back", Spoken.Money(spare.ReturnCost)), ("days", Spoken.Minutes(spare.DelayDays)));
        if (ReturnDays(notebook, view.Topic.Id, advice.Best.Choice) is { } until) yield return "  " + Words.Of("stand.until", ("days", until));
        if (advice.FitsAll.Count > 0 && advice.Best.Choice is not Choice.Order)
            yield return "  " + Words.Of("stand.fits-all", ("spares", Spoken.List([.. advice.FitsAll.Select(s => s.Name)])));
        if (advice.CostOfHaste >= Worth && advice.Check is { Choice: Choice.Wait wait })
        {
            yield return "  " + (advice.Hurts.Count > 0
                ? Words.Of("stand.haste-hurts", ("clue", words.Clue(wait.Clue)))
                : Words.Of("stand.haste", ("money", Spoken.Money(advice.CostOfHaste)), ("clue", words.Clue(wait.Clue))));
        }
    }

    static IEnumerable<Engine.Topics.Spare> Spares(StandView view, Choice choice) => view.Topic.Spares.Where(s => Ids(choice).Contains(s.Id, StringComparer.Ordinal));

    static string[] Ids(Choice choice) => choice switch
    {
        Choice.Order order => [order.Spare],
        Choice.OrderTwo two => [two.First, two.Second],
        _ => [],
    };

    static int? ReturnDays(BenchNotebook notebook, string topic, Choice choice) =>
        Ids(choice).Select(s => notebook.ReturnDays(topic, s)).Min();
}
