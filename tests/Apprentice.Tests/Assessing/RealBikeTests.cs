using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Assessing.Numbers;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Reports;
using Apprentice.Storage.Papers;

namespace Apprentice.Tests.Assessing;

/// <summary>Real bikes of other workshops in papers: which ones come, and that nothing counts them.</summary>
public sealed class RealBikeTests
{
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Jobs_rule_and_time_of_a_paper_are_the_same_with_and_without_real_bikes()
    {
        Assert.Equal(2, RealExam.Paper.Real.Count);
        Assert.Equivalent(Exam.Paper, RealExam.Paper with { Real = [] }, strict: true);
        Assert.Empty(Exam.Paper.Real);
        Assert.Empty(RealExam.Paper.NewJob(1).Real);
        Assert.All(Enumerable.Range(1, 20), seed => Assert.Equal(
            new PaperMaker(Exam.Plan, [Exam.Bench]).Make("A", "Sam", 1, (ulong)seed).Jobs.Select(j => j.Seed),
            new PaperMaker(RealExam.Plan, [Exam.Bench]).Make("A", "Sam", 1, (ulong)seed, RealExam.Bikes).Jobs.Select(j => j.Seed)));
    }

    [Fact]
    public void As_many_come_as_the_plan_wants_and_there_are_and_luck_chooses_them()
    {
        var maker = new PaperMaker(RealExam.Plan, [Exam.Bench]);
        Assert.Empty(new PaperMaker(Exam.Plan, [Exam.Bench]).Make("A", "Sam", 1, 5, RealExam.Bikes).Real);
        Assert.Single(maker.Make("A", "Sam", 1, 5, [RealExam.Bikes[0]]).Real);
        var drawn = Enumerable.Range(1, 30).Select(seed => maker.Make("A", "Sam", 1, (ulong)seed, RealExam.Bikes).Real).ToList();
        Assert.All(drawn, r => Assert.Equal([1, 2], r.Select(j => j.Place)));
        Assert.Equal(3, drawn.SelectMany(r => r).Select(j => j.Case.Key).Distinct().Count());
        Assert.Throws<ArgumentException>(() => maker.Make("A", "Sam", 1, 5, [RealExam.Bikes[0] with { Topic = "rim-size" }]));
    }

    [Fact]
    public void Marks_outcome_and_chances_are_the_same_with_and_without_real_bikes()
    {
        var without = RealExam.Sat.Mark(Exam.Paper, [Exam.Bench]);
        var with = RealExam.Sat.Mark(RealExam.Paper, [Exam.Bench]);
        Assert.Equal((2, 0), (with.Real.Count, without.Real.Count));
        Assert.Equivalent(without, with with { Real = [] }, strict: true);
        Assert.Equal((without.Outcome, without.Sound, without.Unsound, without.SafetyErrors, without.Reading, without.SecondPaper(Prior.Flat)), (with.Outcome, with.Sound, with.Unsound, with.SafetyErrors, with.Reading, with.SecondPaper(Prior.Flat)));
        Assert.Equal(without.AllJobs.Select(j => j.Place), with.AllJobs.Select(j => j.Place));
    }

    [Fact]
    public void Statistics_reports_of_the_group_statements_and_skills_do_not_see_them()
    {
        var (without, with) = (Group(Exam.Paper), Group(RealExam.Paper));
        Assert.Equal(12, with.Assessments.Results.Sum(r => r.Real.Count) / 2);
        Assert.Equivalent(AfterUse.Of(without.Assessments.Results), AfterUse.Of(with.Assessments.Results), strict: true);
        Assert.Equal(Text(AssessUse.Report(without, [Exam.Topic], Exam.Permission, Nine)), Text(AssessUse.Report(with, [Exam.Topic], Exam.Permission, Nine)));
        Assert.Equal(Text(AssessReports.Group(without, [Exam.Topic], Nine)), Text(AssessReports.Group(with, [Exam.Topic], Nine)));
        Assert.Equal(new AssessXapi(AssessXapi.Nobody).Text(without, [Exam.Topic], null), new AssessXapi(AssessXapi.Nobody).Text(with, [Exam.Topic], null));
        Assert.Equal(without.Assessments.MetBefore("P3", Exam.Plan), with.Assessments.MetBefore("P3", Exam.Plan));
        Assert.Equivalent(without.Book, with.Book, strict: true);
        Assert.Empty(with.Notebook.Tried);
        Assert.NotEqual(Text(AssessReports.Candidate(without, [Exam.Topic], "P3", Nine)), Text(AssessReports.Candidate(with, [Exam.Topic], "P3", Nine)));
    }

    [Fact]
    public void A_bike_met_in_practice_or_in_a_paper_before_never_comes()
    {
        var book = RealExam.Notebook(new LogEntry.RealTried("Sam", RealExam.Bikes[1].Key, "older", 5, Right: false), new LogEntry.RealTried("Kim", RealExam.Bikes[0].Key, null, 5, Right: false));
        var sams = RealOffer.Of([Exam.Topic], book, Assessments.Empty, "Sam");
        Assert.Equal([RealExam.Bikes[0].Key, RealExam.Bikes[2].Key], sams.Fresh.Select(c => c.Key));
        Assert.Equal(1, sams.Met);
        Assert.All(Enumerable.Range(1, 30), seed => Assert.DoesNotContain(new PaperMaker(RealExam.Plan, [Exam.Bench]).Make("A", "Sam", 1, (ulong)seed, sams.Fresh).Real, r => r.Case.Key == RealExam.Bikes[1].Key));
        var marked = Assessments.Of([new(Nine, new LogEntry.PaperMarked(RealExam.Sat.Mark(RealExam.Paper, [Exam.Bench]), Published: false))]);
        Assert.Equal([RealExam.Bikes[2].Key], RealOffer.Of([Exam.Topic], RealExam.Notebook(), marked, "Sam").Fresh.Select(c => c.Key));
        Assert.Equal(3, RealOffer.Of([Exam.Topic], RealExam.Notebook(), marked, "Kim").Fresh.Count);
    }

    [Fact]
    public void A_bike_of_this_workshop_never_comes_even_when_it_comes_back_in_a_file()
    {
        var it = RealExam.Bikes[0];
        List<LogEntry> own =
        [
            new LogEntry.BikePut(1, "Sam", "blue", null, Routine: false, Channel.Bench, 3),
            new LogEntry.BikeAsked(1, it.Topic, "v", it.Want, it.Provenance),
            .. it.Findings.Select(f => new LogEntry.BikeFound(1, it.Topic, f, "")),
            new LogEntry.BikeConfirmed(1, it.Topic, "v", it.Truth, []),
        ];
        var offer = RealOffer.Of([Exam.Topic], RealExam.Notebook([.. own]), Assessments.Empty, "Sam");
        Assert.Equal([RealExam.Bikes[1].Key, RealExam.Bikes[2].Key], offer.Fresh.Select(c => c.Key));
        Assert.Equal(4, RealCases.Of(RealExam.Notebook([.. own])).Count);
    }

    [Fact]
    public void A_draft_another_topic_and_a_bike_that_the_topic_cannot_tell_give_none()
    {
        Assert.Equal(3, RealOffer.There([Exam.Topic], RealExam.Notebook()).Count);
        Assert.Empty(RealOffer.There([Exam.Topic with { State = TopicState.Draft }], RealExam.Notebook()));
        Assert.Empty(RealOffer.There([Exam.Topic with { Id = "another" }], RealExam.Notebook()));
        Assert.Empty(RealOffer.There([Exam.Topic with { Wants = [.. Exam.Topic.Wants.Where(w => w.Id != "grips")] }], RealExam.Notebook()));
    }

    [Fact]
    public void What_was_said_is_kept_with_what_it_was_and_what_the_checks_say()
    {
        var marks = RealExam.Sat.Mark(RealExam.Paper, [Exam.Bench]).Real;
        Assert.Equal((true, 2, true), (marks[0].Right, marks[0].Found.Count, marks[0].Sat.IsMet));
        var shown = Exam.Bench.Reason(new Enquiry("own", ["bar"], null, Channel.Bench, []), [marks[0].Found[1]]).Parts[0];
        Assert.Equal(shown.Classes[shown.Leading].Belief, marks[0].Opened?.Leading.Belief);
        Assert.NotEqual(marks[0].Opened?.Leading.Belief, marks[0].All?.Leading.Belief);
        Assert.Null(marks[1].Right);
        Assert.Equal(marks[1].All, marks[1].Opened, (a, b) => a?.Leading.Belief.Equals(b?.Leading.Belief) == true);
        var later = RealExam.Sat.Mark(RealExam.Paper, [Exam.Bench]).Real[0].Job;
        var without = RealMark.Of(later, RealExam.Sat.Real[0], [new Workbench(Exam.Topic with { Version = "later" })]);
        Assert.Equal((true, null, 0), (without.Right, without.All, without.Found.Count));
    }

    [Fact]
    public void A_sitting_takes_them_after_its_end_alone_and_nothing_of_time_or_jobs_changes()
    {
        List<LogEntry> sat = [new LogEntry.SittingStarted("A", Exam.Permission, "Sam", 1, "Jo", 4, 4, 1, Plain: false), new LogEntry.SittingRealAnswered("A", 1, "older", 9)];
        Sitting Now(params LogEntry[] more) => Assessments.Of(sat.Concat(more).Select((e, i) => new Logged(Nine.AddMinutes(i), e))).SittingOf("A") ?? throw new InvalidOperationException();
        Assert.Empty(Now().Real);
        sat.Add(new LogEntry.SittingEnded("A", SittingEnd.HandedIn));
        var ended = Now();
        var after = Now(new LogEntry.SittingRealLooked("A", 2, 1), new LogEntry.SittingRealLooked("A", 2, 0), new LogEntry.SittingRealLooked("A", 2, 1), new LogEntry.SittingRealAnswered("A", 2, null, 3), new LogEntry.SittingRealAnswered("A", 2, "newer", 7), new LogEntry.SittingRealEnded("A"), new LogEntry.SittingRealAnswered("A", 2, "older", 9));
        Assert.Equal((ended.Used, ended.End, ended.Ended, ended.Jobs.Count), (after.Used, after.End, after.Ended, after.Jobs.Count));
        Assert.True(after.RealOver);
        var real = Assert.Single(after.Real);
        Assert.Equal([1, 0], real.Opened);
        Assert.Equal(("newer", 7), (real.Kind, real.Tenths));
        Assert.Equivalent(after.Real, SatPaper.Of(after).Real, strict: true);
    }

    [Fact]
    public void A_sealed_paper_and_a_result_keep_them_and_a_log_holds_no_truth_before_the_mark()
    {
        Assert.Equivalent(RealExam.Paper, PaperFile.OpenByCode(RealExam.Sealed.File, RealExam.Sealed.Code).Paper, strict: true);
        var key = PaperFile.OpenAtDesk(RealExam.Sealed.File, Exam.Desk.Key).SittingKey;
        var made = Assessments.Of([new(Nine, new LogEntry.PaperMade(Exam.Number, Exam.Permission, "Sam", 1))]);
        Assert.Equivalent(RealExam.Sat, ResultFile.Collect(ResultFile.Sealed(RealExam.Sat, key), made, _ => key), strict: true);
        Assert.DoesNotContain(typeof(Sitting).GetProperties().Concat(typeof(SittingReal).GetProperties()), p => p.PropertyType == typeof(RealCase) || p.PropertyType == typeof(BikeTruth));
    }

    [Fact]
    public void They_go_with_the_person_who_is_erased()
    {
        List<LogEntry> entries = [new LogEntry.SittingStarted("A", Exam.Permission, "Sam", 1, "Jo", 4, 4, 1, Plain: false), new LogEntry.SittingEnded("A", SittingEnd.HandedIn), new LogEntry.SittingRealLooked("A", 1, 0), new LogEntry.SittingRealAnswered("A", 1, "older", 9), new LogEntry.SittingRealEnded("A")];
        IReadOnlyList<Logged> log = [.. entries.Select((e, i) => new Logged(Nine.AddMinutes(i), e))];
        Assert.Empty(PersonEntries.Without(log, "Sam"));
        Assert.Equal(5, PersonEntries.Without(log, "Kim").Count);
    }

    // Twelve people: the first six are sound on nothing, the others on all of their eight jobs.
    static History Group(Paper paper)
    {
        var marked = RealExam.Sat.Mark(paper, [Exam.Bench]);
        return History.Of(Enumerable.Range(1, 12).Select(n => new Logged(Nine.AddMinutes(n), new LogEntry.PaperMarked(
            marked with { Paper = $"P{n}", Candidate = $"P{n}", Jobs = [.. marked.Jobs.Select(j => j with { Sound = n > 6 })] }, Published: true))));
    }

    static string Text(Apprentice.Reports.Report report) => ReportText.Of(report, "json");
}
