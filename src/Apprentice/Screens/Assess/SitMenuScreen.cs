using Apprentice.Content;
using Apprentice.Engine.Assessing;

namespace Apprentice.Screens.Assess;

/// <summary>Behind 0 in a sitting: put the job off, another job, hand in, or the lead stops the clock. There is no other way out.</summary>
/// <param name="Place">The job on the screen.</param>
sealed record SitMenuScreen(int Place) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.menu"),
        world.Who,
        [
            new Block.Text(Words.Of("sit.menu-state", ("answered", Answered(world)), ("of", world.Sitting is { } s ? s.Places - s.Closed : 0))),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Lines(world).Select(l => (string[])[l.Name]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world)[line].Go();

    /// <inheritdoc/>
    protected override Turn Back(World world) => Sit.To(world, Place);

    static int Answered(World world) => world.Sitting is { } sitting ? sitting.Places - sitting.Closed - sitting.Open.Count : 0;

    List<(string Name, Func<Turn> Go)> Lines(World world) =>
    [
        (Words.Of("sit.back-to", ("place", Place)), () => Back(world)),
        .. world.Sitting is { } sitting && sitting.Open.Any(p => p != Place) && sitting.Open.Contains(Place)
            ? [(Words.Of("sit.put-off", ("place", Place)), () => Sit.Skip(world, Place))]
            : Array.Empty<(string, Func<Turn>)>(),
        (Words.Of("sit.list"), () => Turn.To(new SitListScreen(Place))),
        (Words.Of("sit.hand-in"), () => Turn.To(new SitHandInScreen(Place))),
        (Words.Of("sit.stop"), () => Turn.To(new SitStopScreen(Place))),
    ];
}

/// <summary>All jobs up to the next check: which are answered, put off, or not looked at.</summary>
/// <param name="Place">The job to go back to.</param>
sealed record SitListScreen(int Place) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.list"),
        world.Who,
        [
            .. OneTopic(world) is { } one ? [new Block.Text(Words.Of("whylist.one", ("topic", one))), new Block.Gap(Drop: true)] : Array.Empty<Block>(),
            new Block.Table([new(Words.Of("sit.list-job")), new(Words.Of("sit.list-state"))], Rows(Places(world).Select(p => (string[])[Name(world, p), State(world, p)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Places(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Sit.To(world, Places(world)[line]);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new SitMenuScreen(Place));

    static List<int> Places(World world) => world.Sitting is { } sitting ? [.. Enumerable.Range(sitting.Closed + 1, sitting.Places - sitting.Closed)] : [];

    static string Name(World world, int place) => OneTopic(world) is not null
        ? Words.Of("sit.list-n", ("n", place))
        : Words.Of("job.title", ("job", place), ("topic", Topic(world, place)));

    // Where all jobs are about the same, the topic stands above them once.
    static string? OneTopic(World world) => Places(world).Select(p => Topic(world, p)).Distinct(StringComparer.Ordinal).ToList() is [{ Length: > 0 } one] ? one : null;

    static string Topic(World world, int place) => world.Seat is { } seat ? world.Bench(seat.Paper.At(place).Family.Topic)?.Topic.Title ?? "" : "";

    static string State(World world, int place) => Words.Of(world.Sitting?.JobAt(place) switch
    {
        { Given: not null } => "sit.state-answered",
        { Skipped: true } => "sit.state-put-off",
        { Looks.Count: > 0 } => "sit.state-begun",
        _ => "sit.state-new",
    });
}

/// <summary>Before the jobs up to the check are handed in.</summary>
/// <param name="Place">The job to go back to.</param>
sealed record SitHandInScreen(int Place) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.hand-in"),
        world.Who,
        [
            new Block.Text(Open(world) is { Count: > 0 } open
                ? Words.Of(open.Count == 1 ? "sit.hand-in-open-one" : "sit.hand-in-open", ("jobs", Spoken.List([.. open.Select(p => $"{p}")])))
                : Words.Of(world.Sitting?.Places == 1 ? "sit.hand-in-one" : "sit.hand-in-all", ("n", world.Sitting is { } s ? s.Places - s.Closed : 0))),
            new Block.Gap(),
            new Block.Table([new("")], Rows([[Words.Of("sit.hand-in-no")], [Words.Of("sit.hand-in-yes")]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0 ? Turn.To(new SitListScreen(Place)) : Sit.HandInAll(world);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new SitMenuScreen(Place));

    static IReadOnlyList<int> Open(World world) => world.Sitting?.Open ?? [];
}

/// <summary>The lead stops the clock: a reason, then the code of the paper.</summary>
/// <param name="Place">The job on the screen, which a fresh one replaces.</param>
/// <param name="Reason">The reason, or null while it is asked.</param>
sealed record SitStopScreen(int Place, string? Reason = null) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => Reason is not null;

    /// <inheritdoc/>
    protected override int Longest => 80;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.stop"),
        world.Who,
        [
            new Block.Text(Words.Of("sit.stop-what", ("place", Place))),
            new Block.Gap(),
            new Block.Text(Words.Of(Reason is null ? "sit.stop-why" : "sit.stop-code")),
            new Block.Gap(),
            .. Reason is null ? Field(Words.Of("sit.stop-field")) : (this with { Typed = new string('*', Math.Min(Typed.Length, 40)) }).Field(Words.Of("sit.code-field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (Reason is not { } reason) return Turn.To(text.Length == 0 ? this with { Wrong = Words.Of("sit.stop-none") } : new SitStopScreen(Place, text));
        return world.Seat is { } seat && seat.OpensBy(text) ? Sit.Stop(world, Place, reason) : Turn.To(this with { Typed = "", Wrong = Words.Of("sit.stop-other") });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new SitMenuScreen(Place));
}

/// <summary>The clock stands.</summary>
/// <param name="Since">Since when.</param>
sealed record SitStoppedScreen(DateTimeOffset Since) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.stopped"),
        world.Who,
        [
            new Block.Text(Words.Of("sit.stopped-since", ("time", $"{Since:HH:mm}"), ("left", Sit.Left(world)))),
            new Block.Gap(),
            new Block.Table([new("")], Rows([[Words.Of("sit.go-on")], [Words.Of("sit.end-all")]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0 ? Sit.GoOn(world) : Sit.End(world, SittingEnd.ByLead);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(this);
}

/// <summary>A break after a sitting's length: the clock stands.</summary>
/// <param name="More">Jobs that follow.</param>
sealed record SitBreakScreen(int More) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.break-title"),
        world.Who,
        [
            new Block.Text(Words.Of("sit.break-text", ("n", More))),
            new Block.Gap(),
            new Block.Text(Words.Of("sit.break-says")),
            new Block.Gap(),
            new Block.Table([new("")], Rows([[Words.Of("sit.go-on")]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Sit.GoOn(world);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(this);
}

/// <summary>The end of a sitting: where the result lies, and what comes next. No marks.</summary>
/// <param name="Note">Where the result lies, or why it could not be written.</param>
sealed record SitEndScreen(string Note) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.end"),
        "",
        [new Block.Text(Words.Of("sit.end-text")), new Block.Gap(), new Block.Text(Note), new Block.Gap(), new Block.Text(Words.Of("sit.end-next"))],
        [Words.Of("key.enter-ok"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Start.Home(world) : this);
}
