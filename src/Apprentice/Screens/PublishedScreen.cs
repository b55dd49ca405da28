using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The published sizes of a topic, to look one up.</summary>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record PublishedScreen(string Topic, Screen Below) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("published.title"),
        world.Who,
        [
            new Block.Text(Words.Of("published.intro")),
            .. State(world) is { Length: > 0 } state ? [new Block.Text(Words.Of("published.checked", ("by", state)))] : Array.Empty<Block>(),
            new Block.Gap(Drop: true),
            new Block.Table(
                [new(Words.Of("published.name")), new(Words.Of("published.of")), new(Words.Of("published.size"), Right: true), new(Words.Of("published.source"), Drop: true)],
                [.. (world.Bench(Topic)?.Topic.Published ?? []).Select(p => new Row("", Marked: false, [p.Name, p.Of, $"{p.Value:0.####} {p.Unit}".Trim(), p.Source]))]),
        ],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    string State(World world) => world.Bench(Topic)?.Topic.CheckedBy ?? "";

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press is Screens.Press.Enter or Screens.Press.Left ? Below : this);
}
