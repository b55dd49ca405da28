using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Screens.Assess;

namespace Apprentice.Screens;

/// <summary>The program as a conversation: keys in, pages out. The full screen and plain lines share it.</summary>
/// <param name="world">What is known at the start.</param>
/// <param name="append">Puts an entry into the log and gives it back with its time; on the disk when it returns.</param>
/// <param name="save">Writes a sheet (name, text) and returns a sentence that says where it lies, or why not.</param>
/// <param name="clock">The time, or null to let it stand still.</param>
/// <param name="keeping">What may be done with a person's records, or null for nothing.</param>
sealed class Conversation(
    World world, Func<LogEntry, Logged> append, Func<string, string, string> save, Func<DateTimeOffset>? clock = null, Keeping? keeping = null)
{
    World _world = world;

    /// <summary>How often the clock of a sitting is noted: at least every two seconds, so that a crash costs no more.</summary>
    public static TimeSpan Pulse { get; } = TimeSpan.FromSeconds(1);

    /// <summary>The folder of sealed papers.</summary>
    public PaperFolder Papers { get; init; } = new("papers");

    /// <summary>The screen that is shown.</summary>
    public Screen Screen { get; private set; } = Start.Of(world);

    /// <summary>True while the clock of a sitting runs.</summary>
    public bool Beats => _world.Sitting is { End: null, RunningSince: not null };

    /// <summary>First line of the body that is shown, or null to follow the marked line.</summary>
    public int? Scroll { get; private set; }

    /// <summary>What is known now.</summary>
    public World World => _world;

    /// <summary>What stands on the screen.</summary>
    public Page Page => Beats && Screen is not PauseScreen ? Clocked(Screen.Show(_world)) : Screen.Show(_world);

    /// <summary>Opens at another screen than the first.</summary>
    public Conversation OpenedAt(Screen screen)
    {
        Screen = screen;
        return this;
    }

    /// <summary>Takes a key.</summary>
    /// <param name="key">The key.</param>
    /// <param name="size">Size of the window, for scrolling.</param>
    /// <returns>False when the program is to end.</returns>
    public bool Press(Input key, PageSize size)
    {
        if (_world.Seat is not null && clock is not null) _world = _world with { Now = clock() };
        if (Beats && Sit.IsTimeUp(_world)) return Follow(Sit.TimeUp(_world));
        if (Step(key, size) is { } step)
        {
            Scroll = Math.Clamp((Scroll ?? 0) + step, 0, Layout.Furthest(Page, size));
            return true;
        }
        if (key.Press != Screens.Press.Tick) Scroll = null;
        var turn = Everywhere(key) ?? (key.Press == Screens.Press.Tick ? Turn.To(Screen) : Screen.Press(_world, key));
        return Follow(turn);
    }

    /// <summary>Notes that the clock of a sitting runs, and ends it when its time is up. Does nothing at other times.</summary>
    public void Beat()
    {
        if (!Beats || clock is null) return;
        _world = _world with { Now = clock() };
        Follow(Sit.IsTimeUp(_world) ? Sit.TimeUp(_world) : Turn.To(Screen, new LogEntry.SittingTicked(_world.Seat?.Paper.Id ?? "")));
    }

    bool Follow(Turn turn)
    {
        if (turn.Changes.Count > 0) _world = _world.With(turn.Changes, keeping);
        foreach (var entry in turn.Entries) _world = _world with { History = _world.History.With(append(entry)) };
        if (turn.Keeps is { } keeps) _world = keeps(_world);
        if (turn.Errand is { } errand) return Follow(errand(_world, Papers));
        if (turn.Erases is { } person && keeping is not null) _world = _world with { History = keeping.Erase(person) };
        Screen = turn.Sheet is { } sheet ? sheet.Then(save(sheet.Name, sheet.Moves is { } moved && keeping is not null ? keeping.Move(moved) : sheet.Text)) : turn.Next;
        if (clock is not null) _world = _world with { Now = clock() };
        return !turn.Quits;
    }

    int? Step(Input key, PageSize size) => key.Press switch
    {
        Screens.Press.PageUp => -Math.Max(1, size.Rows - 8),
        Screens.Press.PageDown => Math.Max(1, size.Rows - 8),
        Screens.Press.Up when !Page.IsMarked => -1,
        Screens.Press.Down when !Page.IsMarked => 1,
        _ => null,
    };

    Turn? Everywhere(Input key)
    {
        if (key.Press == Screens.Press.Tick) return Screen.Pauses ? Aside() : null;
        if (key.Press == Screens.Press.Help) return Turn.To(Screen is HelpScreen ? Screen : new HelpScreen(Screen));
        if (Screen.Typing) return null;
        return key.Letter switch
        {
            'P' when Screen.Pauses => Aside(),
            '?' when Screen is not HelpScreen => Turn.To(new HelpScreen(Screen)),
            _ => null,
        };
    }

    Page Clocked(Page page) => page with { Right = Words.Of("sit.right", ("right", page.Right), ("left", Sit.Left(_world))).Trim() };

    // A pause closes the desk: whoever goes on needs the passphrase again.
    Turn Aside() => Turn.To(new PauseScreen(Screen), new LogEntry.Paused(Screen.Job)) with { Keeps = w => w with { DeskKey = null } };
}

/// <summary>What may be done with the records of a person, apart from adding to them.</summary>
/// <param name="Move">The text of the file with which a person's records go to another machine.</param>
/// <param name="Erase">Takes a person out of the log for good, and gives back what is left.</param>
sealed record Keeping(Func<string, string> Move, Func<string, History> Erase)
{
    /// <summary>Writes the workshop's changes to their file.</summary>
    public Action<IReadOnlyList<Change>> Changes { get; init; } = _ => { };
}
