using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>Five charts as text: skill over time, how sure and how right, trust in clues, minutes, wrong orders.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record ChartsScreen(Screen Below) : Screen
{
    const int Tens = 10;
    const int MostRows = 8;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var jobs = world.History.JobsOf(world.Person).Where(j => j.Counts).ToList();
        return new Page(
            Words.Of("charts.title"),
            world.Who,
            jobs.Count == 0
                ? [new Block.Text(Words.Of("charts.none"))]
                :
                [
                    .. Chart(world, Words.Of("charts.skill"), Over(jobs)),
                    .. Chart(world, Words.Of("charts.sure"), Sure(Sureness.Of(world.History, world.Person))),
                    .. Chart(world, Words.Of("charts.trust"), Trusted(Trust.Of(world.History, world.Person))),
                    .. Chart(world, Words.Of("charts.minutes"), Minutes(jobs)),
                    new Block.Text(Words.Of("charts.orders")),
                    new Block.Text(LearnerWords.Orders(WrongOrders.Of(world.History, world.Person)), 2),
                ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);

    static IEnumerable<Block> Chart(World world, string title, IEnumerable<string[]> rows) =>
    [
        new Block.Text(title),
        new Block.Table([new(""), new(""), new("", Drop: true)], [.. rows.Select(r => new Row("", Marked: false, world.Plain && r[^1].Contains('#', StringComparison.Ordinal) ? [.. r[..^1], ""] : r))]),
        new Block.Gap(),
    ];

    static IEnumerable<string[]> Over(List<PastJob> jobs) => jobs.Chunk(Tens).Select((c, i) => (Jobs: c, From: (Tens * i) + 1)).TakeLast(MostRows).Select(c =>
    {
        var marks = c.Jobs.SelectMany(j => j.Observed.OfType<Observed.Mark>()).ToList();
        var right = marks.Count(m => m.Right);
        return (string[])[Words.Of("charts.jobs", ("from", c.From), ("to", c.From + c.Jobs.Length - 1)), Words.Of("charts.of", ("n", right), ("of", marks.Count)), Bar(right, marks.Count)];
    });

    static IEnumerable<string[]> Sure(SureReport report) => report.Levels.Count == 0 ? [[Words.Of("charts.nothing"), "", ""]] : report.Levels.Select(l => (string[])
    [
        l.Tenths >= 9.9 ? Words.Of("charts.said-certain") : Words.Of("charts.said", ("n", (int)Math.Round(l.Tenths))),
        Words.Of("charts.of", ("n", l.Right), ("of", l.Asked)),
        Bar(l.Right, l.Asked),
    ]);

    static IEnumerable<string[]> Trusted(TrustReport report) =>
    [
        .. report.Families.Select(f => (string[])[Words.Of($"trust.family.{f.Family}"), Words.Of($"trust.word.{f.Slope.Word}"), Words.Of("charts.checks", ("n", f.Slope.Updates))]),
        .. report.Linked.Word == TrustWord.TooMuch ? [[Words.Of("trust.linked"), "", ""]] : Array.Empty<string[]>(),
    ];

    static IEnumerable<string[]> Minutes(List<PastJob> jobs)
    {
        foreach (var job in jobs.TakeLast(MostRows))
        {
            if (job.Observed.OfType<Observed.Bench>().FirstOrDefault() is not { } bench) continue;
            yield return [Words.Of("charts.job", ("n", job.Started.Job)), Words.Of("charts.spent", ("n", Spoken.Minutes(bench.Minutes))), Words.Of("charts.path", ("n", Spoken.Minutes(bench.PathMinutes)))];
        }
    }

    static string Bar(int part, int whole) => whole == 0 ? "" : new string('#', (int)Math.Round((double)Tens * part / whole, MidpointRounding.AwayFromZero)).PadRight(Tens, '.');
}
