using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Own bike: what is to be bought. It decides the topic.</summary>
/// <param name="Benches">The topics to choose from.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record OwnWantScreen(IReadOnlyList<Workbench> Benches, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        "",
        [
            new Block.Text(Words.Of("own.want")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(Wants.Select(w => (string[])[w.Want.Name, w.Bench.Topic.Title]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Wants.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (bench, want) = Wants[line];
        var bike = new OwnBike(bench, want, bench.Topic.Provenances[0].Id, 1, [], [], null);
        return Turn.To(new OwnPathScreen(bike, this));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(Workbench Bench, Want Want)> Wants => [.. Benches.SelectMany(b => b.Topic.Wants.Select(w => (b, w)))];
}
