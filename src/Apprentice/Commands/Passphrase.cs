using System.CommandLine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage;
using DeskLock = Apprentice.Storage.Papers.Desk;

namespace Apprentice.Commands;

/// <summary>The desk's key for commands: the passphrase from a file or a variable, never from the command line, where others could read it.</summary>
static class Passphrase
{
    /// <summary>The variable that holds the passphrase.</summary>
    public const string Variable = "APPRENTICE_PASSPHRASE";

    /// <summary>The option that names its file.</summary>
    public static Option<string?> Option() => new("--passphrase-file") { Description = $"File whose first line is the passphrase (or set {Variable})", HelpName = "FILE" };

    /// <summary>The desk's key. Every try is logged, and wrong ones slow down.</summary>
    /// <param name="log">The log.</param>
    /// <param name="file">File of the passphrase, or null for the variable.</param>
    /// <exception cref="Complaint">There is no desk yet, no passphrase, another one, or it is too early after wrong tries.</exception>
    public static byte[] Open(Log log, string? file)
    {
        var all = Assessments.Of(log.Read());
        var desk = all.Desk ?? throw new Complaint("There is no passphrase at this desk yet. Make the first paper in the program: the passphrase and its recovery code are set there.", ExitCode.Fault);
        var now = TimeProvider.System.GetLocalNow();
        var wait = all.WaitFrom(now, DeskLock.Delay(all.WrongTries));
        if (wait > TimeSpan.Zero) throw new Complaint($"Wait {Math.Ceiling(wait.TotalSeconds):0} s after the wrong passphrases, then try again.", ExitCode.Fault);
        var key = DeskLock.Open(desk.Locked, Typed(file));
        log.Append(new Logged(now, new LogEntry.DeskTried(key is not null)));
        return key ?? throw new Complaint("This passphrase does not open the desk. Capitals and small letters count.", ExitCode.Fault);
    }

    static string Typed(string? file)
    {
        if (file is null) return Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } set ? set : throw new Complaint($"The passphrase is needed: name its file with --passphrase-file, or set {Variable}.", ExitCode.Usage);
        if (!File.Exists(file)) throw new Complaint($"There is no file '{file}'.", ExitCode.Usage);
        return File.ReadLines(file).FirstOrDefault("").Trim();
    }
}
