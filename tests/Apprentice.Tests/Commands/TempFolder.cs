namespace Apprentice.Tests.Commands;

/// <summary>A folder with files that is gone after the test.</summary>
sealed class TempFolder : IDisposable
{
    public TempFolder(params (string Name, string Text)[] files)
    {
        Path = Directory.CreateTempSubdirectory("apprentice").FullName;
        foreach (var (name, text) in files)
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(In(name)) ?? Path);
            File.WriteAllText(In(name), text);
        }
    }

    public string Path { get; }

    public string In(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, true);
}
