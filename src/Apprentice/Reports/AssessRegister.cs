using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>The register: evidence and signatures of people and permissions, as lines and for print.</summary>
static class AssessRegister
{
    const int MostOrders = 30;

    /// <summary>Where a permission stands today, in words.</summary>
    public static string State(Register register, IReadOnlyList<Topic> topics, DateTimeOffset now) =>
        Words.Of($"state.{register.StateOn(DateOnly.FromDateTime(now.Date), Versions(topics))}");

    /// <summary>The evidence in lines: label and text.</summary>
    public static IEnumerable<(string Label, string Text)> Lines(History history, IReadOnlyList<Topic> topics, Register register, DateTimeOffset now)
    {
        yield return (Words.Of("evidence.state"), Spoken.Capital(State(register, topics, now)) + ". " + Until(register));
        yield return (Words.Of("evidence.test"), Test(register));
        yield return (Words.Of("evidence.bench"), Bikes(register));
        if (register.Last is not null) yield return (Words.Of("evidence.orders"), Words.Of("evidence.orders-what", ("n", register.RightInARow), ("of", Register.Orders), ("all", register.Countersigned.Count)));
        if (register.ToLookAtAgain(Versions(topics)) is { Count: > 0 } changed)
            yield return (Words.Of("evidence.again"), Words.Of("evidence.again-what", ("topics", Spoken.List([.. changed.Select(new SortNames(topics).Topic)]))));
        if (register.TakenBack is { } back) yield return (Words.Of("evidence.back"), Words.Of("evidence.back-what", ("by", back.By), ("reason", back.Reason)));
        yield return (Words.Of("print.line"), AssessWords.Line(history.Assessments, register.Permission));
        var level = register.Last is null || register.TakenBack is not null ? PermissionLevel.WithSecondLook : PermissionLevel.Alone;
        var missing = AssessWords.Missing(register, level);
        if (register.Last?.Level != PermissionLevel.Alone || register.TakenBack is not null)
            yield return (Words.Of("evidence.missing", ("level", Words.Of($"level.{level}"))), missing.Count == 0 ? Words.Of("evidence.nothing") : Spoken.Capital(string.Join("; ", missing)) + ".");
    }

    /// <summary>Registers for print.</summary>
    public static string Html(History history, IReadOnlyList<Topic> topics, IReadOnlyList<Register> registers, DateTimeOffset now)
    {
        var page = new AssessHtml(Words.Of("print.register", ("workshop", history.Workshop?.Name ?? ""))).Text(Words.Of("print.register-what"));
        if (registers.Count > 1)
        {
            page.Table([Words.Of("results.who"), Words.Of("results.permission"), Words.Of("register.state"), Words.Of("register.until")],
                [.. registers.Select(r => (string[])[r.Person, r.Permission, State(r, topics, now), r.Last is { } last && r.TakenBack is null ? AssessWords.Day(last.Expires) : ""])]);
        }

        foreach (var register in registers) One(page, history, topics, register, now);
        return page.Done(now);
    }

    static void One(AssessHtml page, History history, IReadOnlyList<Topic> topics, Register register, DateTimeOffset now)
    {
        page.Part($"{register.Person}: {register.Permission}").Table([], [.. Lines(history, topics, register, now).Select(l => (string[])[l.Label, l.Text])]);
        page.Table(
            [Words.Of("print.signed"), Words.Of("print.level"), Words.Of("print.by"), Words.Of("register.until"), Words.Of("print.paper"), Words.Of("print.topics"), Words.Of("print.line")],
            [.. register.Signatures.Select(s => (string[])[AssessWords.Day(s.Day), Words.Of($"level.{s.Level}"), s.By, AssessWords.Day(s.Expires), s.Paper, string.Join(", ", s.Topics.Select(t => $"{t.Id} {t.Version}")), Words.Of(s.SetByOnePerson ? "print.one-person" : "print.more-people")])]);
        page.Table(
            [Words.Of("print.bike"), Words.Of("print.by"), Words.Of("bike.read-what"), Words.Of("print.lead-read"), Words.Of("print.candidate-read"), Words.Of("print.agreed"), Words.Of("print.whys")],
            [.. register.Bench.SelectMany(b => b.Readings.Select((r, i) => (string[])
                [i == 0 ? $"{AssessWords.Day(b.Day)}, {b.Bike}{(b.Odd ? " " + Words.Of("print.odd") : "")}" : "", i == 0 ? b.By : "", r.What, r.Lead, r.Candidate, i == 0 ? Words.Of(b.Agreed ? "workshop.on" : "workshop.off") : "", i == 0 ? Words.Of("results.of", ("n", b.WhysGood), ("of", 3)) : ""]))]);
        page.Table(
            [Words.Of("print.order"), Words.Of("print.by"), Words.Of("print.right")],
            [.. register.Countersigned.TakeLast(MostOrders).Select(o => (string[])[o.Note, o.By, Words.Of(o.Right ? "workshop.on" : "workshop.off")])]);
        page.Field(Words.Of("print.signature-lead")).Field(Words.Of("print.signature-person"));
    }

    static string Until(Register register) => register.Last is { } last && register.TakenBack is null
        ? Words.Of("evidence.until", ("by", last.By), ("day", AssessWords.Day(last.Day)), ("until", AssessWords.Day(last.Expires)))
        : "";

    static string Test(Register register)
    {
        if (register.Results.Count == 0) return Words.Of("evidence.no-test");
        var best = register.Results.LastOrDefault(r => r.Outcome == Outcome.Passed) ?? register.Results[^1];
        return Words.Of("evidence.test-what", ("outcome", Words.Of($"outcome.short.{best.Outcome}")), ("sound", best.Sound), ("of", best.Jobs.Count), ("unsafe", best.SafetyErrors), ("paper", best.Paper), ("papers", register.Results.Count));
    }

    static string Bikes(Register register)
    {
        var good = register.Bench.Where(b => b.Agreed).ToList();
        return Words.Of(
            "evidence.bench-what", ("n", good.Count), ("days", good.Select(b => b.Day).Distinct().Count()), ("odd", Words.Of(good.Any(b => b.Odd) ? "workshop.on" : "workshop.off")),
            ("whys", good.Count(b => b.WhysGood >= WhyQuestions.Each)), ("differ", register.Bench.Count - good.Count));
    }

    static IReadOnlyList<PlanTopic> Versions(IReadOnlyList<Topic> topics) => [.. topics.Select(t => new PlanTopic(t.Id, t.Version))];
}
