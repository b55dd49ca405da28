using Apprentice.Engine.Assessing;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>What marks rest on as documents, and back.</summary>
static class RecordFields
{
    public static BsonDocument Of(JobRecord r) => new()
    {
        ["family"] = AssessFields.Of(r.Family),
        ["fresh"] = r.Fresh,
        ["told"] = AssessFields.Many(r.Told, JobFields.Of),
        ["looks"] = AssessFields.Many(r.Looks, l => new BsonDocument { ["look"] = JobFields.Of(l.Look), ["shown"] = JobFields.Of(l.Shown) }),
        ["unused"] = AssessFields.Many(r.Unused, JobFields.Of),
        ["given"] = r.Given is { } given ? JobFields.Of(given) : BsonValue.Null,
        ["was"] = AssessFields.Many(r.Was, w => new BsonDocument { ["part"] = w.Part, ["kind"] = w.Kind }),
        ["story"] = AssessFields.Many(r.Story, s => s),
        ["judged"] = r.Judged is { } judged ? Of(judged) : BsonValue.Null,
        ["proof"] = AssessFields.Many(r.Proof, p => new BsonDocument { ["part"] = p.Part, ["leading"] = Of(p.Leading), ["settled"] = p.Settled }),
    };

    public static JobRecord ToRecord(BsonDocument d) => new()
    {
        Family = AssessFields.ToFamily(d["family"].AsDocument),
        Fresh = d["fresh"].AsInt32,
        Told = AssessFields.Many(d["told"], JobFields.ToFinding),
        Looks = AssessFields.Many(d["looks"], l => new LookTaken(JobFields.ToLook(l["look"].AsDocument), JobFields.ToFinding(l["shown"].AsDocument))),
        Unused = AssessFields.Many(d["unused"], JobFields.ToFinding),
        Given = d["given"].IsNull ? null : JobFields.ToGiven(d["given"].AsDocument),
        Was = AssessFields.Many(d["was"], w => (w["part"].AsString, w["kind"].AsString)),
        Story = Texts(d["story"]),
        Judged = d["judged"].IsNull ? null : ToJudged(d["judged"].AsDocument),
        Proof = AssessFields.Many(d["proof"], p => (p["part"].AsString, ToClass(p["leading"].AsDocument), p["settled"].AsBoolean)),
    };

    static BsonDocument Of(Judged j) => new()
    {
        ["parts"] = AssessFields.Many(j.Parts, Of),
        ["orders"] = AssessFields.Many(j.Orders, Of),
        ["safety"] = j.Safety.ToString(),
        ["stops"] = AssessFields.Many(j.Stops, s => s),
        ["early"] = j.Early,
        ["earlyMinutes"] = j.EarlyMinutes,
        ["thin"] = j.Thin is { } thin ? new BsonDocument { ["wrong"] = thin.Wrong, ["level"] = thin.Level } : BsonValue.Null,
    };

    static Judged ToJudged(BsonDocument d) => new(
        AssessFields.Many(d["parts"], ToPart), AssessFields.Many(d["orders"], ToOrder), Enum.Parse<SafetyFault>(d["safety"].AsString), Texts(d["stops"]),
        JobFields.Text(d["early"]), d["earlyMinutes"].AsDouble, d["thin"].IsNull ? null : (d["thin"]["wrong"].AsDouble, d["thin"]["level"].AsDouble));

    static BsonDocument Of(PartJudged p) => new()
    {
        ["part"] = p.Part,
        ["said"] = p.Said,
        ["classes"] = AssessFields.Many(p.Classes, Of),
        ["level"] = p.Level,
        ["mark"] = p.Mark,
        ["by"] = p.By.ToString(),
        ["own"] = p.Own,
    };

    static PartJudged ToPart(BsonDocument d) => new(
        d["part"].AsString, JobFields.Text(d["said"]), AssessFields.Many(d["classes"], ToClass), d["level"].AsDouble, d["mark"].AsDouble,
        Enum.Parse<JudgedBy>(d["by"].AsString), d["own"].AsBoolean);

    static BsonDocument Of(OrderJudged o) => new()
    {
        ["line"] = o.Line,
        ["chosen"] = JobFields.Of(o.Chosen),
        ["loss"] = Number(o.Loss),
        ["best"] = JobFields.Of(o.Best),
        ["least"] = o.Least,
        ["asking"] = o.Asking,
        ["wrong"] = o.Wrong,
        ["hurt"] = Number(o.HurtLevel),
        ["mark"] = o.Mark,
        ["by"] = o.By.ToString(),
        ["own"] = o.Own,
    };

    static OrderJudged ToOrder(BsonDocument d) => new(
        d["line"].AsString, JobFields.ToChoice(d["chosen"].AsDocument), ToNumber(d["loss"]), JobFields.ToChoice(d["best"].AsDocument), d["least"].AsDouble,
        d["asking"].AsDouble, d["wrong"].AsDouble, ToNumber(d["hurt"]), d["mark"].AsDouble, Enum.Parse<JudgedBy>(d["by"].AsString), d["own"].AsBoolean);

    static BsonDocument Of(ClassBelief c) => new() { ["kinds"] = AssessFields.Many(c.Kinds, k => k), ["share"] = c.Belief };

    static ClassBelief ToClass(BsonDocument d) => new(Texts(d["kinds"]), d["share"].AsDouble);

    static IReadOnlyList<string> Texts(BsonValue texts) => [.. texts.AsArray.Select(t => t.AsString)];

    static BsonValue Number(double? number) => number is { } n ? n : BsonValue.Null;

    static double? ToNumber(BsonValue value) => value.IsNull ? null : value.AsDouble;
}
