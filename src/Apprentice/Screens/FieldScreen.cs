using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>A screen with one field to type into: Enter takes it, Esc goes back, and so does Backspace in an empty field.</summary>
abstract record FieldScreen : Screen
{
    /// <summary>The longest text.</summary>
    protected virtual int Longest => 40;

    /// <summary>What was typed.</summary>
    public string Typed { get; init; } = "";

    /// <summary>What was wrong with the last try, or empty.</summary>
    public string Wrong { get; init; } = "";

    /// <summary>True when signs were typed that have no room: the next Enter says so and takes nothing yet.</summary>
    public bool Cut { get; init; }

    /// <inheritdoc/>
    public override bool Typing => true;

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => key.Press switch
    {
        Screens.Press.Esc => Back(world),
        Screens.Press.Enter when Cut => Turn.To(this with { Cut = false, Wrong = Full }),
        Screens.Press.Enter => Take(world, Typed.Trim()),
        Screens.Press.Backspace when Typed.Length == 0 => Back(world),
        Screens.Press.Backspace => Turn.To(this with { Typed = Cells.WithoutLast(Typed), Cut = false, Wrong = "" }),
        Screens.Press.Typed when !Cells.IsPlain(key.Character) || IsHalf(key.Character) => Turn.To(this),
        Screens.Press.Typed when Typed.Length + (char.IsHighSurrogate(key.Character) ? 1 : 0) >= Longest => Turn.To(this with { Cut = true, Wrong = Full }),
        Screens.Press.Typed => Turn.To(this with { Typed = Typed + key.Character, Wrong = "" }),
        _ => Turn.To(this),
    };

    /// <summary>What Enter does with the text.</summary>
    protected abstract Turn Take(World world, string text);

    /// <summary>What going back does.</summary>
    protected abstract Turn Back(World world);

    /// <summary>How to go back, for the bottom line.</summary>
    protected string BackKey => Words.Of(Typed.Length == 0 ? "key.empty-back" : "key.esc-back");

    /// <summary>The field as a line, and under it what was wrong.</summary>
    protected IReadOnlyList<Block> Field(string label) =>
        [new Block.Text($"{label}  {Typed}_", 2), new Block.Gap(), .. Wrong.Length > 0 ? [new Block.Text(Wrong)] : Array.Empty<Block>()];

    // The second half of a sign whose first half had no room.
    bool IsHalf(char c) => char.IsLowSurrogate(c) && !(Typed.Length > 0 && char.IsHighSurrogate(Typed[^1]));

    string Full => Words.Of("field.full", ("n", Longest));
}
