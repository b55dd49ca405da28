using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>Which pitfalls of a topic a made case holds.</summary>
static class Pits
{
    /// <summary>
    /// Those of its story (events, lines, running changes, kinds of another family), those of slips of clues on offer, and those that a clue on offer names when its
    /// look misleads in this case: it goes better with another kind than with the true one, its code stands for other months or for two times, or a safety look is
    /// not the usual one.
    /// </summary>
    public static IEnumerable<string> Of(Workbench bench, Case made)
    {
        var story = bench.SceneOf(made.Job.Request.Provenance).Table.Tags.Where(t => made.Truth.Story.Contains(t.Id)).Select(t => t.Pitfall);
        return story.Concat(bench.Topic.Clues.Where(c => made.Job.Bench.Contains(c.Id)).SelectMany(c => OfClue(bench.Topic, made, c)));
    }

    static IEnumerable<string> OfClue(Topic topic, Case made, Clue clue)
    {
        var slips = clue.Shows is Shows.Measured m ? m.Slips.Select(s => s.Pitfall ?? "") : [];
        return slips.Concat(Misleads(topic, made, clue) ? clue.Pitfalls : []);
    }

    static bool Misleads(Topic topic, Case made, Clue clue) => (clue.Shows, made.Look(clue.Id, 0).Seen) switch
    {
        (Shows.Table table, Seen.Named named) when clue.Safety => table.Findings[0].Id != named.Id,
        (Shows.Table table, Seen.Named named) when RowOf(topic, made, clue) is var row and >= 0 && row < table.Rows.Count =>
            table.Findings.ToList().FindIndex(f => f.Id == named.Id) is var f && table.Rows.Any(r => r[f] > table.Rows[row][f]),
        (Shows.Code code, Seen.Named named) when made.Truth.Built is { } built && code.Findings.First(f => f.Id == named.Id).Months is { Count: > 0 } months =>
            months.Count > 1 || !months.Any(m => m.From <= built && built <= m.To),
        (Shows.Measured measured, Seen.Reading reading) when RowOf(topic, made, clue) is var row and >= 0 => Nearer(topic, measured, row, reading.Millimetres),
        _ => false,
    };

    static bool Nearer(Topic topic, Shows.Measured measured, int kind, double reading)
    {
        var count = topic.Dimensions.First(d => d.Id == measured.Dimension).Nominals.Count;
        var off = Enumerable.Range(0, count).Select(k => Ideal.ReadingOf(topic, measured, k) is { } mm ? Math.Abs(reading - mm) : double.MaxValue).ToList();
        return kind < count && off.Any(o => o < off[kind]);
    }

    static int RowOf(Topic topic, Case made, Clue clue) => clue.Node switch
    {
        Node.OfPart of when topic.Parts.ToList().FindIndex(p => p.Id == of.Part) is var p => topic.Parts[p].Kinds.ToList().FindIndex(k => k.Id == made.Truth.Kinds[p]),
        Node.OfLine => topic.Lines.ToList().FindIndex(l => l.Id == made.Truth.Line),
        Node.OfEvent of => made.Truth.Events.Contains(of.Event) ? 1 : 0,
        _ => -1,
    };
}
