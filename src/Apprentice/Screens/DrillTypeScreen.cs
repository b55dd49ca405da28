using Apprentice.Content;
using Apprentice.Drills;

namespace Apprentice.Screens;

/// <summary>An item of a drill with a field to type into.</summary>
/// <param name="Run">The drill.</param>
/// <param name="Item">The item.</param>
/// <param name="Again">True when it comes back.</param>
sealed record DrillTypeScreen(DrillRun Run, DrillItem.Type Item, bool Again) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    protected override int Longest => 20;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Run.Title,
        world.Who,
        [
            .. Again ? [new Block.Text(Run.BackNote)] : Array.Empty<Block>(),
            .. Item.Beside.Length > 0 ? [new Block.Text(Item.Beside)] : Array.Empty<Block>(),
            new Block.Gap(Drop: true),
            new Block.Text(Item.Prompt),
            new Block.Gap(),
            .. Field(Words.Of("drill.field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), Words.Of("drill.key-end-field")]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length == 0) return Turn.To(this with { Wrong = Words.Of("drill.empty", ("example", Item.Example)) });
        return Item.Parse(text) is { } value
            ? Run.Answer(Item, text, new DrillVerdict(Math.Abs(value - Item.Right) <= Item.Tolerance + 1e-9, Item.Why))
            : Turn.To(this with { Wrong = Words.Of("drill.number", ("text", text), ("example", Item.Example)) });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Run.End();
}
