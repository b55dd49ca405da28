using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Plans, papers, results and permissions as documents, and back.</summary>
static class AssessFields
{
    public static BsonArray Many<T>(IEnumerable<T> items, Func<T, BsonValue> one) => new(items.Select(one));

    public static IReadOnlyList<T> Many<T>(BsonValue items, Func<BsonDocument, T> one) => [.. items.AsArray.Select(i => one(i.AsDocument))];

    public static BsonDocument Of(JobFamily f) => new()
    {
        ["topic"] = f.Topic,
        ["provenance"] = f.Provenance,
        ["want"] = f.Want,
        ["opening"] = f.Opening,
        ["select"] = f.Select.ToString(),
        ["offer"] = f.Offer.ToString(),
        ["safety"] = f.Safety,
    };

    public static JobFamily ToFamily(BsonDocument d) => new(
        d["topic"].AsString, d["provenance"].AsString, d["want"].AsString, JobFields.Text(d["opening"]),
        Enum.Parse<Selection>(d["select"].AsString), Enum.Parse<Channel>(d["offer"].AsString), d["safety"].AsBoolean);

    public static BsonDocument Of(StagedRule rule) => new()
    {
        ["checks"] = Many(rule.Checks, c => new BsonDocument { ["jobs"] = c.Jobs, ["pass"] = c.PassAt, ["notYet"] = c.NotYetAt }),
    };

    public static StagedRule ToRule(BsonDocument d) => new(Many(d["checks"], c => new StageCheck(c["jobs"].AsInt32, c["pass"].AsInt32, c["notYet"].AsInt32)));

    public static BsonDocument Of(PlanTopic t) => new() { ["id"] = t.Id, ["version"] = t.Version };

    public static PlanTopic ToTopic(BsonDocument d) => new(d["id"].AsString, d["version"].AsString);

    public static BsonDocument Of(TestPlan plan) => new()
    {
        ["permission"] = plan.Permission,
        ["topics"] = Many(plan.Topics, Of),
        ["families"] = Many(plan.Families, Of),
        ["rule"] = Of(plan.Rule),
        ["minutes"] = plan.MinutesPerJob,
        ["real"] = plan.RealBikes,
    };

    public static TestPlan ToPlan(BsonDocument d) => new()
    {
        Permission = d["permission"].AsString,
        Topics = Many(d["topics"], ToTopic),
        Families = Many(d["families"], ToFamily),
        Rule = ToRule(d["rule"].AsDocument),
        MinutesPerJob = d["minutes"].AsDouble,
        RealBikes = d.ContainsKey("real") ? d["real"].AsInt32 : 0,
    };

    public static BsonDocument Of(Rating r) => new() { ["judge"] = r.Judge, ["family"] = r.Family, ["of20"] = r.Of20 };

    public static Rating ToRating(BsonDocument d) => new(d["judge"].AsString, d["family"].AsString, d["of20"].AsDouble);

    public static BsonDocument Of(JobMark m) => new()
    {
        ["place"] = m.Place,
        ["family"] = m.Family,
        ["version"] = m.Version,
        ["sound"] = m.Sound,
        ["safetyError"] = m.SafetyError,
        ["safetyJob"] = m.SafetyJob,
        ["rule"] = m.Rule,
        ["values"] = Many(m.Values, v => new BsonDocument { ["name"] = v.Key, ["text"] = v.Value }),
        ["readings"] = m.Readings,
        ["right"] = m.ReadingsRight,
        ["standing"] = m.Standing.ToString(),
        ["record"] = m.Record is { } record ? RecordFields.Of(record) : BsonValue.Null,
    };

    public static JobMark ToMark(BsonDocument d) => new()
    {
        Place = d["place"].AsInt32,
        Family = d["family"].AsString,
        Version = d["version"].AsString,
        Sound = d["sound"].AsBoolean,
        SafetyError = d["safetyError"].AsBoolean,
        SafetyJob = d["safetyJob"].AsBoolean,
        Rule = d["rule"].AsString,
        Values = Many(d["values"], v => v).ToDictionary(v => v["name"].AsString, v => v["text"].AsString, StringComparer.Ordinal),
        Readings = d["readings"].AsInt32,
        ReadingsRight = d["right"].AsInt32,
        Standing = Enum.Parse<Standing>(d["standing"].AsString),
        Record = d["record"].IsNull ? null : RecordFields.ToRecord(d["record"].AsDocument),
    };

    // What was published is folded from the log and not kept twice.
    public static BsonDocument Of(PaperResult r) => new()
    {
        ["paper"] = r.Paper,
        ["permission"] = r.Permission,
        ["candidate"] = r.Candidate,
        ["number"] = r.Number,
        ["rule"] = Of(r.Rule),
        ["jobs"] = Many(r.Jobs, Of),
        ["again"] = Many(r.SafetyAgain, Of),
        ["anew"] = Many(r.NewJobs, Of),
        ["talked"] = r.Talked,
        ["real"] = Many(r.Real, RealFields.Of),
    };

    public static PaperResult ToResult(BsonDocument d) => new()
    {
        Paper = d["paper"].AsString,
        Permission = d["permission"].AsString,
        Candidate = d["candidate"].AsString,
        Number = d["number"].AsInt32,
        Rule = ToRule(d["rule"].AsDocument),
        Jobs = Many(d["jobs"], ToMark),
        SafetyAgain = Many(d["again"], ToMark),
        NewJobs = d.ContainsKey("anew") ? Many(d["anew"], ToMark) : [],
        Talked = d["talked"].AsBoolean,
        Real = RealFields.Many(d, RealFields.ToMark),
    };

    public static BsonDocument Of(BenchForm f) => new()
    {
        ["day"] = Of(f.Day),
        ["bike"] = f.Bike,
        ["odd"] = f.Odd,
        ["by"] = f.By,
        ["readings"] = Many(f.Readings, r => new BsonDocument { ["what"] = r.What, ["lead"] = r.Lead, ["candidate"] = r.Candidate }),
        ["agreed"] = f.Agreed,
        ["whys"] = f.WhysGood,
    };

    public static BenchForm ToForm(BsonDocument d) => new(
        ToDay(d["day"]), d["bike"].AsString, d["odd"].AsBoolean, d["by"].AsString,
        Many(d["readings"], r => new BenchReading(r["what"].AsString, r["lead"].AsString, r["candidate"].AsString)), d["agreed"].AsBoolean, d["whys"].AsInt32);

    public static BsonDocument Of(Signature s) => new()
    {
        ["person"] = s.Person,
        ["permission"] = s.Permission,
        ["level"] = s.Level.ToString(),
        ["by"] = s.By,
        ["day"] = Of(s.Day),
        ["expires"] = Of(s.Expires),
        ["paper"] = s.Paper,
        ["topics"] = Many(s.Topics, Of),
        ["onePerson"] = s.SetByOnePerson,
    };

    public static Signature ToSignature(BsonDocument d) => new(
        d["person"].AsString, d["permission"].AsString, Enum.Parse<PermissionLevel>(d["level"].AsString), d["by"].AsString, ToDay(d["day"]), ToDay(d["expires"]),
        d["paper"].AsString, Many(d["topics"], ToTopic), d["onePerson"].AsBoolean);

    static BsonValue Of(DateOnly day) => day.ToString("O");

    static DateOnly ToDay(BsonValue day) => DateOnly.ParseExact(day.AsString, "O");
}
