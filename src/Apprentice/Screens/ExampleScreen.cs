using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>The example workshop: all pages as they are, over a history of made-up people. What is done in it happens to that history alone; nothing reaches the log or a file.</summary>
/// <param name="Inner">The page that is shown.</param>
/// <param name="Made">The made-up history.</param>
sealed record ExampleScreen(Screen Inner, History Made) : Screen
{
    /// <inheritdoc/>
    public override bool Typing => Inner.Typing;

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override bool Slow => Inner.Slow;

    /// <summary>The example from its beginning.</summary>
    public static ExampleScreen Of(World world) => new(new ExampleStartScreen(), ExampleHistory.Of(world.Benches, world.Now));

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var page = Inner.Show(Inside(world));
        // Nobody is put aside in the example.
        return page with { Keys = [.. page.Keys.Where(k => k != Words.Of("key.pause"))], Right = page.Right.Length == 0 ? Words.Of("example.right") : $"{page.Right}   {Words.Of("example.right")}" };
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        var inside = Inside(world);
        var turn = Inner.Press(inside, key);
        if (turn.Quits) return Turn.Quit(this);
        var made = turn.Entries.Aggregate(Made, (history, entry) => history.With(new Logged(world.Now, entry)));
        var next = turn.Sheet is { } sheet ? sheet.Then(Words.Of("example.no-file")) : turn.Next;
        return next switch
        {
            FirstStartScreen => Turn.To(next),
            LeaveScreen or WhoScreen or PauseScreen => Turn.To(new ExampleScreen(new ExampleStartScreen(), made)),
            OldGradeScreen => Turn.To(new ExampleScreen(new ExampleStartScreen(Words.Of("example.no-job")), made)),
            _ when turn.Erases is not null => Turn.To(Of(world)),
            _ when turn.Errand is not null || turn.Changes.Count > 0 => Turn.To(new ExampleScreen(new ExampleStartScreen(Words.Of("example.no-file")), made)),
            _ => Turn.To(new ExampleScreen(next, made)),
        };
    }

    World Inside(World world) => world with { History = Made };
}

/// <summary>Where the example begins: the lead's page, and the start pages of four made-up people.</summary>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record ExampleStartScreen(string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("example.title"),
        "",
        [
            new Block.Text(Words.Of("example.what")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(
            [
                [Words.Of("example.lead"), Words.Of("example.lead-note")],
                .. world.History.People.Select((p, i) => (string[])[Words.Of("example.person", ("name", p)), Words.Of($"example.person-{i + 1}")]),
            ])),
            new Block.Gap(),
            new Block.Text(Words.Of("example.back")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => world.History.People.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0
        ? Turn.To(new WorkshopScreen(this with { Note = "" }))
        : Turn.To(new HomeScreen(), new LogEntry.SatDown(world.History.People[line - 1]));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new FirstStartScreen());
}
