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
            new Block.Table([new("")], Rows(Lines(world).Select(c => (string[])[Name(world, c)]))),
            new Block.Gap(),
            new Block.Text(Words.Of("leave.kept")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.quit")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world)[line] switch
    {
        "stay" => Turn.To(Below),
        "help" => Turn.To(new HelpScreen(Below)),
        "pause" => Turn.To(new PauseScreen(Below), Below.Pauses ? [new LogEntry.Paused(null)] : []),
        "workshop" => Turn.To(new WorkshopNameScreen(Below)),
        "stand" => Turn.To(new StandScreen(this)),
        "news" => Turn.To(new NewsScreen(this)),
        "page" => PinScreen.Before(world, world.History.Workshop?.Lead, new WorkshopScreen(this), this),
        "records" => Turn.To(new RecordsScreen(world.Who, this)),
        _ => Turn.Quit(this),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'Q' ? Turn.Quit(this) : null;

    List<string> Lines(World world) =>
    [
        .. Choices,
        .. Below is HomeScreen ? ["workshop"] : Array.Empty<string>(),
        .. world.History.Workshop is not null ? ["page"] : Array.Empty<string>(),
        .. Below is HomeScreen && world.Person is not null ? ["records"] : Array.Empty<string>(),
        .. Below is HomeScreen && NewsScreen.All(world).Count > 0 ? ["news"] : Array.Empty<string>(),
        .. Below is HomeScreen or FirstStartScreen && world.History.Workshop is null ? ["stand"] : Array.Empty<string>(),
    ];

    static string Name(World world, string line) => line switch
    {
        "workshop" => Words.Of(world.History.Workshop is null ? "leave.workshop" : "leave.workshop-change"),
        "stand" => Words.Of("leave.stand"),
        "news" => Words.Of("leave.news"),
        "page" => Words.Of("leave.page"),
        "records" => Words.Of("leave.records"),
        _ => Words.Of($"leave.{line}"),
    };
}
