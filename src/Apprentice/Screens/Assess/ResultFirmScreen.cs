using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>How firm a result is, and how that is worked out.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Below">The result.</param>
sealed record ResultFirmScreen(string Paper, Screen Below) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var result = world.History.Assessments.Result(Paper);
        return new Page(
            Words.Of("firm.title"),
            result?.Candidate ?? "",
            result is null ? [new Block.Text(Words.Of("result.gone"))] :
            [
                new Block.Text(Words.Of("firm.what", ("sound", result.Sound), ("jobs", result.Jobs.Count))),
                new Block.Gap(Drop: true),
                .. new[] { Prior.Flat, Prior.Favourable }.Select(p => new Block.Text(AssessWords.View(result, p), 2)),
                new Block.Gap(Drop: true),
                new Block.Text(Words.Of("firm.how")),
                new Block.Rule(Drop: true),
                new Block.Table(
                    [new(Words.Of("firm.right")), new(Words.Of("firm.passes"), Right: true), new(Words.Of("firm.sits"), Right: true)],
                    [.. AssessWords.Tells(result.Rule).Select(r => new Row("", Marked: false, r))]),
                new Block.Gap(Drop: true),
                new Block.Text(AssessWords.FirmWithout(result)),
                new Block.Text(Words.Of("firm.limits")),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}
