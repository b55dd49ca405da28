using Apprentice.Content;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>From a question to one's own bike: at once, or by one page and three jobs first. No name is asked.</summary>
/// <param name="Bike">The bike with what is to be bought.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record OwnPathScreen(OwnBike Bike, Screen Below) : ChoiceScreen
{
    const int PathJobs = 3;
    static readonly Cursor Bikes = new(0);
    static readonly Cursor JobsLine = new(2);

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Bike.Topic.Title,
        [
            new Block.Text(Words.Of("own.path")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(
            [
                [Words.Of("own.path-bike"), Words.Of("own.path-bike-note")],
                [Words.Of("own.path-page"), Words.Of("own.path-page-note")],
                [Words.Of("own.path-jobs"), Words.Of("own.path-jobs-note")],
            ])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 3;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Turn.To(Bike.Topic.Provenances.Count > 1 ? new OwnFromScreen(Bike, this) : new OwnToolsScreen(Bike, this)),
        1 => CardScreen.Open(world, this with { Cursor = JobsLine }, Bike.Topic, FirstCheck()),
        _ => new Session([.. Enumerable.Range(0, PathJobs).Select(i => Item(world, i))], this with { Cursor = Bikes }).Begin(world),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    // The check that tells most for its minutes while nothing is known.
    string FirstCheck() => Bike.Reasoning.Next is [var first, ..] ? first.Clue : Bike.Topic.Clues[0].Id;

    PlannedJob Item(World world, int nth)
    {
        var draw = Mix.Of(Bike.Topic, world.History.NextJob + nth, world.History.Luck ?? 0);
        return new PlannedJob(Bike.Topic.Id, draw with { Request = draw.Request with { Want = Bike.Want.Id, Select = Selection.AsTheyCome, Offer = Engine.Topics.Channel.Bench, Questions = null } });
    }
}
