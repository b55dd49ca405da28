using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>The checks that were not used: each can be opened on this bike after the grade.</summary>
/// <param name="Below">The grade.</param>
/// <param name="Opened">Clues that were opened.</param>
sealed record UnusedScreen(GradeScreen Below, IReadOnlyList<string> Opened) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    List<Clue> Unused => [.. Below.On.OnOffer.Where(c => Below.On.Times(c.Id) == 0)];

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("unused.title", ("job", Below.On.Number)),
        world.Who,
        [
            new Block.Text(Words.Of(Unused.Count == 0 ? "unused.none" : "unused.ask")),
            new Block.Gap(),
            .. Unused.Count == 0 ? Array.Empty<Block>() : [Table()],
        ],
        [Digits(world, "unused.key"), Words.Of("unused.key-enter"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Unused.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(this with { Opened = [.. Opened, Unused[line].Id] });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Block.Table Table() => new(
        [new(""), new(Words.Of("bench.with"), Drop: true), new(Words.Of("bench.min"), Right: true) { Said = "bench.said-min" }, new(Words.Of("unused.shown"))],
        Rows(Unused.Select(c => (string[])[c.Name, c.Tool, Spoken.Minutes(Below.On.MinutesOf(c)), Seen(c)])));

    string Seen(Clue clue) => Opened.Contains(clue.Id, StringComparer.Ordinal)
        ? new TopicWords(Below.On.Topic).Seen(Below.On.Made.Look(clue.Id, 0))
        : "";
}
