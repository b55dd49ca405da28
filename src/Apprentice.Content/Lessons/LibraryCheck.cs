using Apprentice.Engine.Topics;

namespace Apprentice.Content.Lessons;

/// <summary>Checks lessons against one another and against their topics: every fault as file, line, sentence.</summary>
/// <param name="topics">Topics without faults.</param>
/// <param name="library">All lessons.</param>
/// <param name="nameOf">The name of a lesson's file as faults tell it, by its path under lessons.</param>
public sealed class LibraryCheck(IReadOnlyList<Topic> topics, Library library, Func<string, string> nameOf)
{
    static readonly string[] Needed = ["overview", "weighing", "decision"];
    readonly HashSet<string> _sources = [.. library.Sources.Concat(topics.SelectMany(t => t.Sources)).Select(s => s.Key)];

    /// <summary>Faults of the library; those of single files as Markdown are told by <see cref="LessonCheck"/>.</summary>
    public IReadOnlyList<Fault> Faults() => [.. library.Lessons.SelectMany(OfLesson), .. topics.SelectMany(OfTopic)];

    /// <summary>Lessons that read harder than they should: a sentence each.</summary>
    public IReadOnlyList<string> Hard() =>
    [
        .. library.Lessons.Select(l => (Lesson: l, Ease: ReadingEase.Of(l))).Where(l => l.Ease.MeanSentence > ReadingEase.GoalWords || l.Ease.Grade > ReadingEase.HighestGrade)
            .Select(l => $"{nameOf(l.Lesson.Path)}: mean sentence {l.Ease.MeanSentence:0.0} words, reading grade {l.Ease.Grade:0.0}"),
    ];

    /// <summary>The ease of all lessons together.</summary>
    public ReadingEase Ease => library.Lessons.Select(ReadingEase.Of).Aggregate(new ReadingEase(0, 0, 0), (sum, ease) => sum + ease);

    /// <summary>Words of lessons that are neither plain words nor in the glossary, by alphabet.</summary>
    /// <param name="plain">Plain words, lower case.</param>
    public IReadOnlyList<string> UnknownWords(IReadOnlySet<string> plain)
    {
        var known = library.Glossary.Words.SelectMany(w => w.All).SelectMany(ReadingEase.WordsOf).Select(w => w.ToLowerInvariant()).ToHashSet(StringComparer.Ordinal);
        var used = library.Lessons.SelectMany(l => l.Sections).SelectMany(s => s.Blocks).SelectMany(b => ReadingEase.WordsOf(b.Text));
        return [.. used.Select(w => w.ToLowerInvariant().Replace('’', '\'')).Distinct(StringComparer.Ordinal).Where(w => w.Length > 2 && !Known(w, plain, known)).Order(StringComparer.Ordinal)];
    }

    static bool Known(string word, IReadOnlySet<string> plain, HashSet<string> known) =>
        Stems(word).Any(s => plain.Contains(s) || known.Contains(s)) || (word.Contains('-') && word.Split('-').All(w => w.Length < 3 || Known(w, plain, known)));

    static IEnumerable<string> Stems(string word)
    {
        yield return word;
        foreach (var ending in (string[])["'s", "s", "es", "d", "ed", "ing", "ly", "er", "est", "r"])
        {
            if (word.Length <= ending.Length + 2 || !word.EndsWith(ending, StringComparison.Ordinal)) continue;
            var stem = word[..^ending.Length];
            yield return stem;
            yield return stem + "e";
            if (stem.Length > 2 && stem[^1] == stem[^2]) yield return stem[..^1];
            if (stem.EndsWith('i')) yield return stem[..^1] + "y";
        }
    }

    IEnumerable<Fault> OfTopic(Topic topic)
    {
        var mine = library.Of(topic.Id).Select(l => l.Id).ToHashSet(StringComparer.Ordinal);
        var file = nameOf($"{topic.Id}/");
        foreach (var id in Needed.Where(id => !mine.Contains(id))) yield return new Fault(file, 1, $"The topic {topic.Id} has no lesson {id}.md.");
        foreach (var clue in topic.Clues.Where(c => !mine.Contains(c.Id))) yield return new Fault(file, 1, $"The clue {clue.Id} of {topic.Id} has no lesson {clue.Id}.md.");
        foreach (var lost in mine.Where(id => !Needed.Contains(id, StringComparer.Ordinal) && topic.Clues.All(c => c.Id != id)))
            yield return new Fault(nameOf($"{topic.Id}/{lost}.md"), 1, $"There is no clue {lost} in the topic {topic.Id}: call the lesson after a clue, overview, weighing or decision.");
        foreach (var sentence in TopicTells.Faults(topic)) yield return new Fault($"{topic.Id}.md", 1, sentence);
    }

    IEnumerable<Fault> OfLesson(Lesson lesson)
    {
        var file = nameOf(lesson.Path);
        if (topics.FirstOrDefault(t => t.Id == lesson.Topic) is not { } topic)
            return [new Fault(file, 1, $"There is no topic {lesson.Topic}: call the folder after a topic.")];
        return [.. LessonForm.Faults(file, lesson, topic), .. Links(file, lesson, topic), .. Questions(file, lesson, topic)];
    }

    IEnumerable<Fault> Links(string file, Lesson lesson, Topic topic)
    {
        foreach (var section in lesson.Sections)
        {
            foreach (var block in section.Blocks)
            {
                foreach (var span in block.AllSpans.Where(s => s.Link is not null))
                {
                    if (Fault(lesson, topic, span) is { } fault) yield return new Fault(file, block.Line, fault);
                }

                if (block is LessonBlock.Picture picture && PictureFault(topic, picture) is { } wrong) yield return new Fault(file, block.Line, wrong);
                if (LessonForm.IsExample(section.Heading)) continue;
                foreach (var span in block.AllSpans.Where(s => s.Link is null))
                {
                    foreach (var bare in Figure.WithUnits(span.Text))
                        yield return new Fault(file, block.Line, $"The figure \"{bare}\" has no link: link it to the topic's data or to a source.");
                }
            }
        }
    }

    string? Fault(Lesson lesson, Topic topic, LessonSpan span)
    {
        var link = span.Link ?? "";
        if (FigureLink.IsFigure(link)) return FigureLink.Fault(span, topic, _sources);
        if (link.StartsWith("word:", StringComparison.Ordinal)) return library.Glossary.Find(link[5..].Replace('-', ' ')) is null && library.Glossary.Find(link[5..]) is null ? $"The word '{link[5..]}' is not in the glossary: add it to a words.md." : null;
        if (link.Contains("://", StringComparison.Ordinal)) return null;
        if (library.Follow(lesson, link) is not { } place) return $"The link '{link}' leads to no lesson.";
        var anchor = link.Split('#', 2).ElementAtOrDefault(1) ?? "";
        return anchor.Length > 0 && place.Lesson.Sections.All(s => s.Anchor != anchor) ? $"The lesson of '{link}' has no heading for #{anchor}." : null;
    }

    static string? PictureFault(Topic topic, LessonBlock.Picture picture)
    {
        if (topic.Drawings.FirstOrDefault(d => d.Id == picture.Drawing) is not { } drawing)
            return $"There is no drawing '{picture.Drawing}' in the topic {topic.Id}: use {Nearest.Or([.. Nearest.Of(picture.Drawing, topic.Drawings.Select(d => d.Id), 3)])}.";
        var looks = drawing.Kinds.Concat(drawing.Findings).Select(l => l.Of).ToList();
        if (picture.Kinds.Count is 0 or > 2) return $"Write drawing:{picture.Drawing}/KIND, or two kinds with + between them.";
        if (picture.Kinds.Count == 2 && drawing.Kinds.Concat(drawing.Findings).Any(l => l.Art.Count > 0 && picture.Kinds.Contains(l.Of)))
            return $"The drawing '{picture.Drawing}' is text art, which cannot lie side by side: show one after the other.";
        return picture.Kinds.FirstOrDefault(k => !looks.Contains(k)) is { } lost ? $"The drawing '{picture.Drawing}' has no '{lost}': use {Nearest.Or([.. Nearest.Of(lost, looks, 3)])}." : null;
    }

    static IEnumerable<Fault> Questions(string file, Lesson lesson, Topic topic) =>
        lesson.Sections.Where(s => s.Heading == TryIt.Heading).SelectMany(s => TryIt.Read(file, s, topic).Faults);
}
