using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Reports;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>A questioned job as the second person sees it: what the candidate says, then all that the mark rests on.</summary>
/// <param name="Papers">The opened file.</param>
/// <param name="Code">Its code: the decision is sealed under it.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
/// <param name="Decided">True once the decision is kept.</param>
sealed record AppealReadScreen(AppealPapers Papers, string Code, Screen Below, string Note = "", bool Decided = false) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("whyjob.title", ("job", Papers.Mark.Place), ("paper", Papers.Paper)),
        Papers.Candidate,
        [new Block.Text(Words.Of("appeal.says", ("text", Papers.Text))), new Block.Rule(Drop: true), .. WhyBlocks.Of(new RecordTelling(world.Topics), Papers.Mark)],
        [Decided ? "" : Words.Of("appeals.key-decide"), Words.Of("appeals.key-print"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => key.Letter switch
    {
        'A' or '1' when !Decided => AppealDesk.Decide(this),
        'D' or '2' => new Turn(this, [], Sheet: new Sheet(Words.Of("appeals.print-name", ("paper", Papers.Paper), ("job", Papers.Mark.Place)), Html(world), note => this with { Note = note })),
        _ => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this),
    };

    string Html(World world)
    {
        var page = new AssessHtml(Words.Of("whyjob.title", ("job", Papers.Mark.Place), ("paper", Papers.Paper))).Text(Words.Of("appeal.says", ("text", Papers.Text))).Text(Words.Of("whyjob.figures"));
        AssessCandidatePage.Job(page, new RecordTelling(world.Topics), Papers.Mark, null);
        return page.Field(Words.Of("appeals.form-decision")).Field(Words.Of("appeals.form-reason")).Field(Words.Of("appeals.form-name")).Done(world.Now);
    }
}
