using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>A pause: no name, no bike, no marks on it, since customers can see the screen.</summary>
/// <param name="Below">The screen that was put aside.</param>
sealed record PauseScreen(Screen Below) : ChoiceScreen
{
    static readonly string[] Choices = ["go-on", "who", "own"];

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("pause.title"),
        Words.Of("pause.right"),
        [
            new Block.Gap(),
            new Block.Gap(),
            new Block.Text(Words.Of(TextOf(world)), 4),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Choices.Take(Count(world)).Select(c => (string[])[Words.Of($"pause.{c}")]))),
        ],
        [Digits(world), Words.Of("key.enter-go")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Seat is null ? Choices.Length : 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 when world.Seat is not null => Turn.To(Below),
        0 => PinScreen.Before(world, world.Person, Below, this),
        1 => Turn.To(new WhoScreen()),
        _ => Turn.To(OwnGoOnScreen.Of(world, this)),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(this);

    string TextOf(World world) =>
        world.Seat is null ? (Below.Job is null ? "pause.text-page" : "pause.text") : world.Sitting is { End: null } ? "sit.pause-text" : "sit.pause-real";
}
