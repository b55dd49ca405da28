using Apprentice.Content;
using Apprentice.Drills;

namespace Apprentice.Screens;

/// <summary>An item of a drill with lines to choose from.</summary>
/// <param name="Run">The drill.</param>
/// <param name="Item">The item.</param>
/// <param name="Again">True when it comes back.</param>
/// <param name="InWords">True when the picture is said in words.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record DrillPickScreen(DrillRun Run, DrillItem.Pick Item, bool Again, bool InWords = false, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Run.Title,
        world.Who,
        [
            .. Again ? [new Block.Text(Run.BackNote)] : Array.Empty<Block>(),
            .. Item.Beside.Length > 0 ? [new Block.Text(Item.Beside)] : Array.Empty<Block>(),
            .. Picture(world),
            new Block.Gap(Drop: true),
            new Block.Text(Item.Prompt),
            new Block.Gap(Drop: true),
            new Block.Table([new("")], Rows(Item.Options.Select(o => (string[])[o]))),
        ],
        [
            Digits(world), Words.Of("key.enter-take"), Item.Picture is null || world.Plain ? "" : Words.Of(InWords ? "scale.key-picture" : "scale.key-words"),
            Words.Of("drill.key-end"), Words.Of("key.pause"), Words.Of("key.help"),
        ])
    {
        Foot = Note.Length > 0 && Cursor.Marked < 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Item.Options.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Run.Answer(Item, Item.Options[line], new DrillVerdict(line == Item.Right, Item.Why) { Shown = Item.After });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Run.End();

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter switch
    {
        'W' when Item.Picture is not null => Turn.To(this with { InWords = !InWords }),
        _ when key.Press == Screens.Press.Enter && Cursor.Marked < 0 => Turn.To(this with { Note = Words.Of("answer.none-marked") }),
        _ => null,
    };

    IEnumerable<Block> Picture(World world) => Item.Picture switch
    {
        null => [],
        var picture when InWords || world.Plain => picture.Words.Select(w => new Block.Text(w, 2)),
        var picture => [new Block.Picture(picture.Draw)],
    };
}
