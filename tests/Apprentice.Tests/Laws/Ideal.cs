using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>What a bike shows that is just as it should be for one kind of one part.</summary>
static class Ideal
{
    /// <summary>
    /// The ideal finding of every clue that reads the part on the bench, safety looks apart; what is measured is measured twice. While that leaves a doubt, the rest
    /// of such a bike: each other part as the kind that goes best with it, the sort of bike, and whether something happened.
    /// </summary>
    public static IReadOnlyList<Finding> FindingsOf(Workbench bench, Part part, Kind kind, double enough)
    {
        var findings = Of(bench.Topic, part, kind.Id).ToList();
        foreach (var choices in Rest(bench, part, findings))
        {
            if (Belief(bench, part, kind, findings) > enough) break;
            findings.AddRange(choices.MaxBy(more => Belief(bench, part, kind, [.. findings, .. more])) ?? []);
        }

        return findings;
    }

    /// <summary>Belief in the order class of a kind, with the usual provenance.</summary>
    public static double Belief(Workbench bench, Part part, Kind kind, IReadOnlyList<Finding> findings)
    {
        var classes = Classes(bench, part, findings);
        return classes.First(c => c.Kinds.Contains(kind.Id)).Belief;
    }

    /// <summary>Belief per order class of a part.</summary>
    public static IReadOnlyList<ClassBelief> Classes(Workbench bench, Part part, IReadOnlyList<Finding> findings)
    {
        var scene = bench.SceneOf(bench.Topic.Provenances[0].Id);
        var at = scene.Table.Names.Part(part.Id);
        var beliefs = scene.ClassBeliefs(at, scene.Reader.SetOf(findings).All) ?? throw new InvalidOperationException($"nothing allows {string.Join(", ", findings)}");
        return [.. beliefs.Select((b, c) => new ClassBelief(scene.Classes[at].Members[c], b))];
    }

    static IEnumerable<List<List<Finding>>> Rest(Workbench bench, Part part, List<Finding> findings)
    {
        foreach (var other in bench.Topic.Parts.Where(p => p.Id != part.Id))
        {
            var leading = Classes(bench, other, findings).MaxBy(c => c.Belief)?.Kinds ?? [];
            yield return leading.Select(k => Of(bench.Topic, other, k).ToList()).ToList();
        }

        foreach (var clue in bench.Topic.Clues.Where(c => !c.Safety && c.Node is Node.OfLine or Node.OfEvent && c.Shows is Shows.Table))
        {
            var table = (Shows.Table)clue.Shows;
            yield return Enumerable.Range(0, table.Rows.Count).Select(row => new List<Finding> { new(clue.Id, Channel.Bench, new Seen.Named(NamedFor(table, row))) }).Append([]).ToList();
        }
    }

    /// <summary>What a tool reads, to its step, on the nominal size of a kind; null when the kind has no such size.</summary>
    public static double? ReadingOf(Topic topic, Shows.Measured measured, int kind) =>
        topic.Dimensions.First(d => d.Id == measured.Dimension).Nominals[kind] is { } nominal
            ? Math.Round(((nominal * measured.Scale) + measured.Offset) / measured.Step) * measured.Step
            : null;

    static IEnumerable<Finding> Of(Topic topic, Part part, string kind)
    {
        var at = part.Kinds.ToList().FindIndex(k => k.Id == kind);
        if (at < 0) return [];
        return topic.Clues.Where(c => !c.Safety && Reads(c.Node, part) && c.Channels.Any(x => x.Channel == Channel.Bench)).SelectMany(clue => clue.Shows switch
        {
            Shows.Measured measured when ReadingOf(topic, measured, at) is { } mm => Enumerable.Repeat(new Finding(clue.Id, Channel.Bench, new Seen.Reading(mm)), 2),
            Shows.Table table => [new Finding(clue.Id, Channel.Bench, new Seen.Named(NamedFor(table, at)))],
            Shows.Code code when CodeFor(code, part.Kinds[at]) is { } id => [new Finding(clue.Id, Channel.Bench, new Seen.Named(id))],
            _ => Enumerable.Empty<Finding>(),
        });
    }

    static bool Reads(Node node, Part part) => node is Node.OfPart of ? of.Part == part.Id : node is Node.OfDate && part.IsDate;

    // The finding that adds most to the expected weight of evidence for the kind against the others together.
    static string NamedFor(Shows.Table table, int kind)
    {
        var best = Enumerable.Range(0, table.Findings.Count).MaxBy(f =>
        {
            var share = table.Rows[kind][f];
            var others = table.Rows.Where((_, k) => k != kind).Select(r => r[f]).DefaultIfEmpty(share).Average();
            return share <= 0 ? double.MinValue : share * Math.Log(share / Math.Max(1e-6, others));
        });
        return table.Findings[best].Id;
    }

    // The code of the middle month of a group of build dates.
    static string? CodeFor(Shows.Code code, Kind group)
    {
        if (group.From is not { } from || group.To is not { } to) return null;
        var middle = from.Plus((to.Index - from.Index) / 2);
        return code.Findings.FirstOrDefault(f => f.Months.Any(m => m.From <= middle && middle <= m.To))?.Id;
    }
}
