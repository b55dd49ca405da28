using System.Globalization;
using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;

namespace Apprentice.Screens.Assess;

/// <summary>The pass line: one to four people judge each sort of job once.</summary>
/// <param name="Plan">The plan.</param>
sealed record PassLineScreen(PlanScreen Plan) : ChoiceScreen
{
    const double Twenty = 20;

    PassLine? Line => Plan.Draft.Line;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.line-title"),
        Plan.Draft.Plan.Permission,
        [
            new Block.Text(Words.Of("testplan.line-what", ("n", Plan.Draft.Plan.Families.Count))),
            new Block.Gap(),
            .. Line is { } line
                ? [new Block.Table([new(Words.Of("testplan.judge")), new(Words.Of("testplan.judge-line"), Right: true)], [.. line.Judges.Select((j, i) => new Row("", Marked: false, [j, (line.LineOf[i] * Twenty).ToString("0.0")]))]), new Block.Gap()]
                : Array.Empty<Block>(),
            new Block.Text(PlanText.Line(Plan.Draft.Plan, Line)),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Lines().Select(l => (string[])[l.Name]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lines().Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(Lines()[line].Go);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Plan);

    List<(string Name, Screen Go)> Lines() =>
    [
        .. (Line?.Judges.Count ?? 0) < PassLine.MostJudges ? [(Words.Of("testplan.judge-add"), new JudgeScreen(this))] : Array.Empty<(string, Screen)>(),
        .. Line is not null ? [(Words.Of("testplan.judge-none"), this with { Plan = Plan.With(Plan.Draft with { Line = null }) })] : Array.Empty<(string, Screen)>(),
        (Words.Of("testplan.line-done"), Plan),
    ];
}

/// <summary>Who judges.</summary>
/// <param name="Below">The pass line.</param>
sealed record JudgeScreen(PassLineScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.line-title"),
        Below.Plan.Draft.Plan.Permission,
        [new Block.Text(Words.Of("testplan.judge-who")), new Block.Gap(), .. Field(Words.Of("workshop.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length == 0) return Turn.To(this with { Wrong = Words.Of("testplan.judge-name") });
        return Below.Plan.Draft.Line?.Judges.Contains(text, StringComparer.OrdinalIgnoreCase) == true
            ? Turn.To(this with { Wrong = Words.Of("testplan.judge-twice") })
            : Turn.To(new PassLineSortScreen(Below, text, []));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>One judgement: of 20 people just good enough, how many would be sound on such a job?</summary>
/// <param name="Below">The pass line.</param>
/// <param name="Judge">Who judges.</param>
/// <param name="Given">Judgements so far, in the plan's order of sorts.</param>
sealed record PassLineSortScreen(PassLineScreen Below, string Judge, IReadOnlyList<double> Given) : FieldScreen
{
    const int Most = 20;

    TestPlan Plan => Below.Plan.Draft.Plan;

    /// <inheritdoc/>
    protected override int Longest => 4;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.rate-title", ("n", Given.Count + 1), ("of", Plan.Families.Count)),
        Judge,
        [
            new Block.Text(FamilyName.Of(world.Bench(Plan.Families[Given.Count].Topic)?.Topic, Plan.Families[Given.Count])),
            new Block.Gap(),
            new Block.Text(Words.Of("testplan.rate")),
            new Block.Gap(),
            .. Field(Words.Of("testplan.rate-field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (!double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var of20) || of20 is < 0 or > Most)
            return Turn.To(this with { Typed = "", Wrong = Words.Of("testplan.rate-wrong") });
        double[] given = [.. Given, of20];
        if (given.Length < Plan.Families.Count) return Turn.To(new PassLineSortScreen(Below, Judge, given));
        var line = new PassLine([.. Below.Plan.Draft.Line?.Ratings ?? [], .. Plan.Families.Select((f, i) => new Rating(Judge, f.Key, given[i]))]);
        return Turn.To(Below with { Plan = Below.Plan.With(Below.Plan.Draft with { Line = line }) });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Given.Count == 0 ? new JudgeScreen(Below) : this with { Given = [.. Given.SkipLast(1)], Typed = "", Wrong = "" });
}
