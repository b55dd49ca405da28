using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>Says what findings amount to.</summary>
public sealed class Reasoner
{
    const int DecidingSetExactTo = 14;
    readonly Scene _scene;

    /// <summary>A reasoner for a topic and provenance.</summary>
    public Reasoner(Scene scene) => _scene = scene;

    Topic Topic => _scene.Table.Topic;

    Model Model => _scene.Table.Model;

    /// <summary>Everything the engine has to say.</summary>
    /// <exception cref="ArgumentException">A finding that its clue does not have.</exception>
    /// <exception cref="KeyNotFoundException">A part, clue or want that the topic does not have.</exception>
    public Reasoning Reason(Enquiry enquiry, IReadOnlyList<Finding> findings)
    {
        var set = _scene.Reader.SetOf(findings);
        var conflict = Conflicts.Of(_scene.Table, set);
        if (conflict.Impossible) return Impossible(enquiry, findings, conflict);
        var odd = OddReadings.Of(_scene, findings, set);
        var parts = PartsOf(enquiry.Asks, findings, set, odd, Depth.Full);
        var stops = StopsOf(findings);
        var next = new NextChecks(_scene, enquiry, findings, set, parts, odd);
        var decisions = enquiry.Want is null ? [] : next.Decisions(stops.Count > 0);
        return new Reasoning
        {
            Parts = parts,
            Conflict = conflict,
            Odd = odd,
            Next = stops.Count > 0 ? [] : next.Ranked,
            Decisions = decisions,
            Stops = stops,
            Ripe = next.Ripe || stops.Count > 0,
            Gain = stops.Count > 0 ? 0 : next.Gain,
        };
    }

    /// <summary>Beliefs, odd readings and whether settled, without the costly rest; null when nothing allows the findings.</summary>
    public IReadOnlyList<PartBelief>? Settle(IReadOnlyList<string> asks, IReadOnlyList<Finding> findings)
    {
        var set = _scene.Reader.SetOf(findings);
        if (!(Belief.Total(Model, set.All) > 0)) return null;
        var odd = OddReadings.Of(_scene, findings, set);
        return PartsOf(asks, findings, set, odd, Depth.Beliefs);
    }

    /// <summary>The next checks, without the rest of the reasoning; empty when nothing allows the findings.</summary>
    public (IReadOnlyList<NextCheck> Next, bool Ripe, IReadOnlyList<PartBelief> Parts) Look(Enquiry enquiry, IReadOnlyList<Finding> findings)
    {
        var set = _scene.Reader.SetOf(findings);
        if (!(Belief.Total(Model, set.All) > 0)) return ([], true, []);
        var odd = OddReadings.Of(_scene, findings, set);
        var parts = PartsOf(enquiry.Asks, findings, set, odd, Depth.Beliefs);
        var next = new NextChecks(_scene, enquiry, findings, set, parts, odd);
        return StopsOf(findings).Count > 0 ? ([], true, parts) : (next.Ranked, next.Ripe, parts);
    }

    /// <summary>Beliefs and decisions without weights, deciding sets and explanations; what nothing allows is answered by asking.</summary>
    public (IReadOnlyList<PartBelief> Parts, IReadOnlyList<LineDecision> Decisions) Outline(Enquiry enquiry, IReadOnlyList<Finding> findings) =>
        Outlined(enquiry, findings, Depth.Beliefs);

    /// <summary>Whether findings settle what is asked, by which deciding set, and the best decisions.</summary>
    public Proof Prove(Enquiry enquiry, IReadOnlyList<Finding> findings)
    {
        var (parts, decisions) = Outlined(enquiry, findings, Depth.DecidingSets);
        return new Proof(parts, decisions, StopsOf(findings));
    }

    (IReadOnlyList<PartBelief> Parts, IReadOnlyList<LineDecision> Decisions) Outlined(Enquiry enquiry, IReadOnlyList<Finding> findings, Depth depth)
    {
        var set = _scene.Reader.SetOf(findings);
        if (!(Belief.Total(Model, set.All) > 0))
        {
            var impossible = Impossible(enquiry, findings, new Conflict(0, [], true, [], true, -1));
            return (impossible.Parts, impossible.Decisions);
        }

        var odd = OddReadings.Of(_scene, findings, set);
        var parts = PartsOf(enquiry.Asks, findings, set, odd, depth);
        return (parts, new NextChecks(_scene, enquiry, findings, set, parts, odd).Decisions(StopsOf(findings).Count > 0));
    }

    /// <summary>What stops the job, in the topic's words.</summary>
    public IReadOnlyList<string> StopsOf(IReadOnlyList<Finding> findings) =>
    [
        .. findings.Select(f => _scene.Table.Names.ClueOf(f.Clue).Shows is Shows.Table table && f.Seen is Seen.Named named
            ? table.Findings.First(x => x.Id == named.Id).Stop : "").Where(s => s.Length > 0).Distinct(StringComparer.Ordinal),
    ];

    List<PartBelief> PartsOf(IReadOnlyList<string> asks, IReadOnlyList<Finding> findings, FindingSet set, IReadOnlyList<OddReading> odd, Depth depth)
    {
        var all = _scene.AllClassBeliefs(set.All) ?? throw new ArgumentException("nothing allows the findings", nameof(set));
        return [.. asks.Select(p => PartOf(_scene.Table.Names.Part(p), all, findings, set, odd, depth))];
    }

    PartBelief PartOf(int part, IReadOnlyList<double[]> all, IReadOnlyList<Finding> findings, FindingSet set, IReadOnlyList<OddReading> odd, Depth depth)
    {
        var beliefs = all[part];
        var leading = IndexOfMax(beliefs);
        var settleAt = _scene.SettleAt(part);
        var standing = odd.Any(o => o.Stands && PartReadBy(findings[o.Finding].Clue) == part);
        var settled = beliefs[leading] >= settleAt && !standing;
        var members = _scene.Classes[part].Members;
        return new PartBelief(
            Topic.Parts[part].Id,
            [.. beliefs.Select((b, c) => new ClassBelief(members[c], b))],
            leading,
            settleAt,
            settled,
            SurvivorsOf(beliefs, settleAt),
            settled && depth != Depth.Beliefs ? DecidingSet(part, leading, settleAt, findings, set, odd) : [],
            depth == Depth.Full ? Weighing.Of(Model, set, _scene.ClassQuery(part), leading) : []);
    }

    int PartReadBy(string clue) => _scene.Table.Names.ClueOf(clue).Shows is Shows.Measured m
        ? _scene.Table.Names.Part(Topic.Dimensions[_scene.Table.Names.Dimension(m.Dimension)].Part) : -1;

    static int IndexOfMax(double[] values)
    {
        var best = 0;
        for (var i = 1; i < values.Length; i++)
        {
            if (values[i] > values[best]) best = i;
        }

        return best;
    }

    static List<int> SurvivorsOf(double[] beliefs, double settleAt)
    {
        var survivors = new List<int>();
        var sum = 0.0;
        foreach (var c in Enumerable.Range(0, beliefs.Length).OrderByDescending(c => beliefs[c]))
        {
            survivors.Add(c);
            sum += beliefs[c];
            if (sum >= settleAt - 1e-12) break;
        }

        return survivors;
    }

    // Least size first; ties: fewest minutes, highest belief, topic order. All findings, where the first fourteen in order do not settle it.
    List<int> DecidingSet(int part, int leading, double settleAt, IReadOnlyList<Finding> findings, FindingSet set, IReadOnlyList<OddReading> odd)
    {
        var usable = Enumerable.Range(0, findings.Count).Where(i => findings[i].Seen is not Seen.Hidden && odd.All(o => o.Finding != i)).ToList();
        if (usable.Count > DecidingSetExactTo) usable = [.. usable.Take(DecidingSetExactTo)];
        var beliefs = new SubsetBelief(Model, set, _scene.ClassQuery(part));
        for (var size = 0; size <= usable.Count; size++)
        {
            var best = Subsets(usable, size)
                .Select(members => (Members: members, Belief: Share(beliefs.Joint(members.Aggregate(0UL, (bits, i) => bits | (1UL << i))), leading)))
                .Where(s => s.Belief >= settleAt)
                .OrderBy(s => MinutesOf(findings, s.Members)).ThenByDescending(s => s.Belief).ThenBy(s => TopicOrder(findings, s.Members), StringComparer.Ordinal)
                .FirstOrDefault();
            if (best.Members is { } found) return found;
        }

        return [.. Enumerable.Range(0, findings.Count).Where(i => findings[i].Seen is not Seen.Hidden)];
    }

    string TopicOrder(IReadOnlyList<Finding> findings, List<int> members) =>
        string.Join(',', members.Select(i => _scene.Table.Names.Clue(findings[i].Clue)).Order().Select(c => c.ToString("0000")));

    static double Share(double[] weights, int value)
    {
        var total = 0.0;
        foreach (var w in weights) total += w;
        return weights[value] / total;
    }

    double MinutesOf(IReadOnlyList<Finding> findings, List<int> members)
    {
        var clues = members.Select(i => _scene.Table.Names.ClueOf(findings[i].Clue)).ToList();
        var accesses = clues.Select(c => c.Access).OfType<string>().Distinct(StringComparer.Ordinal);
        return clues.Sum(c => c.Minutes) + accesses.Sum(a => Topic.Accesses.First(x => x.Id == a).Minutes);
    }

    static IEnumerable<List<int>> Subsets(List<int> from, int size)
    {
        if (size == 0) return [[]];
        return Enumerable.Range(0, from.Count - size + 1)
            .SelectMany(i => Subsets(from.GetRange(i + 1, from.Count - i - 1), size - 1).Select(rest => (List<int>)[from[i], .. rest]));
    }

    Reasoning Impossible(Enquiry enquiry, IReadOnlyList<Finding> findings, Conflict conflict)
    {
        var nothing = _scene.Reader.SetOf([]);
        var parts = PartsOf(enquiry.Asks, [], nothing, [], Depth.Beliefs).Select(p => p with { Settled = false })
            .Select(p => p with { Weights = [.. findings.Select(_ => new FindingWeight(0, 0, 0))] });
        return new Reasoning
        {
            Parts = [.. parts],
            Conflict = conflict,
            Odd = [],
            Next = [],
            Decisions = enquiry.Want is null ? [] : [.. Topic.Wants.First(w => w.Id == enquiry.Want).OrderLines.Select(l => new LineDecision(l.Id, [new Option(new Choice.Ask(), Topic.Costs.AskCost, 0, 0, 0)]))],
            Stops = StopsOf(findings),
            Ripe = true,
            Gain = 0,
        };
    }

    /// <summary>How much to work out.</summary>
    enum Depth
    {
        Beliefs,
        DecidingSets,
        Full,
    }
}
