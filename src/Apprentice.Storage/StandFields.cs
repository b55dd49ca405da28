using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>The values inside entries of real bikes as documents, and back.</summary>
static class StandFields
{
    public static BsonDocument Of(HeldBelief held) => new()
    {
        ["part"] = held.Part,
        ["settled"] = held.Settled,
        ["classes"] = AssessFields.Many(held.Classes, c => new BsonDocument { ["kinds"] = Texts(c.Kinds), ["belief"] = c.Belief }),
    };

    public static HeldBelief ToHeld(BsonDocument d) => new(
        d["part"].AsString, AssessFields.Many(d["classes"], c => new ClassBelief(Texts(c["kinds"]), c["belief"].AsDouble)), d["settled"].AsBoolean);

    public static BsonDocument Of(BikeTruth truth) => new()
    {
        ["parts"] = AssessFields.Many(truth.Parts, p => new BsonDocument { ["part"] = p.Part, ["kind"] = p.Kind }),
        ["events"] = Texts(truth.Events),
        ["line"] = truth.Line,
        ["built"] = truth.Built is { } month ? month.Index : BsonValue.Null,
    };

    public static BikeTruth ToTruth(BsonDocument d) => new(
        AssessFields.Many(d["parts"], p => new TruePart(p["part"].AsString, p["kind"].AsString)), Texts(d["events"]), JobFields.Text(d["line"]),
        d["built"].IsNull ? null : new Month(d["built"].AsInt32));

    public static BsonDocument Of(RealCase it) => new()
    {
        ["key"] = it.Key,
        ["from"] = it.From,
        ["topic"] = it.Topic,
        ["want"] = it.Want,
        ["provenance"] = it.Provenance,
        ["findings"] = AssessFields.Many(it.Findings, JobFields.Of),
        ["truth"] = Of(it.Truth),
    };

    public static RealCase ToCase(BsonDocument d) => new(
        d["key"].AsString, d["from"].AsString, d["topic"].AsString, d["want"].AsString, d["provenance"].AsString,
        AssessFields.Many(d["findings"], JobFields.ToFinding), ToTruth(d["truth"].AsDocument));

    static BsonArray Texts(IReadOnlyList<string> texts) => new(texts.Select(t => new BsonValue(t)));

    static string[] Texts(BsonValue value) => [.. value.AsArray.Select(t => t.AsString)];
}
