using Apprentice.Assess;
using Apprentice.Content.Changes;
using Apprentice.Content.Lessons;
using Apprentice.Engine;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Plain;
using Apprentice.Screens;
using Apprentice.Storage;

namespace Apprentice.Tests.Screens;

/// <summary>A conversation without a terminal: keys in, text out, entries kept in a list.</summary>
sealed class Talk
{
    public const long Luck = 17;

    static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    readonly Conversation _conversation;

    public Talk(IReadOnlyList<Topic> topics, params LogEntry[] before)
        : this(plain: false, topics, before)
    {
    }

    public Talk(bool plain, IReadOnlyList<Topic> topics, params LogEntry[] before)
        : this(plain, topics, Library.Empty, before)
    {
    }

    public Talk(bool plain, IReadOnlyList<Topic> topics, Library library, params LogEntry[] before)
        : this([.. ((LogEntry[])[new LogEntry.Began(Luck), .. before]).Select(Stamp)], topics, plain, library)
    {
    }

    public Talk(bool plain, IReadOnlyList<Topic> topics, Library library, LogEntry[] before, WorkshopCopy copy)
        : this([.. ((LogEntry[])[new LogEntry.Began(Luck), .. before]).Select(Stamp)], topics, plain, library, copy: copy)
    {
    }

    public Talk(IReadOnlyList<Logged> log, IReadOnlyList<Topic> topics, bool plain = false, Library? library = null, string? papers = null, WorkshopCopy? copy = null)
    {
        Entries.AddRange(log);
        var world = new World([.. topics.Select(t => new Workbench(t))], History.Of(Entries)) { Plain = plain, Now = Entries[^1].At, Library = library ?? Library.Empty, Copy = copy ?? WorkshopCopy.Empty };
        _conversation = new Conversation(world, Append, Save, () => Entries[^1].At, new Keeping(p => Records.Write(p, PersonEntries.Of(Entries, p)), Erase))
        {
            Papers = new PaperFolder(papers ?? "papers"),
        };
    }

    public List<Logged> Entries { get; } = [];

    public List<(string Name, string Text)> Sheets { get; } = [];

    /// <summary>Time between two entries.</summary>
    public TimeSpan Pace { get; set; } = TimeSpan.FromMinutes(1);

    public PageSize Size { get; set; } = new(80, 24);

    public Screen Screen => _conversation.Screen;

    public World World => _conversation.World;

    public bool Ended { get; private set; }

    public string Text => TextAt(Size);

    public string TextAt(PageSize size) => string.Join('\n', Layout.Of(_conversation.Page, size, _conversation.Scroll).Select(l => l.Text.TrimEnd())) + "\n";

    /// <summary>Goes to a screen at once.</summary>
    public Talk At(Screen screen)
    {
        _conversation.OpenedAt(screen);
        return this;
    }

    /// <summary>Presses keys: characters one by one; words in braces for the others: "1{Enter}".</summary>
    public Talk Keys(string keys)
    {
        foreach (var key in Keystrokes.Of(keys)) Ended |= !_conversation.Press(key, Size);
        return this;
    }

    /// <summary>What plain lines say when these lines are typed.</summary>
    public string Say(params string[] lines)
    {
        using var typed = new StringReader(string.Concat(lines.Select(l => l + "\n")));
        using var said = new StringWriter { NewLine = "\n" };
        Assert.Equal(0, PlainHost.Run(_conversation, new PlainDesk(typed, said, Echo: true)));
        return said.ToString();
    }

    Logged Append(LogEntry entry)
    {
        Entries.Add(new Logged(Entries[^1].At + Pace, entry));
        return Entries[^1];
    }

    History Erase(string person)
    {
        var left = PersonEntries.Without(Entries, person);
        Entries.Clear();
        Entries.AddRange(left);
        return History.Of(left);
    }

    string Save(string name, string text)
    {
        Sheets.Add((name, text));
        return $"The sheet lies in /sheets/{name}";
    }

    static Logged Stamp(LogEntry entry, int nth) => new(Day.AddMinutes(nth), entry);
}
