using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Content.Lessons;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>Topics and lessons as every screen and every command reads them: the shipped ones, or those of a named folder, with the workshop's changes over them.</summary>
public sealed class Taught
{
    readonly Lazy<WorkshopCopy> _copy;
    readonly bool _isChanged;

    Taught(Shelf topics, Shelf lessons, IReadOnlyList<Change> changes, WorkshopFolder? folder)
    {
        _isChanged = changes.Count > 0;
        _copy = new Lazy<WorkshopCopy>(() => WorkshopFolder.Copy(topics.Texts, lessons.Texts, changes));
        (Topics, Lessons, Folder) = changes.Count == 0
            ? (topics, lessons, folder)
            : (topics.Over(Copy, WorkshopCopy.Topics), lessons.Over(Copy, WorkshopCopy.LessonFolder), folder);
    }

    /// <summary>The topics with the changes.</summary>
    public Shelf Topics { get; }

    /// <summary>The lessons with the changes.</summary>
    public Shelf Lessons { get; }

    /// <summary>The texts and the changes apart.</summary>
    public WorkshopCopy Copy => _copy.Value;

    /// <summary>Where the changes are kept, or null for nowhere.</summary>
    public WorkshopFolder? Folder { get; }

    /// <summary>Changes that do not fit, with the file as it lies on this machine and the line: they are kept and left out.</summary>
    public IReadOnlyList<Fault> Unfit => [.. Copy.Faults.Select(f => f with { File = Folder?.File ?? f.File })];

    /// <summary>Reads texts and changes.</summary>
    /// <param name="topics">The named folder of topics, or null for the shipped ones.</param>
    /// <param name="workshop">The named folder of changes, or null for that beside the log.</param>
    /// <param name="dataFile">The log's file; it need not be there.</param>
    /// <param name="shipped">True to leave the changes out.</param>
    /// <exception cref="Complaint">A named folder is not there, or the file of changes has faults: all of them are told with file and line, and nothing is written.</exception>
    public static Taught Of(string? topics, string? workshop, string dataFile, bool shipped = false)
    {
        var folder = WorkshopFolder.Of(workshop, dataFile, topics);
        var (changes, faults) = shipped || folder is null ? ([], []) : folder.Read();
        return faults.Count == 0
            ? new Taught(Shelf.OfTopics(topics), Shelf.OfLessons(topics), changes, folder)
            : throw new Complaint(string.Join('\n', faults), ExitCode.Fault);
    }

    /// <summary>The topic of that name.</summary>
    /// <exception cref="Complaint">There is no topic of that name, or its file has faults.</exception>
    public Topic Topic(string id) => Topics.Topic(id);

    /// <summary>All lessons with the changes.</summary>
    /// <param name="topics">Topics at hand.</param>
    public Library Library(IReadOnlyList<Topic> topics) => Lessons.Library(topics);

    /// <summary>Numbers of the workshop's changes that lie over a topic.</summary>
    public IReadOnlyList<int> ChangesOf(string id) => _isChanged ? Lying([WorkshopCopy.PathOf(id)]) : [];

    /// <summary>Says which changes lie over topics, or over all topics and lessons when none is named, and which do not fit. Says nothing where there are none.</summary>
    /// <param name="to">Where to say it: beside what a command prints, so that scripts can read that.</param>
    /// <param name="topics">The topics that are used.</param>
    public void Tell(TextWriter to, params IReadOnlyList<Topic> topics)
    {
        if (!_isChanged) return;
        foreach (var fault in Unfit) to.WriteLine(fault);
        var numbers = topics.Count == 0 ? Lying(Copy.Paths) : topics.SelectMany(t => ChangesOf(t.Id)).Distinct().Order().ToList();
        if (numbers.Count == 0) return;
        var over = topics.Count == 0 ? "the shipped files" : string.Join(", ", topics.Where(t => ChangesOf(t.Id).Count > 0).Select(t => $"{t.Id} (version {t.Version})"));
        to.WriteLine($"Over {over} {(numbers.Count == 1 ? "lies change" : "lie changes")} {string.Join(", ", numbers)} of the workshop; 'changes' tells what was changed.");
    }

    List<int> Lying(IReadOnlyList<string> paths)
    {
        var unfit = Copy.Unfit();
        return [.. Copy.InForce.Where(c => paths.Contains(c.File, StringComparer.Ordinal) && !unfit.Contains(c.Number)).Select(c => c.Number)];
    }
}
