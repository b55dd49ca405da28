using Apprentice.Content;
using Apprentice.Engine.Notebook;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>The bikes on the stand: a new one, the walk without a notebook, practice on confirmed ones, and all that are here.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record StandScreen(Screen Below) : ChoiceScreen
{
    const int Ways = 3;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.title"),
        world.Who,
        [
            new Block.Text(Words.Of(world.History.Notebook.Bikes.Count == 0 ? "stand.none" : "stand.ask")),
            new Block.Gap(),
            new Block.Table([new(""), new(""), new("")], Rows(
            [
                [Words.Of("stand.new"), "", ""],
                [Words.Of("stand.walk"), Words.Of("stand.walk-note"), ""],
                [Words.Of("stand.practise"), Words.Of("stand.practise-note", ("n", RealCases.Of(world.History.Notebook).Count)), ""],
                .. Bikes(world).Select(b => (string[])[StandWords.Title(b), Wants(world, b), State(b)]),
            ])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Ways + world.History.Notebook.Bikes.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Turn.To(new BikeNameScreen(this)),
        1 => Turn.To(OwnGoOnScreen.Of(world, this)),
        2 => Turn.To(new RealListScreen(this)),
        _ => Turn.To(new BikeScreen(Bikes(world)[line - Ways].Number, this)),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    // Open ones first, the newest on top.
    static IReadOnlyList<Bike> Bikes(World world) => [.. world.History.Notebook.Bikes.OrderBy(b => b.IsDone).ThenByDescending(b => b.Number)];

    static string Wants(World world, Bike bike) => Spoken.List(
        [.. bike.Asked.Select(a => world.Bench(a.Topic)?.Topic.Wants.FirstOrDefault(w => string.Equals(w.Id, a.Want, StringComparison.Ordinal))?.Name ?? a.Topic)]);

    static string State(Bike bike) => Words.Of(bike.IsDone ? "stand.state-done" : bike.Decisions.Count > 0 ? "stand.state-decided" : "stand.state-open");
}
