using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>Sets, changes or takes away a PIN: typed twice; an empty line takes it away.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="First">The PIN as it was typed first, or null.</param>
sealed record PinSetScreen(string Person, Screen Below, string? First = null) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    protected override int Longest => PinHash.Longest;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("pin.title"),
        Person,
        [
            new Block.Text(Words.Of(First is null ? "pin.new" : "pin.again")),
            new Block.Gap(),
            .. (this with { Typed = new string('*', Typed.Length) }).Field(Words.Of("pin.field")),
            new Block.Gap(),
            new Block.Text(Words.Of("pin.courtesy")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (First is null && text.Length == 0) return world.History.Pins.ContainsKey(Person) ? Turn.To(Below, new LogEntry.PinSet(Person, null)) : Turn.To(Below);
        if (!PinHash.IsPin(text)) return Turn.To(this with { Typed = "", Wrong = Words.Of("pin.digits") });
        if (First is null) return Turn.To(new PinSetScreen(Person, Below, text));
        return string.Equals(First, text, StringComparison.Ordinal)
            ? Turn.To(Below, new LogEntry.PinSet(Person, PinHash.Of(text, $"{world.History.Luck} {Person} {world.Now.Ticks}")))
            : Turn.To(new PinSetScreen(Person, Below) { Wrong = Words.Of("pin.differ") });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
