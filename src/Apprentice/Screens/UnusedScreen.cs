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
            new Block.Table([new(""), new("")], Rows(Unused.Select(c => (string[])[c.Name, Seen(c)]))),
        ],
        [Digits(world, "unused.key"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Unused.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(this with { Opened = [.. Opened, Unused[line].Id] });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    string Seen(Clue clue) => Opened.Contains(clue.Id, StringComparer.Ordinal)
        ? new TopicWords(Below.On.Topic).Seen(Below.On.Made.Look(clue.Id, 0))
        : Words.Of("unused.closed");
}
