using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>The start page of a person, or of nobody known.</summary>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record HomeScreen(string Note = "") : ChoiceScreen
{
    enum Line
    {
        GoOn,
        Next,
        Choose,
        Own,
        Drills,
        Lessons,
        Past,
        Who,
        Name,
        Workshop,
        People,
    }

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var done = world.History.JobsOf(world.Person).Where(j => j.Given is not null).ToList();
        return new Page(
            Words.Of("program.name"),
            world.Person ?? Words.Of("home.nobody"),
            [
                .. Note.Length > 0 ? [new Block.Text(Note), new Block.Gap()] : Array.Empty<Block>(),
                new Block.Text(Words.Of("home.ask")),
                new Block.Table([new(""), new("")], Rows(Lines(world).Select(l => Cells(world, l, done.Count)))),
                new Block.Rule(),
                .. done.Count == 0 ? [new Block.Text(Words.Of("home.none-yet"))] : new Block[] { Done(world, done) },
                new Block.Gap(),
                new Block.Text(Words.Of("home.mix")),
                .. world.History.Workshop is { } workshop ? [new Block.Text(Words.Of("home.lead-sees", ("lead", workshop.Lead)))] : Array.Empty<Block>(),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.leave"), Words.Of("key.pause"), Words.Of("key.help"), Words.Of("key.quit")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world)[line] switch
    {
        Line.GoOn => GoOn(world),
        Line.Next => Start.Job(world),
        Line.Choose => Turn.To(new TopicsScreen()),
        Line.Own => Turn.To(new OwnWantScreen(this)),
        Line.Drills => Turn.To(new DrillsScreen(this with { Note = "" })),
        Line.Lessons => Turn.To(new LessonsScreen(this)),
        Line.Past => Turn.To(new PastScreen()),
        Line.Who => Turn.To(new WhoScreen()),
        Line.Name => Turn.To(new NameScreen(null)),
        Line.Workshop => Turn.To(new WorkshopNameScreen(this)),
        _ => Turn.To(PeopleScreen.Of(world, this)),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new LeaveScreen(this));

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'Q' ? Turn.Quit(this) : null;

    static List<Line> Lines(World world)
    {
        var history = world.History;
        List<Line> lines = [Line.Next, Line.Choose, Line.Own, Line.Drills, .. world.Library.Lessons.Count > 0 ? [Line.Lessons] : Array.Empty<Line>(), Line.Past];
        if (history.Unfinished(world.Person) is not null) lines.Insert(0, Line.GoOn);
        lines.Add(history.People.Count > 0 ? Line.Who : Line.Name);
        // Never more than nine lines, so that one digit takes each: a workshop that is set up is changed from the page behind "0 more".
        lines.Add(history.Workshop is null ? Line.Workshop : Line.People);
        return lines;
    }

    static string[] Cells(World world, Line line, int done)
    {
        var open = world.History.Unfinished(world.Person)?.Started;
        return line switch
        {
            Line.GoOn => [Words.Of("home.go-on", ("job", open?.Job ?? 0)), Words.Of("home.go-on-note", ("topic", TopicsScreen.Title(world, open?.Topic ?? "")))],
            Line.Next => [Words.Of("home.next"), Words.Of("home.next-note")],
            Line.Choose => [Words.Of("home.choose"), Words.Of("home.choose-note")],
            Line.Own => [Words.Of("home.own"), Words.Of("home.own-note")],
            Line.Drills => [Words.Of("home.drills"), Words.Of("home.drills-note")],
            Line.Lessons => [Words.Of("home.lessons"), Words.Of("home.lessons-note")],
            Line.Past => [Words.Of("home.past"), Words.Of("home.past-note", ("n", done))],
            Line.Who => [Words.Of("home.who"), Words.Of("home.who-note")],
            Line.Name => [Words.Of("home.name"), Words.Of("home.name-note")],
            Line.Workshop => [Words.Of("home.workshop"), Words.Of("home.workshop-note")],
            _ => [Words.Of("home.people"), Words.Of("home.people-note")],
        };
    }

    static Block.Table Done(World world, List<PastJob> done) => new(
        [new(Words.Of("home.topic")), new(Words.Of("home.jobs"), Right: true), new(Words.Of("home.right"), Right: true), new(Words.Of("home.last"))],
        [
            .. done.GroupBy(j => j.Started.Topic, StringComparer.Ordinal).Select(g => new Row("", Marked: false,
            [
                TopicsScreen.Title(world, g.Key),
                g.Count(j => j.Counts).ToString(),
                g.Count(j => j is { Counts: true, Verdict.Sound: true }).ToString(),
                Words.Of($"short.{g.Last().Verdict?.InShort}") + (g.Last().Counts ? "" : $", {Words.Of("past.guided")}"),
            ])),
        ]);

    Turn GoOn(World world)
    {
        if (world.History.Unfinished(world.Person) is not { } past) return Turn.To(this);
        return BenchJob.Again(world, past) is { } job
            ? Turn.To(BenchScreen.Of(job))
            : Turn.To(this with { Note = Words.Of("home.left-changed", ("job", past.Started.Job)) });
    }
}
