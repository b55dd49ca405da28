using System.Globalization;
using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>Results and the register as tables: for CSV, JSON and print.</summary>
static class AssessReports
{
    /// <summary>A candidate: papers, and every job with its rule.</summary>
    public static Report Candidate(History history, IReadOnlyList<Topic> topics, string person, DateTimeOffset now)
    {
        var results = history.Assessments.Results.Where(r => r.Candidate == person).ToList();
        var telling = new RecordTelling(topics);
        return new Report(
            Words.Of("report.candidate", ("name", person)), now, [Words.Of("report.candidate-note")],
            [
                Papers("papers", results, history),
                new ReportTable("jobs", Words.Of("print.jobs"), ["paper", "job", "sort", "version", "sound", "counts_sound", "standing", "safety_error", "rule", "in_short", "readings", "readings_right"],
                    [.. results.SelectMany(r => r.AllJobs.Select(j => (object?[])[r.Paper, j.Place, j.Family, j.Version, j.Sound, j.CountsSound, j.Standing.ToString(), j.SafetyError, RecordTelling.Rule(j), telling.InShort(j), j.Readings, j.ReadingsRight]))]),
                new ReportTable("real_bikes", Words.Of("result.real"), ["paper", "bike", "topic", "version", "from", "part", "was", "said", "sure_of_10", "right", "opened", "found", "note"],
                    [.. results.SelectMany(r => r.Real.Select(m => (object?[])[r.Paper, m.Job.Place, m.Job.Case.Topic, m.Job.Version, m.Job.Case.From, m.Job.Part, m.Was, m.Sat.Kind, m.Sat.Tenths, m.Right, m.Sat.Opened.Count, m.Found.Count, Words.Of("realbike.counts")]))]),
                new ReportTable("questioned", Words.Of("result.questioned"), ["paper", "job", "text", "day", "decision", "by", "reason"],
                    [.. history.Assessments.Appeals.Where(a => results.Any(r => r.Paper == a.Paper)).Select(a => (object?[])[a.Paper, a.Place, a.Text, Day(a.At), a.Decided?.Decision.ToString(), a.Decided?.By, a.Decided?.Reason])]),
                RegisterTable(history, topics, [.. history.Assessments.Registers.Where(r => r.Person == person)], now),
                Kits(history, person),
            ]);
    }

    /// <summary>A group: everybody's papers, newest last, and where each stands.</summary>
    public static Report Group(History history, IReadOnlyList<Topic> topics, DateTimeOffset now) => new(
        Words.Of("report.group", ("name", history.Workshop?.Name ?? "")), now, [Words.Of("report.group-note")],
        [Papers("papers", history.Assessments.Results, history), RegisterTable(history, topics, history.Assessments.Registers, now), Kits(history, null)]);

    /// <summary>The register: a row a person and permission, and the evidence.</summary>
    public static Report Register(History history, IReadOnlyList<Topic> topics, DateTimeOffset now)
    {
        var registers = history.Assessments.Registers;
        return new Report(
            Words.Of("print.register", ("workshop", history.Workshop?.Name ?? "")), now, [Words.Of("print.register-what")],
            [
                RegisterTable(history, topics, registers, now),
                new ReportTable("bikes", Words.Of("evidence.bench"), ["person", "permission", "day", "bike", "odd", "by", "agreed", "questions_well", "what", "by_read", "person_read"],
                    [.. registers.SelectMany(r => r.Bench.SelectMany(b => b.Readings.Select(x => (object?[])[r.Person, r.Permission, Day(b.Day), b.Bike, b.Odd, b.By, b.Agreed, b.WhysGood, x.What, x.Lead, x.Candidate])))]),
                new ReportTable("signatures", Words.Of("print.signed"), ["person", "permission", "level", "by", "day", "until", "paper", "topics", "pass_line_by_one"],
                    [.. registers.SelectMany(r => r.Signatures.Select(s => (object?[])[s.Person, s.Permission, s.Level.ToString(), s.By, Day(s.Day), Day(s.Expires), s.Paper, string.Join(' ', s.Topics.Select(t => $"{t.Id}@{t.Version}")), s.SetByOnePerson]))]),
                new ReportTable("orders", Words.Of("evidence.orders"), ["person", "permission", "what", "by", "right"],
                    [.. registers.SelectMany(r => r.Countersigned.Select(o => (object?[])[o.Person, o.Permission, o.Note, o.By, o.Right]))]),
                new ReportTable("changes", Words.Of("report.changes"), ["day", "permission", "reason"],
                    [.. history.Assessments.Changes.Where(c => c.Reason.Length > 0).Select(c => (object?[])[Day(c.At), c.Permission, c.Reason])]),
            ]);
    }

    static ReportTable Papers(string id, IReadOnlyList<PaperResult> results, History history) => new(
        id, Words.Of("report.papers"), ["paper", "person", "permission", "number", "jobs", "sound", "outcome", "safety_errors", "readings", "readings_right", "again_flat", "again_favourable", "told"],
        [
            .. results.Select(r => (object?[])
            [
                r.Paper, r.Candidate, r.Permission, r.Number, r.Jobs.Count, r.Sound, r.Outcome.ToString(), r.SafetyErrors, r.Reading.Of, r.Reading.Right,
                Math.Round(r.SecondPaper(Prior.Flat), 4), Math.Round(r.SecondPaper(Prior.Favourable), 4), history.Assessments.PublishedAt(r.Paper) is { } at ? Day(at) : null,
            ]),
        ]);

    static ReportTable RegisterTable(History history, IReadOnlyList<Topic> topics, IReadOnlyList<Register> registers, DateTimeOffset now) => new(
        "register", Words.Of("register.title"), ["person", "permission", "state", "until", "by", "bikes", "orders_right", "look_again", "missing", "pass_line"],
        [
            .. registers.Select(r => (object?[])
            [
                r.Person, r.Permission, AssessRegister.State(r, topics, now), r.Last is { } last ? Day(last.Expires) : null, r.Last?.By, r.Bench.Count(b => b.Agreed), r.RightInARow,
                string.Join(' ', r.ToLookAtAgain([.. topics.Select(t => new PlanTopic(t.Id, t.Version))])),
                string.Join("; ", AssessWords.Missing(r, r.Last is null ? PermissionLevel.WithSecondLook : PermissionLevel.Alone)), AssessWords.Line(history.Assessments, r.Permission),
            ]),
        ]);

    static ReportTable Kits(History history, string? person) => new(
        "kits", Words.Of("report.kits"), ["kit", "person", "permission", "day", "by", "jobs", "sound", "safety_errors", "next_right", "passed", "answers"],
        [
            .. history.Assessments.KitResults.Where(r => person is null || r.Candidate == person).Select(r => (object?[])
                [r.Kit, r.Candidate, r.Permission, Day(r.At), r.By, r.Marks.Count, r.Sound, r.SafetyErrors, r.NextRight, r.Passed, string.Join(' ', r.Marks.Select(m => $"{m.Place}:{m.Digits}"))]),
        ]);

    static string Day(DateTimeOffset at) => at.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
