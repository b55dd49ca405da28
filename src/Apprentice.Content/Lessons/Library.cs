using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Lessons;

/// <summary>All lessons with the glossary, the sources and the pages of no topic.</summary>
/// <param name="Lessons">Lessons in the order of contents: by topic, overview first, then clues, weighing, decision.</param>
/// <param name="Glossary">Words of the trade.</param>
/// <param name="Sources">The register of sources, by key.</param>
/// <param name="Pages">Pages of no topic: headings of published standards, how to write a topic.</param>
public sealed record Library(IReadOnlyList<Lesson> Lessons, Glossary Glossary, IReadOnlyList<Source> Sources, IReadOnlyList<Lesson> Pages)
{
    /// <summary>The file of the register of sources.</summary>
    public const string SourcesFile = "sources.md";

    /// <summary>The file of plain words that need no entry in the glossary.</summary>
    public const string PlainWordsFile = "plain-words.md";

    static readonly string[] First = ["overview"];
    static readonly string[] Last = ["weighing", "decision"];

    /// <summary>An empty library.</summary>
    public static Library Empty { get; } = new([], Glossary.Empty, [], []);

    /// <summary>The library of files; a file that cannot be read is left out, the check tells why.</summary>
    /// <param name="files">Path under lessons, with slashes, and text.</param>
    /// <param name="topics">Topics, whose order and clues the contents follow.</param>
    public static Library Of(IEnumerable<(string Path, string Text)> files, IReadOnlyList<Topic> topics)
    {
        var texts = files.ToList();
        var read = SideBySide.Each(texts, f => LessonReader.Read(f.Path, f.Text).Lesson).OfType<Lesson>().ToList();
        var register = texts.Find(f => f.Path == SourcesFile).Text;
        var lessons = read.Where(l => l.Topic.Length > 0 && !IsWords(l)).OrderBy(l => TopicPlace(l, topics)).ThenBy(l => l.Topic, StringComparer.Ordinal).ThenBy(l => Place(l, topics)).ThenBy(l => l.Id, StringComparer.Ordinal);
        return new Library(
            [.. lessons], Glossary.Of(read.Where(IsWords)), register is null ? [] : SourceRegister.Read(register), [.. read.Where(l => l.Topic.Length == 0 && !IsWords(l) && l.Path is not (SourcesFile or PlainWordsFile)).OrderByDescending(l => l.Path, StringComparer.Ordinal)]);
    }

    /// <summary>Lessons of a topic.</summary>
    public IEnumerable<Lesson> Of(string topic) => Lessons.Where(l => string.Equals(l.Topic, topic, StringComparison.Ordinal));

    /// <summary>A lesson by its path, or null.</summary>
    public Lesson? Find(string path) => Lessons.FirstOrDefault(l => string.Equals(l.Path, path, StringComparison.Ordinal));

    /// <summary>The lesson of a clue, or null.</summary>
    public Lesson? OfClue(string topic, string clue) => Find($"{topic}/{clue}.md");

    /// <summary>Where a link of a lesson leads: a lesson and the index of a section; null when it leads to none.</summary>
    public (Lesson Lesson, int Section)? Follow(Lesson from, string link)
    {
        var parts = link.Split('#', 2);
        var lesson = parts[0].Length == 0 ? from : Find(Resolve(from.Path, parts[0]));
        return lesson is null ? null : (lesson, parts.Length < 2 ? 0 : lesson.SectionOf(parts[1]));
    }

    /// <summary>The path that a relative link means.</summary>
    public static string Resolve(string from, string link)
    {
        var parts = from.Split('/').SkipLast(1).ToList();
        foreach (var piece in link.Split('/'))
        {
            if (piece == ".." && parts.Count > 0) parts.RemoveAt(parts.Count - 1);
            else if (piece is not ("." or "..")) parts.Add(piece);
        }

        return string.Join('/', parts);
    }

    static bool IsWords(Lesson lesson) => System.IO.Path.GetFileName(lesson.Path) == Glossary.FileName;

    static int TopicPlace(Lesson lesson, IReadOnlyList<Topic> topics) =>
        topics.Select(t => t.Id).ToList().IndexOf(lesson.Topic) is >= 0 and var at ? at : int.MaxValue;

    static int Place(Lesson lesson, IReadOnlyList<Topic> topics)
    {
        if (First.Contains(lesson.Id)) return -1;
        if (Array.IndexOf(Last, lesson.Id) is >= 0 and var last) return 10_000 + last;
        var clues = topics.FirstOrDefault(t => string.Equals(t.Id, lesson.Topic, StringComparison.Ordinal))?.Clues.Select(c => c.Id).ToList() ?? [];
        return clues.IndexOf(lesson.Id) is >= 0 and var clue ? clue : 9_000;
    }
}
