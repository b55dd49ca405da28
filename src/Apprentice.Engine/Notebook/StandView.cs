using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>A bike as one of its questions sees it: what counts, what it amounts to, what is on offer.</summary>
/// <param name="Bench">The topic, with the lead's prices.</param>
/// <param name="Bike">The bike.</param>
/// <param name="Asked">The question.</param>
public sealed record StandView(Workbench Bench, Bike Bike, LogEntry.BikeAsked Asked)
{
    const int Readings = 3;
    Reasoning? _reasoning;

    /// <summary>The topic.</summary>
    public Topic Topic => Bench.Topic;

    /// <summary>What the customer wants.</summary>
    public Want Want => Topic.Wants.First(w => w.Id == Asked.Want);

    /// <summary>Findings that count, in the order found: this topic's own and what other questions said of line and date in the same words.</summary>
    public IReadOnlyList<Finding> Findings => [.. Counted.Select(f => f.Finding)];

    /// <summary>The findings that count, with their index on the bike.</summary>
    public IReadOnlyList<(int Index, Finding Finding)> Counted =>
        [.. Bike.Findings.Select((f, i) => (i, f)).Where(p => !p.f.IsStruck && Holds(p.f)).Select(p => (p.i, p.f.Finding))];

    /// <summary>What the findings amount to. Worked out when first asked for.</summary>
    public Reasoning Reasoning => _reasoning ??= Bench.Reason(new Enquiry(ProvenanceIn(Topic, Asked.Provenance), Want.Asks, Want.Id, Bike.Channel, [.. Offer.Where(c => !c.Safety).Select(c => c.Id)]), Findings);

    /// <summary>Checks that the tools and the way in which the bike is seen allow, without those that cannot be seen.</summary>
    public IReadOnlyList<Clue> Offer => [.. Reachable.Where(c => !Blind.Contains(c.Id))];

    /// <summary>Safety looks that were not taken yet.</summary>
    public IReadOnlyList<Clue> SafetyFirst => [.. Offer.Where(c => c.Safety && Times(c.Id) == 0)];

    /// <summary>Checks worth taking next, best first: safety looks, readings to repeat, then what tells most for its minutes. None once a stop sign was found.</summary>
    public IReadOnlyList<Clue> Next => Reasoning.Stops.Count > 0 ? [] :
    [
        .. SafetyFirst,
        .. Reasoning.Next.Where(n => Times(n.Clue) < Readings).Select(n => Topic.Clues.First(c => c.Id == n.Clue)),
    ];

    /// <summary>Clues that cannot be seen on this bike by the way it is seen now.</summary>
    public IReadOnlyList<string> Blind => [.. Findings.Where(f => f.Seen is Seen.Hidden && f.Channel == Bike.Channel).Select(f => f.Clue).Distinct(StringComparer.Ordinal)];

    IEnumerable<Clue> Reachable => Topic.Clues.Where(c => c.Channels.Any(k => k.Channel == Bike.Channel) && (Bike.Channel != Channel.Bench || ToolLevel.Of(Topic, c) <= Bike.Tools));

    /// <summary>How often a clue was found in any way.</summary>
    public int Times(string clue) => Findings.Count(f => f.Clue == clue);

    /// <summary>A bike's questions as they are seen, those of topics that are not here left out.</summary>
    /// <param name="bike">The bike.</param>
    /// <param name="bench">The topic of a name with the lead's prices, or null.</param>
    public static IReadOnlyList<StandView> Of(Bike bike, Func<string, Workbench?> bench) =>
        [.. bike.Asked.Select(a => (a, bench(a.Topic))).Where(p => p.Item2 is { } b && b.Topic.Wants.Any(w => w.Id == p.a.Want)).Select(p => new StandView(p.Item2 ?? throw new ArgumentNullException(nameof(bench)), bike, p.a))];

    /// <summary>The provenance of a topic that stands for one of another: the same short name, else the same name, else the topic's first.</summary>
    public static string ProvenanceIn(Topic topic, string id) =>
        topic.Provenances.FirstOrDefault(p => p.Id == id)?.Id ?? topic.Provenances[0].Id;

    /// <summary>Where a bike can come from. A routine bike was picked by the rule and not because it puzzles, so it never comes from puzzling bikes.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="routine">True for a routine bike.</param>
    public static IReadOnlyList<Provenance> ProvenancesFor(Topic topic, bool routine) => [.. topic.Provenances.Where(p => !routine || !p.IsPuzzling)];

    // What another question said of line or date holds here when this topic asks it in the same words: the same clue, finding and text.
    // Alike names for unlike sorts of bike are not carried over.
    bool Holds(BikeFinding found)
    {
        if (found.Topic == Asked.Topic) return Has(Topic, found.Finding);
        return found.Words is { Length: > 0 } said && Topic.Clues.FirstOrDefault(c => c.Id == found.Finding.Clue) is { Node: Node.OfLine or Node.OfDate } clue && TextOf(clue, found.Finding) == said;
    }

    /// <summary>True when a topic still has the clue of a finding, seen that way, and what was found of it.</summary>
    public static bool Has(Topic topic, Finding finding) => topic.Clues.Any(c => c.Id == finding.Clue && Knows(c, finding));

    static bool Knows(Clue clue, Finding finding) => clue.Channels.Any(c => c.Channel == finding.Channel) && finding.Seen switch
    {
        Seen.Named => TextOf(clue, finding) is not null,
        Seen.Reading reading => clue.Shows is Shows.Measured m && reading.Millimetres >= m.Low && reading.Millimetres <= m.High,
        _ => true,
    };

    /// <summary>The words by which other questions on the bike share a finding: of line and build date only, else empty.</summary>
    public static string Shared(Clue clue, Finding finding) => clue.Node is Node.OfLine or Node.OfDate ? TextOf(clue, finding) ?? "" : "";

    /// <summary>The words of a named finding, or null where the clue does not have it.</summary>
    public static string? TextOf(Clue clue, Finding finding) => finding.Seen is not Seen.Named named ? null : clue.Shows switch
    {
        Shows.Table table => table.Findings.FirstOrDefault(f => f.Id == named.Id)?.Text,
        Shows.Code code => code.Findings.FirstOrDefault(f => f.Id == named.Id)?.Text,
        _ => null,
    };
}
