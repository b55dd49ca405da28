using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>The result of a paper, as the candidate, the lead and an appeal see it.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="IsLead">True for the lead, who can tell the candidate and note the talk.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record ResultScreen(string Paper, bool IsLead, Screen Below, string Note = "") : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        if (world.History.Assessments.Result(Paper) is not { } result) return new Page(Words.Of("result.title", ("name", "")), Paper, [new Block.Text(Words.Of("result.gone"))], [Words.Of("key.back")]);
        var all = world.History.Assessments;
        var published = all.PublishedAt(Paper);
        return new Page(
            Words.Of("result.title", ("name", result.Candidate)),
            published is { } at ? Words.Of("result.right", ("day", AssessWords.Day(at)), ("paper", Paper)) : Words.Of("result.right-open", ("paper", Paper)),
            [
                new Block.Table([new(""), new("")], [.. Head(world, result).Concat(Jobs(world, result)).Concat(Real(world, result)).Concat(Foot(all, result)).Select(Row)]),
            ],
            Keys(result, published is not null))
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        var here = this with { Note = "" };
        if (key.IsBack || key.Press == Screens.Press.Enter) return Turn.To(Below);
        if (world.History.Assessments.Result(Paper) is not { } result) return Turn.To(Below);
        var told = world.History.Assessments.PublishedAt(Paper) is not null;
        return key.Letter switch
        {
            'W' or '1' => Turn.To(new WhyListScreen(Paper, Asks: false, here)),
            'M' or '2' => Turn.To(new ResultFirmScreen(Paper, here)),
            'X' or '3' when told && !IsLead => Turn.To(new WhyListScreen(Paper, Asks: true, here)),
            'D' or '4' => Print(world, result),
            'R' or '7' when result.Real.Count > 0 => Turn.To(new ResultRealScreen(Paper, here)),
            'T' or '5' when IsLead && !told => Turn.To(Telling(result, here)),
            'S' or '6' when IsLead && result is { SafetyErrors: 1, Talked: false } => Turn.To(new ResultTalkScreen(Paper, here)),
            _ => Turn.To(here),
        };
    }

    static SignOffChooseScreen Telling(PaperResult result, ResultScreen here) => new(
        Words.Of("result.tell-title", ("name", result.Candidate)), "",
        [Words.Of("result.tell-what", ("name", result.Candidate), ("days", Appeal.Days)), .. result is { SafetyErrors: > 0, Talked: false } ? [Words.Of("result.tell-talk")] : Array.Empty<string>()],
        [Words.Of("result.tell-now"), Words.Of("result.tell-later")],
        (_, _, line) => line == 0 ? Turn.To(here with { Note = Words.Of("result.told", ("name", result.Candidate)) }, new LogEntry.PaperMarked(result, Published: true)) : Turn.To(here), here);

    Turn Print(World world, PaperResult result) => new(this, [], Sheet: new Sheet(
        Words.Of("result.file", ("paper", Paper)), AssessCandidatePage.Html(world.History, world.Topics, result, world.Now), note => this with { Note = note }));

    static Row Row((string Label, string Text) line) => new("", Marked: false, [line.Label, line.Text]);

    static IEnumerable<(string, string)> Head(World world, PaperResult result)
    {
        yield return (Words.Of("result.permission"), Words.Of("result.quoted", ("permission", result.Permission)));
        yield return (Words.Of("result.jobs"), Words.Of("result.count", ("n", result.Jobs.Count), ("sound", result.Sound), ("unsound", result.Unsound), ("rule", AssessWords.Rule(result))));
        yield return (Words.Of("result.result"), $"{AssessWords.Outcome(result)} {AssessWords.Next(world.History, result)}");
        if (result.Outcome != Outcome.Open) yield return (Words.Of("result.how-firm"), $"{AssessWords.Firm(result)} {Words.Of("result.firm-key")}");
        yield return (Words.Of("result.safety"), AssessWords.Safety(result));
        yield return (Words.Of("result.read"), AssessWords.Reading(result));
    }

    static IEnumerable<(string, string)> Jobs(World world, PaperResult result)
    {
        var not = AssessWords.NotSound(result, new RecordTelling(world.Topics)).ToList();
        if (not.Count == 0) yield return (Words.Of("result.unsound"), Words.Of("result.no-unsound"));
        for (var i = 0; i < not.Count; i++) yield return (i == 0 ? Words.Of("result.unsound") : "", Words.Of("result.job", ("job", not[i].Place), ("text", not[i].Text)));
    }

    static IEnumerable<(string, string)> Real(World world, PaperResult result)
    {
        var telling = new RealTelling(world.Topics);
        return result.Real.Select((m, i) => (i == 0 ? Words.Of("result.real") : "", $"{telling.Bike(m)}. {telling.InShort(m)}"));
    }

    IEnumerable<(string, string)> Foot(Assessments all, PaperResult result)
    {
        var key = !IsLead && all.PublishedAt(Paper) is not null ? " " + Words.Of("result.until-key") : "";
        yield return (Words.Of("result.questioned"), AssessWords.Questioned(all, result) + key);
        yield return (Words.Of("result.not-counted"), Words.Of("result.not-counted-what"));
    }

    List<string> Keys(PaperResult result, bool told) =>
    [
        Words.Of("result.key-why"), Words.Of("result.key-firm"), told && !IsLead ? Words.Of("result.key-question") : "", Words.Of("result.key-print"),
        IsLead && !told ? Words.Of("result.key-tell") : "", IsLead && result is { SafetyErrors: 1, Talked: false } ? Words.Of("result.key-talk") : "",
        result.Real.Count > 0 ? Words.Of("result.key-real") : "",
        Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
    ];
}
