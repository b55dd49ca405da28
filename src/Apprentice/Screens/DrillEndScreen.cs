using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>The end of a drill: how many right, which came back, how it stands over the last ten.</summary>
/// <param name="Run">The drill.</param>
sealed record DrillEndScreen(DrillRun Run) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var past = Run.Of(world);
        var missed = past.Answers.Select((a, i) => (Answer: a, Number: i + 1)).Where(a => !a.Answer.Right).ToList();
        var returned = past.Answers.Where(a => a.Item.Back is not null).ToList();
        return new Page(
            Run.Title,
            world.Who,
            [
                new Block.Text(past.Answers.Count == 0 ? Words.Of("drill.end-none") : Words.Of("drill.end", ("right", past.RightCount), ("of", past.Answers.Count))),
                .. returned.Count > 0
                    ? [new Block.Text(Words.Of("drill.end-back", ("n", returned.Count), ("right", returned.Count(a => a.Right))))]
                    : Array.Empty<Block>(),
                .. missed.Count > 0 ? Missed(past, missed) : [],
                new Block.Gap(),
                new Block.Text($"{Words.Of("drill.end-last")} {DrillRun.Say(Run.State(world))}"),
                .. Run.State(world).Seconds is null ? [new Block.Text(Words.Of("drill.end-clock"))] : Array.Empty<Block>(),
            ],
            [Words.Of("drill.key-once-more"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => key switch
    {
        { Press: Screens.Press.Enter } => DrillRun.Start(world, Run.Skill, Run.Below),
        { IsBack: true } => Turn.To(Run.Below),
        _ => Turn.To(this),
    };

    static IReadOnlyList<Block> Missed(PastDrill past, List<(DrillAnswer Answer, int Number)> missed) =>
    [
        new Block.Gap(),
        new Block.Table(
            [new(Words.Of("drill.end-missed")), new(Words.Of("drill.end-given")), new(Words.Of("drill.end-later"))],
            [.. missed.Select(m => new Row("", Marked: false, [Words.Of("drill.end-item", ("n", m.Number)), m.Answer.Given, Later(past, m.Number)]))]),
    ];

    static string Later(PastDrill past, int number) => past.Answers.FirstOrDefault(a => a.Item.Back == number) switch
    {
        null => Words.Of("drill.later-not"),
        { Right: true } => Words.Of("drill.later-right"),
        _ => Words.Of("drill.later-missed"),
    };
}
