using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The start page of a person, or of nobody known: today's plan, what they can do, at most four sentences, and nine ways on.</summary>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record HomeScreen(string Note = "") : ChoiceScreen
{
    const int Short = 3;
    const int Ways = 9;
    const int Across = 3;

    // Letters of the nine ways; Enter or 1 starts, and the digit 3 is three minutes.
    const string Letters = " C BDLHJN";

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        world.Person ?? Words.Of("program.name"),
        world.Person is null ? Words.Of("home.nobody") : LearnerWords.Day(world.Now),
        [
            .. Note.Length > 0 ? [new Block.Text(Note), new Block.Gap(Drop: true)] : Array.Empty<Block>(),
            .. HomeBlocks.Of(world),
            .. world.Plain ? [new Block.Table([new("")], Rows(Names(world).Select(n => (string[])[n])))] : Array.Empty<Block>(),
        ],
        [Words.Of(Start.Open(world) is null ? "home.key-start" : "key.enter-go"), Words.Of("home.key-ways"), Words.Of("key.leave"), Words.Of("key.pause"), Words.Of("key.help"), Words.Of("key.quit")])
    {
        Foot = world.Plain ? [] : [Grid(Names(world))],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Ways;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Start.Open(world) is null ? Start.Today(world) : GoOn(world),
        1 => Turn.To(new ChooseScreen()),
        2 => Start.Today(world, Short),
        3 => Turn.To(IsStand(world) ? new StandScreen(this with { Note = "" }) : OwnGoOnScreen.Of(world, this)),
        4 => Turn.To(new DrillsScreen(this with { Note = "" })),
        5 => Turn.To(new LessonsScreen(this)),
        6 => LookOutScreen.Open(world),
        7 => Turn.To(new PastScreen()),
        _ => Turn.To(world.History.People.Count > 0 ? new WhoScreen() : new NameScreen(null)),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new LeaveScreen(this));

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter switch
    {
        'Q' => Turn.Quit(this),
        'R' when Assess.ResultListScreen.ForCandidate(world, this) is { } results => Turn.To(results),
        { } letter and not ' ' when Letters.IndexOf(letter) is >= 0 and var line => Take(world, line),
        _ => null,
    };

    static List<string> Names(World world) =>
    [
        Start.Open(world) is { } open ? Words.Of("home.go-on", ("job", open.Started.Job)) : Words.Of("home.start"),
        Words.Of("home.choose"),
        Words.Of("home.short"),
        Words.Of(IsStand(world) ? "home.stand" : "home.own"),
        Words.Of("home.drills"),
        Words.Of("home.lessons"),
        Words.Of("home.look-out"),
        Words.Of("home.past"),
        world.Person is { } person ? Words.Of("home.who", ("name", person)) : Words.Of(world.History.People.Count > 0 ? "home.who-else" : "home.name"),
    ];

    // A workshop keeps its bikes in a notebook; a home mechanic walks round one bike, and finds the notebook behind 0.
    static bool IsStand(World world) => world.History.Workshop is not null || world.History.Notebook.Bikes.Count > 0;

    // Three by three, as on a number pad.
    static Block.Table Grid(List<string> names) => new(
        [new(""), new(""), new("")],
        [.. names.Select((n, i) => $"{i + 1} {n}").Chunk(Across).Select(c => new Row("", Marked: false, c))]);

    Turn GoOn(World world)
    {
        if (Start.Open(world) is not { } past) return Turn.To(this);
        return BenchJob.Again(world, past) is { } job
            ? Turn.To(BenchScreen.Of(job with { Session = Session.Of(world, past) }))
            : Turn.To(this with { Note = Words.Of("home.left-changed", ("job", past.Started.Job)) });
    }
}
