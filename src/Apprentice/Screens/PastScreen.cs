using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Past jobs, newest first; each can be opened again with its grade.</summary>
sealed record PastScreen : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("past.title"),
        world.Who,
        Count(world) == 0
            ? [new Block.Text(Words.Of("past.none"))]
            :
            [
                new Block.Text(Words.Of("past.ask")),
                new Block.Gap(),
                new Block.Table(
                    [new(Words.Of("past.job"), Right: true), new(Words.Of("past.topic")), new(Words.Of("past.short")), new(Words.Of("past.when"), Drop: true), new("")],
                    Rows([.. Results(world) is null ? [] : new[] { (string[])["", Words.Of("past.results"), "", "", ""] }, .. Jobs(world).Select(j => Cells(world, j))])),
            ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Jobs(world).Count + Above(world);

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line < Above(world) && Results(world) is { } results ? Turn.To(results) : Open(world, Jobs(world)[line - Above(world)], this);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new HomeScreen());

    /// <summary>The grade of a past job, or its marks where the topic was changed since.</summary>
    public static Turn Open(World world, PastJob past, Screen below)
    {
        if (past.Given is not { } given) return Turn.To(below);
        return BenchJob.Again(world, past) is { } job
            ? Turn.To(new GradeScreen(job, given, job.Grade(given), Past: true) { Below = below })
            : Turn.To(new OldGradeScreen(past) { Below = below });
    }

    // Results of tests stand above the jobs.
    Screen? Results(World world) => Assess.ResultListScreen.ForCandidate(world, this);

    int Above(World world) => Results(world) is null ? 0 : 1;

    static List<PastJob> Jobs(World world) => [.. world.History.JobsOf(world.Person).Where(j => j.Given is not null).Reverse()];

    static string[] Cells(World world, PastJob job) =>
    [
        job.Started.Job.ToString(),
        TopicsScreen.Title(world, job.Started.Topic),
        Words.Of($"short.{job.Verdict?.InShort}"),
        (job.Ended ?? job.At).ToString("d MMM yyyy"),
        job.Questions.Count > 0 ? Words.Of("past.questioned") : job.Started.Guided ? Words.Of("past.guided") : "",
    ];
}
