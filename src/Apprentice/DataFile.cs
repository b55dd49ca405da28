using Apprentice.Storage;

namespace Apprentice;

/// <summary>Where the log lies.</summary>
public static class DataFile
{
    /// <summary>The variable that names another file.</summary>
    public const string Variable = "APPRENTICE_DATA";

    /// <summary>The path: <c>--data FILE</c>, else the variable, else the usual place of the system.</summary>
    /// <param name="args">Arguments of the program.</param>
    /// <param name="environment">Reads a variable; null when it is not set.</param>
    /// <exception cref="LogException"><c>--data</c> is given without a file.</exception>
    public static string Locate(IReadOnlyList<string> args, Func<string, string?> environment)
    {
        for (var i = 0; i < args.Count; i++)
        {
            if (args[i].StartsWith("--data=", StringComparison.Ordinal) && args[i].Length > "--data=".Length) return args[i]["--data=".Length..];
            if (args[i] is not ("--data" or "--data=")) continue;
            return i + 1 < args.Count && args[i] is "--data" && !args[i + 1].StartsWith('-')
                ? args[i + 1]
                : throw new LogException("--data needs a file after it, for example --data my-log.db.");
        }
        return environment(Variable) is { Length: > 0 } file ? file : Path.Combine(Folder(environment), "apprentice", "log.db");
    }

    static string Folder(Func<string, string?> environment)
    {
        if (OperatingSystem.IsWindows()) return Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData);
        var home = environment("HOME") is { Length: > 0 } set ? set : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        if (OperatingSystem.IsMacOS()) return Path.Combine(home, "Library", "Application Support");
        return environment("XDG_DATA_HOME") is { Length: > 0 } data && Path.IsPathRooted(data) ? data : Path.Combine(home, ".local", "share");
    }
}
