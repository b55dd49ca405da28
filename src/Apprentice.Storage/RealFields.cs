using Apprentice.Engine.Assessing;
using Apprentice.Engine.Notebook;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Real bikes of papers as documents, and back. What was written before there were any has none.</summary>
static class RealFields
{
    const string Field = "real";

    /// <summary>The real bikes of a document; none where the field is not there.</summary>
    public static IReadOnlyList<T> Many<T>(BsonDocument d, Func<BsonDocument, T> one) => d.ContainsKey(Field) ? AssessFields.Many(d[Field], one) : [];

    public static BsonDocument Of(RealJob job) => new() { ["place"] = job.Place, ["version"] = job.Version, ["part"] = job.Part, ["case"] = StandFields.Of(job.Case) };

    public static RealJob ToJob(BsonDocument d) => new(d["place"].AsInt32, d["version"].AsString, d["part"].AsString, StandFields.ToCase(d["case"].AsDocument));

    public static BsonDocument Of(SittingReal real) => new()
    {
        ["place"] = real.Place,
        ["opened"] = new BsonArray(real.Opened.Select(o => new BsonValue(o))),
        ["kind"] = real.Kind,
        ["tenths"] = real.Tenths is { } tenths ? tenths : BsonValue.Null,
    };

    public static SittingReal ToSitting(BsonDocument d) => new(d["place"].AsInt32)
    {
        Opened = [.. d["opened"].AsArray.Select(o => o.AsInt32)],
        Kind = JobFields.Text(d["kind"]),
        Tenths = d["tenths"].IsNull ? null : d["tenths"].AsInt32,
    };

    public static BsonDocument Of(RealMark mark) => new() { ["job"] = Of(mark.Job), ["sat"] = Of(mark.Sat), ["found"] = AssessFields.Many(mark.Found, JobFields.Of), ["held"] = Held(mark.Opened), ["all"] = Held(mark.All) };

    public static RealMark ToMark(BsonDocument d) => new(
        ToJob(d["job"].AsDocument), ToSitting(d["sat"].AsDocument), AssessFields.Many(d["found"], JobFields.ToFinding), ToHeld(d["held"]), ToHeld(d["all"]));

    static BsonValue Held(HeldBelief? held) => held is null ? BsonValue.Null : StandFields.Of(held);

    static HeldBelief? ToHeld(BsonValue held) => held.IsNull ? null : StandFields.ToHeld(held.AsDocument);
}
