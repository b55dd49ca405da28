using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Set-up for a workshop: who leads it.</summary>
/// <param name="Name">Name of the workshop.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record WorkshopLeadScreen(string Name, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("workshop.title"),
        Name,
        [new Block.Text(Words.Of("workshop.lead")), new Block.Gap(), .. Field(Words.Of("workshop.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => Turn.To(text.Length == 0
        ? this with { Wrong = Words.Of("workshop.needed") }
        : new WorkshopTopicsScreen(Name, text, [.. world.Practised.Select(b => b.Topic.Id)], this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
