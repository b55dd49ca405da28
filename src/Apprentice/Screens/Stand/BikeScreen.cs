using Apprentice.Content;
using Apprentice.Engine.Notebook;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>A real bike: what is settled, what is not, what does not go together, and what to do next.</summary>
/// <param name="Number">Number of the bike.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record BikeScreen(int Number, Screen Below, string Note = "") : ChoiceScreen
{
    static readonly string[] Names =
        ["stand.do-next", "stand.do-other", "stand.do-found", "stand.do-order", "stand.do-sheets", "stand.do-more", "stand.do-seen", "stand.do-truth", "stand.do-wrong"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The bike.</summary>
    public Bike Of(World world) => world.History.Notebook.Bikes[Number - 1];

    /// <summary>Its questions, as they are seen.</summary>
    public IReadOnlyList<StandView> Views(World world) => StandView.Of(Of(world), world.Stand);

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var (bike, views) = (Of(world), Views(world));
        return new Page(
            StandWords.Title(bike),
            StandWords.Entered(bike),
            [
                .. views.SelectMany(v => Question(world, v, views.Count > 1)),
                .. Beneath(views),
                new Block.Rule(Drop: true),
                new Block.Table([new(""), new("")], Rows(Names.Select((n, i) => (string[])[Words.Of(n), Beside(bike, views, i)]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Names.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (here, views) = (this with { Note = "" }, Views(world));
        return (line, views) switch
        {
            (0, [_, ..]) when views.FirstOrDefault(v => v.Next.Count > 0) is { } view => Turn.To(new CheckScreen(here, view.Topic.Id, view.Next[0].Id, Of(world).Channel)),
            (0, _) => Turn.To(here with { Note = views.Count == 0 ? Words.Of("stand.no-topic") : Spoken.Capital(StandWords.Next(views[0]).TrimEnd('.')) + "." }),
            (1, [_, ..]) => Turn.To(new ChecksScreen(here)),
            (2, _) => Turn.To(new FindingsScreen(here)),
            (3, [_, ..]) => Turn.To(new OrderScreen(here)),
            (4, [_, ..]) => Turn.To(new SheetsScreen(here)),
            (5, _) => Turn.To(BikeAboutScreen.Of(world, Number, new BikeDraft(Of(world).Put.Name, null), here)),
            (6, _) => Turn.To(new BikeSeenScreen(Number, new BikeDraft(Of(world).Put.Name, null), here)),
            (7, [var first, ..]) => Turn.To(views.Count == 1 ? TruthScreen.Of(here, first) : new TruthTopicScreen(here)),
            (8, [_, ..]) => Turn.To(new NoMatchScreen(here)),
            _ => Turn.To(here with { Note = Words.Of("stand.no-topic") }),
        };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static IEnumerable<Block> Question(World world, StandView view, bool named)
    {
        if (named) yield return new Block.Text(Words.Of("stand.question", ("want", view.Want.Name), ("topic", view.Topic.Title)));
        foreach (var stop in StandWords.Stops(view)) yield return new Block.Text(stop);
        if (view.Reasoning.Stops.Count > 0)
        {
            foreach (var line in StandWords.AfterStop()) yield return new Block.Text(line);
        }

        foreach (var line in StandWords.Standing(view)) yield return new Block.Text(line, named ? 2 : 0);
        foreach (var line in StandWords.Clash(view)) yield return new Block.Text(line, named ? 2 : 0);
        if (view.Bike.TruthOf(view.Topic.Id) is { } truth)
            yield return new Block.Text(Words.Of("stand.was", ("kinds", Spoken.List([.. truth.Truth.Parts.Select(p => StandWords.Kind(view.Topic, p))]))), named ? 2 : 0);
    }

    static IEnumerable<Block> Beneath(IReadOnlyList<StandView> views)
    {
        if (views.Count == 0) yield return new Block.Text(Words.Of("stand.no-topic"));
        else if (views.Any(v => v.Reasoning.Stops.Count == 0)) yield return new Block.Text(Words.Of("stand.not-listed"));
    }

    static string Beside(Bike bike, IReadOnlyList<StandView> views, int line) => line switch
    {
        0 when views.Count > 0 => StandWords.Next(views.FirstOrDefault(v => v.Next.Count > 0) ?? views[0]),
        2 => Words.Of("stand.found-count", ("n", bike.Findings.Count(f => !f.IsStruck))),
        3 when views.Any(v => v.Reasoning.Stops.Count > 0) => Words.Of("stand.next-stop"),
        3 when bike.Decisions.Count > 0 && !bike.IsDone => Words.Of("stand.state-decided"),
        5 when views.Count > 0 => Spoken.List([.. views.Select(v => v.Want.Name)]),
        6 => StandWords.Seen(bike.Channel),
        7 when bike.IsDone => Words.Of("stand.state-done"),
        _ => "",
    };
}
