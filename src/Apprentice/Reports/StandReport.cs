using System.Globalization;
using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>Real bikes, the inbox and learned figures as tables.</summary>
static class StandReport
{
    /// <summary>All bikes with findings, decisions and what they really were.</summary>
    /// <param name="history">The history.</param>
    public static Report Bikes(History history)
    {
        var bikes = history.Notebook.Bikes;
        return new Report(Words.Of("stand.title"), Last(history), [],
        [
            new ReportTable("bikes", Words.Of("stand.title"), ["bike", "name", "card", "routine", "came", "seen", "tools", "questions"],
                [.. bikes.Select(b => (object?[])[b.Number, b.Put.Name, b.Put.Card, b.Put.Routine, Day(b.At), Name(b.Channel), b.Tools, string.Join(' ', b.Asked.Select(a => $"{a.Topic}:{a.Want}"))])]),
            new ReportTable("findings", Words.Of("stand.do-found"), ["bike", "topic", "clue", "channel", "found", "taken_back"], [.. bikes.SelectMany(Found)]),
            new ReportTable("decisions", Words.Of("stand.do-order"), ["bike", "topic", "line", "decision", "day"],
                [.. bikes.SelectMany(b => b.Decisions.Select(d => (object?[])[b.Number, d.What.Topic, d.What.Line, Choice(d.What.Choice), Day(d.At)]))]),
            new ReportTable("truths", Words.Of("stand.do-truth"), ["bike", "topic", "part", "kind", "events", "line", "built", "held", "held_share", "right"], [.. bikes.SelectMany(Truths)]),
        ]);
    }

    /// <summary>One bike: what its findings amount to.</summary>
    /// <param name="bike">The bike.</param>
    /// <param name="views">Its questions.</param>
    public static Report Bike(Bike bike, IReadOnlyList<StandView> views) => new(StandWords.Title(bike), bike.At, [],
    [
        new ReportTable("findings", Words.Of("stand.do-found"), ["bike", "topic", "clue", "channel", "found", "taken_back"], [.. Found(bike)]),
        new ReportTable("parts", Words.Of("stand.card-means"), ["topic", "part", "kinds", "share", "leading", "settled"],
            [.. views.SelectMany(v => v.Reasoning.Parts.SelectMany(p => p.Classes.Select((c, i) => (object?[])[v.Topic.Id, p.Part, string.Join('/', c.Kinds), c.Belief, i == p.Leading, p.Settled])))]),
        new ReportTable("next", Words.Of("stand.do-next"), ["topic", "clue"], [.. views.SelectMany(v => v.Next.Select(c => (object?[])[v.Topic.Id, c.Id]))]),
        new ReportTable("orders", Words.Of("stand.do-order"), ["topic", "line", "best", "loss", "wrong_share", "loss_of_ordering_now"],
            [.. views.SelectMany(v => OrderAdvice.Of(v.Topic, v.Want, v.Reasoning).Select(a => (object?[])[v.Topic.Id, a.Line.Id, Choice(a.Best.Choice), a.Best.Loss, a.Best.WrongShare, a.CostOfHaste]))]),
        new ReportTable("stops", Words.Of("stand.card-stop"), ["topic", "stop"], [.. views.SelectMany(v => v.Reasoning.Stops.Select(s => (object?[])[v.Topic.Id, s]))]),
    ]);

    /// <summary>The inbox.</summary>
    /// <param name="history">The history.</param>
    public static Report Inbox(History history) => new(Words.Of("stand.lead-inbox"), Last(history), [],
    [
        new ReportTable("lines", Words.Of("stand.lead-inbox"), ["line", "day", "about", "topic", "from", "text", "state", "answer", "by", "changes"],
            [.. history.Notebook.Reports.Select(r => (object?[])
            [
                r.Number, Day(r.At), About(r), r.TopicOf(history), r.PersonOf(history), r.Text, r.IsOpen ? "open" : Dashed(r.Answer?.Answer), r.Answer?.Text, r.Answer?.By,
                r.Answer is { } a ? string.Join(' ', a.Changes) : null,
            ])]),
    ]);

    /// <summary>The standing check by topic.</summary>
    /// <param name="history">The history.</param>
    /// <param name="topics">Topics at hand.</param>
    public static Report Standing(History history, IReadOnlyList<Topic> topics) => new(Words.Of("stand.lead-check"), Last(history), [Words.Of("stand.check-what"), Words.Of("stand.check-few")],
    [
        new ReportTable("levels", Words.Of("stand.check-topic"), ["topic", "of_ten", "known", "right", "expected"],
            [.. StandingCheck.Of(history.Notebook).SelectMany(c => c.Levels.Where(l => l.Bikes > 0).Select(l => (object?[])[SkillNames.Title(topics, c.Topic), l.Tenths, l.Bikes, l.Right, Math.Round(l.Expected, 2)]))]),
        new ReportTable("not_counted", Words.Of("stand.state-open"), ["topic", "routine_end_not_known", "puzzling"],
            [.. StandingCheck.Of(history.Notebook).Select(c => (object?[])[SkillNames.Title(topics, c.Topic), c.NoTruth, c.Puzzling])]),
    ]);

    /// <summary>Figures learned for a topic.</summary>
    /// <param name="topic">The topic, with the figures that were held before any was learned.</param>
    /// <param name="history">The history.</param>
    public static Report Rates(Topic topic, History history)
    {
        var asked = AskedBikes.Of(topic, history.Notebook);
        return new Report(topic.Title, Last(history), StandWords.Asked(topic, asked),
        [
            Figures("routine", Words.Of("stand.lead-rates"), LearnedRates.Of(topic, history.Notebook)),
            Figures("asked_about", Words.Of("stand.rates-asked"), asked.Figures),
        ]);
    }

    static ReportTable Figures(string id, string title, IReadOnlyList<Learned> all) => new(
        id, title, ["figure", "before", "seen", "bikes", "now", "low", "high"],
        [.. all.Select(l => (object?[])[l.Key, Round(l.Before), l.Hits, l.Bikes, Round(l.Now), Round(l.Low), Round(l.High)])]);

    static double Round(double value) => Math.Round(value, 4);

    static IEnumerable<object?[]> Found(Bike bike) => bike.Findings.Select(f => (object?[])[bike.Number, f.Topic, f.Finding.Clue, Name(f.Finding.Channel), Seen(f.Finding), f.IsStruck]);

    static IEnumerable<object?[]> Truths(Bike bike) => bike.Truths.SelectMany(t => t.Truth.Parts.Select(p =>
    {
        var held = t.Held.FirstOrDefault(h => string.Equals(h.Part, p.Part, StringComparison.Ordinal));
        return (object?[])
        [
            bike.Number, t.Topic, p.Part, p.Kind, string.Join(' ', t.Truth.Events), t.Truth.Line, t.Truth.Built is { } m ? $"{m.Year:0000}-{m.OfYear:00}" : null,
            held is null ? null : string.Join('/', held.Leading.Kinds), held?.Leading.Belief, held?.IsRight(p.Kind),
        ];
    }));

    static string Seen(Finding finding) => finding.Seen switch
    {
        Engine.Evidence.Seen.Reading reading => $"{reading.Millimetres.ToString("0.###", CultureInfo.InvariantCulture)} mm",
        Engine.Evidence.Seen.Named named => named.Id,
        _ => "cannot-be-seen",
    };

    static string Choice(Choice choice) => choice switch
    {
        Engine.Evidence.Choice.Order order => $"order {order.Spare}",
        Engine.Evidence.Choice.OrderTwo two => $"order-two {two.First} {two.Second}",
        Engine.Evidence.Choice.Wait wait => $"wait {wait.Clue}",
        _ => "ask",
    };

    static string About(Engine.Notebook.Report report) => report.What switch
    {
        LogEntry.Questioned e => $"job {e.Job}",
        LogEntry.LessonQuestioned e => $"lesson {e.Lesson}",
        LogEntry.BikeQuestioned e => $"bike {e.Bike}",
        _ => "",
    };

    static string? Dashed(ReportAnswer? answer) => answer switch
    {
        ReportAnswer.Accepted => "accepted",
        ReportAnswer.AskedBack => "asked-back",
        ReportAnswer.Refused => "refused",
        _ => null,
    };

    static string Name(Channel channel) => channel.ToString().ToLowerInvariant();

    static string Day(DateTimeOffset at) => at.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static DateTimeOffset Last(History history) => history.Notebook.Bikes.Count == 0 ? default : history.Notebook.Bikes[^1].At;
}
