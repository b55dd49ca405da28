using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>A new bike: what it is called here.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record BikeNameScreen(Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.new-title"),
        world.Who,
        [new Block.Gap(), new Block.Text(Words.Of("stand.name")), new Block.Gap(), .. Field(Words.Of("stand.name-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("stand.name-needed") })
        : Turn.To(new BikeCardScreen(text, this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>A new bike: the number of its job card, which decides whether it counts as routine.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record BikeCardScreen(string Name, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 9;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.new-title"),
        Name,
        [new Block.Gap(), new Block.Text(Words.Of("stand.card")), new Block.Gap(), .. Field(Words.Of("stand.card-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length > 0 && (!int.TryParse(text, System.Globalization.NumberStyles.None, null, out var number) || number < 1))
            return Turn.To(this with { Wrong = Words.Of("stand.card-wrong", ("text", text)) });
        return Turn.To(new BikeSeenScreen(null, new BikeDraft(Name, text.Length == 0 ? null : int.Parse(text)), this));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>A bike that is being taken in.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Card">Number of its job card, or null.</param>
sealed record BikeDraft(string Name, int? Card)
{
    /// <summary>How it is seen.</summary>
    public Channel Channel { get; init; }

    /// <summary>Tools at hand, 1 to 3.</summary>
    public int Tools { get; init; } = ToolLevel.All;
}

/// <summary>How a bike is seen and with which tools: of a new bike, or of one that is here.</summary>
/// <param name="Bike">Number of a bike that is here, or null for a new one.</param>
/// <param name="Draft">The new bike.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record BikeSeenScreen(int? Bike, BikeDraft Draft, Screen Below) : ChoiceScreen
{
    static readonly (Channel Channel, int Tools, string Key)[] Options =
    [
        (Channel.Bench, ToolLevel.All, "stand.seen-all"), (Channel.Bench, 2, "stand.seen-rule"), (Channel.Bench, 1, "stand.seen-eyes"),
        (Channel.Phone, ToolLevel.All, "stand.seen-phone"), (Channel.Photo, ToolLevel.All, "stand.seen-photo"),
    ];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Bike is null ? Words.Of("stand.new-title") : Words.Of("stand.seen-title"),
        Draft.Name,
        [new Block.Text(Words.Of("stand.seen")), new Block.Gap(), new Block.Table([new("")], Rows(Options.Select(o => (string[])[Words.Of(o.Key)])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Options.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (channel, tools, _) = Options[line];
        return Bike is { } bike
            ? Turn.To(Below, new LogEntry.BikeSeenBy(bike, channel, tools))
            : Turn.To(BikeAboutScreen.Of(world, null, Draft with { Channel = channel, Tools = tools }, this));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>What it is about: the topic, where there are several.</summary>
/// <param name="Bike">Number of a bike that is here, or null for a new one.</param>
/// <param name="Draft">The new bike.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record BikeAboutScreen(int? Bike, BikeDraft Draft, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The question what it is about, or at once what is wanted where there is one topic.</summary>
    public static Screen Of(World world, int? bike, BikeDraft draft, Screen below) =>
        Here(world) is [var only] ? new BikeWantScreen(bike, draft, only, below) : new BikeAboutScreen(bike, draft, below);

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of(Bike is null ? "stand.new-title" : "stand.more-title"),
        Draft.Name,
        [new Block.Text(Words.Of("stand.about")), new Block.Gap(Drop: true), new Block.Table([new(""), new("")], Rows(Here(world).Select(b => (string[])[b.Topic.Title, RealTopics.Note(b)])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Here(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new BikeWantScreen(Bike, Draft, Here(world)[line], this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static IReadOnlyList<Workbench> Here(World world) => RealTopics.Of(world.Practised);
}

/// <summary>What the customer wants of a topic.</summary>
/// <param name="Bike">Number of a bike that is here, or null for a new one.</param>
/// <param name="Draft">The new bike.</param>
/// <param name="Bench">The topic.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record BikeWantScreen(int? Bike, BikeDraft Draft, Workbench Bench, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of(Bike is null ? "stand.new-title" : "stand.more-title"),
        Draft.Name,
        [new Block.Text(Words.Of("stand.want")), new Block.Gap(Drop: true), new Block.Table([new("")], Rows(Bench.Topic.Wants.Select(w => (string[])[w.Name])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Bench.Topic.Wants.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var want = Bench.Topic.Wants[line];
        if (Bike is { } number && world.History.Notebook.Find(number) is { Asked.Count: > 0 } known)
        {
            var provenance = StandView.ProvenanceIn(Bench.Topic, known.Asked[0].Provenance);
            return Turn.To(new BikeScreen(number, new StandScreen(Start.Home(world))), new LogEntry.BikeAsked(number, Bench.Topic.Id, Bench.Topic.Version, want.Id, provenance));
        }

        return BikeFromScreen.From(world, Draft, Bench) is [var only]
            ? BikeFromScreen.Put(world, Draft, Bench, want, only.Id)
            : Turn.To(new BikeFromScreen(Draft, Bench, want, this));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>A new bike: where it comes from; then it stands on the stand.</summary>
/// <param name="Draft">The new bike.</param>
/// <param name="Bench">The topic.</param>
/// <param name="Want">What the customer wants.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record BikeFromScreen(BikeDraft Draft, Workbench Bench, Want Want, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.new-title"),
        Draft.Name,
        [new Block.Text(Words.Of("own.from")), new Block.Gap(), new Block.Table([new("")], Rows(From(world, Draft, Bench).Select(p => (string[])[Spoken.Capital(p.Card)])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <summary>Where the bike can come from.</summary>
    public static IReadOnlyList<Provenance> From(World world, BikeDraft draft, Workbench bench) => StandView.ProvenancesFor(bench.Topic, IsRoutine(world, draft));

    /// <summary>Puts the bike on the stand.</summary>
    public static Turn Put(World world, BikeDraft draft, Workbench bench, Want want, string provenance)
    {
        var number = world.History.Notebook.NextBike;
        return Turn.To(
            new BikeScreen(number, new StandScreen(Start.Home(world))),
            new LogEntry.BikePut(number, world.Person, draft.Name, draft.Card, IsRoutine(world, draft), draft.Channel, draft.Tools),
            new LogEntry.BikeAsked(number, bench.Topic.Id, bench.Topic.Version, want.Id, provenance));
    }

    /// <inheritdoc/>
    protected override int Count(World world) => From(world, Draft, Bench).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Put(world, Draft, Bench, Want, From(world, Draft, Bench)[line].Id);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static bool IsRoutine(World world, BikeDraft draft) => world.History.Notebook.IsRoutine(draft.Card, DateOnly.FromDateTime(world.Now.DateTime));
}
