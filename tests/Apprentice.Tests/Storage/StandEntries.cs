using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Storage;

/// <summary>An entry of each kind around real bikes.</summary>
static class StandEntries
{
    static readonly HeldBelief[] Held = [new("bar", [new ClassBelief(["low", "mid"], 0.1 + 0.2), new ClassBelief(["none"], 0.7)], Settled: true)];

    static readonly BikeTruth Truth = new([new TruePart("bar", "low"), new TruePart("stem", "none")], ["set-fitted"], "town", Month.Of(2014, 6));

    public static LogEntry[] All =>
    [
        new LogEntry.BikePut(1, "Sam", "blue, \"folder\"", 4430, Routine: true, Channel.Phone, 2),
        new LogEntry.BikePut(2, null, "red", null, Routine: false, Channel.Bench, 3),
        new LogEntry.BikeAsked(1, "bar", "v1", "grips", "own"),
        new LogEntry.BikeSeenBy(1, Channel.Bench, 1),
        new LogEntry.BikeFound(1, "bar", new Finding("grip", Channel.Photo, new Seen.Reading(0.1 + 0.2)), ""),
        new LogEntry.BikeFound(1, "bar", new Finding("name", Channel.Phone, new Seen.Named("town")), "Town"),
        new LogEntry.BikeFound(1, "bar", new Finding("plate", Channel.Bench, new Seen.Hidden()), ""),
        new LogEntry.BikeStruck(1, 0),
        new LogEntry.BikeDecided(1, "bar", "v1", "grips", new Choice.OrderTwo("a", "b"), Held),
        new LogEntry.BikeConfirmed(1, "bar", "v1", Truth, Held),
        new LogEntry.BikeConfirmed(2, "bar", "v1", new BikeTruth([], [], null, null), []),
        new LogEntry.BikeQuestioned(1, null, "bar", "longer than the list"),
        new LogEntry.WalkBegun(null, "bar", "v1", "grips", "own", 2),
        new LogEntry.WalkBegun("Sam", "bar", "v1", "grips", "own", 3),
        new LogEntry.WalkFound("Sam", new Finding("grip", Channel.Bench, new Seen.Reading(0.1 + 0.2))),
        new LogEntry.WalkFound(null, new Finding("plate", Channel.Bench, new Seen.Hidden())),
        new LogEntry.WalkStruck("Sam"),
        new LogEntry.WalkEnded(null),
        new LogEntry.RoutineRuleSet(10, null),
        new LogEntry.RoutineRuleSet(0, new DateOnly(2026, 11, 23)),
        new LogEntry.PriceSet("bar", "grips-long", 12.5, 3, 0.5, 14),
        new LogEntry.ReportAnswered(1, ReportAnswer.AskedBack, "Jo", "Which year?", "bar", [3, 4]),
        new LogEntry.ReportAdded(1, "2014"),
        new LogEntry.ReportShown("Sam", 1),
        new LogEntry.RateApproved("bar", "event set-fitted own", 0.1, 1.0 / 3, 40, 2),
        new LogEntry.CaseTaken(new RealCase("Yard: bike 2 bar", "Yard", "bar", "grips", "own", [new Finding("grip", Channel.Bench, new Seen.Reading(131))], Truth)),
        new LogEntry.RealTried("Sam", "bike 1 bar", null, 5, Right: false),
        new LogEntry.RealTried(null, "bike 1 bar", "low", 9, Right: true),
    ];
}
