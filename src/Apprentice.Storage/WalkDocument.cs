using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Entries of a walk round an own bike as fields of a document.</summary>
static class WalkDocument
{
    /// <summary>The fields of an entry, or null when it is another kind.</summary>
    public static BsonDocument? Fields(LogEntry entry) => entry switch
    {
        LogEntry.WalkBegun e => new()
        {
            ["person"] = e.Person,
            ["topic"] = e.Topic,
            ["version"] = e.Version,
            ["want"] = e.Want,
            ["provenance"] = e.Provenance,
            ["tools"] = e.Tools,
        },
        LogEntry.WalkFound e => new() { ["person"] = e.Person, ["finding"] = JobFields.Of(e.Finding) },
        LogEntry.WalkStruck e => new() { ["person"] = e.Person },
        LogEntry.WalkEnded e => new() { ["person"] = e.Person },
        _ => null,
    };

    /// <summary>The entry of a kind's name, or null when it is another kind.</summary>
    public static LogEntry? What(string kind, BsonDocument d) => kind switch
    {
        nameof(LogEntry.WalkBegun) => new LogEntry.WalkBegun(
            JobFields.Text(d["person"]), d["topic"].AsString, d["version"].AsString, d["want"].AsString, d["provenance"].AsString, d["tools"].AsInt32),
        nameof(LogEntry.WalkFound) => new LogEntry.WalkFound(JobFields.Text(d["person"]), JobFields.ToFinding(d["finding"].AsDocument)),
        nameof(LogEntry.WalkStruck) => new LogEntry.WalkStruck(JobFields.Text(d["person"])),
        nameof(LogEntry.WalkEnded) => new LogEntry.WalkEnded(JobFields.Text(d["person"])),
        _ => null,
    };
}
