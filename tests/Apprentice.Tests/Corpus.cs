using Apprentice.Content.Lessons;
using Apprentice.Content.Topics;
using Apprentice.Engine;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests;

/// <summary>The files of the repository that tests read.</summary>
static class Corpus
{
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    /// <summary>The register of sources.</summary>
    public static IReadOnlyList<Source> Sources { get; } = Path.Combine(Root, "lessons", Library.SourcesFile) is var file && File.Exists(file)
        ? SourceRegister.Read(File.ReadAllText(file))
        : [];

    public static Topic Sample { get; } = Read(Path.Combine(Root, "tests/Apprentice.Tests/Data/topics/older-newer-bar.md"));

    /// <summary>Short names of the shipped topics.</summary>
    public static IEnumerable<string> Shipped => Directory.GetFiles(Path.Combine(Root, "question-bank"), "*.md").Order(StringComparer.Ordinal).Select(f => Path.GetFileNameWithoutExtension(f));

    public static Topic Topic(string id) => Read(Path.Combine(Root, "question-bank", id + ".md"));

    /// <summary>The lessons of the repository.</summary>
    public static Library Lessons(IReadOnlyList<Topic> topics)
    {
        var folder = Path.Combine(Root, "lessons");
        var files = Directory.GetFiles(folder, "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal);
        return Library.Of(files.Select(f => (Path.GetRelativePath(folder, f).Replace('\\', '/'), File.ReadAllText(f))), topics);
    }

    public static Workbench Bench(string id) => new(Topic(id));

    static Topic Read(string file)
    {
        var reading = TopicReader.Read(Path.GetFileName(file), File.ReadAllText(file), Sources);
        return reading.Topic ?? throw new InvalidDataException(string.Join('\n', reading.Faults));
    }

    static string FindRoot(string folder) =>
        File.Exists(Path.Combine(folder, "Apprentice.sln")) ? folder : FindRoot(Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("no Apprentice.sln above the tests"));
}
