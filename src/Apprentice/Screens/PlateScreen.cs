using Apprentice.Content;
using Apprentice.Drawing.Plates;

namespace Apprentice.Screens;

/// <summary>A drawn plate: which of its writings is the one to go by? W says the picture in words.</summary>
/// <param name="Task">What is looked at.</param>
sealed record PlateScreen(LookTask Task) : ChoiceScreen
{
    /// <summary>True when the picture is said in words.</summary>
    public bool InWords { get; init; }

    /// <inheritdoc/>
    public override int? Job => Task.Job;

    PlateView View => Task.Plate ?? throw new InvalidOperationException($"{Task.Clue.Id} has no plate.");

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Task.Title,
        world.Who,
        [
            .. Task.Notes.Select(n => new Block.Text(n)),
            new Block.Text(ClueWhere.Of(Task.Clue)),
            .. InWords || world.Plain ? [.. PlateWords.Of(View).Select(w => new Block.Text(w, 2))] : new Block[] { new Block.Picture(room => PlateDrawing.Rows(View, room.Columns, room.Rows)) },
            .. InWords || world.Plain ? Array.Empty<Block>() : Legend(),
            new Block.Text(Words.Of("look.which")),
            new Block.Table([new("")], Rows(Choices())),
        ],
        [
            Digits(world), Words.Of("key.enter-take"), world.Plain ? "" : Words.Of(InWords ? "scale.key-picture" : "scale.key-words"),
            Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
        ]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices().Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line < View.Markings.Count) return Turn.To(new LookScreen(Task, View.Markings[line]));
        return Task.NotThere is { } gone ? Task.Done(world, new OwnLook(gone.Id, 0)) : Turn.To(this);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Task.Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter is 'W' ? Turn.To(this with { InWords = !InWords }) : null;

    Block[] Legend() => PlateWords.Legend(View) is { Length: > 0 } legend ? [new Block.Text(legend)] : [];

    List<string[]> Choices() =>
    [
        .. View.Markings.Select(m => (string[])[m.Where.Length == 0 ? m.Text : m.Where]),
        .. Task.NotThere is null ? Array.Empty<string[]>() : [[Words.Of("look.not-there")]],
    ];
}
