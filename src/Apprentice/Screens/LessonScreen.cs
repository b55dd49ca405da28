using Apprentice.Content;
using Apprentice.Content.Lessons;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>A lesson, a section a page: the card first, Enter goes on, numbers open what the text leads to.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Section">Index of the section.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record LessonScreen(Lesson Lesson, int Section, Screen Below, string Note = "") : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <summary>True when drawings are said in words.</summary>
    public bool InWords { get; init; }

    LessonSection Here => Lesson.Sections[Section];

    bool HasPicture => Here.Blocks.Any(b => b is LessonBlock.Picture);

    bool IsQuestion => string.Equals(Here.Heading, TryIt.Heading, StringComparison.Ordinal);

    /// <summary>Opens a lesson; that it was read goes to the log.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="section">Index of the section.</param>
    /// <param name="below">The screen to go back to.</param>
    public static Turn Open(World world, Lesson lesson, int section, Screen below) =>
        Turn.To(new LessonScreen(lesson, section, below), new LogEntry.LessonRead(world.Person, lesson.Path));

    /// <summary>Where the text of this section leads: lessons and words, in the order of the text, each once.</summary>
    public IReadOnlyList<string> Links(World world) =>
        [.. Here.Blocks.SelectMany(b => b.AllSpans).Select(s => s.Link).OfType<string>().Where(l => Leads(world, l)).Distinct(StringComparer.Ordinal)];

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var links = Links(world);
        return new Page(
            Lesson.Title,
            Words.Of("lesson.place", ("n", Section + 1), ("count", Lesson.Sections.Count)),
            [
                new Block.Text(Here.Heading), new Block.Gap(Drop: true),
                .. IsQuestion ? [new Block.Text(Words.Of("lesson.question-next")), new Block.Gap(Drop: true)] : Array.Empty<Block>(),
                .. LessonBlocks.Of(world, Lesson, IsQuestion ? TryIt.Spoken(Here) : Here, links, InWords || world.Plain),
            ],
            [
                links.Count switch { 0 => "", 1 => Words.Of("lesson.key-link-one"), _ => Words.Of("lesson.key-link", ("n", links.Count)) },
                IsQuestion ? Words.Of("lesson.key-answer") : Section + 1 < Lesson.Sections.Count ? Words.Of("lesson.key-next") : Words.Of("lesson.key-end"),
                Section > 0 ? Words.Of("lesson.key-before") : "",
                HasPicture && !world.Plain ? Words.Of(InWords ? "scale.key-picture" : "scale.key-words") : "",
                Words.Of("lesson.key-sources"), Words.Of("lesson.key-wrong"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
            ])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        var here = this with { Note = "" };
        return key switch
        {
            { IsBack: true } => Turn.To(Below),
            { Digit: { } n } when n <= Links(world).Count => Follow(world, Links(world)[n - 1]),
            { Press: Screens.Press.Enter } when IsQuestion => Answer(world),
            { Press: Screens.Press.Enter } or { Press: Screens.Press.Right } => Turn.To(Section + 1 < Lesson.Sections.Count ? here with { Section = Section + 1 } : key.Press == Screens.Press.Enter ? Below : here),
            { Press: Screens.Press.Left or Screens.Press.Backspace } when Section > 0 => Turn.To(here with { Section = Section - 1 }),
            { Letter: 'W' } when HasPicture => Turn.To(here with { InWords = !InWords }),
            { Letter: 'S' } => Turn.To(new LessonSourcesScreen(here)),
            { Letter: 'X' } => Turn.To(new LessonWrongScreen(here)),
            _ => Turn.To(here),
        };
    }

    static bool IsWord(string link) => link.StartsWith("word:", StringComparison.Ordinal);

    bool Leads(World world, string link) => IsWord(link) ? WordOf(world, link) is not null : !link.Contains(':', StringComparison.Ordinal) && world.Library.Follow(Lesson, link) is not null;

    static GlossaryWord? WordOf(World world, string link) => world.Library.Glossary.Find(link[5..]) ?? world.Library.Glossary.Find(link[5..].Replace('-', ' '));

    Turn Follow(World world, string link)
    {
        if (IsWord(link)) return WordOf(world, link) is { } word ? Turn.To(new WordScreen(word, this with { Note = "" })) : Turn.To(this);
        return world.Library.Follow(Lesson, link) is { } place ? Open(world, place.Lesson, place.Section, this with { Note = "" }) : Turn.To(this);
    }

    Turn Answer(World world) =>
        world.Bench(Lesson.Topic) is { } bench && TryIt.Read(Lesson.Path, Here, bench.Topic).Asked is { } asked
            ? Turn.To(LessonTryScreen.Of(bench, asked, this with { Note = "" }))
            : Turn.To(this with { Note = Words.Of("lesson.no-topic") });
}
