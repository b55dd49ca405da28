using System.Text.RegularExpressions;
using Apprentice.Commands;

namespace Apprentice.Tests.Commands;

/// <summary>What a command said.</summary>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="Out">What it printed, without what differs from machine to machine.</param>
/// <param name="Error">What it complained of.</param>
sealed partial record Said(int ExitCode, string Out, string Error)
{
    // Changes of whoever runs the tests shall not lie over the shipped topics.
    static Said()
    {
        if (Environment.GetEnvironmentVariable(DataFile.Variable) is null) Environment.SetEnvironmentVariable(DataFile.Variable, Path.Combine(AppContext.BaseDirectory, "no-such-folder", "log.db"));
    }

    /// <summary>Folder of the sample topics.</summary>
    public static string Samples => Path.Combine(Corpus.Root, "tests", "Apprentice.Tests", "Data", "topics");

    /// <summary>Runs a command on the sample topics.</summary>
    public static Said By(params string[] args) => Bare([.. args, "--topics", Samples]);

    /// <summary>Runs a command as it is written.</summary>
    public static Said Bare(params string[] args)
    {
        using var to = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var code = CommandLine.Run(args, new Desk(to, error), _ => throw new InvalidOperationException("no screens here"));
        return new Said(code, Plain(to), Plain(error));
    }

    // The version of a topic changes with every word of it, and the last digits with the order of a sum; the golden files should not.
    static string Plain(StringWriter said) => Long().Replace(said.ToString(), number => double.Parse(number.Value).ToString("G6"))
        .Replace(Corpus.Root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal)
        .Replace(Corpus.Sample.Version, "VERSION", StringComparison.Ordinal);

    [GeneratedRegex(@"\d+\.\d{7,}(E[-+]\d+)?", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Long();
}
