using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>Asks for a person's PIN before what is theirs is shown.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Then">The screen behind it.</param>
/// <param name="Entries">Entries for the log when it was right.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record PinScreen(string Person, Screen Then, IReadOnlyList<LogEntry> Entries, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    protected override int Longest => PinHash.Longest;

    /// <summary>The screen, behind the person's PIN where one is set.</summary>
    public static Turn Before(World world, string? person, Screen then, Screen below, params IReadOnlyList<LogEntry> entries) =>
        person is not null && world.History.Pins.ContainsKey(person) ? Turn.To(new PinScreen(person, then, entries, below)) : Turn.To(then, entries);

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("pin.title"),
        "",
        [new Block.Text(Words.Of("pin.ask")), new Block.Gap(), .. (this with { Typed = new string('*', Typed.Length) }).Field(Words.Of("pin.field")), new Block.Text(Words.Of("pin.forgotten"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) =>
        world.History.Pins.TryGetValue(Person, out var hash) && !PinHash.Matches(text, hash)
            ? Turn.To(this with { Typed = "", Wrong = Words.Of("pin.other") })
            : Turn.To(Then, Entries);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
