using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Topics;

/// <summary>One identification question with all its data: how such bikes are built, what happens to them, what can be looked at, what can be ordered.</summary>
/// <remarks>Made by the topic reader, which has checked every reference, share and range; the engine does not check again. Lists keep the order of the file.</remarks>
public sealed record Topic
{
    /// <summary>Short name in commands and files: lower case, digits and hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Title on screens.</summary>
    public required string Title { get; init; }

    /// <summary>The question in the trade's words: "which bar is fitted?".</summary>
    public required string Question { get; init; }

    /// <summary>Hash of the text with LF line ends and the engine's revision: the same version makes the same cases.</summary>
    public required string Version { get; init; }

    /// <summary>Where its bikes come from, each a population with its own rates. At least one; the first is the default.</summary>
    public required IReadOnlyList<Provenance> Provenances { get; init; }

    /// <summary>Model lines, or sorts of bike for a topic without makers' lines.</summary>
    public required IReadOnlyList<Line> Lines { get; init; }

    /// <summary>Shares of build years; empty for a topic without dates.</summary>
    public required IReadOnlyList<YearShare> Years { get; init; }

    /// <summary>Parts that bear clues, hosts before the parts that sit on them.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>What left the maker together, by line and date.</summary>
    public required IReadOnlyList<Package> Packages { get; init; }

    /// <summary>What can have happened since, in the order in which it acts: a later one overrules.</summary>
    public required IReadOnlyList<BikeEvent> Events { get; init; }

    /// <summary>Kinds that cannot be fitted to a kind of their host.</summary>
    public required IReadOnlyList<FitRule> FitRules { get; init; }

    /// <summary>True sizes that readings share.</summary>
    public required IReadOnlyList<Dimension> Dimensions { get; init; }

    /// <summary>What must come off before a check, and how long that takes.</summary>
    public required IReadOnlyList<Access> Accesses { get; init; }

    /// <summary>What can be looked at, in the order of the bench.</summary>
    public required IReadOnlyList<Clue> Clues { get; init; }

    /// <summary>What is told at the counter or on the phone before anybody looks.</summary>
    public required IReadOnlyList<Opening> Openings { get; init; }

    /// <summary>What customers come for.</summary>
    public required IReadOnlyList<Want> Wants { get; init; }

    /// <summary>What can be ordered.</summary>
    public required IReadOnlyList<Spare> Spares { get; init; }

    /// <summary>Named ways in which the evidence misleads.</summary>
    public required IReadOnlyList<Pitfall> Pitfalls { get; init; }

    /// <summary>Sources of the figures, by key.</summary>
    public required IReadOnlyList<Source> Sources { get; init; }

    /// <summary>Sizes as published, to be looked up: more than the kinds of this topic. Belief does not depend on them.</summary>
    public IReadOnlyList<PublishedSize> Published { get; init; } = [];

    /// <summary>What time, a day of waiting and a question to the lead cost.</summary>
    public required Costs Costs { get; init; }

    /// <summary>Pictures of parts; nothing is reckoned from them.</summary>
    public IReadOnlyList<TopicDrawing> Drawings { get; init; } = [];

    /// <summary>draft, checked or in use.</summary>
    public TopicState State { get; init; } = TopicState.Draft;

    /// <summary>By whom or against what it was checked, and when; empty for a draft.</summary>
    public string CheckedBy { get; init; } = "";

    /// <summary>Where the nominal of a size comes from for a kind of its part, or null when there is no such size or kind.</summary>
    /// <param name="size">Short name of the size.</param>
    /// <param name="kind">Short name of the kind.</param>
    public string? SourceOf(string size, string kind)
    {
        if (Dimensions.FirstOrDefault(d => d.Id == size) is not { } it) return null;
        var at = Parts.First(p => p.Id == it.Part).Kinds.ToList().FindIndex(k => k.Id == kind);
        return at < 0 ? null : it.SourceOf(at);
    }
}

/// <summary>How far a topic may be used: a draft only for practice.</summary>
public enum TopicState
{
    /// <summary>Practice only, and marked so.</summary>
    Draft,

    /// <summary>Checked by a person or against sources.</summary>
    Checked,

    /// <summary>Checked, and the workshop uses it for papers.</summary>
    InUse,
}

/// <summary>Where a bike comes from: a population with its own shares of lines, years and events.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name on screens: "own customer".</param>
/// <param name="Card">What the job card says of the bike: "second-hand, bought last week".</param>
public sealed record Provenance(string Id, string Name, string Card)
{
    /// <summary>For bikes that the workshop asked about because they puzzled somebody: the provenance whose figures hold where they have none of their own. Null for all others.</summary>
    public string? Like { get; init; }

    /// <summary>Source mark of the figures of its own; blank where they are those of the rows.</summary>
    public string FiguresFrom { get; init; } = "";

    /// <summary>True for bikes that somebody picked because they puzzle: for practice and real bikes. No paper uses them and no routine bike comes from them.</summary>
    public bool IsPuzzling => Like is not null;
}

/// <summary>A model line, or a sort of bike.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name on screens.</param>
/// <param name="Shares">Share of bikes per provenance, in the topic's order; each column adds up to 1.</param>
/// <param name="From">First month made, or null for from the start.</param>
/// <param name="To">Last month made, or null for until the end.</param>
/// <param name="Pitfall">The pitfall of a line that kept the old part, or null.</param>
/// <param name="PitfallFrom">From which month on that pitfall counts (the change that the line did not follow), or null for always.</param>
public sealed record Line(string Id, string Name, IReadOnlyList<double> Shares, Month? From, Month? To, string? Pitfall, Month? PitfallFrom);

/// <summary>The share of bikes built in one year, spread evenly over its months.</summary>
/// <param name="Year">Calendar year.</param>
/// <param name="Shares">Share per provenance, in the topic's order; need not add up to 1: each line takes the months in which it was made.</param>
public sealed record YearShare(int Year, IReadOnlyList<double> Shares);

/// <summary>A thing that bears clues.</summary>
public sealed record Part
{
    /// <summary>Short name.</summary>
    public required string Id { get; init; }

    /// <summary>Name on screens: "bar".</summary>
    public required string Name { get; init; }

    /// <summary>The question when it is asked: "Which bar is it?".</summary>
    public required string Question { get; init; }

    /// <summary>True when a job may ask for it.</summary>
    public required bool Asked { get; init; }

    /// <summary>What it can be, without "none of these", which is always one more and comes last.</summary>
    public required IReadOnlyList<Kind> Kinds { get; init; }

    /// <summary>The part on which it sits, or null. Hosts form a tree.</summary>
    public string? Host { get; init; }

    /// <summary>Probability of a kind that is not on the list; 0 for parts read off the build date.</summary>
    public double NonePrior { get; init; } = 0.02;

    /// <summary>Settle level: belief from which its order class counts as settled.</summary>
    public double SettleAt { get; init; } = 0.95;

    /// <summary>True when the kind is the group of build dates of the bike and not a thing on it.</summary>
    public bool IsDate { get; init; }
}

/// <summary>What a part can be.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name on screens: "low bar".</param>
/// <param name="Pitfall">Pitfall of another family that shares the look, or null.</param>
/// <param name="From">For date parts: first month of the group, else null.</param>
/// <param name="To">For date parts: last month of the group, else null.</param>
public sealed record Kind(string Id, string Name, string? Pitfall, Month? From, Month? To)
{
    /// <summary>The short name of "none of these" in commands, answers and cases.</summary>
    public const string NoneId = "none";
}

/// <summary>Parts that changed together in the factory.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Parts">The parts it sets. Each part belongs to exactly one package.</param>
/// <param name="Builds">What was fitted, by line and date.</param>
public sealed record Package(string Id, IReadOnlyList<string> Parts, IReadOnlyList<Build> Builds);

/// <summary>What a line fitted from a running change on. Several with the same line and window share by <see cref="Share"/>.</summary>
/// <param name="Lines">Lines it holds for; empty for all lines not named by another build of the package.</param>
/// <param name="From">The running change that brought it, or null for from the start.</param>
/// <param name="Kinds">A kind per part of the package.</param>
/// <param name="Share">Share among the builds of the same line and window; they add up to 1.</param>
public sealed record Build(IReadOnlyList<string> Lines, Window? From, IReadOnlyList<string> Kinds, double Share)
{
    /// <summary>Source mark of the months; blank where none is given.</summary>
    public string MonthsFrom { get; init; } = "";
}

/// <summary>A running change: the share of the new in month m is (m + ½ − Opens)/(Closes − Opens), held within 0 and 1.</summary>
/// <param name="Opens">First month with some new ones.</param>
/// <param name="Closes">First month with only new ones; equal to Opens for a change from one day to the next.</param>
/// <param name="Told">The month that people tell; a new one before it, or an old one after it, carries the pitfall.</param>
/// <param name="Pitfall">The pitfall of the running change, or null.</param>
public sealed record Window(Month Opens, Month Closes, Month Told, string? Pitfall);

/// <summary>Something that happened since the bike was built, at most once.</summary>
public sealed record BikeEvent
{
    /// <summary>Short name.</summary>
    public required string Id { get; init; }

    /// <summary>What happened, as a sentence: "lever, shifter and grips were changed together".</summary>
    public required string Story { get; init; }

    /// <summary>Its pitfall.</summary>
    public required string Pitfall { get; init; }

    /// <summary>Probability per provenance, in the topic's order.</summary>
    public required IReadOnlyList<double> Rates { get; init; }

    /// <summary>Source key of the rates: "judgement" or a source.</summary>
    public required string RateSource { get; init; }

    /// <summary>Lines it can happen to; empty for all.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>Built from this month on, or null.</summary>
    public Month? BuiltFrom { get; init; }

    /// <summary>Built up to this month, or null.</summary>
    public Month? BuiltTo { get; init; }

    /// <summary>What it does, in order.</summary>
    public required IReadOnlyList<Effect> Effects { get; init; }
}

/// <summary>What an event does to kinds and clues.</summary>
public abstract record Effect
{
    Effect()
    {
    }

    /// <summary>Puts another kind on.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="From">The kind it acts on, or null for any kind on the list.</param>
    /// <param name="To">Kinds with shares that add up to 1.</param>
    public sealed record ChangeKind(string Part, string? From, IReadOnlyList<(string Kind, double Share)> To) : Effect;

    /// <summary>Moves the true size: a faced shell, paint, wear.</summary>
    /// <param name="Dimension">The dimension.</param>
    /// <param name="Millimetres">Shift of the mean.</param>
    /// <param name="Spread">Standard deviation of the shift, mm; adds to the part spread as a root sum of squares.</param>
    public sealed record Shift(string Dimension, double Millimetres, double Spread) : Effect;

    /// <summary>Replaces what a read or seen clue shows, whatever the node: a plate lost, a marking painted over.</summary>
    /// <param name="Clue">The clue.</param>
    /// <param name="Shares">A share per finding, in the clue's order; they add up to 1.</param>
    public sealed record Overrule(string Clue, IReadOnlyList<double> Shares) : Effect;
}

/// <summary>A kind that cannot be fitted to a kind of its host.</summary>
/// <param name="Part">The part.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="HostKind">The host's kind that it does not fit.</param>
public sealed record FitRule(string Part, string Kind, string HostKind);

/// <summary>A true size of a part, shared by all readings of it: Normal(nominal of the kind, spread).</summary>
/// <param name="Id">Short name.</param>
/// <param name="Part">The part.</param>
/// <param name="Name">Name on screens: "stem length".</param>
/// <param name="Nominals">Nominal size in mm per kind of the part, in order; null where the kind says nothing (flat over the range).</param>
/// <param name="Spreads">Standard deviation of real parts in mm per kind, in order, greater than 0.</param>
/// <param name="Low">Lower end of the range, mm.</param>
/// <param name="High">Upper end of the range, mm.</param>
/// <param name="Source">Source keys of the size.</param>
public sealed record Dimension(
    string Id, string Part, string Name, IReadOnlyList<double?> Nominals, IReadOnlyList<double> Spreads, double Low, double High, string Source)
{
    /// <summary>Per kind where its nominal comes from when that is not the size's source; blank where it is. Empty: nowhere.</summary>
    public IReadOnlyList<string> Apart { get; init; } = [];

    /// <summary>Where the nominal of a kind comes from.</summary>
    /// <param name="kind">Index of a kind of the part.</param>
    public string SourceOf(int kind) => kind < Apart.Count && Apart[kind].Length > 0 ? Apart[kind] : Source;
}

/// <summary>What must come off before a check; counted once, however many checks need it.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name on screens: "tyre off".</param>
/// <param name="Minutes">Minutes.</param>
public sealed record Access(string Id, string Name, double Minutes);

/// <summary>What a customer tells first.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name on screens.</param>
/// <param name="Clues">Clues told, each with its channel.</param>
public sealed record Opening(string Id, string Name, IReadOnlyList<(string Clue, Channel Channel)> Clues);

/// <summary>What a customer comes for.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name in "What do you want to buy?".</param>
/// <param name="Says">Sentences a customer says; one is drawn for the job card.</param>
/// <param name="Asks">Parts that the order needs to know.</param>
/// <param name="OrderLines">Lines of the order.</param>
/// <param name="AlsoChanges">What else must change with it; may be empty.</param>
public sealed record Want(
    string Id, string Name, IReadOnlyList<string> Says, IReadOnlyList<string> Asks, IReadOnlyList<OrderLine> OrderLines, string AlsoChanges);

/// <summary>A line of an order, filled by one of its spares.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name on screens: "grips, pair".</param>
public sealed record OrderLine(string Id, string Name);

/// <summary>A part that can be ordered.</summary>
public sealed record Spare
{
    /// <summary>Short name.</summary>
    public required string Id { get; init; }

    /// <summary>The order line that it can fill.</summary>
    public required string OrderLine { get; init; }

    /// <summary>Name on screens.</summary>
    public required string Name { get; init; }

    /// <summary>What it fits: every named part must have one of the listed kinds; parts not named do not matter.</summary>
    public required IReadOnlyList<(string Part, IReadOnlyList<string> Kinds)> Fits { get; init; }

    /// <summary>Price, in the workshop's money.</summary>
    public required double Price { get; init; }

    /// <summary>What sending it back costs: carriage and the share of the price not refunded.</summary>
    public required double ReturnCost { get; init; }

    /// <summary>Days lost by a wrong order.</summary>
    public required double DelayDays { get; init; }

    /// <summary>True when a wrong one can hurt someone: brake, steering, thread.</summary>
    public required bool Hazard { get; init; }

    /// <summary>What would happen to the rider, in one sentence; empty when no hazard.</summary>
    public string HazardText { get; init; } = "";
}

/// <summary>A named way in which evidence misleads.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Class">Its class, the same over all topics.</param>
/// <param name="Text">What to know about it.</param>
public sealed record Pitfall(string Id, PitfallClass Class, string Text);

/// <summary>Classes of pitfalls.</summary>
public enum PitfallClass
{
    /// <summary>A part was swapped.</summary>
    SwappedPart,

    /// <summary>Parts were changed as a set.</summary>
    ChangedAsSet,

    /// <summary>Old and new left the factory in the same months.</summary>
    RunningChange,

    /// <summary>A line kept the old part.</summary>
    KeptOldLine,

    /// <summary>Another number looks like the right one.</summary>
    DecoyNumber,

    /// <summary>Measured from the wrong point.</summary>
    WrongDatum,

    /// <summary>Wear, paint, dirt, facing.</summary>
    Wear,

    /// <summary>The marking is not the size.</summary>
    MarkingNotSize,

    /// <summary>The neighbour size is near.</summary>
    NeighbourSize,

    /// <summary>A clue that only works with a second bike beside it.</summary>
    SideBySideOnly,

    /// <summary>Another family shares the look.</summary>
    OtherFamily,
}

/// <summary>Where a figure comes from.</summary>
/// <param name="Key">Key used beside figures. "judgement" and "common practice" need no entry.</param>
/// <param name="Text">The source in words.</param>
public sealed record Source(string Key, string Text);

/// <summary>A published size.</summary>
/// <param name="Name">What it is called: "26 x 1 3/8 (S-6)".</param>
/// <param name="Of">What it is the size of: "bead seat diameter".</param>
/// <param name="Value">The figure.</param>
/// <param name="Unit">Its unit: mm, in, tpi, degrees, teeth, …; empty for a count.</param>
/// <param name="Source">Source mark.</param>
public sealed record PublishedSize(string Name, string Of, double Value, string Unit, string Source);

/// <summary>What time costs. Judgement, editable by the workshop.</summary>
/// <param name="MinuteCost">Money a bench minute.</param>
/// <param name="DayCost">Money a day of waiting for the customer's bike.</param>
/// <param name="AskCost">Money for a question to the lead, its wait included.</param>
public sealed record Costs(double MinuteCost, double DayCost, double AskCost);
