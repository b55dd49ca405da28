using System.Globalization;
using Apprentice.Engine.Assessing;
using LiteDB;

namespace Apprentice.Storage.Papers;

/// <summary>Papers and what was sat as documents, and back.</summary>
static class PaperFields
{
    public static BsonDocument Of(Paper paper) => new()
    {
        ["paper"] = paper.Id,
        ["candidate"] = paper.Candidate,
        ["number"] = paper.Number,
        ["permission"] = paper.Permission,
        ["rule"] = AssessFields.Of(paper.Rule),
        ["minutes"] = paper.MinutesPerJob,
        ["jobs"] = AssessFields.Many(paper.Jobs, Of),
        ["again"] = AssessFields.Many(paper.SafetyAgain, Of),
        ["real"] = AssessFields.Many(paper.Real, RealFields.Of),
    };

    public static Paper ToPaper(BsonDocument d) => new()
    {
        Id = d["paper"].AsString,
        Candidate = d["candidate"].AsString,
        Number = d["number"].AsInt32,
        Permission = d["permission"].AsString,
        Rule = AssessFields.ToRule(d["rule"].AsDocument),
        MinutesPerJob = d["minutes"].AsDouble,
        Jobs = AssessFields.Many(d["jobs"], ToJob),
        SafetyAgain = AssessFields.Many(d["again"], ToJob),
        Real = RealFields.Many(d, RealFields.ToJob),
    };

    public static BsonDocument Of(PaperJob job) => new() { ["place"] = job.Place, ["family"] = AssessFields.Of(job.Family), ["version"] = job.Version, ["seed"] = unchecked((long)job.Seed) };

    public static PaperJob ToJob(BsonDocument d) => new(d["place"].AsInt32, AssessFields.ToFamily(d["family"].AsDocument), d["version"].AsString, unchecked((ulong)d["seed"].AsInt64));

    public static BsonDocument Of(SittingJob job) => new()
    {
        ["place"] = job.Place,
        ["fresh"] = job.Fresh,
        ["looks"] = AssessFields.Many(job.Looks, l => JobFields.Of(l)),
        ["given"] = job.Given is { } given ? JobFields.Of(given) : BsonValue.Null,
    };

    public static SittingJob ToSitting(BsonDocument d) => new(d["place"].AsInt32)
    {
        Fresh = d["fresh"].AsInt32,
        Looks = AssessFields.Many(d["looks"], JobFields.ToLook),
        Given = d["given"].IsNull ? null : JobFields.ToGiven(d["given"].AsDocument),
    };

    public static BsonDocument Of(SatPaper sat) => new()
    {
        ["paper"] = sat.Paper,
        ["candidate"] = sat.Candidate,
        ["number"] = sat.Number,
        ["places"] = sat.Places,
        ["jobs"] = AssessFields.Many(sat.Jobs, Of),
        ["used"] = sat.Used.Ticks,
        ["ended"] = sat.Ended.ToString("O"),
        ["why"] = sat.Why.ToString(),
        ["stops"] = AssessFields.Many(sat.Stops, s => s),
        ["by"] = sat.ConfirmedBy,
        ["times"] = sat.Multiplier,
        ["plain"] = sat.Plain,
        ["real"] = AssessFields.Many(sat.Real, RealFields.Of),
    };

    public static SatPaper ToSat(BsonDocument d) => new(
        d["paper"].AsString, d["candidate"].AsString, d["number"].AsInt32, d["places"].AsInt32, AssessFields.Many(d["jobs"], ToSitting), TimeSpan.FromTicks(d["used"].AsInt64),
        DateTimeOffset.ParseExact(d["ended"].AsString, "O", null, DateTimeStyles.RoundtripKind), Enum.Parse<SittingEnd>(d["why"].AsString), [.. d["stops"].AsArray.Select(s => s.AsString)])
    {
        ConfirmedBy = d["by"].AsString,
        Multiplier = d["times"].AsDouble,
        Plain = d["plain"].AsBoolean,
        Real = RealFields.Many(d, RealFields.ToSitting),
    };
}
