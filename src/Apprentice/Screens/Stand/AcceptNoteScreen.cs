using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Content.Lessons;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Accepting a report: what shall stand in the lesson.</summary>
/// <param name="Below">The report.</param>
sealed record AcceptNoteScreen(ReportScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 240;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.report-title", ("n", Below.Number)),
        "",
        [.. ReportWords.Whole(world, Below.Of(world)), new Block.Gap(), new Block.Text(Words.Of("stand.accept-note")), new Block.Gap(), .. Field(Words.Of("stand.answer-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("stand.answer-needed") })
        : Turn.To(new AcceptLessonScreen(this, new Accepted(Below.Number, text)));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>What the lead has chosen so far for a report that is accepted.</summary>
/// <param name="Report">Number of the report.</param>
/// <param name="Note">The note.</param>
sealed record Accepted(int Report, string Note)
{
    /// <summary>Path of the lesson under lessons, or null for none.</summary>
    public string? Lesson { get; init; }

    /// <summary>The part that can have been changed, or null for no new line.</summary>
    public string? Part { get; init; }

    /// <summary>The kind in whose place, or null for any.</summary>
    public string? From { get; init; }

    /// <summary>The kind that was put on.</summary>
    public string To { get; init; } = "";
}

/// <summary>Under which lesson the note stands: the one the line speaks of first.</summary>
/// <param name="Below">The page before.</param>
/// <param name="So">What was chosen so far.</param>
sealed record AcceptLessonScreen(AcceptNoteScreen Below, Accepted So) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.report-title", ("n", So.Report)),
        "",
        [
            new Block.Text(Words.Of("stand.accept-lesson")), new Block.Gap(Drop: true),
            new Block.Table([new("")], Rows([.. Lessons(world).Select(l => (string[])[l.Title]), [Words.Of("stand.accept-nowhere")]])),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lessons(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var so = So with { Lesson = line < Lessons(world).Count ? Lessons(world)[line].Path : null };
        return Acceptance.TopicOf(world, So.Report) is null ? Acceptance.Done(world, Below.Below.Below, so, null) : Turn.To(new AcceptLineScreen(this, so));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<Lesson> Lessons(World world)
    {
        var report = world.History.Notebook.Reports[So.Report - 1];
        var about = (report.What as LogEntry.LessonQuestioned)?.Lesson;
        return [.. world.Library.Of(report.TopicOf(world.History)).OrderByDescending(l => string.Equals(l.Path, about, StringComparison.Ordinal))];
    }
}

/// <summary>Whether the topic needs a new line of what can have happened; then which part, in place of which kind, which kind, how often.</summary>
/// <param name="Below">The page before.</param>
/// <param name="So">What was chosen so far.</param>
/// <param name="Step">0 whether, 1 part, 2 in place of, 3 kind, 4 how often.</param>
sealed record AcceptLineScreen(AcceptLessonScreen Below, Accepted So, int Step = 0) : ChoiceScreen
{
    static readonly string[] Asks = ["stand.accept-line", "stand.accept-part", "stand.accept-from", "stand.accept-to", "stand.accept-rate"];
    static readonly (string Key, string Cell)[] Rates = [("stand.rate-rare", "rare"), ("stand.rate-sometimes", "sometimes"), ("stand.rate-often", "often")];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.report-title", ("n", So.Report)),
        "",
        [new Block.Text(Words.Of(Asks[Step])), new Block.Gap(Drop: true), new Block.Table([new("")], Rows(Lines(world).Select(l => (string[])[l])))],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (topic, next) = (Acceptance.Topic(world, So.Report), this with { Step = Step + 1, Cursor = default });
        return Step switch
        {
            0 when line == 0 => Acceptance.Done(world, Below.Below.Below.Below, So, null),
            0 => Turn.To(next),
            1 => Turn.To(next with { So = So with { Part = Parts(topic)[line].Id } }),
            2 => Turn.To(next with { So = So with { From = line == 0 ? null : Part(topic).Kinds[line - 1].Id } }),
            3 => Turn.To(next with { So = So with { To = Kinds(topic)[line].Id } }),
            _ => Acceptance.Done(world, Below.Below.Below.Below, So, Rates[line].Cell),
        };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Part Part(Topic topic) => topic.Parts.First(p => string.Equals(p.Id, So.Part, StringComparison.Ordinal));

    // A build date cannot be changed.
    static List<Part> Parts(Topic topic) => [.. topic.Parts.Where(p => !p.IsDate)];

    List<Kind> Kinds(Topic topic) => [.. Part(topic).Kinds.Where(k => !string.Equals(k.Id, So.From, StringComparison.Ordinal))];

    List<string> Lines(World world)
    {
        var topic = Acceptance.Topic(world, So.Report);
        return Step switch
        {
            0 => [Words.Of("stand.accept-no-line"), Words.Of("stand.accept-yes-line")],
            1 => [.. Parts(topic).Select(p => p.Name)],
            2 => [Words.Of("stand.accept-any"), .. Part(topic).Kinds.Select(k => k.Name)],
            3 => [.. Kinds(topic).Select(k => k.Name)],
            _ => [.. Rates.Select(r => Words.Of(r.Key))],
        };
    }
}

/// <summary>Makes an accepted report into changes and an answer.</summary>
static class Acceptance
{
    /// <summary>The topic of a report, or null when it is not here.</summary>
    public static Topic? TopicOf(World world, int report) => world.Bench(world.History.Notebook.Reports[report - 1].TopicOf(world.History))?.Topic;

    /// <summary>The topic of a report that is here.</summary>
    public static Topic Topic(World world, int report) => TopicOf(world, report) ?? throw new InvalidOperationException($"Line {report} speaks of a topic that is not here.");

    /// <summary>The inbox again, with the answer and what came of it.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="inbox">The inbox.</param>
    /// <param name="so">What was chosen.</param>
    /// <param name="rate">How often, as the topic file writes it; null for no new line.</param>
    public static Turn Done(World world, InboxScreen inbox, Accepted so, string? rate)
    {
        var report = world.History.Notebook.Reports[so.Report - 1];
        var because = Words.Of("stand.because-report", ("n", so.Report));
        var changes = new List<Change>();
        if (so.Lesson is { } lesson && WorkshopCopy.LessonFolder + lesson is var path && world.Copy.Text(path) is { } text && Make(world, path, text, changes.Count).Note(so.Note) is { } note)
            changes.Add(note with { Because = because });
        var wanted = changes.Count + (rate is null ? 0 : 1);
        if (rate is not null && Event(world, so, rate, changes.Count) is { } line) changes.Add(line with { Because = because });
        var answer = new LogEntry.ReportAnswered(
            so.Report, ReportAnswer.Accepted, world.History.Workshop?.Lead ?? "", so.Note, report.TopicOf(world.History), [.. changes.Select(c => c.Number)]);
        return Turn.To(inbox with { Note = Words.Of(changes.Count < wanted ? "stand.accepted-without" : "stand.accepted") }, answer) with { Changes = changes };
    }

    static Drafts Make(World world, string path, string text, int more) =>
        new(world.Copy.NextNumber + more, path, text, DateOnly.FromDateTime(world.Now.DateTime), world.History.Workshop?.Lead ?? "");

    static Change? Event(World world, Accepted so, string rate, int more)
    {
        var topic = Topic(world, so.Report);
        var path = WorkshopCopy.PathOf(topic.Id);
        var part = topic.Parts.First(p => string.Equals(p.Id, so.Part, StringComparison.Ordinal));
        if (world.Copy.Text(path) is not { } text || topic.Pitfalls.Count == 0) return null;
        var pitfall = (topic.Pitfalls.FirstOrDefault(p => p.Class == PitfallClass.SwappedPart) ?? topic.Pitfalls[0]).Id;
        var story = Words.Of("stand.event-story", ("part", part.Name), ("kind", part.Kinds.First(k => string.Equals(k.Id, so.To, StringComparison.Ordinal)).Name));
        var row = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["id"] = $"workshop-{world.Copy.NextNumber + more}",
            ["what happened"] = story,
            ["pitfall"] = pitfall,
            ["does"] = so.From is { } from ? $"{part.Id} {from} becomes {so.To}" : $"{part.Id} becomes {so.To}",
            ["rates from"] = "judgement",
        };
        foreach (var provenance in topic.Provenances) row[provenance.Id] = rate;
        var made = Make(world, path, text, more).Row(story, Drafts.Events, row);
        return made is not null && world.Copy.With([made]).Unfit().Contains(made.Number) ? null : made;
    }
}
