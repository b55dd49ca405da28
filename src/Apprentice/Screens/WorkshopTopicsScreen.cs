using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Set-up for a workshop: which topics are practised.</summary>
/// <param name="Name">Name of the workshop.</param>
/// <param name="Lead">Who leads it.</param>
/// <param name="Chosen">Topics switched on.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Wrong">What is wrong, or empty.</param>
sealed record WorkshopTopicsScreen(string Name, string Lead, IReadOnlyList<string> Chosen, Screen Below, string Wrong = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("workshop.title"),
        Name,
        [
            new Block.Text(Words.Of("workshop.topics")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(
            [
                .. world.Benches.Select(b => (string[])[b.Topic.Title, Words.Of(Chosen.Contains(b.Topic.Id, StringComparer.Ordinal) ? "workshop.on" : "workshop.off")]),
                [Words.Of("workshop.done"), ""],
            ])),
            new Block.Gap(),
            .. Wrong.Length > 0 ? [new Block.Text(Wrong)] : Array.Empty<Block>(),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Benches.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line == world.Benches.Count)
        {
            return Chosen.Count == 0
                ? Turn.To(this with { Wrong = Words.Of("workshop.one") })
                : Turn.To(new WorkshopScreen(new HomeScreen(), Words.Of("workshop.kept")), new LogEntry.WorkshopSet(Name, Lead, Chosen));
        }
        var topic = world.Benches[line].Topic.Id;
        var on = Chosen.Contains(topic, StringComparer.Ordinal);
        return Turn.To(this with
        {
            Wrong = "",
            Chosen = [.. world.Benches.Select(b => b.Topic.Id).Where(t => string.Equals(t, topic, StringComparison.Ordinal) ? !on : Chosen.Contains(t, StringComparer.Ordinal))],
        });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
