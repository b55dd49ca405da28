using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;

namespace Apprentice.Screens.Assess;

/// <summary>The lead confirms who sits.</summary>
/// <param name="Seat">The paper.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SitWhoScreen(Seat Seat, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.title", ("paper", Seat.Paper.Id)),
        Candidate(world),
        [
            new Block.Text(Words.Of("sit.who", ("candidate", Candidate(world)))),
            new Block.Gap(),
            new Block.Text(Words.Of("sit.who-ask", ("candidate", Candidate(world)))),
            new Block.Gap(),
            .. Field(Words.Of("sit.who-field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("sit.who-none") })
        : SignOffBike.IsSelf(world, text, Candidate(world))
            ? Turn.To(this with { Wrong = Words.Of("sit.who-same") })
            : Turn.To(new SitTimeScreen(Seat, text, this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    string Candidate(World world) => world.History.Called.Of(Seat.Paper.Candidate);
}

/// <summary>The usual time, or more for those who need it.</summary>
/// <param name="Seat">The paper.</param>
/// <param name="ConfirmedBy">Who confirmed that it is the candidate.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SitTimeScreen(Seat Seat, string ConfirmedBy, Screen Below) : ChoiceScreen
{
    static readonly (double Times, string Words)[] Choices = [(1, "sit.time-usual"), (1.25, "sit.time-quarter"), (1.5, "sit.time-half"), (2, "sit.time-double")];

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.title", ("paper", Seat.Paper.Id)),
        world.History.Called.Of(Seat.Paper.Candidate),
        [
            new Block.Text(Words.Of("sit.time-ask")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(Choices.Select(c => (string[])[Words.Of(c.Words), Words.Of(Seat.Paper.Rule.First == 1 ? "sit.time-one" : "sit.time-min", ("n", Seat.Paper.Rule.First), ("minutes", Spoken.Minutes(Minutes(c.Times))))]))),
            new Block.Gap(),
            new Block.Text(Words.Of("sit.time-plain")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new SitRulesScreen(Seat, ConfirmedBy, Choices[line].Times, this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    double Minutes(double times) => Seat.Paper.Rule.First * Seat.Paper.MinutesPerJob * times;
}

/// <summary>The rules, before the clock starts.</summary>
/// <param name="Seat">The paper.</param>
/// <param name="ConfirmedBy">Who confirmed that it is the candidate.</param>
/// <param name="Multiplier">More time for those who need it.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SitRulesScreen(Seat Seat, string ConfirmedBy, double Multiplier, Screen Below) : ChoiceScreen
{
    static readonly string[] Rules = ["sit.rule-jobs", "sit.rule-order", "sit.rule-sound", "sit.rule-silent", "sit.rule-kept", "sit.rule-clock"];
    static readonly string[] OneRules = ["sit.rule-one", .. Rules[2..]];
    static readonly string[] AllRules = ["sit.rule-all", .. Rules[1..]];

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.rules"),
        world.History.Called.Of(Seat.Paper.Candidate),
        [
            .. Of(Seat.Paper.Rule).Select(r => new Block.Text(Words.Of(r, Values()))),
            .. SitReal.Jobs(world, Seat.Paper).Count is > 0 and var real ? [new Block.Text(Words.Of(real == 1 ? "sit.rule-real-one" : "sit.rule-real", ("n", real)))] : Array.Empty<Block>(),
            new Block.Gap(Drop: true),
            new Block.Table([new("")], Rows([[Words.Of("sit.start")], [Words.Of("sit.not-now")]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0 ? Sit.Begin(world, Seat, ConfirmedBy, Multiplier) : Back(world);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    // Fresh safety jobs come all at once.
    static string[] Of(StagedRule rule) => rule.Most == 1 ? OneRules : rule.First == rule.Most ? AllRules : Rules;

    Dictionary<string, object> Values() => new(StringComparer.Ordinal)
    {
        ["first"] = Seat.Paper.Rule.First,
        ["most"] = Seat.Paper.Rule.Most,
        ["minutes"] = Spoken.Minutes(Seat.Paper.Rule.First * Seat.Paper.MinutesPerJob * Multiplier),
    };
}
