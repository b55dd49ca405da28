using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>"I can do this already": up to three topics, then six jobs in them.</summary>
/// <param name="Chosen">Topics chosen so far.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">What is wrong, or empty.</param>
sealed record PlaceScreen(IReadOnlyList<string> Chosen, Screen Below, string Note = "") : ChoiceScreen
{
    const int Most = 3;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("place.title"),
        world.Who,
        [
            new Block.Text(Words.Of("place.ask")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], Rows(
            [
                [Words.Of("place.start"), ""],
                .. world.Practised.Select(b => (string[])[b.Topic.Title, Chosen.Contains(b.Topic.Id, StringComparer.Ordinal) ? Words.Of("place.chosen") : ""]),
            ])),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => world.Practised.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line > 0) return Toggle(world.Practised[line - 1].Topic.Id);
        if (Chosen.Count == 0 || world.Person is not { } person) return Turn.To(this with { Note = Words.Of("place.one") });
        var asked = new LogEntry.PlacementAsked(person, Chosen);
        var after = world with { History = world.History.With(new Logged(world.Now, asked)) };
        if (Start.Placing(after)?.Next is not { } next) return Turn.To(this);
        var turn = new Session([next.Job], Places: true).Begin(after);
        return turn with { Entries = [asked, .. turn.Entries] };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Turn Toggle(string topic)
    {
        var isOn = Chosen.Contains(topic, StringComparer.Ordinal);
        if (!isOn && Chosen.Count == Most) return Turn.To(this with { Note = Words.Of("place.most") });
        return Turn.To(this with { Note = "", Chosen = isOn ? [.. Chosen.Where(t => !string.Equals(t, topic, StringComparison.Ordinal))] : [.. Chosen, topic] });
    }
}
