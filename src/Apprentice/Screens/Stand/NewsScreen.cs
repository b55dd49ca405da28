using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;

namespace Apprentice.Screens;

/// <summary>News: answers to a person's own lines, and changes of what they learned before.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record NewsScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.news-title"),
        world.Who,
        [
            new Block.Text(Words.Of(All(world).Count == 0 ? "stand.news-none" : "stand.news-ask")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new(""), new("")], Rows(All(world).Select(n => (string[])[
                n.IsOwn ? Words.Of("stand.news-own", ("text", n.Report.Text)) : Words.Of("stand.news-other", ("topic", TopicsScreen.Title(world, n.Answer.Topic))),
                Words.Of(ReportWords.Key(n.Answer)), n.IsSeen ? "" : Words.Of("stand.news-new")]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <summary>The person's news.</summary>
    public static IReadOnlyList<News> All(World world) => world.Person is { } person ? News.Of(world.History, person) : [];

    /// <inheritdoc/>
    protected override int Count(World world) => All(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var news = All(world)[line];
        LogEntry[] seen = news.IsSeen || world.Person is not { } person ? [] : [new LogEntry.ReportShown(person, news.Report.Number)];
        return Turn.To(new NewsItemScreen(this, news.Report.Number), seen);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>One piece of news: the answer, and what to do with it.</summary>
/// <param name="Below">The news.</param>
/// <param name="Number">Number of the report.</param>
sealed record NewsItemScreen(NewsScreen Below, int Number) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The piece of news.</summary>
    public News Of(World world) => NewsScreen.All(world).First(n => n.Report.Number == Number);

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var news = Of(world);
        return new Page(
            Words.Of("stand.news-title"),
            world.Who,
            [
                new Block.Text(news.IsOwn ? Words.Of("stand.news-what", ("text", news.Report.Text)) : Words.Of("stand.news-learned", ("topic", TopicsScreen.Title(world, news.Answer.Topic)))),
                new Block.Text(Words.Of("stand.news-answer", ("by", news.Answer.By), ("text", news.Answer.Text))),
                new Block.Gap(),
                new Block.Table([new("")], Rows(Lines(world).Select(l => (string[])[Words.Of(l)]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world)[line] switch
    {
        "stand.news-lesson" when LessonOf(world) is { } lesson => LessonScreen.Open(world, lesson, lesson.Sections.Count - 1, this),
        "stand.news-real" when RealOf(world) is { } real => Turn.To(new RealBenchScreen(new RealListScreen(this), real, [])),
        "stand.news-reply" => Turn.To(new ReplyScreen(this)),
        _ => Start.Job(world, Of(world).Answer.Topic),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<string> Lines(World world) =>
    [
        .. LessonOf(world) is not null ? ["stand.news-lesson"] : Array.Empty<string>(),
        .. RealOf(world) is not null ? ["stand.news-real"] : Array.Empty<string>(),
        .. Of(world).Answer.Answer == ReportAnswer.Accepted && world.Bench(Of(world).Answer.Topic) is not null ? ["stand.news-practise"] : Array.Empty<string>(),
        .. Of(world) is { IsOwn: true, Answer.Answer: ReportAnswer.AskedBack } ? ["stand.news-reply"] : Array.Empty<string>(),
    ];

    // The lesson with the note, where a change of this answer lies over one.
    Content.Lessons.Lesson? LessonOf(World world) =>
        world.Copy.InForce.Where(c => Of(world).Answer.Changes.Contains(c.Number)).Select(c => c.File)
            .Where(f => f.StartsWith(Content.Changes.WorkshopCopy.LessonFolder, StringComparison.Ordinal))
            .Select(f => world.Library.Find(f[Content.Changes.WorkshopCopy.LessonFolder.Length..])).OfType<Content.Lessons.Lesson>().FirstOrDefault();

    RealCase? RealOf(World world) => Of(world).Report.What is LogEntry.BikeQuestioned bike && Of(world).Answer.Answer == ReportAnswer.Accepted && world.Bench(bike.Topic) is { } bench
        ? RealCases.Of(world.History.Notebook).FirstOrDefault(c => string.Equals(c.Key, $"bike {bike.Bike} {bike.Topic}", StringComparison.Ordinal) && RealBench.Fits(bench.Topic, c))
        : null;
}

/// <summary>The answer to a question of the lead.</summary>
/// <param name="Below">The piece of news.</param>
sealed record ReplyScreen(NewsItemScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 160;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.news-title"),
        world.Who,
        [new Block.Gap(), new Block.Text(Words.Of("stand.reply-ask", ("by", Below.Of(world).Answer.By), ("text", Below.Of(world).Answer.Text))), new Block.Gap(), .. Field(Words.Of("wrong.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("wrong.empty") })
        : Turn.To(Below.Below, new LogEntry.ReportAdded(Below.Number, text));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
