using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Going back from a start page: help, a pause, or leaving, for those who have digits only.</summary>
/// <param name="Below">The start page.</param>
sealed record LeaveScreen(Screen Below) : ChoiceScreen
{
    static readonly string[] Choices = ["stay", "help", "pause", "quit"];

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("program.name"),
        "",
        [
            new Block.Text(Words.Of("leave.ask")),
            new Block.Gap(),
            new Block.Table([new("")], Rows([.. Choices.Select(c => (string[])[Words.Of($"leave.{c}")]), .. HasWorkshop(world) ? [[Words.Of("leave.workshop")]] : Array.Empty<string[]>()])),
            new Block.Gap(),
            new Block.Text(Words.Of("leave.kept")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.quit")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Length + (HasWorkshop(world) ? 1 : 0);

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Turn.To(Below),
        1 => Turn.To(new HelpScreen(Below)),
        2 => Turn.To(new PauseScreen(Below), Below.Pauses ? [new LogEntry.Paused(null)] : []),
        4 => Turn.To(new WorkshopNameScreen(Below)),
        _ => Turn.Quit(this),
    };

    static bool HasWorkshop(World world) => world.History.Workshop is not null;

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'Q' ? Turn.Quit(this) : null;
}
