using System.Diagnostics;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>The values inside an entry as documents, and back.</summary>
static class JobFields
{
    /// <summary>The text of a value, or null.</summary>
    public static string? Text(BsonValue value) => value.IsNull ? null : value.AsString;

    static BsonValue Whole(int? number) => number is { } n ? n : BsonValue.Null;

    // A field that an older entry does not have is null.
    static int? Whole(BsonValue value) => value.IsNull ? null : value.AsInt32;

    public static BsonDocument Of(CaseRequest request) => new()
    {
        ["provenance"] = request.Provenance,
        ["want"] = request.Want,
        ["opening"] = request.Opening,
        ["select"] = request.Select.ToString(),
        ["offer"] = request.Offer.ToString(),
        ["tools"] = request.Tools is { } tools ? new BsonArray(tools.Select(t => new BsonValue(t))) : BsonValue.Null,
        ["questions"] = request.Questions is { } questions ? questions : BsonValue.Null,
    };

    public static CaseRequest ToRequest(BsonDocument d) => new(
        d["provenance"].AsString, d["want"].AsString, Text(d["opening"]), Enum.Parse<Selection>(d["select"].AsString),
        Enum.Parse<Channel>(d["offer"].AsString), d["tools"].IsNull ? null : [.. d["tools"].AsArray.Select(t => t.AsString)],
        d["questions"].IsNull ? null : d["questions"].AsInt32);

    public static BsonDocument Of(Look look) => new()
    {
        ["clue"] = look.Clue,
        ["nth"] = look.Nth,
        ["own"] = look.OwnReading is { } own ? own : BsonValue.Null,
        ["datum"] = Whole(look.Datum),
        ["finding"] = look.OwnFinding,
        ["writing"] = Whole(look.Writing),
        ["bearing"] = look.OwnBearing?.ToString(),
    };

    public static Look ToLook(BsonDocument d) => new(
        d["clue"].AsString, d["nth"].AsInt32, d["own"].IsNull ? null : d["own"].AsDouble, Whole(d["datum"]),
        Text(d["finding"]), Whole(d["writing"]), Text(d["bearing"]) is { } bearing ? Enum.Parse<Bearing>(bearing) : null);

    public static BsonDocument Of(Finding finding)
    {
        var document = new BsonDocument
        {
            ["clue"] = finding.Clue,
            ["channel"] = finding.Channel.ToString(),
            ["datum"] = Whole(finding.Datum),
            ["writing"] = Whole(finding.Writing),
        };
        if (finding.Seen is Seen.Reading reading) document["mm"] = reading.Millimetres;
        if (finding.Seen is Seen.Named named) document["seen"] = named.Id;
        return document;
    }

    public static Finding ToFinding(BsonDocument d)
    {
        Seen seen = d.ContainsKey("mm") ? new Seen.Reading(d["mm"].AsDouble)
            : d.ContainsKey("seen") ? new Seen.Named(d["seen"].AsString)
            : new Seen.Hidden();
        return new Finding(d["clue"].AsString, Enum.Parse<Channel>(d["channel"].AsString), seen, Whole(d["datum"]), Whole(d["writing"]));
    }

    public static BsonDocument Of(Given given) => new()
    {
        ["parts"] = new BsonArray(given.Parts.Select(p => new BsonDocument { ["part"] = p.Part, ["kind"] = p.Kind, ["tenths"] = p.Tenths })),
        ["orders"] = new BsonArray(given.Orders.Select(Of)),
        ["settledBy"] = given.SettledBy,
        ["setAside"] = given.SetAside,
        ["story"] = given.Story,
        ["forced"] = given.Forced,
    };

    public static Given ToGiven(BsonDocument d) => new(
        [.. d["parts"].AsArray.Select(p => new PartAnswer(p["part"].AsString, Text(p["kind"]), p["tenths"].AsInt32))],
        [.. d["orders"].AsArray.Select(o => ToChoice(o.AsDocument))],
        Text(d["settledBy"]), Text(d["setAside"]), Text(d["story"]), d["forced"].AsBoolean);

    public static BsonDocument Of(Verdict verdict) => new()
    {
        ["inShort"] = verdict.InShort.ToString(),
        ["marks"] = new BsonArray(verdict.Marks.Select(m => new BsonDocument { ["aspect"] = m.Aspect.ToString(), ["mark"] = m.Mark, ["rule"] = m.Rule })),
        ["sound"] = verdict.Sound,
        ["safetyError"] = verdict.SafetyError,
    };

    public static Verdict ToVerdict(BsonDocument d) => new(
        Enum.Parse<InShort>(d["inShort"].AsString),
        [.. d["marks"].AsArray.Select(m => new AspectMark(Enum.Parse<Aspect>(m["aspect"].AsString), m["mark"].AsDouble, m["rule"].AsString))],
        d["sound"].AsBoolean, d["safetyError"].AsBoolean);

    public static BsonDocument Of(Choice choice) => choice switch
    {
        Choice.Order order => new() { ["do"] = "order", ["spare"] = order.Spare },
        Choice.OrderTwo two => new() { ["do"] = "two", ["spare"] = two.First, ["other"] = two.Second },
        Choice.Wait wait => new() { ["do"] = "wait", ["clue"] = wait.Clue },
        Choice.Ask => new() { ["do"] = "ask" },
        _ => throw new UnreachableException(),
    };

    public static Choice ToChoice(BsonDocument d) => d["do"].AsString switch
    {
        "order" => new Choice.Order(d["spare"].AsString),
        "two" => new Choice.OrderTwo(d["spare"].AsString, d["other"].AsString),
        "wait" => new Choice.Wait(d["clue"].AsString),
        "ask" => new Choice.Ask(),
        var other => throw new FormatException($"Unknown choice {other}."),
    };
}
