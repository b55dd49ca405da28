using Apprentice.Engine.Topics;

namespace Apprentice.Content.Lessons;

/// <summary>Whether the clues of a topic tell what its orders need.</summary>
static class TopicTells
{
    const double Same = 1e-9;

    /// <summary>Clues that tell nothing or have no pitfall, and kinds that a spare tells apart and no clue does.</summary>
    public static IEnumerable<string> Faults(Topic topic)
    {
        foreach (var clue in topic.Clues)
        {
            if (!clue.Safety && clue.Pitfalls.Count == 0) yield return $"The clue {clue.Id} has no pitfall: add \"- Pitfalls: …\" to it.";
            if (!clue.Safety && TellsNothing(topic, clue)) yield return $"The clue {clue.Id} shows the same whatever the bike is: it tells nothing in this topic.";
        }

        foreach (var part in topic.Parts)
        {
            for (var a = 0; a < part.Kinds.Count; a++)
            {
                for (var b = a + 1; b < part.Kinds.Count; b++)
                {
                    if (SparesDiffer(topic, part, a, b) && !topic.Clues.Any(c => Tells(topic, c, part, a, b)))
                        yield return $"A spare tells {part.Kinds[a].Id} from {part.Kinds[b].Id} ({part.Id}), and no clue does.";
                }
            }
        }
    }

    static bool TellsNothing(Topic topic, Clue clue) => clue.Shows switch
    {
        Shows.Table table => table.Rows.All(r => Equal(r, table.Rows[0])),
        Shows.Measured measured => topic.Dimensions.First(d => d.Id == measured.Dimension) is var size && size.Nominals.Distinct().Count() < 2,
        _ => false,
    };

    static bool SparesDiffer(Topic topic, Part part, int a, int b) => topic.Spares.Any(s =>
        s.Fits.FirstOrDefault(f => f.Part == part.Id) is { Kinds: { } kinds } && kinds.Contains(part.Kinds[a].Id) != kinds.Contains(part.Kinds[b].Id));

    static bool Tells(Topic topic, Clue clue, Part part, int a, int b) => (clue.Node, clue.Shows) switch
    {
        (_, Shows.Code) => part.Kinds[a].From is not null || part.Kinds[b].From is not null || clue.Node is Node.OfPart { Part: var of } && of == part.Id,
        (Node.OfPart { Part: var of }, Shows.Table table) when of == part.Id => !Equal(table.Rows[a], table.Rows[b]),
        (_, Shows.Measured measured) when topic.Dimensions.First(d => d.Id == measured.Dimension) is var size && size.Part == part.Id => size.Nominals[a] != size.Nominals[b],
        _ => false,
    };

    static bool Equal(IReadOnlyList<double> one, IReadOnlyList<double> other) => one.Zip(other).All(p => Math.Abs(p.First - p.Second) < Same);
}
