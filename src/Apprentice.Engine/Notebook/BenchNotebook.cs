using System.Collections.Immutable;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>Real bikes, the inbox and the lead's list, as the log tells them. Always derived, never stored.</summary>
public sealed record BenchNotebook
{
    const int Week = 7;

    /// <summary>An empty notebook.</summary>
    public static BenchNotebook Empty { get; } = new();

    /// <summary>Bikes, oldest first; bike n is at index n − 1.</summary>
    public ImmutableList<Bike> Bikes { get; private init; } = [];

    /// <summary>Reports of the inbox, oldest first; report n is at index n − 1.</summary>
    public ImmutableList<Report> Reports { get; private init; } = [];

    /// <summary>The rule for routine bikes, or null when none was set: then every tenth job card.</summary>
    public LogEntry.RoutineRuleSet? Rule { get; private init; }

    /// <summary>The lead's own prices, by topic and spare.</summary>
    public ImmutableDictionary<(string Topic, string Spare), LogEntry.PriceSet> Prices { get; private init; } = ImmutableDictionary<(string, string), LogEntry.PriceSet>.Empty;

    /// <summary>What people were shown.</summary>
    public ImmutableHashSet<(string Person, int Report)> Shown { get; private init; } = [];

    /// <summary>Learned figures that the lead let count, oldest first.</summary>
    public ImmutableList<LogEntry.RateApproved> Approved { get; private init; } = [];

    /// <summary>Cases of other workshops.</summary>
    public ImmutableList<RealCase> Taken { get; private init; } = [];

    /// <summary>Practice on real bikes.</summary>
    public ImmutableList<LogEntry.RealTried> Tried { get; private init; } = [];

    ImmutableDictionary<string, Walk> Walks { get; init; } = ImmutableDictionary<string, Walk>.Empty;

    /// <summary>The walk round an own bike that a person has not ended, or null.</summary>
    /// <param name="person">A name, or null for nobody known.</param>
    public Walk? WalkOf(string? person) => Walks.GetValueOrDefault(Walk.Key(person));

    /// <summary>The number of the next bike.</summary>
    public int NextBike => Bikes.Count + 1;

    /// <summary>A bike by its number, or null.</summary>
    public Bike? Find(int bike) => bike >= 1 && bike <= Bikes.Count ? Bikes[bike - 1] : null;

    /// <summary>True when the fixed rule takes a bike in as routine. Nobody chooses: who chose the bike would choose the figures.</summary>
    /// <param name="card">Number of its job card, or null.</param>
    /// <param name="day">The day it comes.</param>
    public bool IsRoutine(int? card, DateOnly day)
    {
        var rule = Rule ?? new LogEntry.RoutineRuleSet(10, null);
        if (rule.WeekFrom is { } from && day >= from && day < from.AddDays(Week)) return true;
        return rule.Every > 0 && card is { } number && number % rule.Every == 0;
    }

    /// <summary>A topic with the lead's own prices and delays in place of the shipped ones; its version stays, since no belief depends on them.</summary>
    public Topic Priced(Topic topic) => topic.Spares.All(s => !Prices.ContainsKey((topic.Id, s.Id))) ? topic : topic with
    {
        Spares = [.. topic.Spares.Select(s => Prices.TryGetValue((topic.Id, s.Id), out var p) ? s with { Price = p.Price, ReturnCost = p.ReturnCost, DelayDays = p.DelayDays } : s)],
    };

    /// <summary>Days within which a spare goes back, or null when the lead's list does not say.</summary>
    public int? ReturnDays(string topic, string spare) => Prices.TryGetValue((topic, spare), out var price) ? price.ReturnDays : null;

    /// <summary>This notebook with one more entry.</summary>
    /// <exception cref="ArgumentException">The entry speaks of a bike or report that is not there.</exception>
    public BenchNotebook With(Logged entry) => entry.What switch
    {
        LogEntry.BikePut put => this with { Bikes = Bikes.Add(new Bike(put, entry.At)) },
        LogEntry.BikeAsked e => Changed(e.Bike, entry),
        LogEntry.BikeSeenBy e => Changed(e.Bike, entry),
        LogEntry.BikeFound e => Changed(e.Bike, entry),
        LogEntry.BikeStruck e => Changed(e.Bike, entry),
        LogEntry.BikeDecided e => Changed(e.Bike, entry),
        LogEntry.BikeConfirmed e => Changed(e.Bike, entry),
        LogEntry.Questioned or LogEntry.LessonQuestioned or LogEntry.BikeQuestioned =>
            this with { Reports = Reports.Add(new Report(Reports.Count + 1, entry.At, entry.What)) },
        LogEntry.ReportAnswered e => Reported(e.Report, r => r with { Answers = [.. r.Answers, (e, entry.At)] }),
        LogEntry.ReportAdded e => Reported(e.Report, r => r with { More = [.. r.More, e.Text] }),
        LogEntry.ReportShown e => this with { Shown = Shown.Add((e.Person, e.Report)) },
        LogEntry.RoutineRuleSet rule => this with { Rule = rule },
        LogEntry.PriceSet price => this with { Prices = Prices.SetItem((price.Topic, price.Spare), price) },
        LogEntry.RateApproved approved => this with { Approved = Approved.Add(approved) },
        LogEntry.CaseTaken taken => this with { Taken = Taken.RemoveAll(c => c.Key == taken.Case.Key).Add(taken.Case) },
        LogEntry.RealTried tried => this with { Tried = Tried.Add(tried) },
        LogEntry.WalkBegun or LogEntry.WalkFound or LogEntry.WalkStruck or LogEntry.WalkEnded => this with { Walks = Walk.With(Walks, entry.What) },
        _ => this,
    };

    /// <summary>This with the names of people as they are now.</summary>
    internal BenchNotebook Renamed(CalledNow called) => this with
    {
        Bikes = [.. Bikes.Select(b => b with { Put = called.Same(b.Put) })],
        Reports = [.. Reports.Select(r => r with { What = called.Of(r.What) })],
        Shown = [.. Shown.Select(s => (called.Of(s.Person), s.Report))],
        Tried = [.. Tried.Select(called.Same)],
    };

    BenchNotebook Changed(int bike, Logged entry) => Find(bike) is { } known
        ? this with { Bikes = Bikes.SetItem(bike - 1, known.With(entry)) }
        : throw new ArgumentException($"Bike {bike} was never put on the stand.", nameof(bike));

    BenchNotebook Reported(int report, Func<Report, Report> change) => report >= 1 && report <= Reports.Count
        ? this with { Reports = Reports.SetItem(report - 1, change(Reports[report - 1])) }
        : throw new ArgumentException($"Report {report} was never sent.", nameof(report));
}
