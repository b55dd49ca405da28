using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>All jobs of a paper with their marks: one is opened for its reasons, or to be questioned.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Asks">True when a job is chosen to be questioned.</param>
/// <param name="Below">The result.</param>
sealed record WhyListScreen(string Paper, bool Asks, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var telling = new RecordTelling(world.Topics);
        var one = telling.OneTopic(Jobs(world));
        return new Page(
            Words.Of("whylist.title", ("paper", Paper)),
            world.History.Assessments.Result(Paper)?.Candidate ?? "",
            [
                new Block.Text(Words.Of(Asks ? "whylist.question" : "whylist.ask")),
                .. one is null ? Array.Empty<Block>() : [new Block.Text(Words.Of("whylist.one", ("topic", one)))],
                new Block.Gap(Drop: true),
                new Block.Table(
                    [new(Words.Of("whylist.job")), new(Words.Of("whylist.mark")), new(Words.Of("whylist.why")), new(Words.Of("whylist.sort"), Drop: true)],
                    Rows(Jobs(world).Select(j => (string[])[Words.Of("whylist.n", ("n", j.Place)), AssessWords.Mark(j), telling.InShort(j), one is null ? telling.Sort(j) : telling.SortWithin(j)]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Jobs(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var place = Jobs(world)[line].Place;
        return Turn.To(Asks ? new AppealAskScreen(Paper, place, Below) : new WhyJobScreen(Paper, place, this));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<JobMark> Jobs(World world) => world.History.Assessments.Result(Paper) is { } result ? [.. Asks ? result.Jobs : result.AllJobs] : [];
}
