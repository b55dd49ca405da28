using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Entries of a sitting as fields of a document.</summary>
static class SittingDocument
{
    /// <summary>The fields of an entry, or null when it is another kind.</summary>
    public static BsonDocument? Fields(LogEntry entry) => entry switch
    {
        LogEntry.SittingStarted e => new()
        {
            ["paper"] = e.Paper,
            ["permission"] = e.Permission,
            ["candidate"] = e.Candidate,
            ["number"] = e.Number,
            ["by"] = e.ConfirmedBy,
            ["jobs"] = e.Jobs,
            ["minutes"] = e.MinutesPerJob,
            ["times"] = e.Multiplier,
            ["plain"] = e.Plain,
        },
        LogEntry.SittingOpened e => new() { ["paper"] = e.Paper, ["place"] = e.Place },
        LogEntry.SittingTicked e => new() { ["paper"] = e.Paper },
        LogEntry.SittingLooked e => new() { ["paper"] = e.Paper, ["place"] = e.Place, ["look"] = JobFields.Of(e.Look), ["shown"] = JobFields.Of(e.Shown) },
        LogEntry.SittingAnswered e => new() { ["paper"] = e.Paper, ["place"] = e.Place, ["given"] = JobFields.Of(e.Given) },
        LogEntry.SittingSkipped e => new() { ["paper"] = e.Paper, ["place"] = e.Place },
        LogEntry.SittingStopped e => new() { ["paper"] = e.Paper, ["place"] = e.Place is { } place ? place : BsonValue.Null, ["reason"] = e.Reason },
        LogEntry.SittingResumed e => new() { ["paper"] = e.Paper },
        LogEntry.SittingWidened e => new() { ["paper"] = e.Paper, ["jobs"] = e.Jobs },
        LogEntry.SittingEnded e => new() { ["paper"] = e.Paper, ["why"] = e.Why.ToString() },
        LogEntry.SittingRealLooked e => new() { ["paper"] = e.Paper, ["place"] = e.Place, ["check"] = e.Check },
        LogEntry.SittingRealAnswered e => new() { ["paper"] = e.Paper, ["place"] = e.Place, ["said"] = e.Kind, ["tenths"] = e.Tenths },
        LogEntry.SittingRealEnded e => new() { ["paper"] = e.Paper },
        _ => null,
    };

    /// <summary>The entry of a kind's name, or null when it is another kind.</summary>
    public static LogEntry? What(string kind, BsonDocument d) => kind switch
    {
        nameof(LogEntry.SittingStarted) => new LogEntry.SittingStarted(
            d["paper"].AsString, d["permission"].AsString, d["candidate"].AsString, d["number"].AsInt32, d["by"].AsString, d["jobs"].AsInt32,
            d["minutes"].AsDouble, d["times"].AsDouble, d["plain"].AsBoolean),
        nameof(LogEntry.SittingOpened) => new LogEntry.SittingOpened(d["paper"].AsString, d["place"].AsInt32),
        nameof(LogEntry.SittingTicked) => new LogEntry.SittingTicked(d["paper"].AsString),
        nameof(LogEntry.SittingLooked) => new LogEntry.SittingLooked(
            d["paper"].AsString, d["place"].AsInt32, JobFields.ToLook(d["look"].AsDocument), JobFields.ToFinding(d["shown"].AsDocument)),
        nameof(LogEntry.SittingAnswered) => new LogEntry.SittingAnswered(d["paper"].AsString, d["place"].AsInt32, JobFields.ToGiven(d["given"].AsDocument)),
        nameof(LogEntry.SittingSkipped) => new LogEntry.SittingSkipped(d["paper"].AsString, d["place"].AsInt32),
        nameof(LogEntry.SittingStopped) => new LogEntry.SittingStopped(d["paper"].AsString, d["place"].IsNull ? null : d["place"].AsInt32, d["reason"].AsString),
        nameof(LogEntry.SittingResumed) => new LogEntry.SittingResumed(d["paper"].AsString),
        nameof(LogEntry.SittingWidened) => new LogEntry.SittingWidened(d["paper"].AsString, d["jobs"].AsInt32),
        nameof(LogEntry.SittingEnded) => new LogEntry.SittingEnded(d["paper"].AsString, Enum.Parse<SittingEnd>(d["why"].AsString)),
        nameof(LogEntry.SittingRealLooked) => new LogEntry.SittingRealLooked(d["paper"].AsString, d["place"].AsInt32, d["check"].AsInt32),
        nameof(LogEntry.SittingRealAnswered) => new LogEntry.SittingRealAnswered(d["paper"].AsString, d["place"].AsInt32, JobFields.Text(d["said"]), d["tenths"].AsInt32),
        nameof(LogEntry.SittingRealEnded) => new LogEntry.SittingRealEnded(d["paper"].AsString),
        _ => null,
    };
}
