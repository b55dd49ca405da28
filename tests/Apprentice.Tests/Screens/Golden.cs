using System.Runtime.CompilerServices;

namespace Apprentice.Tests.Screens;

/// <summary>Screens as text files beside the test. APPRENTICE_GOLDEN=write writes them anew.</summary>
static class Golden
{
    public static void Same(string name, string actual, [CallerFilePath] string test = "")
    {
        var file = Path.Combine(Path.GetDirectoryName(test) ?? "", name + ".txt");
        if (Environment.GetEnvironmentVariable("APPRENTICE_GOLDEN") is "write") File.WriteAllText(file, actual);
        Assert.True(File.Exists(file), $"{file} is not there; APPRENTICE_GOLDEN=write makes it.");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n"), actual);
    }
}
