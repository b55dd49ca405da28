using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Choosing for oneself: how long a session, one job of a topic, or jobs that show what one can do already.</summary>
sealed record ChooseScreen : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("choose.title"),
        world.Who,
        [
            new Block.Text(Words.Of("choose.ask")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(
            [
                [Words.Of("choose.topic"), Words.Of("choose.topic-note")],
                .. Planner.Lengths.Select(m => (string[])[Words.Of("choose.minutes", ("n", m)), Jobs(world, m)]),
                [Words.Of("choose.place"), Words.Of("choose.place-note")],
            ])),
            .. world.History.MonthTopics.Count > 0
                ? [new Block.Gap(), new Block.Text(Words.Of("choose.month", ("topics", Spoken.List([.. world.History.MonthTopics.Select(t => TopicsScreen.Title(world, t))]))))]
                : Array.Empty<Block>(),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Planner.Lengths.Count + 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line == 0) return Turn.To(new TopicsScreen());
        if (line <= Planner.Lengths.Count) return Start.PlanOf(world, Planner.Lengths[line - 1]) is { } plan && world.History.JobsOf(world.Person).Any() ? Start.Planned(world, plan) : Start.Job(world);
        return Turn.To(world.Person is null ? new NameScreen(null) : new PlaceScreen([], this));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new HomeScreen());

    static string Jobs(World world, int minutes) =>
        Start.PlanOf(world, minutes) is { } plan ? Words.Of(plan.Items.Count == 1 ? "choose.job" : "choose.jobs", ("n", plan.Items.Count)) : Words.Of("choose.drawn");
}
