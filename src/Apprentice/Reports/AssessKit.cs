using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Drawing;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>A paper kit for print: the candidate's sheets with drawings, and the key with its code.</summary>
/// <param name="kit">The kit.</param>
/// <param name="topics">Topics at hand.</param>
/// <param name="caseOf">The case of a job, for its card.</param>
sealed class AssessKit(Kit kit, IReadOnlyList<Topic> topics, Func<KitJob, Case> caseOf)
{
    /// <summary>The candidate's sheets.</summary>
    public string Sheets(DateTimeOffset now)
    {
        var page = new AssessHtml(Words.Of("kit.sheet-title", ("permission", kit.Permission)))
            .Text(Words.Of("kit.number", ("kit", kit.Id), ("jobs", kit.Jobs.Count))).Field(Words.Of("kit.name-day")).Text(Words.Of("kit.how")).Text(Words.Of("kit.caution"));
        foreach (var job in kit.Jobs) page.Group("job", p => Job(p, job));
        page.Part(Words.Of("kit.strip"), onNewSheet: true).Text(Words.Of("kit.number", ("kit", kit.Id), ("jobs", kit.Jobs.Count))).Text(Words.Of("kit.strip-how")).Field(Words.Of("kit.name-day"));
        page.Table(
            [Words.Of("whylist.job"), .. Enumerable.Range(1, kit.Jobs.Max(j => j.Questions.Count)).Select(n => Words.Of("kit.question", ("n", n)))],
            [.. kit.Jobs.Select(j => (string[])[j.Place.ToString(), .. Enumerable.Range(0, kit.Jobs.Max(x => x.Questions.Count)).Select(i => i < j.Questions.Count ? "\u00a0" : "-")])]);
        return page.Done(now);
    }

    /// <summary>The key, with the code that opens the kit when answers are entered.</summary>
    public string Key(string code, DateTimeOffset now)
    {
        var rule = Kit.RuleOf(kit.Jobs.Count);
        var page = new AssessHtml(Words.Of("kit.key-title", ("permission", kit.Permission)))
            .Text(Words.Of("kit.number", ("kit", kit.Id), ("jobs", kit.Jobs.Count)))
            .Group("box", p => p.Text(Words.Of("kit.code", ("code", code))).Text(Words.Of("kit.secret")))
            .Text(Words.Of("kit.rule", ("most", rule.Checks[0].PassAt), ("jobs", kit.Jobs.Count))).Text(Words.Of("kit.apart"));
        page.Table([Words.Of("firm.right"), Words.Of("firm.passes"), Words.Of("firm.sits")], AssessWords.Tells(rule));
        var sorts = new SortNames(topics);
        var one = kit.Jobs.Select(j => j.Family.Topic).Distinct(StringComparer.Ordinal).Count() == 1;
        if (one) page.Text(Words.Of("whylist.one", ("topic", sorts.Topic(kit.Jobs[0].Family.Topic))));
        page.Table(
            [Words.Of("whylist.job"), Words.Of("whylist.sort"), Words.Of("kit.right"), Words.Of("kit.in-words"), Words.Of("kit.hurts")],
            [.. kit.Jobs.Select(j => (string[])[j.Place.ToString(), one ? sorts.Within(j.Family) : sorts.Of(j.Family), string.Join(" | ", j.Questions.Select(Digits)), InWords(j), string.Join(" | ", j.Questions.Where(q => q.Ask == KitAsk.Order).Select(q => Which(q, o => o.Hurts)))])]);
        return page.Done(now);
    }

    /// <summary>A question in words.</summary>
    public string Question(KitJob job, KitQuestion question)
    {
        var topic = Find(job);
        return question.Ask switch
        {
            KitAsk.Part => topic?.Parts.FirstOrDefault(p => Same(p.Id, question.Subject))?.Question ?? question.Subject,
            KitAsk.Order => Words.Of("kit.ask-order", ("line", topic?.Wants.SelectMany(w => w.OrderLines).FirstOrDefault(l => Same(l.Id, question.Subject))?.Name ?? question.Subject)),
            _ => Words.Of("kit.ask-next"),
        };
    }

    /// <summary>A line to choose, in words.</summary>
    public string Option(KitJob job, KitQuestion question, KitOption option)
    {
        var words = Find(job) is { } topic ? new TopicWords(topic) : null;
        return question.Ask switch
        {
            KitAsk.Part => option.Kinds is { } kinds ? words?.Class(question.Subject, kinds) ?? string.Join(" / ", kinds) : Words.Of("kit.not-settled"),
            KitAsk.Order => option.Choice is { } choice ? words?.Choice(choice) ?? "" : Words.Of("kit.wait"),
            _ => option.Clue is { } clue ? words?.Clue(clue) ?? clue : Words.Of("kit.no-check"),
        };
    }

    void Job(AssessHtml page, KitJob job)
    {
        page.Small(Words.Of("kit.job", ("n", job.Place)));
        if (Find(job) is not { } topic) return;
        var words = new TopicWords(topic);
        var made = caseOf(job);
        var card = JobCard.Of(topic, made.Job);
        page.Text(Words.Of("kit.card", ("arrival", card.Arrival), ("says", card.Says.Trim('"')), ("colour", card.Colour), ("origin", card.Origin), ("want", card.Want)));
        page.Table([Words.Of("whyjob.check"), Words.Of("kit.found"), Words.Of("kit.seen")], [.. job.Given.Select((f, i) => (string[])[words.Clue(f.Clue), words.Seen(f), i < made.Job.Told.Count ? Words.Of("whyjob.told") : Words.Of($"sort.seen.{f.Channel}")])]);
        foreach (var (svg, caption) in Pictures(topic, job)) page.Picture(svg, caption);
        foreach (var (question, n) in job.Questions.Select((q, i) => (q, i + 1)))
            page.Text($"{n}. {Question(job, question)}").Options([.. question.Options.Select(o => Option(job, question, o))]);
    }

    // A drawing shows what a finding says, never what is true behind it.
    static IEnumerable<(string Svg, string Caption)> Pictures(Topic topic, KitJob job)
    {
        foreach (var finding in job.Given.Where(f => f.Seen is Seen.Named).DistinctBy(f => (f.Clue, f.Seen)))
        {
            var id = ((Seen.Named)finding.Seen).Id;
            if (topic.Drawings.FirstOrDefault(d => d.Clues.Contains(finding.Clue, StringComparer.Ordinal) && d.Findings.Any(f => Same(f.Of, id))) is not { } drawing) continue;
            var part = DrawnPart.Of(topic, drawing.Id, DrawnChoice.Finding(id));
            if (part.Sketch.Inks.Count > 0) yield return (SketchSvg.Of(part.Sketch, $"job-{job.Place}-{drawing.Id}-{id}"), $"{new TopicWords(topic).Clue(finding.Clue)}: {new TopicWords(topic).Seen(finding)}");
        }
    }

    string InWords(KitJob job) => string.Join(" | ", job.Questions.Select(q => string.Join(" / ", q.Options.Where(o => o.Right).Select(o => Option(job, q, o)))));

    static string Digits(KitQuestion question) => Which(question, o => o.Right);

    static string Which(KitQuestion question, Func<KitOption, bool> which)
    {
        var digits = question.Options.Select((o, i) => (o, i)).Where(x => which(x.o)).Select(x => (x.i + 1).ToString()).ToList();
        return digits.Count == 0 ? "-" : string.Join(" / ", digits);
    }

    Topic? Find(KitJob job) => topics.FirstOrDefault(t => Same(t.Id, job.Family.Topic));

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
