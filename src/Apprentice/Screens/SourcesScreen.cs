using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The register of sources.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record SourcesScreen(Screen Below) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("lessons.sources"),
        world.Who,
        [
            new Block.Text(Words.Of("sources.intro")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], [.. world.Library.Sources.Select(s => new Row("", Marked: false, [s.Key, s.Text]))]),
        ],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press is Screens.Press.Enter or Screens.Press.Left ? Below : this);
}
