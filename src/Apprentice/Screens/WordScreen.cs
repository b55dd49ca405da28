using Apprentice.Content;
using Apprentice.Content.Lessons;

namespace Apprentice.Screens;

/// <summary>A word of the trade.</summary>
/// <param name="Word">The word.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record WordScreen(GlossaryWord Word, Screen Below) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("words.title"),
        world.Who,
        [
            new Block.Text(Word.Name), new Block.Gap(), new Block.Text(Word.Meaning, 2),
            .. Word.Also.Count > 0 ? [new Block.Gap(), new Block.Text(Words.Of("words.also", ("names", string.Join(", ", Word.Also))), 2)] : Array.Empty<Block>(),
        ],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press is Screens.Press.Enter or Screens.Press.Left ? Below : this);
}
