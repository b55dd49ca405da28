using Apprentice.Content.Lessons;
using Apprentice.Content.Topics;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Changes;

/// <summary>The shipped topics and lessons with the workshop's changes laid over them. Without changes it is the shipped text, letter by letter.</summary>
/// <param name="shipped">Shipped texts by path: "question-bank/rim-size.md", "lessons/rim-size/round.md".</param>
/// <param name="changes">Changes, oldest first.</param>
/// <param name="register">The register of sources that topics may name.</param>
public sealed class WorkshopCopy(IReadOnlyDictionary<string, string> shipped, IReadOnlyList<Change> changes, IReadOnlyList<Source> register)
{
    /// <summary>Folder of the topics in a path.</summary>
    public const string Topics = "question-bank/";

    /// <summary>Folder of the lessons in a path.</summary>
    public const string LessonFolder = "lessons/";

    readonly Dictionary<string, Composed> _composed = new(StringComparer.Ordinal);
    readonly Dictionary<(string Topic, string Version), Workbench?> _frozen = [];
    readonly Dictionary<(string Topic, string Left), Topic?> _without = [];

    /// <summary>An empty copy.</summary>
    public static WorkshopCopy Empty { get; } = new(new Dictionary<string, string>(StringComparer.Ordinal), [], []);

    /// <summary>All changes, those taken back too.</summary>
    public IReadOnlyList<Change> Changes => changes;

    /// <summary>The number of the next change.</summary>
    public int NextNumber => changes.Count == 0 ? 1 : changes[^1].Number + 1;

    /// <summary>Changes that are not taken back, oldest first.</summary>
    public IReadOnlyList<Change> InForce => InForceOf(changes);

    /// <summary>Files that a change in force lies over.</summary>
    public IReadOnlyList<string> Files => [.. InForce.Select(c => c.File).Distinct(StringComparer.Ordinal)];

    /// <summary>Every change that does not fit the shipped files any more, with its file and line. It stays in its file and is left out until it fits.</summary>
    public IReadOnlyList<Fault> Faults => [.. Files.SelectMany(f => Compose(f).Faults).OrderBy(f => f.Line)];

    /// <summary>Short names of the topics, by alphabet.</summary>
    public IReadOnlyList<string> TopicIds => [.. shipped.Keys.Where(p => p.StartsWith(Topics, StringComparison.Ordinal)).Select(System.IO.Path.GetFileNameWithoutExtension).OfType<string>().Order(StringComparer.Ordinal)];

    /// <summary>Paths of all files, by alphabet.</summary>
    public IReadOnlyList<string> Paths => [.. shipped.Keys.Order(StringComparer.Ordinal)];

    /// <summary>This copy with more changes.</summary>
    public WorkshopCopy With(IEnumerable<Change> more) => new(shipped, [.. changes, .. more], register);

    /// <summary>The text of a file with the changes, or null when there is no such file.</summary>
    public string? Text(string path) => shipped.ContainsKey(path) ? Compose(path).Text : null;

    /// <summary>The shipped text of a file, or null.</summary>
    public string? Shipped(string path) => shipped.GetValueOrDefault(path);

    /// <summary>What reading a topic with the changes comes to.</summary>
    /// <param name="path">Path of the topic, which is there.</param>
    public TopicReading Reading(string path) => TopicReader.Read(path, Compose(path).Text, register);

    /// <summary>What reading every topic with the changes comes to, by alphabet; read on all processors.</summary>
    public IReadOnlyList<TopicReading> Readings()
    {
        var texts = shipped.Keys.Where(p => p.StartsWith(Topics, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(p => (Path: p, Compose(p).Text)).ToList();
        return TopicReader.ReadAll(texts, () => register);
    }

    /// <summary>The topic of a name with the changes; null when there is none.</summary>
    public Topic? Topic(string id) => shipped.ContainsKey(PathOf(id)) ? Reading(PathOf(id)).Topic : null;

    /// <summary>All lessons with the changes.</summary>
    /// <param name="topics">Topics, whose order the contents follow.</param>
    public Library Library(IReadOnlyList<Topic> topics) => Lessons.Library.Of(
        shipped.Keys.Where(p => p.StartsWith(LessonFolder, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(p => (p[LessonFolder.Length..], Compose(p).Text)), topics);

    /// <summary>
    /// The topic as it was in some version: papers keep the figures of theirs, whatever was approved since. The changes are tried from all of them down to none;
    /// what was taken back is a change of its own, so that every earlier state is a first part of the list. Null when no state has that version.
    /// </summary>
    /// <param name="id">Short name of the topic.</param>
    /// <param name="version">The version.</param>
    public Topic? Topic(string id, string version)
    {
        for (var count = changes.Count; count >= 0; count--)
        {
            var text = new WorkshopCopy(shipped, [.. changes.Take(count)], register).Text(PathOf(id));
            if (text is not null && TopicReader.VersionOf(text) == version) return TopicReader.Read(PathOf(id), text, register).Topic;
        }

        return null;
    }

    /// <summary>Topics in the versions of a paper: those at hand where they are the same, else as they were before later changes. One that no state has stays as it is at hand.</summary>
    /// <param name="benches">Topics at hand.</param>
    /// <param name="paper">The paper.</param>
    public IReadOnlyList<Workbench> Frozen(IReadOnlyList<Workbench> benches, Paper paper)
    {
        var versions = paper.Jobs.Select(j => (j.Family.Topic, j.Version)).Concat(paper.Real.Select(r => (r.Case.Topic, r.Version)))
            .DistinctBy(t => t.Topic).ToDictionary(t => t.Topic, t => t.Version, StringComparer.Ordinal);
        return [.. benches.Select(b => versions.TryGetValue(b.Topic.Id, out var version) && version != b.Topic.Version ? Bench(b.Topic.Id, version) ?? b : b)];
    }

    Workbench? Bench(string id, string version)
    {
        if (!_frozen.TryGetValue((id, version), out var bench)) _frozen[(id, version)] = bench = Topic(id, version) is { } topic ? new Workbench(topic) : null;
        return bench;
    }

    /// <summary>Changes that build on a change and would not fit without it.</summary>
    public IReadOnlyList<Change> BuiltOn(int number)
    {
        var without = new WorkshopCopy(shipped, [.. changes.Where(c => c.Number != number && c.TakesBack != number)], register);
        var broken = without.Unfit().Where(n => !Unfit().Contains(n)).ToHashSet();
        return [.. changes.Where(c => broken.Contains(c.Number))];
    }

    /// <summary>The change that takes another back.</summary>
    /// <param name="number">The change to take back.</param>
    /// <param name="day">The day.</param>
    /// <param name="by">Who does it.</param>
    public Change TakenBack(int number, DateOnly day, string by) => new(NextNumber, Words.Of("stand.change-title-back", ("n", number))) { Day = day, By = by, TakesBack = number };

    /// <summary>A topic without some changes, and without those that do not fit without them; null when there is none.</summary>
    /// <param name="id">Short name of the topic.</param>
    /// <param name="numbers">The changes left out.</param>
    public Topic? Without(string id, IReadOnlyList<int> numbers)
    {
        var key = (id, string.Join(' ', numbers));
        if (!_without.TryGetValue(key, out var topic)) _without[key] = topic = new WorkshopCopy(shipped, [.. changes.Where(c => !numbers.Contains(c.Number))], register).Topic(id);
        return topic;
    }

    /// <summary>Why a change does not fit, or null for one that does.</summary>
    public Fault? FaultOf(int number) => Files.Select(Compose).SelectMany(c => c.Unfit.Zip(c.Faults)).Where(p => p.First == number).Select(p => p.Second).FirstOrDefault();

    /// <summary>Numbers of the changes that do not fit.</summary>
    public IReadOnlyList<int> Unfit() => [.. Files.SelectMany(f => Compose(f).Unfit)];

    /// <summary>What was and what is, line by line, of the changes in force over a file: "- old", "+ new".</summary>
    public static IReadOnlyList<string> Difference(Change change)
    {
        var head = change.Was.Zip(change.Is).TakeWhile(p => p.First == p.Second).Count();
        var tail = change.Was.Reverse().Zip(change.Is.Reverse()).TakeWhile(p => p.First == p.Second).Count();
        tail = Math.Min(tail, Math.Min(change.Was.Count, change.Is.Count) - head);
        return [.. change.Was.Skip(head).SkipLast(tail).Select(l => "- " + l), .. change.Is.Skip(head).SkipLast(tail).Select(l => "+ " + l)];
    }

    /// <summary>The path of a topic.</summary>
    public static string PathOf(string topic) => $"{Topics}{topic}.md";

    static IReadOnlyList<Change> InForceOf(IReadOnlyList<Change> changes)
    {
        var back = changes.Select(c => c.TakesBack).OfType<int>().ToHashSet();
        return [.. changes.Where(c => c.TakesBack is null && !back.Contains(c.Number))];
    }

    Composed Compose(string path)
    {
        if (_composed.TryGetValue(path, out var known)) return known;
        return _composed[path] = Composed.Of(path, shipped.GetValueOrDefault(path), [.. InForce.Where(c => c.File == path)], FaultIn);
    }

    // A topic that a change has broken is no topic; lessons can always be read.
    Fault? FaultIn(string path, string text) => path.StartsWith(Topics, StringComparison.Ordinal) && TopicReader.Read(path, text, register).Faults is [var first, ..] ? first : null;
}
