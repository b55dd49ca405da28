using System.Security.Cryptography;
using Apprentice.Assess;
using Apprentice.Commands;
using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Content.Lessons;
using Apprentice.Engine;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Plain;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage;
using Apprentice.Storage.Papers;
using Apprentice.Terminal;

namespace Apprentice;

/// <summary>The program with its screens, full screen or as plain lines.</summary>
public static class Shell
{
    const int MostCopies = 1000;

    /// <summary>Runs the program until the person leaves it.</summary>
    /// <returns>The exit code: 0 when all went well.</returns>
    public static int Run(ShellOptions options)
    {
        try
        {
            using var log = Log.Open(options.DataFile);
            var conversation = Converse(log, options);
            return options.Plain is { } desk ? PlainHost.Run(conversation, desk) : TuiHost.Run(conversation, options.Error);
        }
        catch (LogException e)
        {
            options.Error.WriteLine(e.Message);
            return ExitCode.World;
        }
    }

    /// <summary>A conversation on a log: reads it, and on a new file draws its number.</summary>
    internal static Conversation Converse(Log log, ShellOptions options)
    {
        Logged Append(LogEntry entry)
        {
            var logged = new Logged(options.Clock.GetLocalNow(), entry);
            log.Append(logged);
            return logged;
        }
        var history = History.Of(log.Entries());
        if (history.Luck is null) history = history.With(Append(new LogEntry.Began(options.Luck ?? BitConverter.ToInt64(RandomNumberGenerator.GetBytes(8)))));
        _ = history.Book; // so that no page has to wait for it
        var world = new World([.. options.Topics.Select(t => new Workbench(t))], history) { Plain = options.Plain is not null, Library = options.Library, Copy = options.Copy, Now = options.Clock.GetLocalNow() };
        var conversation = new Conversation(world, Append, Save, options.Clock.GetLocalNow, new Keeping(p => Records.Write(p, PersonEntries.Of(log.Read(), p)), p => Erase(log, p))
        {
            Changes = changes => options.Folder?.Write(changes),
        })
        {
            Papers = PaperFolder.Beside(options.DataFile),
        };
        return options.Paper is not { } paper ? conversation
            : AppealAt(paper, world) is { } appeal ? conversation.OpenedAt(appeal)
            : Sit.CodeOf(paper, Start.Home(world), out var why) is { } code ? conversation.OpenedAt(code)
            : throw new LogException(why);
    }

    // A file that cannot be read is told by those who look at it next.
    static Screen? AppealAt(string file, World world)
    {
        try
        {
            return AppealDesk.Of(PaperFolder.Read(file), Start.Home(world));
        }
        catch (SealException)
        {
            return null;
        }
    }

    /// <summary>Takes a person out of a log for good.</summary>
    internal static History Erase(Log log, string person)
    {
        var left = PersonEntries.Without(log.Read(), person);
        log.Rewrite(left);
        return History.Of(left);
    }

    /// <summary>Writes a sheet into the folder one stands in, never over another file.</summary>
    static string Save(string name, string text)
    {
        for (var copy = 1; copy < MostCopies; copy++)
        {
            var path = Path.GetFullPath(copy == 1 ? name : $"{Path.GetFileNameWithoutExtension(name)}-{copy}{Path.GetExtension(name)}");
            if (File.Exists(path)) continue;
            try
            {
                File.WriteAllText(path, text);
                return Words.Of("sheet.saved", ("path", path));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return Words.Of("sheet.failed", ("why", e.Message));
            }
        }
        return Words.Of("sheet.failed", ("why", Words.Of("sheet.too-many")));
    }
}

/// <summary>What the program needs to start.</summary>
/// <param name="DataFile">The log's file.</param>
/// <param name="Topics">Topics at hand, in the order of their files.</param>
/// <param name="Clock">The clock.</param>
/// <param name="Error">Where to say what went wrong.</param>
/// <param name="Luck">The number that decides which bikes come on a new file, or null to draw one.</param>
public sealed record ShellOptions(string DataFile, IReadOnlyList<Topic> Topics, TimeProvider Clock, TextWriter Error, long? Luck = null)
{
    /// <summary>Lessons, words and sources.</summary>
    public Library Library { get; init; } = Library.Empty;

    /// <summary>The sealed paper that is sat, or null for the program as a whole.</summary>
    public string? Paper { get; init; }

    /// <summary>The shipped topics and lessons with the workshop's changes over them.</summary>
    public WorkshopCopy Copy { get; init; } = WorkshopCopy.Empty;

    /// <summary>Where the changes are kept, or null for nowhere.</summary>
    public WorkshopFolder? Folder { get; init; }

    /// <summary>Where plain lines come from and go to, or null for the full screen.</summary>
    public PlainDesk? Plain { get; init; }
}
