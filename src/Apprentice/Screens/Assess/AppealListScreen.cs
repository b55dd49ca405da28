using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>Questioned jobs: open ones go to a second person as a file with a code of its own, and come back as a decision.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what was just done, or empty.</param>
sealed record AppealListScreen(Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("appeals.title"),
        world.History.Workshop?.Name ?? "",
        [
            new Block.Text(Words.Of("appeals.ask")),
            new Block.Gap(Drop: true),
            new Block.Table(
                [new(Words.Of("results.who")), new(Words.Of("results.paper")), new(Words.Of("whylist.job")), new(Words.Of("appeals.says")), new(Words.Of("appeals.state"))],
                Rows([.. world.History.Assessments.Appeals.Select(a => Cells(world, a)), [Words.Of("appeals.open"), "", "", "", ""], [Words.Of("appeals.take"), "", "", "", ""]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => world.History.Assessments.Appeals.Count + 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (here, appeals) = (this with { Note = "" }, world.History.Assessments.Appeals);
        if (line == appeals.Count) return Turn.To(AppealDesk.AskFile(here, "appeals.file", (file, before) => AppealDesk.AskCode(file, before, here)));
        if (line > appeals.Count) return Turn.To(AppealDesk.AskFile(here, "appeals.decision-file", (file, before) => AskDecision(file, before, here)));
        return appeals[line].Decided is not null ? Turn.To(new WhyJobScreen(appeals[line].Paper, appeals[line].Place, here)) : Turn.To(Open(world, appeals[line], here));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static SignOffChooseScreen Open(World world, Appeal appeal, AppealListScreen here) => new(
        Words.Of("whyjob.title", ("job", appeal.Place), ("paper", appeal.Paper)), world.History.Assessments.Result(appeal.Paper)?.Candidate ?? "",
        [Words.Of("appeal.says", ("text", appeal.Text)), Words.Of("appeals.how")], [Words.Of("appeals.see"), Words.Of("appeals.make")],
        (_, before, line) => line == 0 ? Turn.To(new WhyJobScreen(appeal.Paper, appeal.Place, before)) : Turn.To(before) with { Errand = (w, folder) => Make(w, folder, appeal, here) }, here);

    static Turn Make(World world, PaperFolder folder, Appeal appeal, AppealListScreen here)
    {
        if (world.History.Assessments.Result(appeal.Paper) is not { } result || result.Jobs.FirstOrDefault(j => j.Place == appeal.Place) is not { } mark) return Turn.To(here);
        try
        {
            var (file, code) = AppealFile.Sealed(new AppealPapers(appeal.Paper, result.Candidate, SignOffBike.Lead(world), appeal.Text, mark));
            var path = folder.Write(Words.Of("appeals.name", ("paper", appeal.Paper), ("job", appeal.Place)), file);
            return Turn.To(new SignOffChooseScreen(
                Words.Of("appeals.made"), result.Candidate, [Words.Of("appeals.lies", ("file", path)), Words.Of("appeals.code", ("code", code)), Words.Of("appeals.apart"), Words.Of("appeals.opens")],
                [Words.Of("appeals.noted")], (_, _, _) => Turn.To(here), here));
        }
        catch (SealException e)
        {
            return Turn.To(here with { Note = e.Message });
        }
    }

    static SignOffAskScreen AskDecision(byte[] file, Screen before, AppealListScreen here) => new(
        Words.Of("appeals.take"), "", [Words.Of("appeals.code-ask")], Words.Of("kit.code-field"), (world, asked, code) =>
        {
            try
            {
                var verdict = AppealFile.OpenDecision(file, code);
                return AppealDesk.Fault(world, verdict) is { } fault ? asked.Again(fault)
                    : Turn.To(here with { Note = Touched(world, verdict) }, AppealDesk.Entry(verdict));
            }
            catch (SealException e)
            {
                return asked.Again(e.Message);
            }
        }, before)
    {
        Works = true,
    };

    static string Touched(World world, AppealVerdict verdict)
    {
        var all = world.History.Assessments;
        var mark = all.Result(verdict.Paper)?.Jobs.FirstOrDefault(j => j.Place == verdict.Place);
        var others = mark is null ? [] : all.TouchedBy(mark.Family, mark.Version).Where(t => t.Paper != verdict.Paper).ToList();
        var said = AssessWords.Questioned(new Appeal(verdict.Paper, verdict.Place, "", world.Now) { Decided = AppealDesk.Entry(verdict) });
        return verdict.Decision == AppealDecision.Stays || others.Count == 0 ? said
            : $"{said} {Words.Of("appeals.others", ("people", Spoken.List([.. others.Select(t => Words.Of("use.touched-one", ("name", t.Candidate), ("paper", t.Paper)))])))}";
    }

    static string[] Cells(World world, Appeal appeal) =>
    [
        world.History.Assessments.Result(appeal.Paper)?.Candidate ?? "", appeal.Paper, Words.Of("whylist.n", ("n", appeal.Place)), appeal.Text,
        appeal.Decided is { } decided ? Words.Of($"appeals.{decided.Decision}") : Words.Of("appeals.waits"),
    ];
}
