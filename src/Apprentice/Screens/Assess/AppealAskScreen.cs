using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens.Assess;

/// <summary>The candidate questions a job: one sentence, for a second person who is not the lead.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Place">The job.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record AppealAskScreen(string Paper, int Place, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 200;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("appeal.ask-title", ("job", Place), ("paper", Paper)),
        world.Who,
        [
            new Block.Text(Words.Of("appeal.fair")),
            new Block.Gap(),
            .. world.History.Assessments.Result(Paper)?.Jobs.FirstOrDefault(j => j.Place == Place) is { } mark ? [new Block.Text(new RecordTelling(world.Topics).InShort(mark), 2), new Block.Gap()] : Array.Empty<Block>(),
            new Block.Text(Words.Of("appeal.ask")),
            new Block.Gap(),
            .. Field(Words.Of("appeal.field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => Appeal.Fault(world.History.Assessments, Paper, Place, text, world.Now) is { } fault
        ? Turn.To(this with { Wrong = Spoken.Capital(fault) + "." })
        : Turn.To(Below is ResultScreen result ? result with { Note = Words.Of("appeal.kept") } : Below, new LogEntry.PaperQuestioned(Paper, Place, text));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
