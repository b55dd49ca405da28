using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>First start: four choices, nothing asked.</summary>
sealed record FirstStartScreen : ChoiceScreen
{
    static readonly string[] Choices = ["try", "own", "workshop", "example"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("program.name"),
        Words.Of("first.who"),
        world.Benches.Count == 0
            ? [new Block.Gap(), new Block.Text(Words.Of("first.empty"))]
            :
            [
                new Block.Gap(),
                new Block.Text(Words.Of("first.what")),
                new Block.Gap(),
                new Block.Text(Words.Of("first.ask")),
                new Block.Gap(),
                new Block.Table([new(""), new("")], Rows(Choices.Select(c => (string[])[Words.Of($"first.{c}"), Words.Of(c is "own" && OwnBike.Open(world) is not null ? "own.open-note" : $"first.{c}-note")]))),
                new Block.Gap(),
                new Block.Text(Words.Of("first.local")),
            ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.leave"), Words.Of("key.help"), Words.Of("key.quit")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Benches.Count == 0 ? 0 : Choices.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Start.Job(world),
        1 => Turn.To(OwnGoOnScreen.Of(world, this)),
        2 => Turn.To(new WorkshopNameScreen(this)),
        _ => Turn.To(ExampleScreen.Of(world)),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new LeaveScreen(this));

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'Q' ? Turn.Quit(this) : null;
}
