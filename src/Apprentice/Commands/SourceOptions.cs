using System.CommandLine;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Storage;

namespace Apprentice.Commands;

/// <summary>Where the commands of real bikes find the log, the topics and the workshop's changes.</summary>
/// <param name="Topics">Folder of topics.</param>
/// <param name="Data">File of the log.</param>
/// <param name="Workshop">Folder of the changes.</param>
sealed record StandOptions(Option<string?> Topics, Option<string?> Data, Option<string?> Workshop)
{
    /// <summary>The file of the log.</summary>
    public string LogFile(ParseResult parsed) =>
        DataFile.Locate(parsed.GetValue(Data) is { } file ? ["--data", file] : [], Environment.GetEnvironmentVariable);

    /// <summary>What the log amounts to.</summary>
    /// <exception cref="Complaint">There is no log.</exception>
    public History History(ParseResult parsed)
    {
        var path = LogFile(parsed);
        if (!File.Exists(path)) throw new Complaint($"There is no log at '{path}'. Name another with --data.", ExitCode.Usage);
        using var log = Log.Open(path);
        return Engine.Learning.History.Of(log.Read());
    }

    /// <summary>Holds the log while the changes are written, so that no running program writes over them; null where there is no log.</summary>
    /// <exception cref="LogException">A running program holds the log.</exception>
    public Log? Hold(ParseResult parsed) => File.Exists(LogFile(parsed)) ? Log.Open(LogFile(parsed)) : null;

    /// <summary>The folder of the changes.</summary>
    /// <exception cref="Complaint">Topics of one's own are named and no folder of changes is.</exception>
    public WorkshopFolder Folder(ParseResult parsed) => WorkshopFolder.Of(parsed.GetValue(Workshop), LogFile(parsed), parsed.GetValue(Topics))
        ?? throw new Complaint("Over topics of your own no changes lie: change the files themselves, or name a folder with --workshop.", ExitCode.Usage);

    /// <summary>The topics and lessons with the workshop's changes over them.</summary>
    /// <exception cref="Complaint">The file of the changes has a fault.</exception>
    public WorkshopCopy Copy(ParseResult parsed)
    {
        var (changes, faults) = WorkshopFolder.Of(parsed.GetValue(Workshop), LogFile(parsed), parsed.GetValue(Topics))?.Read() ?? ([], []);
        return faults.Count > 0 ? throw new Complaint(faults[0].ToString(), ExitCode.Fault) : CopyOf(parsed, changes);
    }

    /// <summary>The topics and lessons with some changes over them.</summary>
    public WorkshopCopy CopyOf(ParseResult parsed, IReadOnlyList<Change> changes) =>
        WorkshopFolder.Copy(Shelf.OfTopics(parsed.GetValue(Topics)).Texts, Shelf.OfLessons(parsed.GetValue(Topics)).Texts, changes);
}
