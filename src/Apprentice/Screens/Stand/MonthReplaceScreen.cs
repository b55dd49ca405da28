using Apprentice.Content;
using Apprentice.Content.Changes;

namespace Apprentice.Screens;

/// <summary>The confirming screen before published months are replaced: a word typed, not a key.</summary>
/// <param name="Below">The figure.</param>
/// <param name="Window">The months.</param>
sealed record MonthReplaceScreen(RateScreen Below, WindowDraft Window) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    protected override int Longest => 12;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.window-title"),
        Below.Below.Topic(world).Title,
        [
            new Block.Text(Words.Of("stand.window-published")),
            .. Window.Published.Select(s => new Block.Text(s.Text.TrimEnd('.') + ".", 2)),
            .. RateScreen.Months(Window),
            new Block.Gap(Drop: true),
            new Block.Text(Words.Of("stand.window-warn", ("bikes", Below.Learned.Bikes))),
            new Block.Gap(),
            new Block.Text(Words.Of("stand.window-type")),
            new Block.Gap(Drop: true),
            .. Field(Words.Of("confirm.field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length == 0) return Back(world);
        return string.Equals(text, Words.Of("stand.window-word"), StringComparison.OrdinalIgnoreCase) || string.Equals(text, Words.Of("stand.window-number"), StringComparison.Ordinal)
            ? Below.Approved(world)
            : Turn.To(this with { Typed = "", Wrong = Words.Of("stand.window-wrong") });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
