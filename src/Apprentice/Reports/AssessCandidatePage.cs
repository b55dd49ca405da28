using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>A result for print: what it says, how firm, and every job with all that its mark rests on.</summary>
static class AssessCandidatePage
{
    /// <summary>The page as HTML.</summary>
    public static string Html(History history, IReadOnlyList<Topic> topics, PaperResult result, DateTimeOffset now)
    {
        var telling = new RecordTelling(topics);
        var page = new AssessHtml(Words.Of("print.result", ("name", result.Candidate), ("permission", result.Permission)))
            .Table([], [.. Head(history, result)])
            .Part(Words.Of("print.firm")).Text(Words.Of("firm.what", ("sound", result.Sound), ("jobs", result.Jobs.Count)));
        foreach (var prior in new[] { Prior.Flat, Prior.Favourable }) page.Text(AssessWords.View(result, prior));
        page.Text(Words.Of("firm.how")).Table([Words.Of("firm.right"), Words.Of("firm.passes"), Words.Of("firm.sits")], AssessWords.Tells(result.Rule)).Text(AssessWords.FirmWithout(result)).Text(Words.Of("firm.limits"), "note");
        page.Part(Words.Of("print.jobs"), onNewSheet: true).Text(Words.Of("whyjob.figures"));
        foreach (var mark in result.AllJobs) Job(page, telling, mark, history.Assessments.Appeals.FirstOrDefault(a => a.Paper == result.Paper && a.Place == mark.Place));
        if (result.Real.Count > 0) Real(page, new RealTelling(topics), result);
        return page.Done(now);
    }

    // They stand apart from the jobs, and say so.
    static void Real(AssessHtml page, RealTelling telling, PaperResult result)
    {
        page.Part(Words.Of("result.real"), onNewSheet: true).Text(Words.Of("realbike.what"));
        foreach (var mark in result.Real)
        {
            page.Small(telling.Bike(mark));
            foreach (var line in telling.Lines(mark)) page.Text(line);
            page.Table(
                [Words.Of("realbike.check"), Words.Of("realbike.shown"), Words.Of("realbike.state")],
                [.. telling.Found(mark).Select(f => (string[])[f.Check, f.Seen, Words.Of(f.Opened ? "realbike.check-opened" : "realbike.check-left")])]);
        }
    }

    /// <summary>A job with all that its mark rests on.</summary>
    public static void Job(AssessHtml page, RecordTelling telling, JobMark mark, Appeal? appeal)
    {
        page.Small(Words.Of("print.job", ("job", mark.Place), ("mark", AssessWords.Mark(mark)), ("sort", telling.Sort(mark))));
        page.Text($"{telling.InShort(mark)} {RecordTelling.Rule(mark)}");
        if (mark.Record is { } record)
        {
            page.Text(telling.Bike(record));
            page.Table(
                [Words.Of("whyjob.check"), Words.Of("whyjob.shown"), Words.Of("whyjob.read")],
                [
                    .. telling.Told(record).Select(t => (string[])[t.Check, t.Seen, Words.Of("whyjob.told")]),
                    .. telling.Looks(record).Select(l => (string[])[l.Check, l.Shown, l.Read.Length > 0 ? l.Read : Words.Of("whyjob.seen")]),
                    .. telling.Unused(record).Select(u => (string[])[u.Check, u.Seen, Words.Of("whyjob.unused")]),
                ]);
            page.Table([], [.. telling.Answer(record).Select(a => (string[])[Words.Of("whyjob.said", ("asked", a.Asked)), a.Said])]);
            foreach (var figure in telling.Figures(record).Concat(telling.Proof(record))) page.Text(figure, "note");
            page.Text(RecordTelling.Command(record), "small");
        }

        if (appeal is not null) page.Text($"{Words.Of("appeal.says", ("text", appeal.Text))} {AssessWords.Questioned(appeal)}");
    }

    static IEnumerable<string[]> Head(History history, PaperResult result)
    {
        var published = history.Assessments.PublishedAt(result.Paper);
        yield return [Words.Of("print.paper"), published is { } at ? Words.Of("print.paper-told", ("paper", result.Paper), ("number", result.Number), ("day", AssessWords.Day(at))) : Words.Of("print.paper-untold", ("paper", result.Paper), ("number", result.Number))];
        if (history.Assessments.SittingOf(result.Paper) is { } sitting) yield return [Words.Of("print.sat"), Sat(sitting)];
        yield return [Words.Of("result.jobs"), Words.Of("result.count", ("n", result.Jobs.Count), ("sound", result.Sound), ("unsound", result.Unsound), ("rule", AssessWords.Rule(result)))];
        yield return [Words.Of("result.result"), $"{AssessWords.Outcome(result)} {AssessWords.Next(history, result)}"];
        yield return [Words.Of("result.how-firm"), AssessWords.Firm(result)];
        yield return [Words.Of("result.safety"), AssessWords.Safety(result)];
        yield return [Words.Of("result.read"), AssessWords.Reading(result)];
        yield return [Words.Of("result.questioned"), AssessWords.Questioned(history.Assessments, result)];
        yield return [Words.Of("result.not-counted"), Words.Of("result.not-counted-what")];
        yield return [Words.Of("print.line"), AssessWords.Line(history.Assessments, result.Permission)];
    }

    static string Sat(Sitting sitting)
    {
        var stops = sitting.Stops.Count == 0 ? "" : Words.Of("print.stops", ("reasons", Spoken.List([.. sitting.Stops.Select(s => s.Reason)])));
        return Words.Of("print.sat-what", ("day", AssessWords.Day(sitting.At)), ("by", sitting.Started.ConfirmedBy), ("minutes", Math.Ceiling(sitting.Used.TotalMinutes)), ("times", sitting.Started.Multiplier.ToString("0.##")), ("stops", stops)).Trim();
    }
}
