using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>The lead chooses the topics that count this month; none means all.</summary>
/// <param name="Chosen">Topics chosen so far.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record MonthScreen(IReadOnlyList<string> Chosen, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("month.title"),
        "",
        [
            new Block.Text(Words.Of("month.ask")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], Rows(
            [
                [Words.Of("month.done"), Chosen.Count == 0 ? Words.Of("lead.month-all") : ""],
                .. world.Practised.Select(b => (string[])[b.Topic.Title, Chosen.Contains(b.Topic.Id, StringComparer.Ordinal) ? Words.Of("place.chosen") : ""]),
            ])),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Practised.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line == 0) return Turn.To(Below, new LogEntry.TopicsChosen(Chosen));
        var topic = world.Practised[line - 1].Topic.Id;
        return Turn.To(this with
        {
            Chosen = [.. world.Practised.Select(b => b.Topic.Id).Where(t => Chosen.Contains(t, StringComparer.Ordinal) != string.Equals(t, topic, StringComparison.Ordinal))],
        });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
