using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Own bike: a reading typed in mm or inches; 0 when it cannot be taken.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="ClueId">The clue asked about.</param>
/// <param name="SoFar">How far it is, or empty.</param>
/// <param name="Below">The screen from which the walk started.</param>
sealed record OwnReadScreen(OwnBike Bike, string ClueId, string SoFar, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Bike.Topic.Title,
        [.. OwnQuestion.Of(Bike, Bike.Clue(ClueId), SoFar), new Block.Text(Words.Of("own.type")), new Block.Gap(), .. Field(Words.Of("own.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), Words.Of("own.keys-cannot"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (string.Equals(text, "0", StringComparison.Ordinal)) return OwnQuestion.Found(world, Bike, ClueId, new Seen.Hidden(), Below);
        return Reading.TryParse(text, (Shows.Measured)Bike.Clue(ClueId).Shows, out var reading, out var wrong)
            ? OwnQuestion.Found(world, Bike, ClueId, new Seen.Reading(reading), Below)
            : Turn.To(this with { Wrong = wrong });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => OwnQuestion.Back(world, Bike, Below);
}
