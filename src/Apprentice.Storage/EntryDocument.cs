using System.Diagnostics;
using System.Globalization;
using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Entries as documents, written out field by field: times as ISO 8601 "O" text, seeds as 64-bit numbers.</summary>
static class EntryDocument
{
    /// <summary>The document of an entry, without a number.</summary>
    public static BsonDocument Of(Logged entry)
    {
        var document = Fields(entry.What);
        document["kind"] = entry.What.GetType().Name;
        document["at"] = entry.At.ToString("O");
        return document;
    }

    /// <summary>The entry of a document.</summary>
    /// <exception cref="LogException">The document is not one of ours.</exception>
    public static Logged Read(BsonDocument document)
    {
        try
        {
            var at = DateTimeOffset.ParseExact(document["at"].AsString, "O", null, DateTimeStyles.RoundtripKind);
            return new Logged(at, What(document));
        }
        catch (Exception e) when (e is InvalidCastException or FormatException or ArgumentException or OverflowException or NullReferenceException)
        {
            throw new LogException($"Entry {document["_id"].RawValue} of the log cannot be read. Keep the file and ask for help; nothing was changed.", e);
        }
    }

    static BsonDocument Fields(LogEntry entry) => entry switch
    {
        LogEntry.Began e => new() { ["luck"] = e.Luck },
        LogEntry.PersonAdded e => new() { ["name"] = e.Name, ["job"] = e.Job is { } job ? job : BsonValue.Null },
        LogEntry.PersonRenamed e => new() { ["person"] = e.Person, ["name"] = e.Name },
        LogEntry.SatDown e => new() { ["name"] = e.Name },
        LogEntry.JobStarted e => new()
        {
            ["job"] = e.Job,
            ["person"] = e.Person,
            ["topic"] = e.Topic,
            ["version"] = e.Version,
            ["seed"] = unchecked((long)e.Seed),
            ["request"] = JobFields.Of(e.Request),
            ["guided"] = e.Guided,
            ["step"] = e.Step,
        },
        LogEntry.Looked e => new() { ["job"] = e.Job, ["look"] = JobFields.Of(e.Look), ["shown"] = JobFields.Of(e.Shown) },
        LogEntry.Answered e => new() { ["job"] = e.Job, ["given"] = JobFields.Of(e.Given), ["verdict"] = JobFields.Of(e.Verdict), ["observed"] = LearningDocument.Of(e.Observed) },
        LogEntry.Questioned e => new() { ["job"] = e.Job, ["text"] = e.Text },
        LogEntry.LessonRead e => new() { ["person"] = e.Person, ["lesson"] = e.Lesson },
        LogEntry.LessonQuestioned e => new() { ["person"] = e.Person, ["lesson"] = e.Lesson, ["section"] = e.Section, ["text"] = e.Text },
        LogEntry.Paused e => new() { ["job"] = e.Job is { } job ? job : BsonValue.Null },
        LogEntry.WorkshopSet e => new() { ["name"] = e.Name, ["lead"] = e.Lead, ["topics"] = new BsonArray(e.Topics.Select(t => new BsonValue(t))) },
        _ => DrillDocument.Fields(entry) ?? LearningDocument.Fields(entry) ?? AssessDocument.Fields(entry) ?? StandDocument.Fields(entry) ?? WalkDocument.Fields(entry) ?? throw new UnreachableException(),
    };

    static LogEntry What(BsonDocument d) => d["kind"].AsString switch
    {
        nameof(LogEntry.Began) => new LogEntry.Began(d["luck"].AsInt64),
        nameof(LogEntry.PersonAdded) => new LogEntry.PersonAdded(d["name"].AsString, d["job"].IsNull ? null : d["job"].AsInt32),
        nameof(LogEntry.PersonRenamed) => new LogEntry.PersonRenamed(d["person"].AsString, d["name"].AsString),
        nameof(LogEntry.SatDown) => new LogEntry.SatDown(JobFields.Text(d["name"])),
        nameof(LogEntry.JobStarted) => new LogEntry.JobStarted(
            d["job"].AsInt32, JobFields.Text(d["person"]), d["topic"].AsString, d["version"].AsString, unchecked((ulong)d["seed"].AsInt64),
            JobFields.ToRequest(d["request"].AsDocument), d["guided"].AsBoolean, d["step"].AsInt32),
        nameof(LogEntry.Looked) => new LogEntry.Looked(
            d["job"].AsInt32, JobFields.ToLook(d["look"].AsDocument), JobFields.ToFinding(d["shown"].AsDocument)),
        nameof(LogEntry.Answered) => new LogEntry.Answered(
            d["job"].AsInt32, JobFields.ToGiven(d["given"].AsDocument), JobFields.ToVerdict(d["verdict"].AsDocument))
        {
            Observed = LearningDocument.ToObserved(d["observed"]),
        },
        nameof(LogEntry.Questioned) => new LogEntry.Questioned(d["job"].AsInt32, d["text"].AsString),
        nameof(LogEntry.LessonRead) => new LogEntry.LessonRead(JobFields.Text(d["person"]), d["lesson"].AsString),
        nameof(LogEntry.LessonQuestioned) => new LogEntry.LessonQuestioned(
            JobFields.Text(d["person"]), d["lesson"].AsString, d["section"].AsString, d["text"].AsString),
        nameof(LogEntry.Paused) => new LogEntry.Paused(d["job"].IsNull ? null : d["job"].AsInt32),
        nameof(LogEntry.WorkshopSet) => new LogEntry.WorkshopSet(
            d["name"].AsString, d["lead"].AsString, [.. d["topics"].AsArray.Select(t => t.AsString)]),
        var other => DrillDocument.What(other, d) ?? LearningDocument.What(other, d) ?? AssessDocument.What(other, d) ?? StandDocument.What(other, d) ?? WalkDocument.What(other, d) ?? throw new FormatException($"Unknown kind {other}."),
    };
}
