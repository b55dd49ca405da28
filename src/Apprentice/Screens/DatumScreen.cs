using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Before a scale is read: from where to where?</summary>
/// <param name="Task">What is to be read.</param>
sealed record DatumScreen(ReadingTask Task) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Task.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Task.Title,
        world.Who,
        [
            .. Task.Notes.Select(n => new Block.Text(n)), new Block.Gap(), new Block.Text(Words.Of("scale.ask")), new Block.Gap(),
            new Block.Table([new("")], Rows(Task.Order.Select(d => (string[])[Task.Datums[d]]))),
            new Block.Gap(), new Block.Text(Words.Of("scale.choose-hint", ("tool", Task.Tool))),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Task.Datums.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new ScaleScreen(Task, Task.Order[line]));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Task.Below);
}
