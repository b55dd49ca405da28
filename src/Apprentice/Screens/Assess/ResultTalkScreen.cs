using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens.Assess;

/// <summary>The talk about safety after one safety error: what was said, in one line that is kept.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Below">The result.</param>
sealed record ResultTalkScreen(string Paper, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 160;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("talk.title"),
        world.History.Assessments.Result(Paper)?.Candidate ?? "",
        [new Block.Text(Words.Of("talk.what")), new Block.Gap(), new Block.Text(Words.Of("talk.ask")), new Block.Gap(), .. Field(Words.Of("talk.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("talk.empty") })
        : Turn.To(Below, new LogEntry.SafetyTalked(Paper, world.History.Workshop?.Lead ?? world.History.Assessments.Desk?.Lead ?? "", text));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
