using Apprentice.Engine.Assessing;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Paper kits and their marks as documents, and back.</summary>
static class KitFields
{
    public static BsonDocument Of(Kit kit) => new() { ["kit"] = kit.Id, ["permission"] = kit.Permission, ["jobs"] = AssessFields.Many(kit.Jobs, Of) };

    public static Kit ToKit(BsonDocument d) => new(d["kit"].AsString, d["permission"].AsString, AssessFields.Many(d["jobs"], ToJob));

    public static BsonDocument Of(KitMark m) => new()
    {
        ["place"] = m.Place,
        ["family"] = m.Family,
        ["version"] = m.Version,
        ["digits"] = m.Digits,
        ["sound"] = m.Sound,
        ["safetyError"] = m.SafetyError,
        ["next"] = m.NextRight,
    };

    public static KitMark ToMark(BsonDocument d) => new(
        d["place"].AsInt32, d["family"].AsString, d["version"].AsString, d["digits"].AsString, d["sound"].AsBoolean, d["safetyError"].AsBoolean, d["next"].AsBoolean);

    static BsonDocument Of(KitJob job) => new()
    {
        ["place"] = job.Place,
        ["family"] = AssessFields.Of(job.Family),
        ["version"] = job.Version,
        ["seed"] = unchecked((long)job.Seed),
        ["given"] = AssessFields.Many(job.Given, JobFields.Of),
        ["questions"] = AssessFields.Many(job.Questions, q => new BsonDocument { ["ask"] = q.Ask.ToString(), ["subject"] = q.Subject, ["options"] = AssessFields.Many(q.Options, Of) }),
    };

    static KitJob ToJob(BsonDocument d) => new(
        d["place"].AsInt32, AssessFields.ToFamily(d["family"].AsDocument), d["version"].AsString, unchecked((ulong)d["seed"].AsInt64), AssessFields.Many(d["given"], JobFields.ToFinding),
        AssessFields.Many(d["questions"], q => new KitQuestion(Enum.Parse<KitAsk>(q["ask"].AsString), q["subject"].AsString, AssessFields.Many(q["options"], ToOption))));

    static BsonDocument Of(KitOption o) => new()
    {
        ["kinds"] = o.Kinds is { } kinds ? AssessFields.Many(kinds, k => k) : BsonValue.Null,
        ["choice"] = o.Choice is { } choice ? JobFields.Of(choice) : BsonValue.Null,
        ["clue"] = o.Clue,
        ["right"] = o.Right,
        ["hurts"] = o.Hurts,
    };

    static KitOption ToOption(BsonDocument d) => new(
        d["kinds"].IsNull ? null : [.. d["kinds"].AsArray.Select(k => k.AsString)], d["choice"].IsNull ? null : JobFields.ToChoice(d["choice"].AsDocument), JobFields.Text(d["clue"]),
        d["right"].AsBoolean, d["hurts"].AsBoolean);
}
