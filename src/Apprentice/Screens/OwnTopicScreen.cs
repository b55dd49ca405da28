using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Own bike: what is to be bought, a line for each topic; then its wants one by one.</summary>
/// <param name="Benches">The topics to choose from.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record OwnTopicScreen(IReadOnlyList<Workbench> Benches, Screen Below) : ChoiceScreen
{
    const int OnePage = 9;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <summary>The wants themselves where they are few, else the topics first.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="below">The screen to go back to.</param>
    public static Screen Of(World world, Screen below)
    {
        var benches = RealTopics.Of(world.Benches);
        return benches.Count > 1 && benches.Sum(b => b.Topic.Wants.Count) > OnePage ? new OwnTopicScreen(benches, below) : new OwnWantScreen(benches, below);
    }

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        "",
        [
            new Block.Text(Words.Of("own.want")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(Benches.Select(b => (string[])[Sold(b.Topic), RealTopics.Note(b)]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Benches.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new OwnWantScreen([Benches[line]], this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static string Sold(Topic topic) => Spoken.Capital(string.Join(", ", topic.Wants.Select(w => Spoken.Lower(w.Name))));
}
