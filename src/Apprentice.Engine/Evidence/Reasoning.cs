namespace Apprentice.Engine.Evidence;

/// <summary>What the engine makes of a set of findings.</summary>
public sealed record Reasoning
{
    /// <summary>Belief per part that was asked about, in the order asked.</summary>
    public required IReadOnlyList<PartBelief> Parts { get; init; }

    /// <summary>Conflict among the findings.</summary>
    public required Conflict Conflict { get; init; }

    /// <summary>Odd readings, by index of finding.</summary>
    public required IReadOnlyList<OddReading> Odd { get; init; }

    /// <summary>Next checks, best first; empty when everything asked is settled, nothing is on offer or a stop sign was found.</summary>
    public required IReadOnlyList<NextCheck> Next { get; init; }

    /// <summary>Decisions per order line; empty without a want.</summary>
    public required IReadOnlyList<LineDecision> Decisions { get; init; }

    /// <summary>What stops the job, in the topic's words; empty when nothing does.</summary>
    public required IReadOnlyList<string> Stops { get; init; }

    /// <summary>True when every part asked about is settled, nothing on offer is worth its minutes, or a stop sign leaves only to ask.</summary>
    public required bool Ripe { get; init; }

    /// <summary>What the best continuation on offer is expected to save over answering now, in the workshop's money; 0 when ripe.</summary>
    public required double Gain { get; init; }
}

/// <summary>Belief about one part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Classes">Order classes, in the topic's order of kinds, "none of these" last. Beliefs add up to 1.</param>
/// <param name="Leading">Index of the likeliest class.</param>
/// <param name="SettleAt">Settle level.</param>
/// <param name="Settled">True when the leading class has at least that belief and no odd reading of the part stands.</param>
/// <param name="Survivors">Indices of the fewest classes, likeliest first, that add up to the settle level.</param>
/// <param name="DecidingSet">Indices of a least-size set of findings that alone settles the same class; empty when not settled.</param>
/// <param name="Weights">Each finding's weight for the leading class against the rest, in the order of the findings.</param>
public sealed record PartBelief(
    string Part, IReadOnlyList<ClassBelief> Classes, int Leading, double SettleAt, bool Settled, IReadOnlyList<int> Survivors,
    IReadOnlyList<int> DecidingSet, IReadOnlyList<FindingWeight> Weights)
{
    /// <summary>Belief in the leading class.</summary>
    public double Highest => Classes[Leading].Belief;

    /// <summary>Index of the class of a kind.</summary>
    /// <param name="kind">Short name of the kind, "none" for none of these.</param>
    /// <exception cref="ArgumentException">The part has no such kind.</exception>
    public int ClassOf(string kind)
    {
        for (var c = 0; c < Classes.Count; c++)
        {
            if (Classes[c].Kinds.Contains(kind)) return c;
        }

        throw new ArgumentException($"{Part} has no kind {kind}", nameof(kind));
    }
}

/// <summary>An order class: kinds that every spare fits alike.</summary>
/// <param name="Kinds">Short names of its kinds; "none" for none of these.</param>
/// <param name="Belief">Probability, 0 to 1.</param>
public sealed record ClassBelief(IReadOnlyList<string> Kinds, double Belief);

/// <summary>Weight of evidence of one finding for the leading class, in decibans: 10·log10 of the likelihood ratio.</summary>
/// <remarks>Source: I. J. Good, Probability and the Weighing of Evidence, 1950; the mean over all orders is that of Shapley, A value for n-person games, 1953.</remarks>
/// <param name="Alone">With this finding alone.</param>
/// <param name="Share">Mean over all orders of looking; the shares add up to the weight of all findings. Exact to 12 findings.</param>
/// <param name="Without">All findings less all but this one.</param>
public sealed record FindingWeight(double Alone, double Share, double Without);

/// <summary>Conflict of the findings.</summary>
/// <remarks>Source: Jensen, Chamberlain, Nordahl, Jensen, Analysis in HUGIN of data conflict, 1990 (UAI).</remarks>
/// <param name="Score">log10( Π P(x) / P(all) ).</param>
/// <param name="Clashes">Per finding, log10( P(x) / P(x | the rest) ).</param>
/// <param name="Shown">True when the score is above 0 or a clash is above 0.5.</param>
/// <param name="Explanations">Stories that explain it, likeliest first, at most three; pairs only when no single one does.</param>
/// <param name="Impossible">True when nothing in the topic allows the findings; then <paramref name="Worst"/> clashes most.</param>
/// <param name="Worst">Index of the finding that clashes most, or −1 without findings.</param>
public sealed record Conflict(
    double Score, IReadOnlyList<double> Clashes, bool Shown, IReadOnlyList<Explanation> Explanations, bool Impossible, int Worst);

/// <summary>A story that explains a conflict.</summary>
/// <param name="Story">Its tags: short names of events, lines with a pitfall, running changes and kinds of another family (see <c>HistoryTable.Tags</c>).</param>
/// <param name="Before">Probability before any finding.</param>
/// <param name="After">Probability given the findings.</param>
public sealed record Explanation(IReadOnlyList<string> Story, double Before, double After);

/// <summary>An odd reading: it settles nothing until it is measured again.</summary>
/// <param name="Finding">Index of the finding.</param>
/// <param name="SlipProbability">P(slip or blunder | findings).</param>
/// <param name="Tail">P(a reading at least as unlikely | the other findings).</param>
/// <param name="Stands">True while no other reading of the same clue is in order.</param>
public sealed record OddReading(int Finding, double SlipProbability, double Tail, bool Stands);

/// <summary>A check on offer.</summary>
/// <param name="Clue">The clue.</param>
/// <param name="With">The clue with which it tells most, or null when it tells most alone.</param>
/// <param name="Bits">Mutual information with the unsettled parts, bits.</param>
/// <param name="Minutes">Minutes, access included unless already off.</param>
/// <param name="Score">Bits a minute, the better of alone and with the partner.</param>
/// <param name="Settles">Probability that it (with its partner) settles every part asked about.</param>
/// <param name="Again">True when it is a reading to be repeated because it is odd.</param>
public sealed record NextCheck(string Clue, string? With, double Bits, double Minutes, double Score, double Settles, bool Again);

/// <summary>Choices for one order line, least expected loss first.</summary>
/// <param name="OrderLine">The order line.</param>
/// <param name="Options">All options.</param>
public sealed record LineDecision(string OrderLine, IReadOnlyList<Option> Options)
{
    /// <summary>The option of least expected loss.</summary>
    public Option Best => Options[0];
}

/// <summary>One choice with what it is expected to lose.</summary>
/// <param name="Choice">The choice.</param>
/// <param name="Loss">Expected loss in the workshop's money, time and delay included.</param>
/// <param name="WrongShare">Probability that what is ordered does not fit, 0 to 1.</param>
/// <param name="Money">Money lost when it does not fit.</param>
/// <param name="Days">Days lost when it does not fit.</param>
public sealed record Option(Choice Choice, double Loss, double WrongShare, double Money, double Days);

/// <summary>What can be done for an order line.</summary>
public abstract record Choice
{
    Choice()
    {
    }

    /// <summary>Order a spare now.</summary>
    /// <param name="Spare">The spare.</param>
    public sealed record Order(string Spare) : Choice;

    /// <summary>Order two kinds and send one back.</summary>
    /// <param name="First">A spare.</param>
    /// <param name="Second">The other, later in the topic's order.</param>
    public sealed record OrderTwo(string First, string Second) : Choice;

    /// <summary>Wait and take a check first.</summary>
    /// <param name="Clue">The check.</param>
    public sealed record Wait(string Clue) : Choice;

    /// <summary>Stop and ask: the lead, the maker, or the customer to bring the bike.</summary>
    public sealed record Ask : Choice;
}

/// <summary>What all checks on offer amount to.</summary>
/// <param name="Parts">Beliefs per part asked about, with deciding sets, without weights.</param>
/// <param name="Decisions">Decisions per order line.</param>
/// <param name="Stops">What stops the job.</param>
public sealed record Proof(IReadOnlyList<PartBelief> Parts, IReadOnlyList<LineDecision> Decisions, IReadOnlyList<string> Stops);
