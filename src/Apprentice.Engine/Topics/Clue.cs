using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Topics;

/// <summary>What can be looked at.</summary>
public sealed record Clue
{
    /// <summary>Short name.</summary>
    public required string Id { get; init; }

    /// <summary>Name on the bench: "round the rim, tyre off".</summary>
    public required string Name { get; init; }

    /// <summary>From where to where it is taken (the datum), or where to look.</summary>
    public required string FromTo { get; init; }

    /// <summary>The right datum in few words, in the style of the clue's slips, to be chosen among them; empty for <see cref="FromTo"/>.</summary>
    public string Datum { get; init; } = "";

    /// <summary>Tool: "eyes", "rule", "tape", "caliper", …; <see cref="Instrument"/> says which words are read as a scale.</summary>
    public required string Tool { get; init; }

    /// <summary>Bench minutes, access not counted.</summary>
    public required double Minutes { get; init; }

    /// <summary>What must come off, or null.</summary>
    public string? Access { get; init; }

    /// <summary>How it can reach the bench, with what it costs in trust. Always at least one.</summary>
    public required IReadOnlyList<ClueChannel> Channels { get; init; }

    /// <summary>Sort of evidence.</summary>
    public required ClueFamily Family { get; init; }

    /// <summary>What it reads.</summary>
    public required Node Node { get; init; }

    /// <summary>What it shows, given what it reads.</summary>
    public required Shows Shows { get; init; }

    /// <summary>Question for a customer: "How long is the grip, end to end?".</summary>
    public string Ask { get; init; } = "";

    /// <summary>Caution before taking it; may be empty.</summary>
    public string Caution { get; init; } = "";

    /// <summary>How it misleads, in a sentence.</summary>
    public string Lies { get; init; } = "";

    /// <summary>Share of bikes on which it cannot be seen, whatever the bike is: no evidence.</summary>
    public double HiddenShare { get; init; }

    /// <summary>Pitfalls that it can fall into.</summary>
    public IReadOnlyList<string> Pitfalls { get; init; } = [];

    /// <summary>True for a safety look: done first, not counted as time.</summary>
    public bool Safety { get; init; }

    /// <summary>The writings it is read among, or null when it is not read off a plate that is drawn.</summary>
    public Plate? Plate { get; init; }

    /// <summary>Source key of its figures.</summary>
    public string Source { get; init; } = "judgement";
}

/// <summary>How a clue can reach the bench.</summary>
/// <param name="Channel">The channel.</param>
/// <param name="ExtraError">Standard uncertainty added to a reading, mm.</param>
/// <param name="ExtraMisread">Misreading share added to a marking, or slip share added to a reading (shared by its named slips).</param>
public sealed record ClueChannel(Channel Channel, double ExtraError, double ExtraMisread);

/// <summary>What a clue shows, given its node.</summary>
public abstract record Shows
{
    Shows()
    {
    }

    /// <summary>A measured size: reading = Scale × true size + Offset + error.</summary>
    public sealed record Measured : Shows
    {
        /// <summary>The dimension read.</summary>
        public required string Dimension { get; init; }

        /// <summary>Factor from the true size to the reading: π for a tape laid round, sin(π/n) for the distance of neighbouring holes on a bolt circle.</summary>
        public double Scale { get; init; } = 1;

        /// <summary>Added to the scaled true size, mm.</summary>
        public double Offset { get; init; }

        /// <summary>Reading step of the tool, mm, greater than 0.</summary>
        public required double Step { get; init; }

        /// <summary>Standard uncertainty of one careful reading, mm: instrument limit and half a step as rectangular, a/√3 each (JCGM 100:2008, 4.3.7), root sum of squares.</summary>
        public required double Uncertainty { get; init; }

        /// <summary>Named slips to a wrong datum.</summary>
        public IReadOnlyList<Slip> Slips { get; init; } = [];

        /// <summary>Share of blunders: flat over the range of readings.</summary>
        public double Blunder { get; init; } = 0.002;

        /// <summary>Lowest reading of the tool here, mm.</summary>
        public required double Low { get; init; }

        /// <summary>Highest reading of the tool here, mm.</summary>
        public required double High { get; init; }

        /// <summary>Formula shown when the size is computed from the reading: "d = a / sin(π/5)"; empty when read directly.</summary>
        public string Formula { get; init; } = "";
    }

    /// <summary>A marking, shape, feel or sound: a table.</summary>
    public sealed record Table : Shows
    {
        /// <summary>What can be found.</summary>
        public required IReadOnlyList<TableFinding> Findings { get; init; }

        /// <summary>Shares per value of the node: kinds of the part in order; lines in order; for an event: not happened, happened. Each row one share per finding, adding up to 1. For a part "none of these" is flat unless <see cref="NoneRow"/> is given.</summary>
        public required IReadOnlyList<IReadOnlyList<double>> Rows { get; init; }

        /// <summary>Row for "none of these", or null for flat.</summary>
        public IReadOnlyList<double>? NoneRow { get; init; }

        /// <summary>Misreading share, at least 0.002: then each finding is equally likely.</summary>
        public double Misread { get; init; } = 0.002;
    }

    /// <summary>A number or code that tells the build date, or bounds it.</summary>
    public sealed record Code : Shows
    {
        /// <summary>What can be read, with the months that each stands for; a finding without months is "cannot be read" or the like.</summary>
        public required IReadOnlyList<CodeFinding> Findings { get; init; }

        /// <summary>The code is that of a part made 0 to this many months before the bike, all equally likely: it only says "not before".</summary>
        public int LagMonths { get; init; }

        /// <summary>Decoys: numbers that are read instead.</summary>
        public IReadOnlyList<Decoy> Decoys { get; init; } = [];

        /// <summary>Misreading share, at least 0.002: then each finding is equally likely.</summary>
        public double Misread { get; init; } = 0.002;
    }
}

/// <summary>A named slip: the tape starts or ends at the wrong point, or the wrong quantity is read.</summary>
/// <param name="Name">From where to where it wrongly goes.</param>
/// <param name="Share">Share of readings.</param>
/// <param name="Factor">Factor on the right reading.</param>
/// <param name="Offset">Added then, mm.</param>
/// <param name="Pitfall">Its pitfall, or null.</param>
public sealed record Slip(string Name, double Share, double Factor, double Offset, string? Pitfall);

/// <summary>What a look can show.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Text">Words on screens.</param>
/// <param name="Stop">What to say when it stops the job ("a crack at the hinge: do not ride"), or empty.</param>
public sealed record TableFinding(string Id, string Text, string Stop = "")
{
    /// <summary>What the gauge shows: the leaf that fits, or the largest end that drops in; null when no gauge is drawn, or no leaf fits.</summary>
    public Leaf? Gauge { get; init; }

    /// <summary>The characters that stand for it on a plate, "worn" or "nothing"; empty when no plate is drawn.</summary>
    public string LooksLike { get; init; } = "";

    /// <summary>What a mechanic would say who sees, feels or hears it, without naming it: several ways of saying it, or none.</summary>
    public IReadOnlyList<string> Described { get; init; } = [];
}

/// <summary>A leaf of a pitch gauge, or an end of a chain gauge.</summary>
/// <param name="Name">What stands on it: "1 mm", "24 tpi", "0.75".</param>
/// <param name="Size">Its pitch in mm, greater than 0; for a chain gauge how much longer than new, of 100, 0 for no end.</param>
public sealed record Leaf(string Name, double Size);

/// <summary>A code that can be read.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Text">Words on screens.</param>
/// <param name="Months">Months that it stands for, as closed ranges; two ranges for a code that repeats; none for "worn away".</param>
/// <param name="Share">For a code without months: share of bikes that show it, whatever the date. Else 0.</param>
public sealed record CodeFinding(string Id, string Text, IReadOnlyList<(Month From, Month To)> Months, double Share)
{
    /// <summary>The characters that stand for it on a plate, "worn" or "nothing"; empty when no plate is drawn.</summary>
    public string LooksLike { get; init; } = "";
}

/// <summary>Another number, read in place of the right one.</summary>
/// <param name="Name">What it is: "paint batch number".</param>
/// <param name="Share">Share of readings.</param>
/// <param name="Shares">A share per finding that it leads to, adding up to 1.</param>
public sealed record Decoy(string Name, double Share, IReadOnlyList<double> Shares);
