using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>Why a job has its mark: the rule as one sentence, and everything that is needed to work it out again by hand.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Place">The job.</param>
/// <param name="Below">The list of jobs.</param>
sealed record WhyJobScreen(string Paper, int Place, Screen Below) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var all = world.History.Assessments;
        var mark = Mark(all);
        return new Page(
            Words.Of("whyjob.title", ("job", Place), ("paper", Paper)),
            all.Result(Paper)?.Candidate ?? "",
            mark is null ? [new Block.Text(Words.Of("result.gone"))] :
            [
                .. WhyBlocks.Of(new RecordTelling(world.Topics), mark),
                .. all.Appeals.Where(a => a.Paper == Paper && a.Place == Place).SelectMany(a => new Block[] { new Block.Rule(Drop: true), new Block.Text(Words.Of("appeal.says", ("text", a.Text))), new Block.Text(AssessWords.Questioned(all, a)) }),
            ],
            [Words.Of("key.enter-ok"), CanAsk(world) ? Words.Of("whyjob.key-question") : "", Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        if (key.IsBack || key.Press == Screens.Press.Enter) return Turn.To(Below);
        return Turn.To(key.Letter is 'X' or '1' && CanAsk(world) ? new AppealAskScreen(Paper, Place, this) : this);
    }

    bool CanAsk(World world) => string.Equals(world.History.Assessments.Result(Paper)?.Candidate, world.Person, StringComparison.Ordinal)
        && Appeal.Fault(world.History.Assessments, Paper, Place, "?", world.Now) is null;

    JobMark? Mark(Assessments all) => all.Result(Paper) is { } result ? result.AllJobs.FirstOrDefault(j => j.Place == Place) : null;
}
