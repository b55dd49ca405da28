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
            new Block.Table([new("")], Rows(Choices.Select(c => (string[])[Words.Of($"leave.{c}")]))),
            new Block.Gap(),
            new Block.Text(Words.Of("leave.kept")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.quit")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Turn.To(Below),
        1 => Turn.To(new HelpScreen(Below)),
        2 => Turn.To(new PauseScreen(Below), Below.Pauses ? [new LogEntry.Paused(null)] : []),
        _ => Turn.Quit(this),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'Q' ? Turn.Quit(this) : null;
}
