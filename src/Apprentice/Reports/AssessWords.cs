using System.Globalization;
using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;

namespace Apprentice.Reports;

/// <summary>Sentences about results, permissions and what is missing: the same on screens and in print.</summary>
static class AssessWords
{
    static readonly int[] Rights = [19, 18, 16, 13, 10];

    /// <summary>What a paper says, in a few words.</summary>
    public static string Outcome(PaperResult result) => Words.Of($"outcome.{result.Outcome}");

    /// <summary>A day.</summary>
    public static string Day(DateTimeOffset at) => at.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A day.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The rule that holds for so many jobs.</summary>
    public static string Rule(PaperResult result) => result.Rule.Checks.FirstOrDefault(c => c.Jobs == result.Jobs.Count) is { } check
        ? Words.Of("result.rule", ("most", check.PassAt), ("jobs", check.Jobs), ("notyet", check.NotYetAt))
        : Words.Of("result.rule-none");

    /// <summary>What follows from a result: the next steps.</summary>
    public static string Next(History history, PaperResult result)
    {
        if (result.Outcome == Engine.Assessing.Outcome.Passed) return Words.Of("result.next.passed", ("state", State(history, result.Candidate, result.Permission)));
        return result.Outcome switch
        {
            Engine.Assessing.Outcome.SafetyFirst when !result.Talked => Words.Of("result.next.talk"),
            Engine.Assessing.Outcome.SafetyFirst => Words.Of("result.next.fresh", ("sat", result.SafetyAgain.Count), ("of", PaperResult.FreshSafetyJobs)),
            Engine.Assessing.Outcome.Open => Words.Of("result.next.open"),
            _ => Words.Of(result.SafetyErrors >= PaperResult.TooManySafetyErrors ? "result.next.unsafe" : "result.next.not-yet"),
        };
    }

    /// <summary>How far a person is with a permission: bikes on the bench, and what was signed.</summary>
    public static string State(History history, string person, string permission)
    {
        var register = history.Assessments.RegisterOf(person, permission);
        var bikes = Words.Of("result.bikes", ("n", Math.Min(3, register.Bench.Count(b => b.Agreed))));
        return register.Last is { } last
            ? Words.Of("result.signed", ("bikes", bikes), ("level", Words.Of($"level.{last.Level}")), ("until", Day(last.Expires)))
            : Words.Of("result.unsigned", ("bikes", bikes));
    }

    /// <summary>How often a second paper would be passed, under the two starting views.</summary>
    public static string Firm(PaperResult result)
    {
        var said = Words.Of("result.firm", ("flat", Spoken.Twentieths(result.SecondPaper(Prior.Flat))), ("other", Spoken.Twentieths(result.SecondPaper(Prior.Favourable))));
        return result.SafetyErrors == 0 ? said : $"{said} {Words.Of("result.firm-safety")}";
    }

    /// <summary>That safety errors are in none of these figures, and how many there were.</summary>
    public static string FirmWithout(PaperResult result) =>
        result.SafetyErrors == 0 ? Words.Of("firm.safety") : $"{Words.Of("firm.safety")} {Words.Of(result.SafetyErrors == 1 ? "firm.safety-one" : "firm.safety-more", ("n", result.SafetyErrors))}";

    /// <summary>One starting view: as if so many jobs had been seen before, and what comes out.</summary>
    public static string View(PaperResult result, Prior prior)
    {
        var again = result.Rule.Again(prior, result.Sound, result.Unsound);
        return Words.Of(
            $"firm.view.{prior.Name}", ("sound", prior.Sound), ("of", prior.Sound + prior.Unsound), ("then", prior.Sound + result.Sound), ("thenof", prior.Sound + prior.Unsound + result.Jobs.Count),
            ("share", Spoken.Twentieths(again.Passed)), ("jobs", again.Jobs.ToString("0")));
    }

    /// <summary>How often somebody right on so many of 20 such jobs passes, and how many jobs they sit: a row each.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Tells(StagedRule rule) =>
    [
        .. Rights.Select(n => (Right: n, Prospect: rule.For(n / 20.0))).Select(r => (string[])
            [Words.Of("firm.of-twenty", ("n", r.Right)), Words.Of("spoken.mark", ("n", (100 * r.Prospect.Passed).ToString("0.#", CultureInfo.InvariantCulture))), r.Prospect.Jobs.ToString("0", CultureInfo.InvariantCulture)]),
    ];

    /// <summary>Who set the pass line, and where it lies.</summary>
    public static string Line(Assessments all, string permission) => all.PassLines.FirstOrDefault(p => p.Permission == permission)?.Line switch
    {
        null => Words.Of("line.none"),
        { SetByOnePerson: true } line => Words.Of("line.one", ("judge", line.Judges[0]), ("line", Words.Of("spoken.mark", ("n", (100 * line.Line).ToString("0", CultureInfo.InvariantCulture))))),
        { } line => Words.Of("line.more", ("judges", Spoken.List(line.Judges)), ("line", Words.Of("spoken.mark", ("n", (100 * line.Line).ToString("0", CultureInfo.InvariantCulture))))),
    };

    /// <summary>Safety in a sentence.</summary>
    public static string Safety(PaperResult result)
    {
        var jobs = result.Jobs.Count(j => j.SafetyJob);
        var said = result.SafetyErrors == 0 ? Words.Of("result.safe", ("jobs", jobs)) : Words.Of(result.SafetyErrors == 1 ? "result.unsafe-one" : "result.unsafe", ("n", result.SafetyErrors), ("places", Places(result.Jobs.Where(j => j.SafetyError && j.Standing == Standing.Counted))));
        return result.SafetyAgain.Count == 0 ? said : $"{said} {Words.Of("result.safe-again", ("sound", result.SafetyAgain.Count(j => j.CountsSound)), ("of", result.SafetyAgain.Count))}";
    }

    /// <summary>Reading in a sentence: a line of its own.</summary>
    public static string Reading(PaperResult result) => result.Reading.Of == 0
        ? Words.Of("result.reading-none")
        : Words.Of(result.Reading.Enough ? "result.reading" : "result.reading-few", ("right", result.Reading.Right), ("of", result.Reading.Of));

    /// <summary>Which jobs are questioned, and how long any can be.</summary>
    public static string Questioned(Assessments all, PaperResult result)
    {
        var asked = all.Appeals.Where(a => a.Paper == result.Paper).ToList();
        var said = asked.Count == 0 ? Words.Of("result.none-questioned") : string.Join(' ', asked.Select(a => Questioned(all, a)));
        return all.PublishedAt(result.Paper) is { } at ? $"{said} {Words.Of("result.until", ("day", Day(at.AddDays(Appeal.Days))))}" : said;
    }

    /// <summary>What became of a questioned job, and of the new one that stands for it.</summary>
    public static string Questioned(Assessments all, Appeal appeal)
    {
        if (appeal.Decided?.Decision != AppealDecision.NewJob || all.Result(appeal.Paper) is not { } result) return Questioned(appeal);
        var renewed = result.NewJobFor(appeal.Place) switch
        {
            null => result.NewJobsDue.Contains(appeal.Place) ? "appeal.renewed.due" : null,
            { Sound: true } => "appeal.renewed.sound",
            _ => "appeal.renewed.not-sound",
        };
        return renewed is null ? Questioned(appeal) : $"{Questioned(appeal)} {Words.Of(renewed)}";
    }

    /// <summary>What became of a questioned job.</summary>
    public static string Questioned(Appeal appeal) => appeal.Decided is { } decided
        ? Words.Of($"appeal.said.{decided.Decision}", ("job", appeal.Place), ("by", decided.By), ("reason", decided.Reason.TrimEnd('.')))
        : Words.Of("appeal.said.open", ("job", appeal.Place));

    /// <summary>A mark in words: sound, not sound, or what became of it.</summary>
    public static string Mark(JobMark mark) => mark.Standing == Standing.Counted
        ? Words.Of(mark.Sound ? "result.sound" : "result.not-sound")
        : Words.Of($"standing.{mark.Standing}");

    /// <summary>What somebody did with a paper kit.</summary>
    public static string Kit(KitResult result)
    {
        var word = result.SafetyErrors > 0
            ? Words.Of("kit.result-safety", ("places", Spoken.List([.. result.Marks.Where(m => m.SafetyError).Select(m => m.Place.ToString())])))
            : Words.Of(result.Passed ? "kit.result-passed" : "kit.result-not");
        return Words.Of(
            "kit.result", ("name", result.Candidate), ("kit", result.Kit), ("sound", result.Sound), ("jobs", result.Marks.Count), ("most", Engine.Assessing.Kit.RuleOf(result.Marks.Count).Checks[0].PassAt),
            ("word", word), ("next", result.NextRight));
    }

    /// <summary>What is missing for a level, as a list; empty when nothing is.</summary>
    public static IReadOnlyList<string> Missing(Register register, PermissionLevel level) => [.. register.MissingFor(level).Select(m => Words.Of($"missing.{m}"))];

    /// <summary>The sentences of the jobs that are not sound.</summary>
    public static IEnumerable<(int Place, string Text)> NotSound(PaperResult result, RecordTelling telling) =>
        result.Jobs.Where(j => !j.CountsSound).Select(j => (j.Place, telling.InShort(j)));

    static string Places(IEnumerable<JobMark> jobs) => Spoken.List([.. jobs.Select(j => j.Place.ToString())]);
}
