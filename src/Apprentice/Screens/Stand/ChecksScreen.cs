using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>All checks of a bike's questions, best first, then the others.</summary>
/// <param name="Below">The bike.</param>
sealed record ChecksScreen(BikeScreen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var several = Below.Views(world).Count > 1;
        return new Page(
            StandWords.Title(Below.Of(world)),
            StandWords.Seen(Below.Of(world).Channel),
            [
                new Block.Text(Words.Of("stand.checks")),
                new Block.Gap(Drop: true),
                new Block.Table(
                    [new(Words.Of("bench.check")), new(Words.Of("bench.with")), new(Words.Of("bench.min"), Right: true) { Said = "bench.said-min" }, new(Words.Of("stand.seen-so"))],
                    Rows(All(world).Select(c => (string[])[several ? $"{c.Clue.Name} ({c.View.Topic.Title})" : c.Clue.Name, c.Clue.Tool, Spoken.Minutes(c.Clue.Minutes), So(c.View, c.Clue)]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => All(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (view, clue) = All(world)[line];
        return Turn.To(new CheckScreen(Below, view.Topic.Id, clue.Id, clue.Channels.Any(c => c.Channel == view.Bike.Channel) ? view.Bike.Channel : clue.Channels[0].Channel));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(StandView View, Clue Clue)> All(World world) =>
        [.. Below.Views(world).SelectMany(v => v.Next.Concat(v.Topic.Clues.Where(c => v.Next.All(n => n != c))).Select(c => (v, c)))];

    static string So(StandView view, Clue clue) =>
        string.Join("; ", view.Findings.Where(f => string.Equals(f.Clue, clue.Id, StringComparison.Ordinal)).Select(f => StandWords.Finding(view.Topic, f)));
}

/// <summary>One check: how to do it, then what was found.</summary>
/// <param name="Below">The bike.</param>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="ClueId">The check.</param>
/// <param name="Channel">How it reaches the bench.</param>
/// <param name="Corrects">Index of the finding that what is found now takes the place of, or null.</param>
sealed record CheckScreen(BikeScreen Below, string Topic, string ClueId, Channel Channel, int? Corrects = null) : ChoiceScreen
{
    static readonly string[] Names = ["stand.check-write", "stand.check-card", "stand.check-hidden", "stand.check-by"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The check.</summary>
    public Clue Clue(World world) => View(world).Topic.Clues.First(c => string.Equals(c.Id, ClueId, StringComparison.Ordinal));

    /// <summary>The question that asks it.</summary>
    public StandView View(World world) => Below.Views(world).First(v => string.Equals(v.Topic.Id, Topic, StringComparison.Ordinal));

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var clue = Clue(world);
        return new Page(
            StandWords.Title(Below.Of(world)),
            clue.Name,
            [
                .. HowTo(world),
                new Block.Gap(Drop: true),
                new Block.Table([new(""), new("")], Rows(Shown(clue).Select(n => (string[])[Words.Of(n), n is "stand.check-by" ? StandWords.Seen(Channel) : ""]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <summary>The question, from where to where, what must come off, caution.</summary>
    public IEnumerable<Block> HowTo(World world)
    {
        var (view, clue) = (View(world), Clue(world));
        yield return new Block.Text(Channel == Channel.Bench || clue.Ask.Length == 0 ? clue.Name : Words.Of("stand.ask-caller", ("ask", clue.Ask)));
        if (view.Reasoning.Odd.Any(o => o.Stands && string.Equals(view.Findings[o.Finding].Clue, ClueId, StringComparison.Ordinal))) yield return new Block.Text(Words.Of("own.again"));
        yield return new Block.Text(ClueWhere.Of(clue), 2);
        if (Channel == Channel.Bench && clue.Access is { } id && view.Topic.Accesses.First(a => string.Equals(a.Id, id, StringComparison.Ordinal)) is var access)
            yield return new Block.Text(Words.Of("bench.comes-off", ("access", access.Name), ("minutes", Spoken.Minutes(access.Minutes))), 2);
        if (clue.Caution.Length > 0) yield return new Block.Text(Words.Of("bench.caution", ("caution", clue.Caution.TrimEnd('.'))), 2);
        if (clue.Lies.Length > 0) yield return new Block.Text(Words.Of("card.lies", ("text", clue.Lies)), 2);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Shown(Clue(world)).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Shown(Clue(world))[line] switch
    {
        "stand.check-write" => Turn.To(Clue(world).Shows is Shows.Measured ? new FoundReadScreen(this) : new FoundPickScreen(this) { Cursor = Cursor.None }),
        "stand.check-card" => CardScreen.Open(world, this, View(world).Topic, ClueId),
        "stand.check-hidden" => Found(world, new Seen.Hidden()),
        _ => Turn.To(this with { Channel = Other(Clue(world)) }),
    };

    /// <summary>Writes a finding down and goes back to the bike.</summary>
    public Turn Found(World world, Seen seen)
    {
        var (clue, finding) = (Clue(world), new Finding(ClueId, Channel, seen));
        return Turn.To(
            Below with { Cursor = default, Note = Words.Of("stand.written", ("clue", clue.Name), ("seen", StandWords.Finding(View(world).Topic, finding))) },
            [
                .. Corrects is { } wrong ? [new LogEntry.BikeStruck(Below.Number, wrong)] : Array.Empty<LogEntry>(),
                new LogEntry.BikeFound(Below.Number, Topic, finding, StandView.Shared(clue, finding)),
            ]);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static List<string> Shown(Clue clue) => [.. Names.Where(n => n is not "stand.check-by" || clue.Channels.Count > 1)];

    Channel Other(Clue clue)
    {
        var ways = clue.Channels.Select(c => c.Channel).ToList();
        return ways[(ways.IndexOf(Channel) + 1) % ways.Count];
    }
}

/// <summary>What was found at a check, from a list.</summary>
/// <param name="Check">The check.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record FoundPickScreen(CheckScreen Check, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(Check.Below.Of(world)),
        StandWords.Seen(Check.Channel),
        [.. Check.HowTo(world).Take(2), new Block.Gap(Drop: true), new Block.Table([new("")], Rows(Answers(world).Select(a => (string[])[a.Text])))],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Answers(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Check.Found(world, new Seen.Named(Answers(world)[line].Id));

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) =>
        key.Press == Screens.Press.Enter && Cursor.Marked < 0 ? Turn.To(this with { Note = Words.Of("answer.none-marked") }) : null;

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Check);

    List<(string Id, string Text)> Answers(World world) => Check.Clue(world).Shows switch
    {
        Shows.Table table => [.. table.Findings.Select(f => (f.Id, f.Text))],
        Shows.Code code => [.. code.Findings.Select(f => (f.Id, f.Text))],
        _ => [],
    };
}

/// <summary>A reading typed in mm or inches.</summary>
/// <param name="Check">The check.</param>
sealed record FoundReadScreen(CheckScreen Check) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(Check.Below.Of(world)),
        StandWords.Seen(Check.Channel),
        [.. Check.HowTo(world), new Block.Gap(Drop: true), new Block.Text(Words.Of("own.type")), .. Field(Words.Of("own.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) =>
        Reading.TryParse(text, (Shows.Measured)Check.Clue(world).Shows, out var reading, out var wrong)
            ? Check.Found(world, new Seen.Reading(reading))
            : Turn.To(this with { Wrong = wrong });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Check);
}

/// <summary>What was found so far, by the question that asked; each can be looked at again, corrected or taken back.</summary>
/// <param name="Below">The bike.</param>
sealed record FindingsScreen(BikeScreen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(Below.Of(world)),
        Words.Of("stand.do-found"),
        [
            new Block.Text(Words.Of(All(world).Count == 0 ? "stand.found-none" : "stand.found-ask")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new(""), new("", Drop: true)], Rows(All(world).Select(f => (string[])[f.Name, f.Seen, f.Day]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => All(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new FindingScreen(Below, All(world)[line].Index));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(int Index, string Name, string Seen, string Day)> All(World world) =>
    [
        .. Below.Of(world).Findings.Select((f, i) => (f, i)).Where(p => !p.f.IsStruck)
            .Select(p => (p.i, Name(world, p.f), Shown(world, p.f), LearnerWords.Day(p.f.At))),
    ];

    static string Name(World world, BikeFinding found) => world.Bench(found.Topic) is { } bench ? new TopicWords(bench.Topic).Clue(found.Finding.Clue) : found.Finding.Clue;

    static string Shown(World world, BikeFinding found) =>
        world.Bench(found.Topic)?.Topic is { } topic && topic.Clues.Any(c => string.Equals(c.Id, found.Finding.Clue, StringComparison.Ordinal)) ? StandWords.Finding(topic, found.Finding) : "";
}

/// <summary>One finding: look again, correct it, or take it back.</summary>
/// <param name="Below">The bike.</param>
/// <param name="Index">Index of the finding on the bike.</param>
sealed record FindingScreen(BikeScreen Below, int Index) : ChoiceScreen
{
    static readonly string[] Names = ["stand.again", "stand.correct", "stand.strike"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var found = Below.Of(world).Findings[Index];
        var topic = world.Bench(found.Topic)?.Topic;
        return new Page(
            StandWords.Title(Below.Of(world)),
            Words.Of("stand.do-found"),
            [
                new Block.Text(topic is null ? found.Finding.Clue : $"{new TopicWords(topic).Clue(found.Finding.Clue)}: {StandWords.Finding(topic, found.Finding)}"),
                new Block.Gap(),
                new Block.Table([new(""), new("")], Rows(Names.Select(n => (string[])[Words.Of(n), n is "stand.again" ? Words.Of("stand.again-note") : ""]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Names.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var found = Below.Of(world).Findings[Index];
        if (line == 2) return Turn.To(Below with { Note = Words.Of("stand.struck") }, new LogEntry.BikeStruck(Below.Number, Index));
        return Below.Views(world).Any(v => string.Equals(v.Topic.Id, found.Topic, StringComparison.Ordinal))
            ? Turn.To(new CheckScreen(Below, found.Topic, found.Finding.Clue, found.Finding.Channel, line == 1 ? Index : null))
            : Turn.To(Below with { Note = Words.Of("stand.no-topic") });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new FindingsScreen(Below));
}
