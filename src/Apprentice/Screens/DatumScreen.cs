using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Before a scale is read: from where to where? On a drawing with lettered points where the topic has one.</summary>
/// <param name="Task">What is to be read.</param>
sealed record DatumScreen(ReadingTask Task) : ChoiceScreen
{
    /// <summary>True when the picture is said in words.</summary>
    public bool InWords { get; init; }

    /// <inheritdoc/>
    public override int? Job => Task.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Task.Title,
        world.Who,
        [.. Task.Notes.Select(n => new Block.Text(n)), .. Task.Drawn is { } drawn ? Drawing(drawn, InWords || world.Plain) : [new Block.Gap()], new Block.Text(Words.Of("scale.ask", ("tool", Task.Tool))), .. Task.Drawn is null ? [new Block.Gap()] : Array.Empty<Block>(), Choices()],
        [
            Digits(world), Words.Of("key.enter-take"), .. Task.Drawn is null || world.Plain ? Array.Empty<string>() : [Words.Of(InWords ? "scale.key-picture" : "scale.key-words")],
            Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
        ]);

    /// <inheritdoc/>
    protected override int Count(World world) => Task.Datums.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new ScaleScreen(Task, Task.Order[line]));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Task.Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'W' && Task.Drawn is not null ? Turn.To(this with { InWords = !InWords }) : null;

    Block.Table Choices() => new([new("")], Rows(Task.Order.Select(d => (string[])[Task.Drawn is { } drawn ? drawn.Say(d, Task.Datums[d]) : Task.Datums[d]])));

    static IReadOnlyList<Block> Drawing(DrawnDatums drawn, bool inWords) => inWords
        ? [.. drawn.Part.WordsWith(drawn.Letters).Select(w => new Block.Text(w, 2)), new Block.Gap()]
        : [new Block.Picture(room => drawn.Part.Rows(room.Columns, room.Rows, drawn.Marks))];
}
