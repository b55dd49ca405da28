using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;

namespace Apprentice.Screens;

/// <summary>The inbox: lines sent with "this is wrong" and "this bike did not match", open ones first.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record InboxScreen(Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-inbox"),
        "",
        [
            new Block.Text(Words.Of(All(world).Count == 0 ? "stand.inbox-none" : "stand.inbox-ask")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], Rows(All(world).Select(r => (string[])[ReportWords.Short(world, r), ReportWords.State(r)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => All(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new ReportScreen(this with { Note = "" }, All(world)[line].Number));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static List<Report> All(World world) => [.. world.History.Notebook.Reports.OrderByDescending(r => r.IsOpen).ThenByDescending(r => r.Number)];
}

/// <summary>Reports in words.</summary>
static class ReportWords
{
    /// <summary>Number and line.</summary>
    public static string Short(World world, Report report) => $"{TopicsScreen.Title(world, report.TopicOf(world.History))}: {report.Text}";

    /// <summary>How far it is.</summary>
    public static string State(Report report) => Words.Of(report.IsOpen ? "stand.state-new" : Key(report.Answer));

    /// <summary>An answer in a word.</summary>
    public static string Key(LogEntry.ReportAnswered? answer) => answer?.Answer switch
    {
        ReportAnswer.Accepted => "stand.state-accepted",
        ReportAnswer.AskedBack => "stand.state-asked",
        ReportAnswer.Refused => "stand.state-refused",
        _ => "stand.state-new",
    };

    /// <summary>What it is about, the line, what was said since, and answers.</summary>
    public static IEnumerable<Block> Whole(World world, Report report)
    {
        yield return new Block.Text(About(world, report));
        yield return new Block.Text(report.Text, 2);
        foreach (var more in report.More) yield return new Block.Text(Words.Of("stand.report-more", ("text", more)), 2);
        foreach (var (what, at) in report.Answers)
            yield return new Block.Text(Words.Of("stand.report-answered", ("by", what.By), ("day", LearnerWords.Day(at)), ("answer", Words.Of(Key(what))), ("text", what.Text)));
    }

    static string About(World world, Report report)
    {
        var name = report.PersonOf(world.History) ?? Words.Of("stand.nobody");
        var topic = TopicsScreen.Title(world, report.TopicOf(world.History));
        return report.What switch
        {
            LogEntry.LessonQuestioned e => Words.Of("stand.report-lesson", ("lesson", world.Library.Find(e.Lesson)?.Title ?? e.Lesson), ("name", name)),
            LogEntry.BikeQuestioned e => Words.Of("stand.report-bike", ("n", e.Bike), ("topic", topic), ("name", name)),
            LogEntry.Questioned e => Words.Of("stand.report-job", ("n", e.Job), ("topic", topic), ("name", name)),
            _ => "",
        };
    }
}

/// <summary>One line: accept, ask back, refuse.</summary>
/// <param name="Below">The inbox.</param>
/// <param name="Number">Number of the report.</param>
sealed record ReportScreen(InboxScreen Below, int Number) : ChoiceScreen
{
    /// <summary>The report.</summary>
    public Report Of(World world) => world.History.Notebook.Reports[Number - 1];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.report-title", ("n", Number)),
        "",
        [.. ReportWords.Whole(world, Of(world)), new Block.Gap(), new Block.Table([new("")], Rows(Lines(world).Select(l => (string[])[Words.Of(l)])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(Lines(world)[line] switch
    {
        "stand.accept" => new AcceptNoteScreen(this),
        "stand.ask-back" => new AnswerTextScreen(this, ReportAnswer.AskedBack),
        "stand.refuse" => new AnswerTextScreen(this, ReportAnswer.Refused),
        _ => new BikeScreen(((LogEntry.BikeQuestioned)Of(world).What).Bike, this),
    });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<string> Lines(World world) => ["stand.accept", "stand.ask-back", "stand.refuse", .. Of(world).What is LogEntry.BikeQuestioned ? ["stand.see-bike"] : Array.Empty<string>()];
}

/// <summary>The text of a question back, or of a refusal.</summary>
/// <param name="Below">The report.</param>
/// <param name="Answer">Which.</param>
sealed record AnswerTextScreen(ReportScreen Below, ReportAnswer Answer) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 200;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.report-title", ("n", Below.Number)),
        "",
        [.. ReportWords.Whole(world, Below.Of(world)), new Block.Gap(), new Block.Text(Words.Of(Answer == ReportAnswer.Refused ? "stand.answer-refuse" : "stand.answer-ask")), new Block.Gap(), .. Field(Words.Of("stand.answer-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("stand.answer-needed") })
        : Turn.To(
            Below.Below with { Note = Words.Of("stand.answered") },
            new LogEntry.ReportAnswered(Below.Number, Answer, world.History.Workshop?.Lead ?? "", text, Below.Of(world).TopicOf(world.History), []));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
