using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Entries of real bikes, the inbox and the lead's list as fields of a document.</summary>
static class StandDocument
{
    /// <summary>The fields of an entry, or null when it is another kind.</summary>
    public static BsonDocument? Fields(LogEntry entry) => entry switch
    {
        LogEntry.BikePut e => new()
        {
            ["bike"] = e.Bike,
            ["person"] = e.Person,
            ["name"] = e.Name,
            ["card"] = Whole(e.Card),
            ["routine"] = e.Routine,
            ["channel"] = e.Channel.ToString(),
            ["tools"] = e.Tools,
        },
        LogEntry.BikeAsked e => new() { ["bike"] = e.Bike, ["topic"] = e.Topic, ["version"] = e.Version, ["want"] = e.Want, ["provenance"] = e.Provenance },
        LogEntry.BikeSeenBy e => new() { ["bike"] = e.Bike, ["channel"] = e.Channel.ToString(), ["tools"] = e.Tools },
        LogEntry.BikeFound e => new() { ["bike"] = e.Bike, ["topic"] = e.Topic, ["finding"] = JobFields.Of(e.Finding), ["words"] = e.Words },
        LogEntry.BikeStruck e => new() { ["bike"] = e.Bike, ["finding"] = e.Finding },
        LogEntry.BikeDecided e => new()
        {
            ["bike"] = e.Bike,
            ["topic"] = e.Topic,
            ["version"] = e.Version,
            ["line"] = e.Line,
            ["choice"] = JobFields.Of(e.Choice),
            ["held"] = AssessFields.Many(e.Held, StandFields.Of),
        },
        LogEntry.BikeConfirmed e => new()
        {
            ["bike"] = e.Bike,
            ["topic"] = e.Topic,
            ["version"] = e.Version,
            ["truth"] = StandFields.Of(e.Truth),
            ["held"] = AssessFields.Many(e.Held, StandFields.Of),
        },
        LogEntry.BikeQuestioned e => new() { ["bike"] = e.Bike, ["person"] = e.Person, ["topic"] = e.Topic, ["text"] = e.Text },
        _ => LeadFields(entry),
    };

    /// <summary>The entry of a kind's name, or null when it is another kind.</summary>
    public static LogEntry? What(string kind, BsonDocument d) => kind switch
    {
        nameof(LogEntry.BikePut) => new LogEntry.BikePut(
            d["bike"].AsInt32, JobFields.Text(d["person"]), d["name"].AsString, Whole(d["card"]), d["routine"].AsBoolean, ToChannel(d), d["tools"].AsInt32),
        nameof(LogEntry.BikeAsked) => new LogEntry.BikeAsked(d["bike"].AsInt32, d["topic"].AsString, d["version"].AsString, d["want"].AsString, d["provenance"].AsString),
        nameof(LogEntry.BikeSeenBy) => new LogEntry.BikeSeenBy(d["bike"].AsInt32, ToChannel(d), d["tools"].AsInt32),
        nameof(LogEntry.BikeFound) => new LogEntry.BikeFound(d["bike"].AsInt32, d["topic"].AsString, JobFields.ToFinding(d["finding"].AsDocument), d["words"].AsString),
        nameof(LogEntry.BikeStruck) => new LogEntry.BikeStruck(d["bike"].AsInt32, d["finding"].AsInt32),
        nameof(LogEntry.BikeDecided) => new LogEntry.BikeDecided(
            d["bike"].AsInt32, d["topic"].AsString, d["version"].AsString, d["line"].AsString, JobFields.ToChoice(d["choice"].AsDocument), AssessFields.Many(d["held"], StandFields.ToHeld)),
        nameof(LogEntry.BikeConfirmed) => new LogEntry.BikeConfirmed(
            d["bike"].AsInt32, d["topic"].AsString, d["version"].AsString, StandFields.ToTruth(d["truth"].AsDocument), AssessFields.Many(d["held"], StandFields.ToHeld)),
        nameof(LogEntry.BikeQuestioned) => new LogEntry.BikeQuestioned(d["bike"].AsInt32, JobFields.Text(d["person"]), d["topic"].AsString, d["text"].AsString),
        _ => LeadWhat(kind, d),
    };

    static BsonDocument? LeadFields(LogEntry entry) => entry switch
    {
        LogEntry.RoutineRuleSet e => new() { ["every"] = e.Every, ["from"] = e.WeekFrom?.ToString("O") },
        LogEntry.PriceSet e => new()
        {
            ["topic"] = e.Topic,
            ["spare"] = e.Spare,
            ["price"] = e.Price,
            ["return"] = e.ReturnCost,
            ["delay"] = e.DelayDays,
            ["days"] = e.ReturnDays,
        },
        LogEntry.ReportAnswered e => new()
        {
            ["report"] = e.Report,
            ["answer"] = e.Answer.ToString(),
            ["by"] = e.By,
            ["text"] = e.Text,
            ["topic"] = e.Topic,
            ["changes"] = new BsonArray(e.Changes.Select(c => new BsonValue(c))),
        },
        LogEntry.ReportAdded e => new() { ["report"] = e.Report, ["text"] = e.Text },
        LogEntry.ReportShown e => new() { ["person"] = e.Person, ["report"] = e.Report },
        LogEntry.RateApproved e => new()
        {
            ["topic"] = e.Topic,
            ["what"] = e.What,
            ["before"] = e.Before,
            ["now"] = e.Now,
            ["bikes"] = e.Bikes,
            ["change"] = e.Change,
        },
        LogEntry.CaseTaken e => new() { ["case"] = StandFields.Of(e.Case) },
        LogEntry.RealTried e => new() { ["person"] = e.Person, ["case"] = e.Case, ["of"] = e.Kind, ["tenths"] = e.Tenths, ["right"] = e.Right },
        _ => null,
    };

    static LogEntry? LeadWhat(string kind, BsonDocument d) => kind switch
    {
        nameof(LogEntry.RoutineRuleSet) => new LogEntry.RoutineRuleSet(d["every"].AsInt32, JobFields.Text(d["from"]) is { } from ? DateOnly.ParseExact(from, "O") : null),
        nameof(LogEntry.PriceSet) => new LogEntry.PriceSet(
            d["topic"].AsString, d["spare"].AsString, d["price"].AsDouble, d["return"].AsDouble, d["delay"].AsDouble, d["days"].AsInt32),
        nameof(LogEntry.ReportAnswered) => new LogEntry.ReportAnswered(
            d["report"].AsInt32, Enum.Parse<ReportAnswer>(d["answer"].AsString), d["by"].AsString, d["text"].AsString, d["topic"].AsString,
            [.. d["changes"].AsArray.Select(c => c.AsInt32)]),
        nameof(LogEntry.ReportAdded) => new LogEntry.ReportAdded(d["report"].AsInt32, d["text"].AsString),
        nameof(LogEntry.ReportShown) => new LogEntry.ReportShown(d["person"].AsString, d["report"].AsInt32),
        nameof(LogEntry.RateApproved) => new LogEntry.RateApproved(
            d["topic"].AsString, d["what"].AsString, d["before"].AsDouble, d["now"].AsDouble, d["bikes"].AsInt32, d["change"].AsInt32),
        nameof(LogEntry.CaseTaken) => new LogEntry.CaseTaken(StandFields.ToCase(d["case"].AsDocument)),
        nameof(LogEntry.RealTried) => new LogEntry.RealTried(
            JobFields.Text(d["person"]), d["case"].AsString, JobFields.Text(d["of"]), d["tenths"].AsInt32, d["right"].AsBoolean),
        _ => null,
    };

    static BsonValue Whole(int? number) => number is { } n ? n : BsonValue.Null;

    static int? Whole(BsonValue value) => value.IsNull ? null : value.AsInt32;

    static Channel ToChannel(BsonDocument d) => Enum.Parse<Channel>(d["channel"].AsString);
}
