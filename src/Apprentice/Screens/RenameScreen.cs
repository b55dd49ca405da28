using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>A name is corrected: from now on it stands so everywhere.</summary>
/// <param name="Person">The name until now.</param>
/// <param name="Then">The screen that follows, given the name from now on.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record RenameScreen(string Person, Func<string, Screen> Then, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => PersonName.Longest;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("rename.title"),
        Person,
        [
            new Block.Text(Words.Of("rename.ask", ("name", Person))),
            new Block.Gap(),
            .. Field(Words.Of("workshop.field")),
            new Block.Gap(Drop: true),
            new Block.Text(Words.Of("rename.what")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => PersonName.Fault(world.History, Person, text) is { } fault
        ? Turn.To(this with { Wrong = fault })
        : Turn.To(Then(text), new LogEntry.PersonRenamed(Person, text));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
