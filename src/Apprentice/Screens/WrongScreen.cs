using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>"This is wrong": one line for the lead.</summary>
/// <param name="Below">The grade.</param>
sealed record WrongScreen(GradeScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    protected override int Longest => 160;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("wrong.title", ("job", Below.On.Number)),
        world.Who,
        [new Block.Gap(), new Block.Text(Words.Of("wrong.ask")), new Block.Gap(), .. Field(Words.Of("wrong.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("wrong.empty") })
        : Turn.To(Below with { Note = Words.Of("wrong.kept") }, new LogEntry.Questioned(Below.On.Number, text));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
