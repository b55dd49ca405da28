using System.Security.Cryptography;
using System.Text;
using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads topic files: Markdown with headings, points and pipe tables. The format is told in DEVELOPERS.md.</summary>
public static class TopicReader
{
    const int VersionLength = 16;

    /// <summary>The topic of a file, or every fault of the file; never an exception, whatever the text.</summary>
    /// <param name="file">The file's name as faults tell it; the topic is called after it, without folder and ending.</param>
    /// <param name="text">The file's text.</param>
    /// <param name="register">The register of sources, whose keys need no row in the file; null for none.</param>
    public static TopicReading Read(string file, string text, IReadOnlyList<Source>? register = null) => Read(file, text, () => register ?? []);

    /// <summary>The topic of a file, or every fault of the file; never an exception, whatever the text.</summary>
    /// <param name="file">The file's name as faults tell it; the topic is called after it, without folder and ending.</param>
    /// <param name="text">The file's text.</param>
    /// <param name="register">The register of sources; asked for when the file's tables are read, so that it can be read at the same time.</param>
    public static TopicReading Read(string file, string text, Func<IReadOnlyList<Source>> register)
    {
        var faults = new Faults(file);
        var lines = text.ReplaceLineEndings("\n");
        if (Page.Of(lines) is not { } page)
        {
            faults.Add(1, $"{Markup.TooDeep}: a topic file needs headings, points and tables only.");
            return new TopicReading(null, faults.InOrder());
        }

        var id = IdOf(file);
        var draft = new Draft(page, faults);
        PageChecks.Check(page, faults);
        if (!Draft.WellShaped(id)) faults.Add(1, $"\"{id}\" is no short name of a topic: call the file by lower-case letters, digits and hyphens, then .md.");
        var topic = TopicOf(draft, id, VersionOf(lines), Named(lines, register()));
        TopicChecks.Check(draft, topic);
        return new TopicReading(faults.Count == 0 ? topic : null, faults.InOrder());
    }

    /// <summary>The version of a text: the same text makes the same cases, whatever its line ends.</summary>
    /// <param name="text">The text of a topic file.</param>
    public static string VersionOf(string text)
    {
        var bytes = Encoding.UTF8.GetBytes($"{text.ReplaceLineEndings("\n")}\n{EngineRevision.Current}");
        return Convert.ToHexStringLower(SHA256.HashData(bytes))[..VersionLength];
    }

    // Only the sources that the file names go into the topic. A key is looked up among the words of the text; one that is no word is looked for.
    static IReadOnlyList<Source> Named(string text, IReadOnlyList<Source> register)
    {
        var words = WordsOf(text);
        return [.. register.Where(source => words.Contains(source.Key) || (!source.Key.All(IsWord) && Mentions(text, source.Key)))];
    }

    static HashSet<string> WordsOf(string text)
    {
        var words = new HashSet<string>(StringComparer.Ordinal);
        var known = words.GetAlternateLookup<ReadOnlySpan<char>>();
        for (var at = 0; at < text.Length; at++)
        {
            var start = at;
            while (at < text.Length && IsWord(text[at])) at++;
            if (at > start) _ = known.Add(text.AsSpan(start, at - start));
        }

        return words;
    }

    static bool Mentions(string text, string key)
    {
        for (var at = text.IndexOf(key, StringComparison.Ordinal); at >= 0; at = text.IndexOf(key, at + 1, StringComparison.Ordinal))
        {
            var end = at + key.Length;
            if ((at == 0 || !IsWord(text[at - 1])) && (end == text.Length || !IsWord(text[end]))) return true;
        }

        return false;
    }

    static bool IsWord(char c) => char.IsLetterOrDigit(c) || c == '_';

    static string IdOf(string file)
    {
        var name = file[(file.LastIndexOfAny(['/', '\\']) + 1)..];
        return name.EndsWith(".md", StringComparison.OrdinalIgnoreCase) ? name[..^3] : name;
    }

    static Topic TopicOf(Draft draft, string id, string version, IReadOnlyList<Source> register)
    {
        var pitfalls = NoteReader.Pitfalls(draft);
        var sources = NoteReader.Sources(draft, register);
        var accesses = NoteReader.Accesses(draft);
        var (provenances, lines) = (PopulationReader.Provenances(draft), PopulationReader.Lines(draft));
        PartReader.Names(draft);
        EventReader.Names(draft);
        var (wants, spares) = (ShopReader.Wants(draft), ShopReader.Spares(draft));
        var parts = PartReader.Parts(draft, Hazardous(spares));
        var dimensions = SizeReader.Dimensions(draft);
        var clues = ClueReader.Clues(draft, dimensions);
        var (question, state, checkedBy) = HeadReader.Head(draft);
        var topic = new Topic
        {
            Id = id,
            Title = draft.Head.Heading.Text,
            Question = question,
            Version = version,
            Provenances = provenances,
            Lines = lines,
            Years = PopulationReader.Years(draft),
            Parts = parts,
            Packages = PackageReader.Packages(draft),
            Events = EventReader.Events(draft, clues),
            FitRules = EventReader.FitRules(draft, parts),
            Dimensions = dimensions,
            Accesses = accesses,
            Clues = clues,
            Drawings = DrawingReader.Drawings(draft, clues, dimensions),
            Openings = ShopReader.Openings(draft, clues),
            Wants = wants,
            Spares = spares,
            Pitfalls = pitfalls,
            Sources = sources,
            Costs = ShopReader.Costs(draft),
            Published = PublishedReader.Sizes(draft),
            State = state,
            CheckedBy = checkedBy,
        };
        return AskedReader.With(draft, topic);
    }

    static HashSet<string> Hazardous(IReadOnlyList<Spare> spares)
    {
        var hazardous = new HashSet<string>(StringComparer.Ordinal);
        foreach (var spare in spares.Where(spare => spare.Hazard))
        {
            foreach (var (part, _) in spare.Fits) _ = hazardous.Add(part);
        }

        return hazardous;
    }
}
