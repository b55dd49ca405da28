using Apprentice.Assess;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Assessing;

/// <summary>Six fresh safety jobs after a talk, and what the desk prints.</summary>
public sealed class AgainTests
{
    [Fact]
    public void Fresh_safety_jobs_are_a_paper_of_their_own_in_the_same_file()
    {
        var again = Exam.Paper.Again ?? throw new InvalidOperationException("no safety jobs");
        Assert.Equal(Exam.Number + "-S", again.Id);
        Assert.Equal(PaperResult.FreshSafetyJobs, again.Jobs.Count);
        Assert.Equal(Exam.Paper.SafetyAgain.Select(j => j.Seed), again.Jobs.Select(j => j.Seed));
        Assert.Equal(StageDecision.Passed, again.Rule.Decide(6, 0));
        Assert.Equal(StageDecision.NotYet, again.Rule.Decide(6, 1));
        Assert.Null(again.Again);
    }

    [Fact]
    public void They_are_sat_with_the_same_code_and_collected_once_after_the_paper()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: [.. Exam.Before, new LogEntry.PaperMarked(Marked(), Published: false), new LogEntry.SafetyTalked(Exam.Number, "Jo", "the lever that slips")]);
        Assert.Equal(Outcome.SafetyFirst, room.All.Result(Exam.Number)?.Outcome);
        room.PutPaper();
        Assert.Contains("fresh safety jobs", room.ToDesk().Keys("3").Text, StringComparison.Ordinal);
        room.Keys("1" + Exam.Sealed.Code + "{Enter}");
        Assert.IsType<SitAgainScreen>(room.Screen);
        Assert.Contains("No more follow, and all of them must be sound.", room.Keys("1Jo{Enter}1").Text.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        room.Keys("1");
        for (var i = 0; i < PaperResult.FreshSafetyJobs; i++) room.Answer();
        room.Keys("2");
        Assert.IsType<SitEndScreen>(room.Screen);
        var file = Assert.Single(room.Papers.Files(PaperFolder.ResultEnding));
        var collected = DeskWork.Collect(PaperFolder.Read(file), room.All, _ => [Exam.Bench], Exam.Desk.Key, room.Papers);
        var marks = Assert.IsType<LogEntry.SafetyAgainMarked>(collected.Entry).Marks;
        Assert.Equal(Enumerable.Range(101, 6), marks.Select(m => m.Place));
        var after = room.All.With(new Logged(room.Clock.Now, collected.Entry));
        Assert.Equal(marks.All(m => m.Sound) ? Outcome.Passed : Outcome.NotYet, after.Result(Exam.Number)?.Outcome);
        Assert.Contains("collected before", Assert.Throws<SealException>(() => DeskWork.Collect(PaperFolder.Read(file), after, _ => [Exam.Bench], Exam.Desk.Key, room.Papers)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_prints_what_it_can_tell_and_every_sort_of_job()
    {
        var world = new World([Exam.Bench], History.Empty);
        var draft = PlanDraft.Of(world, Exam.Permission, [Exam.Topic.Id]);
        var html = ReportText.Of(DeskSheets.Plan(world, draft.Plan, draft.Forecast, null), "html");
        Assert.Contains("95 of 100", html, StringComparison.Ordinal);
        Assert.Contains("49 of 100", html, StringComparison.Ordinal);
        Assert.Equal(draft.Plan.Families.Count, html.Split("Older or newer bar: ").Length - 1);
        Assert.Contains("It cannot tell 16 of 20 from 15 of 20", html, StringComparison.Ordinal);
        Assert.Contains("Bike 3", ReportText.Of(DeskSheets.Bench(world, draft.Plan), "html"), StringComparison.Ordinal);
    }

    static PaperResult Marked() => new()
    {
        Paper = Exam.Number,
        Permission = Exam.Permission,
        Candidate = "Sam",
        Number = 1,
        Rule = Exam.Plan.Rule,
        Jobs = [.. Enumerable.Range(1, 8).Select(p => Marker.NotAnswered(Exam.Paper.At(p)) with { Sound = p > 1, SafetyError = p == 1 })],
    };
}
