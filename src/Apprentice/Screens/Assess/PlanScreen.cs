using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>A test plan: nine lines that can be changed, what it can tell, and what it cannot.</summary>
/// <param name="Draft">The plan.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record PlanScreen(PlanDraft Draft, Screen Below, string Note = "") : ChoiceScreen
{
    static readonly (int Suggests, int Open)[] Mixes = [(3, 1), (0, 0), (5, 2)];
    static readonly (int Phone, int Photo)[] Sights = [(4, 2), (0, 0), (0, 3), (6, 0)];
    static readonly int[] Mosts = [36, 28, 20];
    static readonly double[] MinutesEach = [4, 3];

    TestPlan Plan => Draft.Plan;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>This screen with another plan.</summary>
    public PlanScreen With(PlanDraft draft) => this with { Draft = draft, Note = "" };

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.title"),
        Words.Of(IsSaved(world) ? "testplan.is-saved" : "testplan.is-draft"),
        [
            new Block.Table([new(""), new("")], Rows(Lines(world))),
            new Block.Text(PlanText.Expected(Draft.Forecast)),
            new Block.Rule(Drop: true),
            new Block.Table(
                [new(Words.Of("testplan.tells")), new(Words.Of("testplan.passes"), Right: true), new(Words.Of("testplan.sat"), Right: true)],
                [.. PlanText.Tells(Plan).Select(t => new Row("", Marked: false, [t.Of20, t.Passes, t.Jobs]))]),
            new Block.Text(PlanText.Apart(Plan)),
            new Block.Text($"{Words.Of("testplan.not-tested")} {Words.Of("testplan.fair")}"),
        ],
        [Digits(world), Words.Of("testplan.key-sample"), Words.Of("testplan.key-print"), Words.Of("testplan.key-save"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => 9;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Turn.To(new PlanNameScreen(this, this) { Typed = Plan.Permission }),
        1 => Turn.To(new PlanTopicsScreen(this, [.. Plan.Topics.Select(t => t.Id)])),
        2 => Turn.To(Choice("testplan.jobs-ask", Mosts.Select(m => (Plan with { Rule = StagedRule.Default.UpTo(m) }) is var plan ? (PlanText.Jobs(plan), (Func<World, PlanDraft>)(_ => Draft with { Plan = plan })) : default))),
        3 => Turn.To(Choice("testplan.time-ask", MinutesEach.Select(m => (Plan with { MinutesPerJob = m }) is var plan ? (PlanText.Time(plan), (Func<World, PlanDraft>)(_ => Draft with { Plan = plan })) : default))),
        4 => Turn.To(Choice("testplan.mix-ask", Mixes.Select(m => (
            Words.Of("testplan.mix-wish", ("plain", Plan.Rule.First - m.Suggests - m.Open), ("changed", m.Suggests), ("open", m.Open)),
            (Func<World, PlanDraft>)(w => Draft.Anew(w, TopicIds, Draft.Wishes with { Suggests = m.Suggests, LeavesOpen = m.Open })))))),
        5 => Turn.To(Choice("testplan.seen-ask", Sights.Select(s => (
            Words.Of("testplan.seen-said", ("phone", s.Phone), ("photo", s.Photo), ("bench", Plan.Rule.First - s.Phone - s.Photo)),
            (Func<World, PlanDraft>)(w => Draft.Anew(w, TopicIds, Draft.Wishes with { Phone = s.Phone, Photo = s.Photo })))))),
        6 => Turn.To(new PassLineScreen(this)),
        8 => Turn.To(Real(world)),
        _ => new Turn(this, [], Sheet: new Sheet(Words.Of("testplan.form-file"), ReportText.Of(DeskSheets.Bench(world, Plan), "html"), note => this with { Note = note })),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter switch
    {
        'V' => Turn.To(SampleScreen.Of(world, this, 0)),
        'D' => new Turn(this, [], Sheet: new Sheet(Words.Of("testplan.file"), ReportText.Of(DeskSheets.Plan(world, Plan, Draft.Forecast, Draft.Line), "html"), note => this with { Note = note })),
        'S' => Save(world),
        _ => null,
    };

    /// <summary>Keeps the plan, and its judgements where they are new.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="reason">Why it was changed; empty for the first.</param>
    public Turn Keep(World world, string reason) => Turn.To(
        this with { Note = Words.Of("testplan.kept") },
        [
            new LogEntry.PlanSaved(Plan, reason),
            .. Draft.Line is { } line && !Same(line, PlanDraft.LineOf(world, Plan.Permission)) ? [new LogEntry.PassLineSet(Plan.Permission, line, reason)] : Array.Empty<LogEntry>(),
        ]);

    string[] TopicIds => [.. Plan.Topics.Select(t => t.Id)];

    static bool Same(PassLine line, PassLine? other) => other is not null && line.Ratings.SequenceEqual(other.Ratings);

    bool IsSaved(World world) => world.History.Assessments.Plan(Plan.Permission) is { } saved && SameAs(saved) && (Draft.Line is not { } line || Same(line, PlanDraft.LineOf(world, Plan.Permission)));

    bool SameAs(TestPlan saved) => saved.Families.SequenceEqual(Plan.Families) && saved.Topics.SequenceEqual(Plan.Topics) && saved.Rule.Checks.SequenceEqual(Plan.Rule.Checks) && saved.MinutesPerJob.Equals(Plan.MinutesPerJob) && saved.RealBikes == Plan.RealBikes;

    Turn Save(World world)
    {
        if (IsSaved(world)) return Turn.To(this with { Note = Words.Of("testplan.kept-already") });
        return world.History.Assessments.Plan(Plan.Permission) is null ? Keep(world, "") : Turn.To(new PlanReasonScreen(this));
    }

    PlanChoiceScreen Choice(string ask, IEnumerable<(string Name, Func<World, PlanDraft> Draft)> lines) => new(this, Words.Of(ask), [.. lines]);

    PlanChoiceScreen Real(World world)
    {
        var choice = Choice("testplan.real-ask", Enumerable.Range(0, TestPlan.MostRealBikes + 1).Select(n => (
            RealText.Wish(n), (Func<World, PlanDraft>)(_ => Draft with { Plan = Plan with { RealBikes = n } }))));
        return choice with { Ask = $"{choice.Ask} {RealText.There(world.Topics, Plan, world.History.Notebook)}" };
    }

    IEnumerable<IReadOnlyList<string>> Lines(World world) =>
    [
        [Words.Of("testplan.permission"), Plan.Permission],
        [Words.Of("testplan.topics"), string.Join("; ", Plan.Topics.Select(t => PlanText.Topic(world.Bench(t.Id)?.Topic, t.Id)))],
        [Words.Of("testplan.jobs"), PlanText.Jobs(Plan)],
        [Words.Of("testplan.time"), PlanText.Time(Plan)],
        [Words.Of("testplan.mix"), PlanText.Mix(Plan)],
        [Words.Of("testplan.seen"), PlanText.Seen(Plan)],
        [Words.Of("testplan.pass"), $"{PlanText.Pass(Plan)} {PlanText.Line(Plan, Draft.Line)}"],
        [Words.Of("testplan.bench"), Words.Of("testplan.bench-said")],
        [Words.Of("testplan.real"), RealText.Wish(Plan)],
    ];
}

/// <summary>One line of a plan, to be chosen.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Ask">The question.</param>
/// <param name="Choices">What can be chosen, and the plan that follows.</param>
sealed record PlanChoiceScreen(PlanScreen Plan, string Ask, IReadOnlyList<(string Name, Func<World, PlanDraft> Draft)> Choices) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.title"),
        Plan.Draft.Plan.Permission,
        [new Block.Text(Ask), new Block.Gap(), new Block.Table([new("")], Rows(Choices.Select(c => (string[])[c.Name])))],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(Plan.With(Choices[line].Draft(world)));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Plan);
}

/// <summary>Why a plan was changed: kept.</summary>
/// <param name="Plan">The plan.</param>
sealed record PlanReasonScreen(PlanScreen Plan) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 80;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.title"),
        Plan.Draft.Plan.Permission,
        [new Block.Text(Words.Of("testplan.reason")), new Block.Gap(), .. Field(Words.Of("testplan.reason-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0 ? Turn.To(this with { Wrong = Words.Of("testplan.reason-none") }) : Plan.Keep(world, text);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Plan);
}
