using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>The order: stop signs first; then a line each, what to do about it, what else must change.</summary>
/// <param name="Below">The bike.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record OrderScreen(BikeScreen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

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
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

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
