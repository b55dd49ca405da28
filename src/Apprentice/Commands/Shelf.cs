using System.Reflection;
using Apprentice.Content.Changes;
using Apprentice.Content.Lessons;
using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>The files that the program teaches from: those of a folder, or those inside the program.</summary>
public sealed class Shelf
{
    /// <summary>Folder of the topics, beside the program and in the repository.</summary>
    public const string Topics = "question-bank";

    /// <summary>Folder of the lessons, beside the program and in the repository.</summary>
    public const string Lessons = "lessons";

    const string Ending = ".md";
    static readonly Lazy<Task<IReadOnlyList<Source>>> ShippedRegister = new(() => Task.Run(() => RegisterOf(OfLessons(null))));

    readonly IReadOnlyList<ContentFile> _files;

    readonly Lazy<IReadOnlyList<Source>> _register;

    Shelf(string folder, IReadOnlyList<ContentFile> files, Func<IReadOnlyList<Source>>? register = null)
    {
        (Folder, _files) = (folder, files);
        _register = new Lazy<IReadOnlyList<Source>>(register ?? (() => RegisterOf(OfLessons(folder))));
    }

    /// <summary>Begins to read the shipped register of sources, which every reading of topics needs, while the command line is being looked at.</summary>
    public static void Begin() => _ = ShippedRegister.Value;

    /// <summary>Where the files stand, for sentences.</summary>
    public string Folder { get; }

    /// <summary>Short names of the topics, by alphabet.</summary>
    public IReadOnlyList<string> Ids => [.. _files.Select(f => Path.GetFileNameWithoutExtension(f.Name))];

    /// <summary>The files, by alphabet.</summary>
    public IReadOnlyList<ContentFile> Files => _files;

    /// <summary>The shelf of topics: of the folder if one is named, else of the folder beside the program, else of the program itself.</summary>
    /// <exception cref="Complaint">The named folder is not there.</exception>
    public static Shelf OfTopics(string? folder)
    {
        if (folder is not null) return OfFolder(folder);
        var beside = Path.Combine(AppContext.BaseDirectory, Topics);
        var shipped = Directory.Exists(beside) ? OfFolder(beside) : Inside(Topics);
        return new Shelf(shipped.Folder, shipped._files, () => ShippedRegister.Value.GetAwaiter().GetResult());
    }

    /// <summary>The shelf of lessons: of the folder beside a folder of topics, else of the folder beside the program, else of the program itself.</summary>
    public static Shelf OfLessons(string? topicsFolder)
    {
        var sibling = topicsFolder is null ? null : Path.Combine(Path.GetDirectoryName(Path.GetFullPath(topicsFolder).TrimEnd(Path.DirectorySeparatorChar)) ?? "", Lessons);
        if (sibling is not null && Directory.Exists(sibling)) return OfFolder(sibling);
        var beside = Path.Combine(AppContext.BaseDirectory, Lessons);
        return Directory.Exists(beside) ? OfFolder(beside) : Inside(Lessons);
    }

    /// <summary>The register of sources of a shelf of lessons; empty when it has none.</summary>
    public static IReadOnlyList<Source> RegisterOf(Shelf lessons) =>
        lessons.Texts.FirstOrDefault(f => f.Path == Content.Lessons.Library.SourcesFile) is { Text: { } text }
            ? SourceRegister.Read(text())
            : [];

    /// <summary>Files with their paths under the folder, with slashes.</summary>
    public IEnumerable<(string Path, Func<string> Text)> Texts => _files.Select(f => (PathOf(f.Name), f.Text));

    /// <summary>The same files with the workshop's changes over their texts.</summary>
    /// <param name="copy">The texts with the changes.</param>
    /// <param name="folder">Folder of these files in it, with a slash at the end.</param>
    public Shelf Over(WorkshopCopy copy, string folder) => new(Folder, [.. _files.Select(f => f with { Text = () => copy.Text(folder + PathOf(f.Name)) ?? f.Text() })], () => _register.Value);

    /// <summary>The path of a file under the folder, with slashes.</summary>
    public string PathOf(string name) => Path.IsPathRooted(name) || !name.StartsWith(Folder + "/", StringComparison.Ordinal)
        ? Path.GetRelativePath(Folder, name).Replace('\\', '/')
        : name[(Folder.Length + 1)..];

    /// <summary>The library of a shelf of lessons.</summary>
    /// <param name="topics">Topics at hand.</param>
    public Library Library(IReadOnlyList<Topic> topics) => Content.Lessons.Library.Of(Texts.Select(f => (f.Path, f.Text())), topics);

    /// <summary>The Markdown files of a folder and of those in it.</summary>
    /// <exception cref="Complaint">The folder is not there.</exception>
    public static Shelf OfFolder(string folder)
    {
        if (!Directory.Exists(folder)) throw new Complaint($"There is no folder '{folder}'.", ExitCode.Usage);
        var names = Directory.EnumerateFiles(folder, "*" + Ending, SearchOption.AllDirectories).Order(StringComparer.Ordinal);
        return new Shelf(folder, [.. names.Select(name => new ContentFile(name, () => File.ReadAllText(name)))]);
    }

    /// <summary>The files of one folder as they travel inside the program.</summary>
    public static Shelf Inside(string folder)
    {
        var program = Assembly.GetExecutingAssembly();
        var names = program.GetManifestResourceNames().Where(n => n.StartsWith(folder + "/", StringComparison.Ordinal)).Order(StringComparer.Ordinal);
        return new Shelf(folder, [.. names.Select(name => new ContentFile(name, () => TextOf(program, name)))]);
    }

    /// <summary>What reading one topic came to.</summary>
    /// <exception cref="Complaint">There is no topic of that name.</exception>
    public TopicReading Read(string id)
    {
        var file = Choose.One("topic", id, _files, f => Path.GetFileNameWithoutExtension(f.Name));
        return TopicReader.Read(file.Name, file.Text(), _register.Value);
    }

    /// <summary>What reading every topic came to, by alphabet; read on all processors.</summary>
    public IReadOnlyList<TopicReading> ReadAll()
    {
        var texts = new List<(string, string)>(_files.Count);
        foreach (var file in _files) texts.Add((file.Name, file.Text()));
        return TopicReader.ReadAll(texts, () => _register.Value);
    }

    /// <summary>Every topic, by alphabet.</summary>
    /// <exception cref="Complaint">A file has faults.</exception>
    public IReadOnlyList<Topic> AllTopics() => [.. ReadAll().Zip(Ids, (reading, id) => TopicOf(reading, id))];

    /// <summary>The topic of that name.</summary>
    /// <exception cref="Complaint">There is no topic of that name, or its file has faults.</exception>
    public Topic Topic(string id) => TopicOf(Read(id), id);

    static Topic TopicOf(TopicReading reading, string id) => reading.Topic ?? throw new Complaint(
            $"The topic {id} has {Plural.Of(reading.Faults.Count, "fault")}; the first is {reading.Faults[0]}", ExitCode.Fault);

    static string TextOf(Assembly program, string name)
    {
        using var stream = program.GetManifestResourceStream(name) ?? throw new FileNotFoundException("not inside the program", name);
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}

/// <summary>A file of the shelf.</summary>
/// <param name="Name">Its name with its folder.</param>
/// <param name="Text">Reads it.</param>
public sealed record ContentFile(string Name, Func<string> Text);

/// <summary>Counts in words.</summary>
static class Plural
{
    /// <summary>"1 fault", "2 faults".</summary>
    public static string Of(int count, string one) => $"{count} {one}{(count == 1 ? "" : "s")}";
}
