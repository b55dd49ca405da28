namespace Apprentice.Commands;

/// <summary>Where a command writes: what was asked for, and what went wrong.</summary>
/// <param name="Out">For what was asked for.</param>
/// <param name="Error">For what went wrong.</param>
public sealed record Desk(TextWriter Out, TextWriter Error);

/// <summary>What a command hands back to the shell.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>A content file has faults, a request is never met, or nothing allows the findings.</summary>
    public const int Fault = 1;

    /// <summary>The command was written wrongly.</summary>
    public const int Usage = 2;

    /// <summary>The world said no: a locked file, a full disk.</summary>
    public const int World = 70;
}

/// <summary>A sentence for whoever wrote the command: what is wrong, and what would do. It ends the command, and <see cref="CommandLine"/> prints it.</summary>
/// <param name="sentence">The sentence.</param>
/// <param name="exitCode">Exit code of the command.</param>
sealed class Complaint(string sentence, int exitCode) : Exception(sentence)
{
    /// <summary>Exit code of the command.</summary>
    public int ExitCode { get; } = exitCode;
}
