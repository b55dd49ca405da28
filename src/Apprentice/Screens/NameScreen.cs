using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>The name, asked after the first job; it may be left out.</summary>
/// <param name="Done">Number of the job just done by nobody known, or null.</param>
sealed record NameScreen(int? Done) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => PersonName.Longest;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("name.title"),
        "",
        [new Block.Gap(), new Block.Text(Words.Of("name.ask")), new Block.Gap(), .. Field(Words.Of("name.field"))],
        [Words.Of("key.type"), Words.Of(Typed.Length == 0 ? "key.enter-skip" : "key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length == 0) return Back(world);
        return PersonName.FaultOfNew(world.History, text) is { } fault
            ? Turn.To(this with { Wrong = fault })
            : Turn.To(new HomeScreen(), new LogEntry.PersonAdded(text, Done), new LogEntry.SatDown(text));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new HomeScreen());
}
