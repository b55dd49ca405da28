using Apprentice.Assess;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens.Assess;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Assessing;

/// <summary>The new job of an appeal: what it counts, which case it is, how it is sat and collected.</summary>
public sealed class NewJobTests
{
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    // Twelve jobs with six not sound are "not yet"; with five the rule goes on, so that nothing is passed by the decision alone.
    [Theory]
    [InlineData(6, true, 5, Outcome.Open)]
    [InlineData(6, false, 6, Outcome.NotYet)]
    [InlineData(1, true, 0, Outcome.Passed)]
    [InlineData(1, false, 1, Outcome.Passed)]
    public void A_new_job_counts_as_sound_until_it_is_sat_and_a_told_result_never_falls(int unsound, bool sound, int after, Outcome outcome)
    {
        var all = Assessments.Of(
        [
            new(Nine, new LogEntry.PaperMarked(Result("7F2", 12, unsound), Published: true)),
            new(Nine, new LogEntry.PaperQuestioned("7F2", 1, "the tape said 622")),
            new(Nine, new LogEntry.AppealDecided("7F2", 1, "Lee", AppealDecision.NewJob, "seen again")),
        ]);
        Assert.Equal([1], all.Result("7F2")?.NewJobsDue);
        Assert.Equal(unsound - 1, all.Result("7F2")?.Unsound);
        all = all.With(new(Nine, new LogEntry.NewJobMarked("7F2", 1, Mark(1, sound) with { Place = 201 })));
        var result = Assert.Single(all.RegisterOf("Sam", Exam.Permission).Results);
        Assert.Equal((after, outcome), (result.Unsound, result.Outcome));
        Assert.Empty(result.NewJobsDue);
        Assert.Equal(sound, result.NewJobFor(1)?.Sound);
        Assert.Equal(13, result.AllJobs.Count());
        Assert.Equal(after, all.With(new(Nine, new LogEntry.NewJobMarked("7F2", 1, Mark(1, !sound) with { Place = 201 }))).Result("7F2")?.Unsound);
    }

    [Theory]
    [InlineData("7F2", "7F2", false, null)]
    [InlineData("7F2-S", "7F2", true, null)]
    [InlineData("7F2-N12", "7F2", false, 12)]
    [InlineData("7F2-N", "7F2-N", false, null)]
    public void A_number_names_a_paper_or_what_is_sat_after_it(string id, string paper, bool safetyAgain, int? newJobOf) => Assert.Equal((paper, safetyAgain, newJobOf), Paper.Named(id));

    [Fact]
    public void The_new_job_of_an_appeal_is_a_case_that_the_sitting_never_used()
    {
        var anew = Exam.Paper.NewJob(3);
        var job = Assert.Single(anew.Jobs);
        Assert.Equal((Exam.Number + "-N3", 1, Exam.Paper.At(3).Family), (anew.Id, job.Place, job.Family));
        Assert.DoesNotContain(job.Seed, Exam.Paper.Jobs.Concat(Exam.Paper.SafetyAgain).SelectMany(j => Enumerable.Range(0, 50).Select(j.SeedOf)));
        Assert.Equal((StageDecision.Passed, StageDecision.NotYet), (anew.Rule.Decide(1, 0), anew.Rule.Decide(1, 1)));
        Assert.Throws<ArgumentException>(() => Exam.Paper.NewJob(99));
    }

    [Fact]
    public void It_is_sat_with_the_same_code_and_collected_once_after_the_decision()
    {
        using var folder = new TempFolder();
        LogEntry[] before = [.. Exam.Before, new LogEntry.PaperMarked(Result(Exam.Number, 8, 2) with { Rule = Exam.Plan.Rule }, Published: true), new LogEntry.PaperQuestioned(Exam.Number, 1, "the plate")];
        var undecided = Assessments.Of(before.Select(e => new Logged(Nine, e)));
        Assert.Equal(Outcome.NotYet, undecided.Result(Exam.Number)?.Outcome);
        using var room = new Room(folder, before: [.. before, new LogEntry.AppealDecided(Exam.Number, 1, "Lee", AppealDecision.NewJob, "it cannot be read")]);
        room.PutPaper();
        Assert.Contains("Until the new job is sat", AssessWords.Questioned(room.All, room.All.Appeals[0]), StringComparison.Ordinal);
        room.ToDesk().Keys("3");
        Assert.Contains("a new job", room.Text, StringComparison.Ordinal);
        room.Keys("1" + Exam.Sealed.Code + "{Enter}");
        Assert.Contains("In place of job 1", room.Text, StringComparison.Ordinal);
        room.Keys("2Jo{Enter}1");
        Assert.Contains("One job in 4 min", room.Text, StringComparison.Ordinal);
        room.Keys("1");
        Assert.Contains("4 min left", room.Text, StringComparison.Ordinal);
        Assert.Contains("The job is answered", room.Answer().Text, StringComparison.Ordinal);
        room.Keys("2");
        Assert.IsType<SitEndScreen>(room.Screen);
        var file = PaperFolder.Read(Assert.Single(room.Papers.Files(PaperFolder.ResultEnding)));
        Assert.Contains("No new job was decided", Assert.Throws<SealException>(() => DeskWork.Collect(file, undecided, _ => [Exam.Bench], Exam.Desk.Key, room.Papers)).Message, StringComparison.Ordinal);
        room.Keys("{Enter}").ToDesk().Keys("41" + Exam.Passphrase + "{Enter}");
        Assert.Contains("collected and marked. One job", Assert.Single(Assert.IsType<CollectedScreen>(room.Screen).Lines).Sentence, StringComparison.Ordinal);
        var result = room.All.Result(Exam.Number) ?? throw new InvalidOperationException("no result");
        var mark = Assert.Single(result.NewJobs);
        Assert.Equal((201, Exam.Paper.At(1).Family.Key, Outcome.Passed), (mark.Place, mark.Family, result.Outcome));
        Assert.Equal(mark.Sound ? Standing.CountedSound : Standing.Counted, result.Jobs[0].Standing);
        Assert.Contains(mark.Sound ? "The new job was sound" : "The new job was not sound", AssessWords.Questioned(room.All, room.All.Appeals[0]), StringComparison.Ordinal);
        Assert.Contains("collected before", Assert.Throws<SealException>(() => DeskWork.Collect(file, room.All, _ => [Exam.Bench], Exam.Desk.Key, room.Papers)).Message, StringComparison.Ordinal);
        Assert.DoesNotContain("a new job", room.Keys("{Enter}3").Text, StringComparison.Ordinal);
    }

    static PaperResult Result(string paper, int jobs, int unsound) => new()
    {
        Paper = paper,
        Permission = Exam.Permission,
        Candidate = "Sam",
        Number = 1,
        Rule = StagedRule.Default,
        Jobs = [.. Enumerable.Range(1, jobs).Select(p => Mark(p, p > unsound))],
    };

    static JobMark Mark(int place, bool sound) => Marker.NotAnswered(Exam.Paper.At((place - 1) % 8 + 1)) with { Place = place, Sound = sound };
}
