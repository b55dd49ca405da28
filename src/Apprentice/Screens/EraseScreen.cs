using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Erasing a person's records for good: the name has to be typed.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record EraseScreen(string Person, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("erase.title"),
        Person,
        [
            new Block.Text(Words.Of("erase.what", ("jobs", world.History.JobsOf(Person).Count))),
            new Block.Gap(),
            new Block.Text(Words.Of("erase.type", ("name", Person))),
            new Block.Gap(),
            .. Field(Words.Of("erase.field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (!string.Equals(text, Person, StringComparison.Ordinal)) return Turn.To(this with { Typed = "", Wrong = Words.Of("erase.other") });
        return string.Equals(world.History.Workshop?.Lead, Person, StringComparison.Ordinal)
            ? Turn.To(this with { Typed = "", Wrong = Words.Of("erase.lead") })
            : new Turn(new HomeScreen(Words.Of("erase.done")), [], Erases: Person);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
