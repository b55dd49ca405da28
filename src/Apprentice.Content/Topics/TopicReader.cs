using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads topic files: Markdown with headings, points and pipe tables. The format is told in DEVELOPERS.md.</summary>
public static class TopicReader
{
    /// <summary>The topic of a file, or every fault of the file; never an exception, whatever the text.</summary>
    /// <param name="file">The file's name as faults tell it; the topic is called after it, without folder and ending.</param>
    /// <param name="text">The file's text.</param>
    /// <param name="register">The register of sources, whose keys need no row in the file; null for none.</param>
    public static TopicReading Read(string file, string text, IReadOnlyList<Source>? register = null) => Read(file, TopicText.Of(text), register ?? []);

    /// <summary>The topics of files, or every fault of each, in the order of the files; read on all processors.</summary>
    /// <remarks>One processor begins at the end with the Markdown alone while another reads the first file to its meaning: at the start of the program both would else wait for each other over the same code, which is used for the first time.</remarks>
    /// <param name="files">Names as faults tell them, and texts.</param>
    /// <param name="register">The register of sources; asked for when the first tables are read, so that it can be read at the same time.</param>
    public static IReadOnlyList<TopicReading> ReadAll(IReadOnlyList<(string File, string Text)> files, Func<IReadOnlyList<Source>> register)
    {
        var unread = new Unread[files.Count];
        for (var at = 0; at < unread.Length; at++) unread[at] = new Unread(files[at].File, files[at].Text);
        return SideBySide.Each(unread, it => Read(it.File, it.Text.Value, register()), Ahead);

        void Ahead()
        {
            for (var at = unread.Length - 1; at >= 0 && !unread[at].Text.IsValueCreated; at--) _ = unread[at].Text.Value;
        }
    }

    static TopicReading Read(string file, TopicText text, IReadOnlyList<Source> register)
    {
        var faults = new Faults(file);
        if (text.Page is not { } page)
        {
            faults.Add(1, $"{Markup.TooDeep}: a topic file needs headings, points and tables only.");
            return new TopicReading(null, faults.InOrder());
        }

        var id = IdOf(file);
        var draft = new Draft(page, faults);
        PageChecks.Check(page, faults);
        if (!Draft.WellShaped(id)) faults.Add(1, $"\"{id}\" is no short name of a topic: call the file by lower-case letters, digits and hyphens, then .md.");
        var topic = TopicOf(draft, id, text.Version, text.Named(register));
        TopicChecks.Check(draft, topic);
        return new TopicReading(faults.Count == 0 ? topic : null, faults.InOrder());
    }

    /// <summary>The version of a text: the same text makes the same cases, whatever its line ends.</summary>
    /// <param name="text">The text of a topic file.</param>
    public static string VersionOf(string text) => TopicText.VersionOf(text.ReplaceLineEndings("\n"));

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

    sealed class Unread(string file, string text)
    {
        public string File => file;

        public Lazy<TopicText> Text { get; } = new(() => TopicText.Of(text));
    }
}
