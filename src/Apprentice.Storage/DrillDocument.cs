using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Entries of drills and of real parts as fields of a document.</summary>
static class DrillDocument
{
    /// <summary>The fields of an entry, or null when it is another kind.</summary>
    public static BsonDocument? Fields(LogEntry entry) => entry switch
    {
        LogEntry.DrillStarted e => new() { ["drill"] = e.Drill, ["person"] = e.Person, ["skill"] = e.Skill, ["seed"] = unchecked((long)e.Seed) },
        LogEntry.DrillAsked e => new()
        {
            ["drill"] = e.Drill,
            ["family"] = e.Item.Family,
            ["seed"] = unchecked((long)e.Item.Seed),
            ["back"] = e.Item.Back is { } back ? back : BsonValue.Null,
        },
        LogEntry.DrillAnswered e => new() { ["drill"] = e.Drill, ["given"] = e.Given, ["right"] = e.Right },
        LogEntry.DrillEnded e => new() { ["drill"] = e.Drill },
        LogEntry.RealPartRead e => new()
        {
            ["series"] = e.Series,
            ["person"] = e.Person,
            ["set"] = e.Set,
            ["part"] = e.Part,
            ["nth"] = e.Nth,
            ["mm"] = e.Millimetres,
            ["text"] = e.Text,
        },
        _ => null,
    };

    /// <summary>The entry of a kind's name, or null when it is another kind.</summary>
    public static LogEntry? What(string kind, BsonDocument d) => kind switch
    {
        nameof(LogEntry.DrillStarted) => new LogEntry.DrillStarted(
            d["drill"].AsInt32, JobFields.Text(d["person"]), d["skill"].AsString, unchecked((ulong)d["seed"].AsInt64)),
        nameof(LogEntry.DrillAsked) => new LogEntry.DrillAsked(
            d["drill"].AsInt32, new DrillDraw(d["family"].AsString, unchecked((ulong)d["seed"].AsInt64), d["back"].IsNull ? null : d["back"].AsInt32)),
        nameof(LogEntry.DrillAnswered) => new LogEntry.DrillAnswered(d["drill"].AsInt32, d["given"].AsString, d["right"].AsBoolean),
        nameof(LogEntry.DrillEnded) => new LogEntry.DrillEnded(d["drill"].AsInt32),
        nameof(LogEntry.RealPartRead) => new LogEntry.RealPartRead(
            d["series"].AsInt32, JobFields.Text(d["person"]), d["set"].AsString, d["part"].AsInt32, d["nth"].AsInt32, d["mm"].AsDouble, d["text"].AsString),
        _ => null,
    };
}
