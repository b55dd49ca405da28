using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <content>What happens with real bikes on the stand, and what the workshop makes of it.</content>
public abstract partial record LogEntry
{
    /// <summary>A real bike was put on the stand, or called in.</summary>
    /// <param name="Bike">Number of the bike on this file, from 1.</param>
    /// <param name="Person">Who takes it on, or null for nobody known.</param>
    /// <param name="Name">What it is called here: "blue folder".</param>
    /// <param name="Card">Number of the workshop's job card, or null for none.</param>
    /// <param name="Routine">True when the rule for routine bikes took it in, false for a puzzling one.</param>
    /// <param name="Channel">How it is seen for now.</param>
    /// <param name="Tools">Tools at hand: 1 eyes and hands, 2 also a rule or a tape, 3 also a caliper or special tools.</param>
    public sealed record BikePut(int Bike, string? Person, string Name, int? Card, bool Routine, Channel Channel, int Tools) : LogEntry;

    /// <summary>A question was put to a bike: what the customer wants, and from that the topic.</summary>
    /// <param name="Bike">Number of the bike.</param>
    /// <param name="Topic">Topic.</param>
    /// <param name="Version">Its version then.</param>
    /// <param name="Want">What the customer wants.</param>
    /// <param name="Provenance">Where the bike comes from, in this topic's words.</param>
    public sealed record BikeAsked(int Bike, string Topic, string Version, string Want, string Provenance) : LogEntry;

    /// <summary>How the bike is seen from now on, and with which tools: a caller brought it in.</summary>
    public sealed record BikeSeenBy(int Bike, Channel Channel, int Tools) : LogEntry;

    /// <summary>Something was found on a bike; hidden: it cannot be seen.</summary>
    /// <param name="Bike">Number of the bike.</param>
    /// <param name="Topic">The topic whose check it was.</param>
    /// <param name="Finding">What was found.</param>
    /// <param name="Words">Its words, where it tells line or build date: other questions on the bike share it when they use the same; else empty.</param>
    public sealed record BikeFound(int Bike, string Topic, Finding Finding, string Words) : LogEntry;

    /// <summary>A finding was taken back.</summary>
    /// <param name="Bike">Number of the bike.</param>
    /// <param name="Finding">Index of the finding among all of this bike, from 0.</param>
    public sealed record BikeStruck(int Bike, int Finding) : LogEntry;

    /// <summary>What was decided for an order line, with what the engine held at the time.</summary>
    /// <param name="Bike">Number of the bike.</param>
    /// <param name="Topic">Topic.</param>
    /// <param name="Version">Its version.</param>
    /// <param name="Line">Order line.</param>
    /// <param name="Choice">The choice.</param>
    /// <param name="Held">Beliefs of the parts asked about.</param>
    public sealed record BikeDecided(int Bike, string Topic, string Version, string Line, Choice Choice, IReadOnlyList<HeldBelief> Held) : LogEntry;

    /// <summary>What it really was, once the part was fitted. A later entry for the same topic replaces it.</summary>
    /// <param name="Bike">Number of the bike.</param>
    /// <param name="Topic">Topic.</param>
    /// <param name="Version">Its version.</param>
    /// <param name="Truth">What it really was.</param>
    /// <param name="Held">What the engine held when the order was decided; where nothing was decided, from all findings.</param>
    public sealed record BikeConfirmed(int Bike, string Topic, string Version, BikeTruth Truth, IReadOnlyList<HeldBelief> Held) : LogEntry;

    /// <summary>"This bike did not match": a line for the lead.</summary>
    public sealed record BikeQuestioned(int Bike, string? Person, string Topic, string Text) : LogEntry;

    /// <summary>The fixed rule by which bikes count as routine.</summary>
    /// <param name="Every">Every how-manieth job card, 0 for none.</param>
    /// <param name="WeekFrom">First of seven days in which everything counts, or null.</param>
    public sealed record RoutineRuleSet(int Every, DateOnly? WeekFrom) : LogEntry;

    /// <summary>The lead's own price and delay of a spare.</summary>
    /// <param name="Topic">Topic.</param>
    /// <param name="Spare">The spare.</param>
    /// <param name="Price">Price, in the workshop's money.</param>
    /// <param name="ReturnCost">What sending it back costs.</param>
    /// <param name="DelayDays">Days lost by a wrong order.</param>
    /// <param name="ReturnDays">Days within which the dealer takes it back.</param>
    public sealed record PriceSet(string Topic, string Spare, double Price, double ReturnCost, double DelayDays, int ReturnDays) : LogEntry;

    /// <summary>The lead answered a report of the inbox.</summary>
    /// <param name="Report">Number of the report, from 1, in the order of the log.</param>
    /// <param name="Answer">Accepted, asked back, refused.</param>
    /// <param name="By">Who answered.</param>
    /// <param name="Text">The answer.</param>
    /// <param name="Topic">The topic whose learners are told; empty for none.</param>
    /// <param name="Changes">Numbers of the changes that came of it.</param>
    public sealed record ReportAnswered(int Report, ReportAnswer Answer, string By, string Text, string Topic, IReadOnlyList<int> Changes) : LogEntry;

    /// <summary>Who sent a report said more.</summary>
    public sealed record ReportAdded(int Report, string Text) : LogEntry;

    /// <summary>A person was shown an answer or a change.</summary>
    public sealed record ReportShown(string Person, int Report) : LogEntry;

    /// <summary>The lead let learned figures count from now on.</summary>
    /// <param name="Topic">Topic.</param>
    /// <param name="What">Which figure: "event wheel-622 own".</param>
    /// <param name="Before">The figure before.</param>
    /// <param name="Now">The figure now.</param>
    /// <param name="Bikes">Routine bikes it was learned from.</param>
    /// <param name="Change">Number of the change in the workshop's copy.</param>
    public sealed record RateApproved(string Topic, string What, double Before, double Now, int Bikes, int Change) : LogEntry;

    /// <summary>A confirmed bike of another workshop was taken in.</summary>
    public sealed record CaseTaken(RealCase Case) : LogEntry;

    /// <summary>Somebody practised on a real bike; it counts for nothing.</summary>
    /// <param name="Person">Who, or null for nobody known.</param>
    /// <param name="Case">Key of the case.</param>
    /// <param name="Kind">What was said of the first part asked about; null for not settled.</param>
    /// <param name="Tenths">How sure, 0 to 10 of ten.</param>
    /// <param name="Right">True when it was right.</param>
    public sealed record RealTried(string? Person, string Case, string? Kind, int Tenths, bool Right) : LogEntry;
}
