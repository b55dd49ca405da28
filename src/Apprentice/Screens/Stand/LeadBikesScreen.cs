using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;

namespace Apprentice.Screens;

/// <summary>The lead's way to the inbox, prices, the rule for routine bikes, the standing check, learned figures and changes.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record LeadBikesScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var notebook = world.History.Notebook;
        return new Page(
            Words.Of("stand.lead-title"),
            Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
            [
                new Block.Table([new(""), new("")], Rows(
                [
                    [Words.Of("stand.lead-inbox"), Words.Of("stand.lead-inbox-note", ("n", notebook.Reports.Count(r => r.IsOpen)), ("all", notebook.Reports.Count))],
                    [Words.Of("stand.lead-prices"), Words.Of("stand.lead-prices-note")],
                    [Words.Of("stand.lead-rule"), RuleScreen.Now(world)],
                    [Words.Of("stand.lead-check"), Words.Of("stand.lead-check-note")],
                    [Words.Of("stand.lead-rates"), Words.Of("stand.lead-rates-note")],
                    [Words.Of("stand.lead-changes"), Words.Of("stand.lead-changes-note", ("n", world.Copy.InForce.Count))],
                ])),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => 6;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(line switch
    {
        0 => new InboxScreen(this),
        1 => new PriceTopicScreen(this),
        2 => new RuleScreen(this),
        3 => new StandingScreen(this),
        4 => new RatesTopicScreen(this),
        _ => new ChangesScreen(this),
    });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>The fixed rule by which bikes count as routine.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record RuleScreen(Screen Below) : ChoiceScreen
{
    static readonly int[] Every = [5, 10, 20, 0];

    /// <summary>The rule that holds.</summary>
    public static string Now(World world)
    {
        var rule = world.History.Notebook.Rule ?? new LogEntry.RoutineRuleSet(10, null);
        if (rule.WeekFrom is { } from && DateOnly.FromDateTime(world.Now.DateTime) < from.AddDays(7)) return Words.Of("stand.rule-week-now", ("day", from.ToString("d MMMM")));
        return rule.Every == 0 ? Words.Of("stand.rule-none") : Words.Of("stand.rule-every", ("n", rule.Every));
    }

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-rule"),
        "",
        [
            new Block.Text(Words.Of("stand.rule")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(
            [
                .. Every.Select(e => (string[])[e == 0 ? Words.Of("stand.rule-none") : Words.Of("stand.rule-every", ("n", e))]),
                [Words.Of("stand.rule-week", ("day", LearnerWords.Day(world.Now)))],
            ])),
            new Block.Gap(),
            new Block.Text($"{Words.Of("stand.rule-now")}: {Now(world)}"),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Every.Length + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(Below, line < Every.Length
        ? new LogEntry.RoutineRuleSet(Every[line], null)
        : new LogEntry.RoutineRuleSet((world.History.Notebook.Rule ?? new LogEntry.RoutineRuleSet(10, null)).Every, DateOnly.FromDateTime(world.Now.DateTime)));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>How often the program was right on the workshop's own routine bikes, by topic and by how sure it was.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record StandingScreen(Screen Below) : Screen
{
    const int Few = 20;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var checks = StandingCheck.Of(world.History.Notebook);
        return new Page(
            Words.Of("stand.lead-check"),
            "",
            checks.Count == 0 ? [new Block.Text(Words.Of("stand.check-none"))] :
            [
                new Block.Text(Words.Of("stand.check-what")),
                new Block.Gap(Drop: true),
                new Block.Table(
                    [new(Words.Of("stand.check-topic")), new(Words.Of("stand.check-bikes"), Right: true), new(Words.Of("stand.check-right"), Right: true), new(Words.Of("stand.check-expected"), Right: true)],
                    [.. checks.SelectMany(c => c.Levels.Where(l => l.Bikes > 0).Select(l => new Row("", Marked: false, [Level(world, c, l), $"{l.Bikes}", $"{l.Right}", $"{l.Expected:0.0}"])))]),
                new Block.Gap(Drop: true),
                .. checks.Select(c => new Block.Text(Words.Of("stand.check-open", ("topic", TopicsScreen.Title(world, c.Topic)), ("open", c.NoTruth), ("puzzling", c.Puzzling)))),
                .. checks.Any(c => c.Levels.Sum(l => l.Bikes) < Few) ? [new Block.Text(Words.Of("stand.check-few"))] : Array.Empty<Block>(),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);

    static string Level(World world, StandingCheck check, StandingLevel level) => Words.Of(
        level.Tenths switch { 7 => "stand.check-under", 10 => "stand.check-over", _ => "stand.check-level" }, ("topic", TopicsScreen.Title(world, check.Topic)), ("n", level.Tenths));
}
