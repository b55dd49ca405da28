using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>Results of tests: a candidate's own that were told, or all for the lead; newest first.</summary>
/// <param name="Person">Whose, or null for all.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record ResultListScreen(string? Person, Screen Below) : ChoiceScreen
{
    /// <summary>All results, for the lead.</summary>
    public static Screen ForLead(Screen below) => new ResultListScreen(null, below);

    /// <summary>The results that the person at the machine was told, or null without any.</summary>
    public static Screen? ForCandidate(World world, Screen below) => world.Person is { } person && Told(world, person).Count > 0 ? new ResultListScreen(person, below) : null;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("results.title"),
        Person ?? world.History.Workshop?.Name ?? "",
        Count(world) == 0 ? [new Block.Text(Words.Of("results.none"))] :
        [
            new Block.Text(Words.Of(Person is null ? "results.ask-lead" : "results.ask")),
            new Block.Gap(),
            new Block.Table(
                [.. Person is null ? [new Column(Words.Of("results.who"))] : Array.Empty<Column>(), new(Words.Of("results.paper")), new(Words.Of("results.permission")), new(Words.Of("results.sound"), Right: true), new(Words.Of("results.result")), new(Words.Of("results.told"), Drop: true)],
                Rows(Results(world).Select(r => Cells(world, r)))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Results(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var paper = Results(world)[line].Paper;
        LogEntry[] shown = Person is not null && world.History.Assessments.Waiting.Any(w => w.Paper == paper) ? [new LogEntry.ResultShown(paper)] : [];
        return Turn.To(new ResultScreen(paper, Person is null, this), shown);
    }

    /// <summary>What waits for the person at the machine, in a sentence or two, or null: results that were told, answers to questioned jobs, and a talk.</summary>
    public static string? Waiting(World world)
    {
        var told = world.Person is { } person ? Told(world, person) : [];
        var waiting = world.History.Assessments.Waiting.Where(w => told.Any(r => r.Paper == w.Paper)).ToList();
        var (results, answers) = (waiting.Count(w => w.Place is null), waiting.Count(w => w.Place is not null));
        List<string> said =
        [
            .. results == 0 ? Array.Empty<string>() : [Words.Of(results == 1 ? "home.result-one" : "home.results", ("n", results))],
            .. answers == 0 ? Array.Empty<string>() : [Words.Of(answers == 1 ? "home.answer-one" : "home.answers", ("n", answers), ("job", waiting.First(w => w.Place is not null).Place ?? 0))],
            .. told.Any(r => r is { Outcome: Outcome.SafetyFirst, Talked: false }) ? [Words.Of("home.talk")] : Array.Empty<string>(),
        ];
        return said.Count == 0 ? null : $"{string.Join(' ', said)} {Words.Of("home.result-key")}";
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<PaperResult> Results(World world) => Person is { } person ? Told(world, person) : [.. world.History.Assessments.Results.Reverse()];

    static List<PaperResult> Told(World world, string person) =>
        [.. world.History.Assessments.Results.Where(r => string.Equals(r.Candidate, person, StringComparison.Ordinal) && world.History.Assessments.PublishedAt(r.Paper) is not null).Reverse()];

    string[] Cells(World world, PaperResult result) =>
    [
        .. Person is null ? [result.Candidate] : Array.Empty<string>(),
        result.Paper,
        result.Permission,
        Words.Of("results.of", ("n", result.Sound), ("of", result.Jobs.Count)),
        Words.Of($"outcome.short.{result.Outcome}"),
        world.History.Assessments.PublishedAt(result.Paper) is { } at ? AssessWords.Day(at) : Words.Of("results.untold"),
    ];
}
