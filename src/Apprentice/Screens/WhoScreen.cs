using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Who sits at the machine.</summary>
sealed record WhoScreen : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("who.title"),
        "",
        [
            new Block.Text(Words.Of("who.ask")),
            new Block.Gap(),
            new Block.Table([new("")], Rows([.. world.History.People.Select(p => (string[])[p]), [Words.Of("who.new")], [Words.Of("who.nobody")]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.History.People.Count + 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var people = world.History.People;
        if (line < people.Count) return PinScreen.Before(world, people[line], new HomeScreen(), this, new LogEntry.SatDown(people[line]));
        return line == people.Count ? Turn.To(new NameScreen(null)) : Turn.To(new HomeScreen(), new LogEntry.SatDown(null));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => PinScreen.Before(world, world.Person, Start.Home(world), this);
}
