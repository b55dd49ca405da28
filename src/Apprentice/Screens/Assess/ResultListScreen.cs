using Apprentice.Content;
using Apprentice.Engine.Assessing;
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
    protected override Turn Take(World world, int line) => Turn.To(new ResultScreen(Results(world)[line].Paper, Person is null, this));

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
