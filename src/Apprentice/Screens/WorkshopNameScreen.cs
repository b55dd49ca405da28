using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Set-up for a workshop: its name.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record WorkshopNameScreen(Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("workshop.title"),
        "",
        [
            new Block.Text(Words.Of("workshop.sees")),
            new Block.Gap(),
            new Block.Text(Words.Of("workshop.name")),
            new Block.Gap(),
            .. Field(Words.Of("workshop.field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => Turn.To(text.Length == 0
        ? this with { Wrong = Words.Of("workshop.needed") }
        : new WorkshopLeadScreen(text, this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
