using System.CommandLine;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Storage;

namespace Apprentice.Commands;

/// <summary>Where commands find the log, the topics and the workshop's changes.</summary>
/// <param name="Topics">Folder of topics.</param>
/// <param name="Data">File of the log.</param>
/// <param name="Workshop">Folder of the changes.</param>
sealed record SourceOptions(Option<string?> Topics, Option<string?> Data, Option<string?> Workshop)
{
    /// <summary>Leaves the workshop's changes out; for commands that read topics and write none.</summary>
    public Option<bool> Shipped { get; } = new("--shipped") { Description = "Without the workshop's changes" };

    /// <summary>The file of the log.</summary>
    public string LogFile(ParseResult parsed) =>
        DataFile.Locate(parsed.GetValue(Data) is { } file ? ["--data", file] : [], Environment.GetEnvironmentVariable);

    /// <summary>The log.</summary>
    /// <param name="parsed">What was written.</param>
    /// <param name="isNew">True when it may be made.</param>
    /// <exception cref="Complaint">It is not there.</exception>
    public Log OpenLog(ParseResult parsed, bool isNew = false)
    {
        var path = LogFile(parsed);
        return isNew || File.Exists(path) ? Log.Open(path) : throw new Complaint($"There is no log at '{path}'. Name another with --data.", ExitCode.Usage);
    }

    /// <summary>What the log amounts to.</summary>
    /// <exception cref="Complaint">There is no log.</exception>
    public History History(ParseResult parsed)
    {
        using var log = OpenLog(parsed);
        return Engine.Learning.History.Of(log.Read());
    }

    /// <summary>Holds the log while the changes are written, so that no running program writes over them; null where there is no log.</summary>
    /// <exception cref="LogException">A running program holds the log.</exception>
    public Log? Hold(ParseResult parsed) => File.Exists(LogFile(parsed)) ? Log.Open(LogFile(parsed)) : null;

    /// <summary>The folder of the changes.</summary>
    /// <exception cref="Complaint">Topics of one's own are named and no folder of changes is.</exception>
    public WorkshopFolder Folder(ParseResult parsed) => WorkshopFolder.Of(parsed.GetValue(Workshop), LogFile(parsed), parsed.GetValue(Topics))
        ?? throw new Complaint("Over topics of your own no changes lie: change the files themselves, or name a folder with --workshop.", ExitCode.Usage);

    /// <summary>Topics and lessons with the workshop's changes over them, or without where that is asked for.</summary>
    /// <exception cref="Complaint">A named folder is not there, or the file of the changes has a fault.</exception>
    public Taught Taught(ParseResult parsed) => Commands.Taught.Of(parsed.GetValue(Topics), parsed.GetValue(Workshop), LogFile(parsed), parsed.GetValue(Shipped));

    /// <summary>The texts with the workshop's changes over them.</summary>
    /// <exception cref="Complaint">A named folder is not there, or the file of the changes has a fault.</exception>
    public WorkshopCopy Copy(ParseResult parsed) => Taught(parsed).Copy;

    /// <summary>What the screens are opened with.</summary>
    /// <param name="parsed">What was written.</param>
    /// <param name="plain">True for lines in place of screens.</param>
    /// <param name="paper">The sealed file that is opened, or null.</param>
    public ScreenOptions Screens(ParseResult parsed, bool plain, string? paper = null) =>
        new(parsed.GetValue(Data), parsed.GetValue(Topics), plain, paper) { WorkshopFolder = parsed.GetValue(Workshop) };
}
