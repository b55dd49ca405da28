using System.Globalization;
using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>Reports for print: a candidate, the group, sorts of jobs after use. Scripts take the same as tables (<see cref="AssessReports"/>, <see cref="AssessUse"/>).</summary>
static class AssessPages
{
    /// <summary>A candidate: papers with each job in short, how far each permission is, kits.</summary>
    public static string Candidate(History history, IReadOnlyList<Topic> topics, string person, DateTimeOffset now)
    {
        var page = new AssessHtml(Words.Of("report.candidate", ("name", person))).Text(Words.Of("report.candidate-note"));
        var results = history.Assessments.Results.Where(r => r.Candidate == person).ToList();
        Papers(page, history, results);
        foreach (var register in history.Assessments.Registers.Where(r => r.Person == person))
            page.Part(register.Permission).Table([], [.. AssessRegister.Lines(history, topics, register, now).Select(l => (string[])[l.Label, l.Text])]);
        var (telling, real) = (new RecordTelling(topics), new RealTelling(topics));
        foreach (var result in results)
        {
            page.Part(Words.Of("print.paper-jobs", ("paper", result.Paper), ("outcome", AssessWords.Outcome(result)))).Text(AssessWords.Firm(result)).Text($"{AssessWords.Safety(result)} {Spoken.Capital(AssessWords.Reading(result))}")
                .Table([Words.Of("whylist.job"), Words.Of("whylist.mark"), Words.Of("whylist.why"), Words.Of("whylist.sort")], [.. result.AllJobs.Select(j => (string[])[j.Place.ToString(), AssessWords.Mark(j), telling.InShort(j), telling.Sort(j)])])
                .Text(AssessWords.Questioned(history.Assessments, result));
            foreach (var mark in result.Real) page.Text($"{real.Bike(mark)}. {real.InShort(mark)}", "note");
        }

        return Kits(page, history, person).Done(now);
    }

    /// <summary>The group: everybody's papers, where each permission stands, kits.</summary>
    public static string Group(History history, IReadOnlyList<Topic> topics, DateTimeOffset now)
    {
        var page = new AssessHtml(Words.Of("report.group", ("name", history.Workshop?.Name ?? ""))).Text(Words.Of("report.group-note"));
        Papers(page, history, history.Assessments.Results);
        page.Part(Words.Of("register.title")).Table(
            [Words.Of("results.who"), Words.Of("results.permission"), Words.Of("register.state"), Words.Of("register.until"), Words.Of("print.missing")],
            [.. history.Assessments.Registers.Select(r => (string[])
                [r.Person, r.Permission, AssessRegister.State(r, topics, now), r.Last is { } last && r.TakenBack is null ? AssessWords.Day(last.Expires) : "", string.Join("; ", AssessWords.Missing(r, r.Last is null ? PermissionLevel.WithSecondLook : PermissionLevel.Alone))])]);
        return Kits(page, history, null).Done(now);
    }

    /// <summary>Sorts of jobs after use.</summary>
    public static string Use(History history, IReadOnlyList<Topic> topics, string permission, DateTimeOffset now)
    {
        var use = AssessUse.Of(history, permission);
        var sorts = new SortNames(topics);
        var page = new AssessHtml(Words.Of("use.report", ("permission", permission))).Text(Words.Of("use.per-sort")).Text(AssessUse.Reliability(use)).Text(AssessUse.Rasch(use))
            .Table([Words.Of("whylist.sort"), Words.Of("use.sound"), Words.Of("use.parts-head")], [.. use.Families.Select(f => (string[])[sorts.Of(f.Family), AssessUse.Share(f), AssessUse.Parts(f)])]);
        if (use.Rasch is { } scale)
        {
            page.Part(Words.Of("use.scale")).Table([Words.Of("whylist.sort"), Words.Of("use.hard"), Words.Of("use.error")], [.. use.Common.Select((f, i) => (string[])[sorts.Of(f), Figure(scale.Difficulties[i]), Figure(scale.Errors[i])])]);
            page.Part(Words.Of("use.people")).Table([Words.Of("use.sound"), Words.Of("use.estimate")], [.. Enumerable.Range(0, use.Common.Count + 1).Select(n => (string[])[n.ToString(), Figure(scale.Ability(n))])]);
        }

        if (history.Assessments.Unfair.Count > 0) page.Part(Words.Of("use.unfair"));
        return page.Table(
            [Words.Of("whylist.sort"), Words.Of("use.what-became"), Words.Of("print.by"), Words.Of("appeals.form-reason"), Words.Of("use.met-by")],
            [.. history.Assessments.Unfair.Select(u => (string[])[sorts.Of(u.Family), Words.Of($"standing.{u.Remedy}"), u.By, u.Reason, string.Join("; ", history.Assessments.TouchedBy(u.Family, u.Version).Select(t => $"{t.Candidate} ({t.Paper})"))])]).Done(now);
    }

    static void Papers(AssessHtml page, History history, IReadOnlyList<PaperResult> results) => page.Part(Words.Of("report.papers")).Table(
        [Words.Of("results.who"), Words.Of("results.paper"), Words.Of("results.permission"), Words.Of("results.sound"), Words.Of("results.result"), Words.Of("print.again"), Words.Of("results.told")],
        [
            .. results.Select(r => (string[])
            [
                r.Candidate, r.Paper, r.Permission, Words.Of("results.of", ("n", r.Sound), ("of", r.Jobs.Count)), Words.Of($"outcome.short.{r.Outcome}"), Spoken.Twentieths(r.SecondPaper(Prior.Flat)),
                history.Assessments.PublishedAt(r.Paper) is { } at ? AssessWords.Day(at) : Words.Of("results.untold"),
            ]),
        ]);

    static AssessHtml Kits(AssessHtml page, History history, string? person)
    {
        var kits = history.Assessments.KitResults.Where(k => person is null || k.Candidate == person).ToList();
        if (kits.Count > 0) page.Part(Words.Of("report.kits")).List([.. kits.Select(AssessWords.Kit)]);
        return page;
    }

    static string Figure(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);
}
