using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Plain;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage;
using Apprentice.Tests.Commands;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Assessing;

/// <summary>The program as it runs: a real log file, a real folder of papers, a clock that is set by hand.</summary>
sealed class Room : IDisposable
{
    readonly TempFolder _folder;
    readonly Log _log;
    readonly Conversation _conversation;

    public Room(TempFolder folder, bool plain = false, string? paper = null, params LogEntry[] before)
    {
        _folder = folder;
        _log = Log.Open(DataFile);
        if (_log.Read().Count == 0)
        {
            foreach (var entry in (LogEntry[])[new LogEntry.Began(17), .. before]) _log.Append(new Logged(Clock.GetLocalNow(), entry));
        }
        else if (_log.Read()[^1].At > Clock.GetLocalNow())
        {
            Clock.Now = _log.Read()[^1].At;
        }

        _conversation = Shell.Converse(_log, new ShellOptions(DataFile, [Exam.Topic], Clock, TextWriter.Null) { Paper = paper, Plain = plain ? new PlainDesk(TextReader.Null, TextWriter.Null, Echo: true) : null });
    }

    public HandClock Clock { get; } = new();

    public string DataFile => _folder.In("log.db");

    public PaperFolder Papers => PaperFolder.Beside(DataFile);

    public PageSize Size { get; set; } = new(80, 24);

    public Screen Screen => _conversation.Screen;

    public World World => _conversation.World;

    public Assessments All => World.History.Assessments;

    public Sitting Sitting => All.SittingOf(Exam.Number) ?? throw new InvalidOperationException("no sitting");

    public string Text => TextAt(Size);

    public string TextAt(PageSize size) => string.Join('\n', Layout.Of(_conversation.Page, size, _conversation.Scroll).Select(l => l.Text.TrimEnd())) + "\n";

    /// <summary>Time passes as the hosts let it: a beat a second.</summary>
    public void Wait(TimeSpan time)
    {
        for (var left = time; left > TimeSpan.Zero; left -= Conversation.Pulse)
        {
            Clock.Now += left < Conversation.Pulse ? left : Conversation.Pulse;
            if (left >= Conversation.Pulse) _conversation.Beat();
        }
    }

    /// <summary>A fraction of a second without a beat.</summary>
    public void Pass(TimeSpan time) => Clock.Now += time;

    public void Beat() => _conversation.Beat();

    /// <summary>Presses keys: characters one by one; words in braces for the others.</summary>
    public Room Keys(string keys)
    {
        foreach (var key in Keystrokes.Of(keys)) _conversation.Press(key, Size);
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

    /// <summary>Answers the job on the screen with the first of everything.</summary>
    public Room Answer()
    {
        Keys("A");
        while (Screen is AnswerScreen { Form.Next: { } question }) Keys(question.Scale ? "5" : "1");
        if (Screen is AnswerScreen) Keys("H");
        if (Screen is ConfirmScreen) Keys(Words.Of("confirm.word") + "{Enter}");
        return this;
    }

    /// <summary>Puts the sealed paper into the folder.</summary>
    public void PutPaper() => Papers.Write(PaperFolder.NameOf(Exam.Number, "Sam", PaperFolder.PaperEnding), Exam.Sealed.File);

    /// <summary>From any start page: 0, the workshop's page, the desk.</summary>
    public Room ToDesk()
    {
        if (Screen is WhoScreen) Keys("1");
        Assert.IsType<HomeScreen>(Screen);
        Keys("0").Take("leave.page").Take("lead.desk");
        Assert.IsType<DeskScreen>(Screen);
        return this;
    }

    /// <summary>Takes the line with these words, wherever it stands.</summary>
    public Room Take(string words)
    {
        var rows = Screen.Show(World).Body.OfType<Block.Table>().SelectMany(t => t.Rows).ToList();
        var row = Assert.Single(rows, r => r.Key.Length > 0 && r.Cells[0] == Words.Of(words));
        return Keys(Cursor.IsLong(rows.Count(r => r.Key.Length > 0)) ? row.Key + "{Enter}" : row.Key);
    }

    public void Dispose() => _log.Dispose();
}

/// <summary>A clock that is set by hand.</summary>
sealed class HandClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => Now;
}
