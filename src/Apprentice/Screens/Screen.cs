using Apprentice.Assess;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>One screen with its own state and nothing else: a value that shows itself and answers a key with what comes next.</summary>
abstract record Screen
{
    /// <summary>True while letters belong to a field that is being filled in.</summary>
    public virtual bool Typing => false;

    /// <summary>True when three minutes without a key put it aside.</summary>
    public virtual bool Pauses => true;

    /// <summary>True when a key may need a moment of work: the window says so meanwhile.</summary>
    public virtual bool Slow => false;

    /// <summary>What help says on this screen, in words that begin with "help".</summary>
    public virtual IReadOnlyList<string> HelpParts => LeadHelp.Of(this) ?? HelpScreen.Practice;

    /// <summary>The number of the job on this screen, or null.</summary>
    public virtual int? Job => null;

    /// <summary>What stands on it.</summary>
    public abstract Page Show(World world);

    /// <summary>What a key does. Never called for ticks, pages and the keys that every screen has.</summary>
    public abstract Turn Press(World world, Input key);
}

/// <summary>What follows a key.</summary>
/// <param name="Next">The screen that follows; the same one to stay.</param>
/// <param name="Entries">Entries for the log, oldest first.</param>
/// <param name="Quits">True to leave the program.</param>
/// <param name="Sheet">A sheet to be written to a file, or null.</param>
/// <param name="Erases">The person who is taken out of the log for good, or null.</param>
sealed record Turn(Screen Next, IReadOnlyList<LogEntry> Entries, bool Quits = false, Sheet? Sheet = null, string? Erases = null)
{
    /// <summary>What changes in memory alone, after the entries: the desk's key, the paper that is sat; null for nothing.</summary>
    public Func<World, World>? Keeps { get; init; }

    /// <summary>Work that needs files of papers or chance, after the entries; what it gives follows in place of <see cref="Next"/>. Null for none.</summary>
    public Func<World, PaperFolder, Turn>? Errand { get; init; }

    /// <summary>Changes that are laid over the shipped topics and lessons from now on.</summary>
    public IReadOnlyList<Change> Changes { get; init; } = [];

    /// <summary>Goes to a screen.</summary>
    public static Turn To(Screen next, params IReadOnlyList<LogEntry> entries) => new(next, entries);

    /// <summary>Leaves the program.</summary>
    public static Turn Quit(Screen last) => new(last, [], Quits: true);
}

/// <summary>A sheet to take along, to be written to a file.</summary>
/// <param name="Name">File name.</param>
/// <param name="Text">Its text.</param>
/// <param name="Then">The screen that follows, given a sentence about where the file lies or why not.</param>
sealed record Sheet(string Name, string Text, Func<string, Screen> Then)
{
    /// <summary>The person whose records are written in place of a text, or null.</summary>
    public string? Moves { get; init; }
}
