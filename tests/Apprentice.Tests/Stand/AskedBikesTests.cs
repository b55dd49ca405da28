using Apprentice.Content.Changes;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using Apprentice.Tests.Assessing;
using Apprentice.Tests.Laws;

namespace Apprentice.Tests.Stand;

/// <summary>Bikes we asked about: puzzling bikes as a provenance of their own.</summary>
public sealed class AskedBikesTests
{
    static readonly DateOnly Day = new(2026, 11, 25);
    static readonly Topic Sample = Corpus.Sample;
    static readonly AskedBikes Asked = AskedBikes.Of(Sample, Bikes.Puzzling().Notebook);

    /// <summary>
    /// A. Gelman and others, Bayesian Data Analysis, 3rd edition, 2.4, p. 37, girls among births with placenta previa: 437 of 980 under Beta(1, 1) make Beta(438, 544), mean 0.446, 95% interval [0.415, 0.477].
    /// More figures of the same Beta: PreliZ's ppf, 0.44602851 and [0.41506549, 0.47719977], as the commentary on the book's demos 2.1 to 2.4 at lalten.org prints them.
    /// </summary>
    [Fact]
    public void A_share_agrees_with_the_textbook()
    {
        Assert.Equal(0.44602851, LearnedRates.Share(0.5, 2, 437, 980).Mean, 8);
        Assert.Equal(0.41506549, BetaShare.Quantile(0.025, 438, 544), 7);
        Assert.Equal(0.47719977, BetaShare.Quantile(0.975, 438, 544), 7);
    }

    /// <summary>
    /// By hand, with the updates of the same book (2.4 Beta, 3.4 Dirichlet). Most bikes come from the lot, whose rate of 1 in 8 counts like 20 bikes: Beta(2.5, 17.5);
    /// 5 of 12 bikes had it: Beta(7.5, 24.5), mean 7.5/32. Lines: Dirichlet(32, 6, 2) of 40; 7, 5 and 0 of 12 bikes: 39/52, 11/52, 2/52.
    /// </summary>
    [Fact]
    public void What_was_held_before_and_what_was_seen_make_the_figures_of_the_group()
    {
        Assert.Equal(("lot", 12, 0), (Asked.Like, Asked.Bikes, Asked.Missing));
        var swapped = Asked.Figures.Single(l => l.Key == "event bar-to-newer asked");
        Assert.Equal((0.125, 5, 12), (swapped.Before, swapped.Hits, swapped.Bikes));
        Assert.Equal(7.5 / 32, swapped.Now, 12);
        double[] lines = [39.0 / 52, 11.0 / 52, 2.0 / 52];
        Assert.All(Asked.Figures.Where(l => l.Sort == LearnedSort.LineShare).Zip(lines), l => Assert.Equal(l.Second, l.First.Now, 12));
    }

    [Fact]
    public void Too_few_bikes_are_told_as_missing()
    {
        var bikes = new Bikes(Sample);
        Assert.Equal(AskedBikes.Least, AskedBikes.Of(Sample, bikes.Notebook).Missing);
        for (var n = 0; n < 3; n++) bikes.Add(routine: false, Bikes.Truth("older", []));
        bikes.Add(routine: true, Bikes.Truth("older", []));
        var few = AskedBikes.Of(Sample, bikes.Notebook);
        Assert.Equal((3, AskedBikes.Least - 3), (few.Bikes, few.Missing));
        Assert.All(few.Figures.Where(l => l.Sort == LearnedSort.EventRate), l => Assert.InRange(l.Before - l.Now, 0, 0.02));
    }

    [Fact]
    public void Figures_of_routine_bikes_never_move_by_them()
    {
        var (alone, both) = (new Bikes(Sample), Bikes.Puzzling());
        foreach (var bikes in (Bikes[])[alone, both]) bikes.Add(routine: true, Bikes.Truth("older", []));
        Assert.Equal(LearnedRates.Of(Sample, alone.Notebook), LearnedRates.Of(Sample, both.Notebook));
        Assert.Equal(LearnedRates.Of(Sample, alone.Notebook), LearnedRates.Of(Now(), both.Notebook));
    }

    /// <summary>A log in which somebody put a routine bike down as one that was asked about: it counts where most bikes of its sort come from.</summary>
    [Fact]
    public void A_routine_bike_is_counted_among_routine_bikes_wherever_it_is_said_to_come_from()
    {
        var bikes = new Bikes(Sample).Add(routine: true, Bikes.Truth("older", []), from: AskedBikes.Id);
        Assert.Equal(1, LearnedRates.Of(Now(), bikes.Notebook).Single(l => l.Key == "event bar-to-newer lot").Bikes);
        Assert.DoesNotContain(Now().Provenances.Where(p => p.IsPuzzling), StandView.ProvenancesFor(Now(), routine: true).Contains);
        Assert.Contains(StandView.ProvenancesFor(Now(), routine: false), p => p.Id == AskedBikes.Id);
    }

    [Fact]
    public void Let_count_they_stand_beside_the_others_and_change_none_of_them()
    {
        var topic = Now();
        var (provenance, at) = (topic.Provenances[^1], topic.Provenances.Count - 1);
        Assert.Equal((AskedBikes.Id, "lot", "from 12 of the workshop's puzzling bikes, 2026-11-25", true), (provenance.Id, provenance.Like, provenance.FiguresFrom, provenance.IsPuzzling));
        Assert.Equal(Sample.Provenances, topic.Provenances.SkipLast(1));
        Assert.Equal(7.5 / 32, topic.Events[0].Rates[at], 0.0001);
        Assert.Equal(1, topic.Lines.Sum(l => l.Shares[at]), 9);
        Assert.Equal(11.0 / 52, topic.Lines[1].Shares[at], 0.0001);
        Assert.All(topic.Years.Zip(Sample.Years), y => Assert.Equal([.. y.Second.Shares, y.Second.Shares[1]], y.First.Shares));
        Assert.All(topic.Events.Zip(Sample.Events), e => Assert.Equal(e.Second.Rates, e.First.Rates.SkipLast(1)));
        Assert.All(topic.Lines.Zip(Sample.Lines), l => Assert.Equal(l.Second.Shares, l.First.Shares.SkipLast(1)));
        var unseen = topic.Events.Single(e => e.Id == "stem-to-older");
        Assert.Equal(unseen.Rates[1], unseen.Rates[at]);
    }

    [Fact]
    public void Cases_of_the_other_provenances_stay_as_they_were()
    {
        var (before, after) = (new Workbench(Sample), new Workbench(Now()));
        var request = new CaseRequest("own", "cables", "both", Selection.SuggestsChange, Channel.Bench);
        foreach (var (old, made) in Some.Cases(before, request, 40).Zip(Some.Cases(after, request, 40)))
        {
            Assert.Equal(old.Job.Told, made.Job.Told);
            Assert.Equal((old.Truth.Line, old.Truth.Built), (made.Truth.Line, made.Truth.Built));
            Assert.Equal(old.Truth.Kinds, made.Truth.Kinds);
            Assert.Equal(old.Job.Bench.Select(c => old.Look(c, 0)), made.Job.Bench.Select(c => made.Look(c, 0)));
        }
    }

    /// <summary>MODEL 8, law 4, for cases of bikes we asked about.</summary>
    [Theory]
    [InlineData(Selection.AsTheyCome)]
    [InlineData(Selection.Conflicting)]
    [InlineData(Selection.SuggestsChange)]
    [InlineData(Selection.LeavesTwoOpen)]
    public void What_is_said_p_is_so_in_p_of_their_cases(Selection select)
    {
        var bench = new Workbench(Now());
        var check = new CalibrationCheck(bench.SceneOf(AskedBikes.Id), ["bar", "stem"]);
        foreach (var made in Some.Cases(bench, new CaseRequest(AskedBikes.Id, "cables", "both", select, Channel.Bench), 400)) check.AddStages(made);
        Assert.True(check.Cells.Count > 3);
        Assert.True(check.Worst <= 4, $"{check.Cells.MaxBy(c => Math.Abs(c.Z))}");
    }

    /// <summary>The same cases weighed with the figures of own customers: the law tells that they are another group.</summary>
    [Fact]
    public void Weighed_as_other_bikes_they_break_it()
    {
        var bench = new Workbench(Now());
        var check = new CalibrationCheck(bench.SceneOf("own"), ["bar", "stem"]);
        foreach (var made in Some.Cases(bench, new CaseRequest(AskedBikes.Id, "cables", "both", Selection.AsTheyCome, Channel.Bench), 3000)) check.Add("opening", made.Truth, made.Job.Told);
        Assert.True(check.Worst > 4, $"{check.Worst}");
    }

    [Fact]
    public void Taken_back_the_file_is_the_shipped_one_letter_by_letter()
    {
        var copy = Let(Yard.Copy(), Asked);
        Assert.NotEqual(Yard.Text, copy.Text(Yard.Path));
        var back = copy.With([copy.TakenBack(1, Day, "Jo")]);
        Assert.Equal(Yard.Text, back.Text(Yard.Path));
        Assert.Equal(Sample.Version, back.Topic(Sample.Id)?.Version);
    }

    [Fact]
    public void The_change_is_read_as_it_was_written_and_travels()
    {
        var copy = Let(Yard.Copy(), Asked);
        var (changes, faults) = ChangesFile.Read("changes.md", ChangesFile.Write(copy.Changes));
        Assert.Empty(faults);
        Assert.Equal(copy.Text(Yard.Path), Yard.Copy().With(changes).Text(Yard.Path));
    }

    [Fact]
    public void Other_changes_come_and_go_beside_it()
    {
        var copy = Let(Yard.Copy(), Asked);
        var all = LearnedRates.Of(Sample, new Bikes(Sample).Add(routine: true, Bikes.Truth("older", [])).Notebook);
        var rate = Approval.Of(copy, Now(), Sample, all[0], all, Day, "Jo");
        copy = copy.With(rate.Changes);
        Assert.Empty(copy.BuiltOn(1));
        Assert.Equal(0.0476, copy.With([copy.TakenBack(1, Day, "Jo")]).Topic(Sample.Id)?.Events[0].Rates[0]);
    }

    [Fact]
    public void New_figures_take_the_place_of_the_old_ones()
    {
        var copy = Let(Yard.Copy(), Asked);
        var more = Bikes.Puzzling().Add(routine: false, Bikes.Truth("newer", ["bar-to-newer"]));
        var again = Let(copy, AskedBikes.Of(copy.Topic(Sample.Id) ?? Sample, more.Notebook));
        Assert.Equal([1, 2, 3], again.Changes.Select(c => c.Number));
        Assert.Equal(3, Assert.Single(again.InForce).Number);
        Assert.Equal(8.5 / 33, again.Topic(Sample.Id)?.Events[0].Rates[^1] ?? 0, 0.0001);
        Assert.Equal(3, Approval.AskedInForce(again, Sample.Id)?.Number);
    }

    [Fact]
    public void A_shipped_update_that_no_longer_fits_is_told_with_file_and_line()
    {
        var copy = Let(Yard.Copy(), Asked);
        var (changes, _) = ChangesFile.Read("changes.md", ChangesFile.Write(copy.Changes));
        var update = Yard.Text.Replace("| bar-to-newer     |", "| bar-newer        |", StringComparison.Ordinal);
        var updated = new WorkshopCopy(new Dictionary<string, string>(StringComparer.Ordinal) { [Yard.Path] = update }, changes, Corpus.Sources);
        var fault = Assert.Single(updated.Faults);
        Assert.Equal(("changes.md", 5), (fault.File, fault.Line));
        Assert.Contains($"With it {Yard.Path} could not be read, line ", fault.Message, StringComparison.Ordinal);
        Assert.Contains("There is no event \"bar-to-newer\"", fault.Message, StringComparison.Ordinal);
        Assert.Equal(update, updated.Text(Yard.Path));
    }

    /// <summary>Plans hold the same jobs with and without the group; only the version of the topic's text differs, as it does with any change.</summary>
    [Fact]
    public void No_plan_and_no_paper_uses_them()
    {
        var (before, after) = (Checked(Sample), Checked(Now()));
        var plan = new TestPlanner([new(before)]).Plan(Exam.Permission);
        var again = new TestPlanner([new(after)]).Plan(Exam.Permission);
        Assert.Equal(plan.Families, again.Families);
        var small = Exam.Plan with { Topics = [new PlanTopic(after.Id, after.Version)] };
        var paper = new PaperMaker(small, [new(after)]).Make(Exam.Number, "Sam", 1, 5);
        Assert.Equal(Exam.Paper.Jobs, paper.Jobs.Select(j => j with { Version = before.Version }));
        Assert.Equal(Exam.Paper.SafetyAgain, paper.SafetyAgain.Select(j => j with { Version = before.Version }));
        var puzzling = small with { Families = [small.Families[0] with { Provenance = AskedBikes.Id }] };
        var refused = Assert.Throws<ArgumentException>(() => new PaperMaker(puzzling, [new(after)]).Make(Exam.Number, "Sam", 1, 5));
        Assert.Contains("no paper uses", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>A paper made before is sat and marked with the topic as it was, byte for byte, whatever is let count afterwards.</summary>
    [Fact]
    public void A_paper_made_before_finds_its_own_text_again()
    {
        var copy = Let(Yard.Copy(), Asked);
        var frozen = Assert.Single(copy.Frozen([new(Now())], Exam.Paper));
        Assert.Equal((Exam.Paper.Jobs[0].Version, Sample.Provenances.Count), (frozen.Topic.Version, frozen.Topic.Provenances.Count));
        Assert.All(Exam.Paper.Jobs, j => Assert.Equal(Exam.Bench.Make(j.Family.Request, j.Seed)?.Job.Told, frozen.Make(j.Family.Request, j.Seed)?.Job.Told));
    }

    [Fact]
    public void No_real_case_of_them_is_for_papers()
    {
        var bikes = new Bikes(Sample);
        var it = new RealCase("bike 1", "Other yard", Sample.Id, "grips", AskedBikes.Id, [], Bikes.Truth("older", []));
        bikes.Put(new Engine.Learning.LogEntry.CaseTaken(it));
        bikes.Put(new Engine.Learning.LogEntry.CaseTaken(it with { Key = "bike 2", Provenance = "own" }));
        Assert.Equal("bike 2", Assert.Single(RealCases.ForPapers(bikes.Notebook)).Key);
    }

    static Topic Checked(Topic topic) => topic with { State = TopicState.Checked, CheckedBy = "J. and M., 2026-11-03" };

    static WorkshopCopy Let(WorkshopCopy copy, AskedBikes asked)
    {
        var approval = Approval.OfAsked(copy, copy.Topic(Sample.Id) ?? Sample, asked, Day, "Jo");
        Assert.Equal("", approval.Fault);
        return copy.With(approval.Changes);
    }

    static Topic Now() => Let(Yard.Copy(), Asked).Topic(Sample.Id) ?? throw new InvalidOperationException();
}
