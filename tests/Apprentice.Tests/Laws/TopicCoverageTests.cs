using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>Every topic: each kind can be found out, and each pitfall can be met.</summary>
public sealed class TopicCoverageTests
{
    const int Cases = 300;
    const double Sure = 0.99;
    static readonly Dictionary<string, Workbench> Benches = new(StringComparer.Ordinal);

    public static TheoryData<string> Topics() => [.. Corpus.Shipped];

    [Theory]
    [MemberData(nameof(Topics))]
    public void Every_order_class_is_reached_and_found_out_from_its_ideal_findings(string id)
    {
        var bench = Bench(id);
        var topic = bench.Topic;
        var faults = new List<string>();
        foreach (var part in topic.Parts.Where(p => p.Asked))
        {
            foreach (var kind in part.Kinds)
            {
                var before = Ideal.Belief(bench, part, kind, []);
                if (before <= 0) faults.Add($"{part.Id} {kind.Id} is on no bike");
                if (before > Sure) faults.Add($"{part.Id} {kind.Id} needs no finding");
                var findings = Ideal.FindingsOf(bench, part, kind, Sure);
                if (Ideal.Belief(bench, part, kind, findings) > Sure) continue;
                var classes = Ideal.Classes(bench, part, findings).OrderByDescending(c => c.Belief).Take(3).Select(c => $"{string.Join('/', c.Kinds)} {c.Belief:0.0000}");
                faults.Add($"{part.Id} {kind.Id}: {string.Join(", ", classes)} from {string.Join(", ", findings.Select(f => $"{f.Clue} {f.Seen}"))}");
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Every_pitfall_is_met_in_made_cases(string id)
    {
        var bench = Bench(id);
        var left = bench.Topic.Pitfalls.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        for (var seed = 0; seed < Cases && left.Count > 0; seed++)
        {
            var (want, opening) = (bench.Topic.Wants[seed % bench.Topic.Wants.Count], bench.Topic.Openings[seed % bench.Topic.Openings.Count]);
            var provenance = bench.Topic.Provenances[seed / 3 % bench.Topic.Provenances.Count];
            var made = Some.Case(bench, new CaseRequest(provenance.Id, want.Id, opening.Id, Selection.AsTheyCome, Channel.Bench), (ulong)seed);
            left.ExceptWith(Pits.Of(bench, made));
        }

        Assert.True(left.Count == 0, $"never met: {string.Join(", ", left)}");
    }

    static Workbench Bench(string id) => Benches.TryGetValue(id, out var known) ? known : Benches[id] = Corpus.Bench(id);
}
