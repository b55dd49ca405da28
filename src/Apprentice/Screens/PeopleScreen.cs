using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>What the lead of a workshop sees: jobs done and right, by person.</summary>
/// <param name="Title">Top line.</param>
/// <param name="People">Name, jobs, jobs right, topics.</param>
/// <param name="Lines">Lines sent with "this is wrong".</param>
/// <param name="Below">The screen to go back to.</param>
sealed record PeopleScreen(string Title, IReadOnlyList<PersonJobs> People, IReadOnlyList<string> Lines, Screen Below) : Screen
{
    /// <summary>The real people of this file.</summary>
    public static PeopleScreen Of(World world, Screen below) => new(
        Words.Of("people.title", ("workshop", world.History.Workshop?.Name ?? "")),
        [
            .. world.History.People.Select(p => new PersonJobs(
                p, world.History.JobsOf(p).Count(j => j.Counts), world.History.JobsOf(p).Count(j => j is { Counts: true, Verdict.Sound: true }),
                [.. world.History.JobsOf(p).Where(j => j.Counts).Select(j => TopicsScreen.Title(world, j.Started.Topic)).Distinct(StringComparer.Ordinal)])),
        ],
        [.. world.History.Notebook.Reports.Select(r => r.What).OfType<LogEntry.Questioned>().OrderBy(q => q.Job).Select(q => Words.Of("people.line", ("job", q.Job), ("text", q.Text)))],
        below);

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Title,
        "",
        [
            People.Count == 0
                ? new Block.Text(Words.Of("people.none"))
                : new Block.Table(
                    [
                        new(Words.Of("people.who")), new(Words.Of("people.jobs"), Right: true), new(Words.Of("people.right"), Right: true),
                        new(Words.Of("people.topics")),
                    ],
                    [.. People.Select(p => new Row("", Marked: false, [p.Name, p.Jobs.ToString(), p.Right.ToString(), string.Join(", ", p.Topics)]))]),
            new Block.Gap(),
            new Block.Text(Words.Of("people.read")),
            .. Lines.Count == 0 ? Array.Empty<Block>() : [new Block.Gap(), new Block.Text(Words.Of("people.lines") + ":"), .. Lines.Select(l => new Block.Text(l, 2))],
        ],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}

/// <summary>A line of the lead's table.</summary>
/// <param name="Name">Name.</param>
/// <param name="Jobs">Jobs done.</param>
/// <param name="Right">Jobs right.</param>
/// <param name="Topics">Titles of topics practised.</param>
sealed record PersonJobs(string Name, int Jobs, int Right, IReadOnlyList<string> Topics);
