using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Content.Lessons;
using Apprentice.Content.Topics;

namespace Apprentice;

/// <summary>The folder of the workshop's own changes over the shipped topics and lessons.</summary>
/// <param name="Path">Its path; it need not be there.</param>
public sealed record WorkshopFolder(string Path)
{
    const string Usual = "workshop";

    /// <summary>The file of the changes.</summary>
    public string File => System.IO.Path.Combine(Path, ChangesFile.Name);

    /// <summary>The folder: the named one, else that beside the data file; none over other topics than the shipped ones, unless it is named.</summary>
    /// <param name="named">The named folder, or null.</param>
    /// <param name="dataFile">The data file.</param>
    /// <param name="topicsFolder">The named folder of topics, or null for the shipped ones.</param>
    public static WorkshopFolder? Of(string? named, string dataFile, string? topicsFolder)
    {
        if (named is not null) return new WorkshopFolder(named);
        return topicsFolder is null ? new WorkshopFolder(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(dataFile)) ?? "", Usual)) : null;
    }

    /// <summary>Its changes, and the faults of the file; a change that cannot be read is left out and nothing is written over.</summary>
    public (IReadOnlyList<Change> Changes, IReadOnlyList<Fault> Faults) Read() =>
        System.IO.File.Exists(File) ? ChangesFile.Read(File, System.IO.File.ReadAllText(File)) : ([], []);

    /// <summary>Writes the changes: a new file, then moved over the old one.</summary>
    /// <param name="changes">All changes, oldest first.</param>
    public void Write(IReadOnlyList<Change> changes)
    {
        Directory.CreateDirectory(Path);
        var fresh = File + ".new";
        System.IO.File.WriteAllText(fresh, ChangesFile.Write(changes));
        System.IO.File.Move(fresh, File, overwrite: true);
    }

    /// <summary>Shipped texts with changes over them.</summary>
    /// <param name="topics">Paths under the folder of topics, and texts.</param>
    /// <param name="lessons">Paths under the folder of lessons, and texts.</param>
    /// <param name="changes">The changes.</param>
    public static WorkshopCopy Copy(IEnumerable<(string Path, Func<string> Text)> topics, IEnumerable<(string Path, Func<string> Text)> lessons, IReadOnlyList<Change> changes)
    {
        var texts = topics.Select(t => (WorkshopCopy.Topics + t.Path, t.Text())).Concat(lessons.Select(l => (WorkshopCopy.LessonFolder + l.Path, l.Text()))).ToDictionary(t => t.Item1, t => t.Item2, StringComparer.Ordinal);
        var register = texts.TryGetValue(WorkshopCopy.LessonFolder + Library.SourcesFile, out var sources) ? SourceRegister.Read(sources) : [];
        return new WorkshopCopy(texts, changes, register);
    }
}
