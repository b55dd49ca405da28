using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Entries of plans, papers and permissions as fields of a document.</summary>
static class AssessDocument
{
    /// <summary>The fields of an entry, or null when it is another kind.</summary>
    public static BsonDocument? Fields(LogEntry entry) => entry switch
    {
        LogEntry.DeskSet e => new() { ["lead"] = e.Lead, ["locked"] = e.Locked },
        LogEntry.DeskTried e => new() { ["opened"] = e.Opened },
        LogEntry.PlanSaved e => new() { ["plan"] = AssessFields.Of(e.Plan), ["reason"] = e.Reason },
        LogEntry.PassLineSet e => new() { ["permission"] = e.Permission, ["ratings"] = AssessFields.Many(e.Line.Ratings, AssessFields.Of), ["reason"] = e.Reason },
        LogEntry.PaperMade e => new() { ["paper"] = e.Paper, ["permission"] = e.Permission, ["candidate"] = e.Candidate, ["number"] = e.Number },
        LogEntry.PaperMarked e => new() { ["result"] = AssessFields.Of(e.Result), ["published"] = e.Published },
        LogEntry.ResultShown e => new() { ["paper"] = e.Paper },
        LogEntry.SafetyTalked e => new() { ["paper"] = e.Paper, ["by"] = e.By, ["text"] = e.Text },
        LogEntry.SafetyAgainMarked e => new() { ["paper"] = e.Paper, ["marks"] = AssessFields.Many(e.Marks, AssessFields.Of) },
        LogEntry.PaperQuestioned e => new() { ["paper"] = e.Paper, ["place"] = e.Place, ["text"] = e.Text },
        LogEntry.AppealDecided e => new() { ["paper"] = e.Paper, ["place"] = e.Place, ["by"] = e.By, ["decision"] = e.Decision.ToString(), ["reason"] = e.Reason },
        LogEntry.NewJobMarked e => new() { ["paper"] = e.Paper, ["place"] = e.Place, ["mark"] = AssessFields.Of(e.Mark) },
        LogEntry.FamilyUnfair e => new() { ["family"] = e.Family, ["version"] = e.Version, ["remedy"] = e.Remedy.ToString(), ["by"] = e.By, ["reason"] = e.Reason },
        LogEntry.BenchDone e => new() { ["person"] = e.Person, ["permission"] = e.Permission, ["form"] = AssessFields.Of(e.Form) },
        LogEntry.PermissionSigned e => new() { ["signature"] = AssessFields.Of(e.Signature) },
        LogEntry.OrderCountersigned e => new() { ["person"] = e.Person, ["permission"] = e.Permission, ["by"] = e.By, ["right"] = e.Right, ["note"] = e.Note },
        LogEntry.PermissionTakenBack e => new() { ["person"] = e.Person, ["permission"] = e.Permission, ["by"] = e.By, ["reason"] = e.Reason },
        LogEntry.KitMade e => new() { ["kit"] = e.Kit, ["permission"] = e.Permission, ["jobs"] = e.Jobs, ["sealed"] = e.Sealed },
        LogEntry.KitEntered e => new() { ["kit"] = e.Kit, ["candidate"] = e.Candidate, ["by"] = e.By, ["marks"] = AssessFields.Many(e.Marks, KitFields.Of) },
        _ => SittingDocument.Fields(entry),
    };

    /// <summary>The entry of a kind's name, or null when it is another kind.</summary>
    public static LogEntry? What(string kind, BsonDocument d) => kind switch
    {
        nameof(LogEntry.DeskSet) => new LogEntry.DeskSet(d["lead"].AsString, d["locked"].AsString),
        nameof(LogEntry.DeskTried) => new LogEntry.DeskTried(d["opened"].AsBoolean),
        nameof(LogEntry.PlanSaved) => new LogEntry.PlanSaved(AssessFields.ToPlan(d["plan"].AsDocument), d["reason"].AsString),
        nameof(LogEntry.PassLineSet) => new LogEntry.PassLineSet(d["permission"].AsString, new PassLine(AssessFields.Many(d["ratings"], AssessFields.ToRating)), d["reason"].AsString),
        nameof(LogEntry.PaperMade) => new LogEntry.PaperMade(d["paper"].AsString, d["permission"].AsString, d["candidate"].AsString, d["number"].AsInt32),
        nameof(LogEntry.PaperMarked) => new LogEntry.PaperMarked(AssessFields.ToResult(d["result"].AsDocument), d["published"].AsBoolean),
        nameof(LogEntry.ResultShown) => new LogEntry.ResultShown(d["paper"].AsString),
        nameof(LogEntry.SafetyTalked) => new LogEntry.SafetyTalked(d["paper"].AsString, d["by"].AsString, d["text"].AsString),
        nameof(LogEntry.SafetyAgainMarked) => new LogEntry.SafetyAgainMarked(d["paper"].AsString, AssessFields.Many(d["marks"], AssessFields.ToMark)),
        nameof(LogEntry.PaperQuestioned) => new LogEntry.PaperQuestioned(d["paper"].AsString, d["place"].AsInt32, d["text"].AsString),
        nameof(LogEntry.AppealDecided) => new LogEntry.AppealDecided(
            d["paper"].AsString, d["place"].AsInt32, d["by"].AsString, Enum.Parse<AppealDecision>(d["decision"].AsString), d["reason"].AsString),
        nameof(LogEntry.NewJobMarked) => new LogEntry.NewJobMarked(d["paper"].AsString, d["place"].AsInt32, AssessFields.ToMark(d["mark"].AsDocument)),
        nameof(LogEntry.FamilyUnfair) => new LogEntry.FamilyUnfair(
            d["family"].AsString, d["version"].AsString, Enum.Parse<Standing>(d["remedy"].AsString), d["by"].AsString, d["reason"].AsString),
        nameof(LogEntry.BenchDone) => new LogEntry.BenchDone(d["person"].AsString, d["permission"].AsString, AssessFields.ToForm(d["form"].AsDocument)),
        nameof(LogEntry.PermissionSigned) => new LogEntry.PermissionSigned(AssessFields.ToSignature(d["signature"].AsDocument)),
        nameof(LogEntry.OrderCountersigned) => new LogEntry.OrderCountersigned(
            d["person"].AsString, d["permission"].AsString, d["by"].AsString, d["right"].AsBoolean, d["note"].AsString),
        nameof(LogEntry.PermissionTakenBack) => new LogEntry.PermissionTakenBack(d["person"].AsString, d["permission"].AsString, d["by"].AsString, d["reason"].AsString),
        nameof(LogEntry.KitMade) => new LogEntry.KitMade(d["kit"].AsString, d["permission"].AsString, d["jobs"].AsInt32, d["sealed"].AsString),
        nameof(LogEntry.KitEntered) => new LogEntry.KitEntered(d["kit"].AsString, d["candidate"].AsString, d["by"].AsString, AssessFields.Many(d["marks"], KitFields.ToMark)),
        _ => SittingDocument.What(kind, d),
    };
}
