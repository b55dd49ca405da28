using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>Which question's truth came back, where a bike has several.</summary>
/// <param name="Below">The bike.</param>
sealed record TruthTopicScreen(BikeScreen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(Below.Of(world)),
        Words.Of("stand.do-truth"),
        [new Block.Text(Words.Of("stand.truth-which")), new Block.Gap(), new Block.Table([new("")], Rows(Below.Views(world).Select(v => (string[])[v.Topic.Title])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Below.Views(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(TruthScreen.Of(Below, Below.Views(world)[line]));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>What it really was: a part a page, then the sort of bike.</summary>
/// <param name="Below">The bike.</param>
/// <param name="View">The question.</param>
/// <param name="So">What was said so far.</param>
sealed record TruthScreen(BikeScreen Below, StandView View, TruthSoFar So) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The first page.</summary>
    public static Screen Of(BikeScreen below, StandView view) => new TruthScreen(below, view, new TruthSoFar([], null, 0));

    bool IsLine => So.Step >= View.Want.Asks.Count;

    Part Asked => View.Topic.Parts.First(p => string.Equals(p.Id, View.Want.Asks[So.Step], StringComparison.Ordinal));

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(View.Bike),
        Words.Of("stand.do-truth"),
        [
            new Block.Text(Words.Of("stand.truth")),
            new Block.Text(IsLine ? Words.Of("stand.truth-line") : Asked.Question.Length > 0 ? Asked.Question : Asked.Name),
            new Block.Gap(Drop: true),
            new Block.Table([new("")], Rows(Answers().Select(a => (string[])[a.Name]))),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Answers().Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var answer = Answers()[line].Id;
        if (!IsLine)
        {
            var part = Asked.Id;
            return Turn.To(this with { Cursor = default, So = So with { Step = So.Step + 1, Parts = answer is null ? So.Parts : [.. So.Parts, new TruePart(part, answer)] } });
        }

        var so = So with { Line = answer };
        if (so.Parts.Count == 0) return Turn.To(Below with { Note = Words.Of("stand.truth-nothing") });
        return Turn.To(View.Topic.Years.Count > 0 ? new TruthBuiltScreen(this, so) : new TruthEventsScreen(Below, View, so, null, []));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(string? Id, string Name)> Answers() => IsLine
        ? [.. View.Topic.Lines.Select(l => ((string?)l.Id, l.Name)), (null, Words.Of("stand.not-known"))]
        : [.. Asked.Kinds.Select(k => ((string?)k.Id, k.Name)), (Engine.Topics.Kind.NoneId, Words.Of("answer.none")), (null, Words.Of("stand.not-known"))];
}

/// <summary>What was said so far of what it really was.</summary>
/// <param name="Parts">Kinds per part.</param>
/// <param name="Line">Its line, or null.</param>
/// <param name="Step">How many parts were asked.</param>
sealed record TruthSoFar(IReadOnlyList<TruePart> Parts, string? Line, int Step);

/// <summary>The month in which it was built, where the topic has dates.</summary>
/// <param name="Below">The page before.</param>
/// <param name="So">What was said so far.</param>
sealed record TruthBuiltScreen(TruthScreen Below, TruthSoFar So) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(Below.View.Bike),
        Words.Of("stand.do-truth"),
        [new Block.Gap(), new Block.Text(Words.Of("stand.truth-built")), new Block.Gap(), .. Field(Words.Of("stand.truth-built-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        Month? built = null;
        if (text.Length > 0)
        {
            if (!Month.TryParse(text, out var month)) return Turn.To(this with { Wrong = Words.Of("stand.truth-built-wrong", ("text", text)) });
            built = month;
        }

        return Turn.To(new TruthEventsScreen(Below.Below, Below.View, So, built, []));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>What had happened to the bike; all that is not marked had not.</summary>
/// <param name="Below">The bike.</param>
/// <param name="View">The question.</param>
/// <param name="So">What it really was.</param>
/// <param name="Built">When it was built, or null.</param>
/// <param name="Chosen">Events marked.</param>
sealed record TruthEventsScreen(BikeScreen Below, StandView View, TruthSoFar So, Month? Built, IReadOnlyList<string> Chosen) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(View.Bike),
        Words.Of("stand.do-truth"),
        [
            new Block.Text(Words.Of("stand.truth-events")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], Rows(
            [
                [Words.Of("stand.truth-done"), Chosen.Count == 0 ? Words.Of("story.nothing") : ""],
                .. View.Topic.Events.Select(e => (string[])[Spoken.Capital(e.Story), Chosen.Contains(e.Id, StringComparer.Ordinal) ? Words.Of("workshop.on") : ""]),
            ])),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => View.Topic.Events.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line > 0)
        {
            var id = View.Topic.Events[line - 1].Id;
            return Turn.To(this with { Chosen = [.. View.Topic.Events.Select(e => e.Id).Where(e => Chosen.Contains(e, StringComparer.Ordinal) != string.Equals(e, id, StringComparison.Ordinal))] });
        }

        var truth = new BikeTruth(So.Parts, Chosen, So.Line, Built);
        var held = StandTruth.HeldOf(View);
        return Turn.To(
            Below with { Note = StandTruth.Beside(View.Topic, truth, held) },
            new LogEntry.BikeConfirmed(View.Bike.Number, View.Topic.Id, View.Topic.Version, truth, held));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(TruthScreen.Of(Below, View));
}

/// <summary>The truth beside what was held.</summary>
static class StandTruth
{
    /// <summary>What was held when the last order line was decided; where nothing was decided, what is held now.</summary>
    public static IReadOnlyList<HeldBelief> HeldOf(StandView view) =>
        view.Bike.Decisions.LastOrDefault(d => string.Equals(d.What.Topic, view.Topic.Id, StringComparison.Ordinal))?.What.Held ?? HeldBelief.Of(view.Reasoning);

    /// <summary>A sentence: what it was, and what the program held at the time.</summary>
    public static string Beside(Topic topic, BikeTruth truth, IReadOnlyList<HeldBelief> held)
    {
        var words = new TopicWords(topic);
        return string.Join(' ', truth.Parts.Select(p => held.FirstOrDefault(h => string.Equals(h.Part, p.Part, StringComparison.Ordinal)) is { } h
            ? Words.Of("stand.beside", ("kind", StandWords.Kind(topic, p)), ("held", words.Class(p.Part, h.Leading.Kinds)), ("tenths", Spoken.Twentieths(h.Leading.Belief)))
            : Words.Of("stand.was", ("kinds", StandWords.Kind(topic, p)))));
    }
}

/// <summary>"This bike did not match": a line for the lead.</summary>
/// <param name="Below">The bike.</param>
sealed record NoMatchScreen(BikeScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    protected override int Longest => 160;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(Below.Of(world)),
        world.Who,
        [new Block.Gap(), new Block.Text(Words.Of(world.History.Workshop is null ? "stand.no-match-own" : "stand.no-match")), new Block.Gap(), .. Field(Words.Of("wrong.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("wrong.empty") })
        : Turn.To(Below with { Note = Words.Of(world.History.Workshop is null ? "stand.no-match-kept" : "wrong.kept") }, new LogEntry.BikeQuestioned(Below.Number, world.Person, Below.Views(world)[^1].Topic.Id, text));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
