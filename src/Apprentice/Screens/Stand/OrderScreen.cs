using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;

namespace Apprentice.Screens;

/// <summary>The order: stop signs first; then a line each, what to do about it, what else must change.</summary>
/// <param name="Below">The bike.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record OrderScreen(BikeScreen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var views = Below.Views(world);
        return new Page(
            Words.Of("stand.order-title", ("bike", Below.Of(world).Put.Name)),
            StandWords.Entered(Below.Of(world)),
            [
                .. views.SelectMany(v => StandOrder.Of(world.History.Notebook, v)).Select(t => new Block.Text(t.TrimStart(), t.Length - t.TrimStart().Length)),
                new Block.Rule(Drop: true),
                Lines(world).Count == 0 ? new Block.Text(Words.Of("stand.order-none")) : new Block.Table([new(Words.Of("stand.order-ask")), new("")], Rows(Lines(world).Select(l => (string[])[l.Advice.Line.Name, Decided(world, l.View, l.Advice)]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <summary>Order lines that may be decided: none of a question that a stop sign has ended.</summary>
    public List<(StandView View, OrderAdvice Advice)> Lines(World world) =>
        [.. Below.Views(world).Where(v => v.Reasoning.Stops.Count == 0).SelectMany(v => OrderAdvice.Of(v.Topic, v.Want, v.Reasoning).Select(a => (v, a)))];

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new DecideScreen(this with { Note = "" }, line));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static string Decided(World world, StandView view, OrderAdvice advice) =>
        view.Bike.DecisionOf(view.Topic.Id, advice.Line.Id) is { } decision ? StandOrder.Decided(world.History.Notebook, view.Topic, decision) : Words.Of("stand.undecided");
}

/// <summary>What is decided for one line, the choices that lose least first.</summary>
/// <param name="Below">The order.</param>
/// <param name="Line">Index of the line.</param>
sealed record DecideScreen(OrderScreen Below, int Line) : ChoiceScreen
{
    const int Most = 7;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var (view, advice) = Below.Lines(world)[Line];
        var words = new TopicWords(view.Topic);
        return new Page(
            Words.Of("stand.order-title", ("bike", view.Bike.Put.Name)),
            advice.Line.Name,
            [
                new Block.Text(Words.Of("stand.decide")),
                .. Held(view, advice) ? [new Block.Text(Words.Of("stand.decide-hurts"))] : Array.Empty<Block>(),
                new Block.Gap(Drop: true),
                new Block.Table([new(""), new("")], Rows(Options(view, advice).Select(o => (string[])[Spoken.Capital(words.Choice(o.Choice)), StandOrder.Loses(advice, o)]))),
            ],
            [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Options(Below.Lines(world)[Line].View, Below.Lines(world)[Line].Advice).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (view, advice) = Below.Lines(world)[Line];
        var choice = Options(view, advice)[line].Choice;
        return Turn.To(
            Below with { Note = Words.Of("stand.decided", ("line", advice.Line.Name), ("choice", new TopicWords(view.Topic).Choice(choice))) },
            new LogEntry.BikeDecided(view.Bike.Number, view.Topic.Id, view.Topic.Version, advice.Line.Id, choice, HeldBelief.Of(view.Reasoning)));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    // A part that can hurt is not ordered here before it is settled.
    static bool Held(StandView view, OrderAdvice advice) => advice.Hurts.Count > 0 && view.Reasoning.Parts.Any(p => !p.Settled);

    static List<Option> Options(StandView view, OrderAdvice advice)
    {
        var all = view.Reasoning.Decisions.First(d => string.Equals(d.OrderLine, advice.Line.Id, StringComparison.Ordinal)).Options;
        var allowed = all.Where(o => !Held(view, advice) || o.Choice is Choice.Wait or Choice.Ask).ToList();
        var shown = allowed.Take(Most).ToList();
        return [.. shown, .. allowed.Skip(Most).Where(o => o.Choice is Choice.Ask)];
    }
}

/// <summary>The order in sentences, the same on the screen, on the job card and in commands.</summary>
static class StandOrder
{
    const double Worth = 0.005;

    /// <summary>The order of a question: stop signs alone where there are any.</summary>
    /// <param name="notebook">The notebook, for the lead's list.</param>
    /// <param name="view">The question.</param>
    public static IReadOnlyList<string> Of(BenchNotebook notebook, StandView view)
    {
        if (view.Reasoning.Stops.Count > 0) return [.. StandWords.Stops(view), Words.Of("stand.stop-order"), Words.Of("stand.stop-ask")];
        var advice = OrderAdvice.Of(view.Topic, view.Want, view.Reasoning);
        return
        [
            .. view.SafetyFirst.Select(c => Words.Of("own.not-looked", ("look", c.Name))),
            .. advice.SelectMany(a => OfLine(notebook, view, a)),
            .. view.Want.AlsoChanges.Length > 0 ? [Words.Of("own.also", ("text", view.Want.AlsoChanges))] : Array.Empty<string>(),
            .. advice.Any(a => a.Hurts.Count > 0) ? [.. advice.SelectMany(a => a.Hurts).Distinct(StringComparer.Ordinal), Words.Of("own.hurt")] : Array.Empty<string>(),
            .. view.Topic.Spares.Any(s => notebook.Prices.ContainsKey((view.Topic.Id, s.Id))) ? Array.Empty<string>() : [Words.Of("stand.example-prices")],
            Words.Of("stand.not-listed"),
        ];
    }

    /// <summary>What a choice is expected to lose. Where a wrong one can hurt nothing is said in money.</summary>
    public static string Loses(OrderAdvice advice, Option option) => advice.Hurts.Count > 0 ? "" : option.WrongShare < Worth || option.Choice is Choice.Wait or Choice.Ask
        ? Words.Of("stand.loses", ("money", Spoken.Money(option.Loss)))
        : Words.Of("stand.loses-wrong", ("money", Spoken.Money(option.Loss)), ("tenths", Spoken.Twentieths(option.WrongShare)));

    /// <summary>A decision with the day until which the part goes back.</summary>
    public static string Decided(BenchNotebook notebook, Engine.Topics.Topic topic, BikeDecision decision)
    {
        var choice = new TopicWords(topic).Choice(decision.What.Choice);
        return ReturnDays(notebook, topic.Id, decision.What.Choice) is { } days
            ? Words.Of("stand.decided-until", ("choice", choice), ("day", LearnerWords.Day(decision.At.AddDays(days))))
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
