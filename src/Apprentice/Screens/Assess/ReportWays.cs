using Apprentice.Content;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>What is done with results once they are collected: ways from the lead's desk. None of them needs the passphrase.</summary>
static class ReportWays
{
    /// <summary>The ways, in order.</summary>
    public static IReadOnlyList<DeskWay> All(World world)
    {
        var all = world.History.Assessments;
        return
        [
            new(Words.Of("desk.results"), Words.Of("desk.results-note", ("n", all.Results.Count(r => all.PublishedAt(r.Paper) is null))), (_, desk) => Turn.To(ResultListScreen.ForLead(desk))),
            new(Words.Of("desk.questioned"), Words.Of("desk.questioned-note", ("n", all.Appeals.Count(a => a.Decided is null))), (_, desk) => Turn.To(new AppealListScreen(desk))),
            new(Words.Of("desk.register"), Words.Of("desk.register-note", ("n", all.Registers.Count)), (_, desk) => Turn.To(new RegisterListScreen(desk))),
            new(Words.Of("desk.more"), Words.Of("desk.more-note"), (_, desk) => Turn.To(new ReportMenuScreen(desk))),
        ];
    }
}

/// <summary>Sorts of jobs after use, paper kits, and reports as files.</summary>
/// <param name="Below">The desk.</param>
/// <param name="Note">Where a file lies, or empty.</param>
sealed record ReportMenuScreen(Screen Below, string Note = "") : ChoiceScreen
{
    static readonly string[] Lines = ["use", "kits", "candidate", "group", "csv", "xapi"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("desk.more"),
        world.History.Workshop?.Name ?? "",
        [new Block.Text(Words.Of("reports.ask")), new Block.Gap(), new Block.Table([new(""), new("")], Rows(Lines.Select(l => (string[])[Words.Of($"reports.{l}"), Words.Of($"reports.{l}-note")])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Lines.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (here, history) = (this with { Note = "" }, world.History);
        return Lines[line] switch
        {
            "use" => UseScreen.Open(world, here),
            "kits" => Turn.To(new KitListScreen(here)),
            "candidate" => Candidate(world, here),
            "group" => Write(Words.Of("reports.group-file"), AssessPages.Group(history, world.Topics, world.Now)),
            "csv" => Write(Words.Of("reports.csv-file"), ReportText.Of(AssessReports.Group(history, world.Topics, world.Now), "csv")),
            _ => Write(Words.Of("reports.xapi-file"), new AssessXapi(AssessXapi.Nobody).Text(history, world.Topics, null)),
        };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Turn Candidate(World world, ReportMenuScreen here)
    {
        var people = world.History.Assessments.Results.Select(r => r.Candidate).Distinct(StringComparer.Ordinal).ToList();
        return people.Count == 0 ? Turn.To(this with { Note = Words.Of("results.none") }) : Turn.To(new SignOffChooseScreen(
            Words.Of("reports.candidate"), "", [Words.Of("register.who")], people,
            (_, _, line) => here.Write(Words.Of("reports.candidate-file"), AssessPages.Candidate(world.History, world.Topics, people[line], world.Now)), here));
    }

    Turn Write(string name, string text) => new(this, [], Sheet: new Sheet(name, text, note => this with { Note = note }));
}
