using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Which real parts are to be measured.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record RealSetsScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("real.title"),
        world.Who,
        [
            new Block.Text(Words.Of("real.what")),
            new Block.Gap(),
            new Block.Text(Words.Of("real.ask")),
            new Block.Table([new(""), new("")], Rows(RealSet.All.Select(s => (string[])[Words.Of(s.Name), Words.Of(s.Note)]))),
            new Block.Gap(),
            new Block.Text(Words.Of("real.loose")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => RealSet.All.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(RealPartScreen.Start(world, RealSet.All[line], this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <summary>The last series in which another person read each part of a set twice, or null.</summary>
    public static RealSeries? OfAnother(History history, RealSet set, string? person) => history.RealParts.LastOrDefault(s =>
        string.Equals(s.Set, set.Id, StringComparison.Ordinal) && s.Person is not null && !string.Equals(s.Person, person, StringComparison.Ordinal) && s.Pairs.Count == set.Parts);
}
