using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Stand;

/// <summary>Folds and reasoning of the bench notebook.</summary>
public sealed class NotebookTests
{
    static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(4430, true)]
    [InlineData(4431, false)]
    [InlineData(null, false)]
    public void Every_tenth_job_card_is_a_routine_bike_and_nobody_chooses(int? card, bool routine) =>
        Assert.Equal(routine, BenchNotebook.Empty.IsRoutine(card, new DateOnly(2026, 11, 25)));

    [Fact]
    public void A_week_takes_everything_in_and_ends()
    {
        var notebook = BenchNotebook.Empty.With(new Logged(Day, new LogEntry.RoutineRuleSet(0, new DateOnly(2026, 11, 25))));
        Assert.True(notebook.IsRoutine(null, new DateOnly(2026, 12, 1)));
        Assert.False(notebook.IsRoutine(4430, new DateOnly(2026, 12, 2)));
    }

    [Fact]
    public void A_finding_taken_back_counts_no_more_and_stays_in_the_log()
    {
        var view = View(out var bikes, Reading("bar-height", 100), Reading("bar-height", 101));
        Assert.True(view.Reasoning.Parts[0].Settled);
        bikes.Put(new LogEntry.BikeStruck(1, 0));
        bikes.Put(new LogEntry.BikeStruck(1, 1));
        var after = ViewOf(bikes);
        Assert.Empty(after.Findings);
        Assert.Equal(2, after.Bike.Findings.Count);
        Assert.False(after.Reasoning.Parts[0].Settled);
    }

    /// <summary>The same clue with the same words is shared; the same short name for another sort of bike is not (rim-size: "road or trekking"; freewheel: "road racer").</summary>
    [Fact]
    public void Questions_on_one_bike_share_what_was_said_of_its_line_in_the_same_words()
    {
        var (rim, freewheel) = (Corpus.Topic("rim-size"), Corpus.Topic("freewheel"));
        var bike = new Bike(new LogEntry.BikePut(1, null, "blue", null, false, Channel.Bench, 3), Day);
        foreach (var topic in (Topic[])[rim, freewheel]) bike = bike.With(new Logged(Day, new LogEntry.BikeAsked(1, topic.Id, topic.Version, topic.Wants[0].Id, "own")));
        bike = Said(Said(bike, rim, "road"), rim, "mtb-old");
        var views = StandView.Of(bike, id => new Workbench(id == rim.Id ? rim : freewheel));
        Assert.Equal(2, views[0].Findings.Count);
        Assert.Equal("mtb-old", Assert.IsType<Seen.Named>(Assert.Single(views[1].Findings).Seen).Id);
    }

    [Fact]
    public void A_caller_is_asked_what_can_be_told_and_the_bench_what_its_tools_reach()
    {
        var view = View(out _);
        Assert.Contains(view.Offer, c => c.Id == "bar-height");
        Assert.DoesNotContain((view with { Bike = view.Bike with { Tools = 1 } }).Offer, c => c.Id == "bar-height");
        Assert.All((view with { Bike = view.Bike with { Channel = Channel.Phone } }).Offer, c => Assert.Contains(c.Channels, k => k.Channel == Channel.Phone));
    }

    [Fact]
    public void A_stop_sign_leaves_no_check_and_no_order()
    {
        var rim = Corpus.Topic("rim-size");
        var clue = rim.Clues.First(c => c is { Safety: true, Shows: Shows.Table });
        var stop = ((Shows.Table)clue.Shows).Findings.First(f => f.Stop.Length > 0);
        var bike = new Bike(new LogEntry.BikePut(1, null, "blue", null, false, Channel.Bench, 3), Day)
            .With(new Logged(Day, new LogEntry.BikeAsked(1, rim.Id, rim.Version, "tyre", "own")))
            .With(new Logged(Day, new LogEntry.BikeFound(1, rim.Id, new Finding(clue.Id, Channel.Bench, new Seen.Named(stop.Id)), "")));
        var view = StandView.Of(bike, _ => new Workbench(rim))[0];
        Assert.Empty(view.Next);
        Assert.IsType<Choice.Ask>(Assert.Single(OrderAdvice.Of(rim, view.Want, view.Reasoning)).Best.Choice);
        Assert.Empty(OrderAdvice.Of(rim, view.Want, view.Reasoning)[0].FitsAll);
    }

    /// <summary>An inner tube for 622 to 635 fits both survivors of a 27-inch bike; a tyre fits one (BG_TUBE).</summary>
    [Fact]
    public void A_spare_that_fits_every_survivor_is_named()
    {
        var rim = Corpus.Topic("rim-size");
        var reasoning = new Workbench(rim).Reason(
            new Enquiry("own", ["rim"], "tyre-tube", Channel.Phone, []), [new Finding("sort", Channel.Phone, new Seen.Named("ten")), new Finding("wall-name", Channel.Phone, new Seen.Named("27x1-1-4"))]);
        var advice = OrderAdvice.Of(rim, rim.Wants.First(w => w.Id == "tyre-tube"), reasoning);
        Assert.False(reasoning.Parts[0].Settled);
        Assert.Equal(["tube-28"], advice.First(a => a.Line.Id == "tube").FitsAll.Select(s => s.Id));
        Assert.Empty(advice.First(a => a.Line.Id == "tyre").FitsAll);
    }

    [Fact]
    public void The_leads_prices_change_the_order_and_not_the_belief()
    {
        var view = View(out var bikes, Reading("bar-height", 118));
        bikes.Put(new LogEntry.PriceSet(Corpus.Sample.Id, "grips-short", 0, 0, 0, 30));
        bikes.Put(new LogEntry.PriceSet(Corpus.Sample.Id, "grips-long", 0, 0, 0, 30));
        var priced = ViewOf(bikes);
        Assert.Equal(view.Reasoning.Parts[0].Highest, priced.Reasoning.Parts[0].Highest);
        Assert.NotEqual(view.Reasoning.Decisions[0].Best.Choice, priced.Reasoning.Decisions[0].Best.Choice);
        Assert.Equal(0, priced.Reasoning.Decisions[0].Best.Loss, 12);
        Assert.Equal(30, bikes.Notebook.ReturnDays(Corpus.Sample.Id, "grips-long"));
    }

    [Fact]
    public void The_standing_check_counts_routine_bikes_and_shows_those_whose_end_is_not_known()
    {
        var bikes = new Bikes(Corpus.Sample);
        for (var n = 0; n < 10; n++) bikes.Add(routine: true, Bikes.Truth(n < 8 ? "older" : "newer", []), held: [Held(0.9)]);
        bikes.Add(routine: false, Bikes.Truth("newer", []), held: [Held(0.9)]);
        bikes.Put(new LogEntry.BikePut(12, null, "red", 10, Routine: true, Channel.Bench, 3));
        bikes.Put(new LogEntry.BikeAsked(12, Corpus.Sample.Id, "v", "grips", "own"));
        var check = Assert.Single(StandingCheck.Of(bikes.Notebook));
        Assert.Equal((1, 1), (check.NoTruth, check.Puzzling));
        var level = Assert.Single(check.Levels, l => l.Bikes > 0);
        Assert.Equal((9, 10, 8), (level.Tenths, level.Bikes, level.Right));
        Assert.Equal(9, level.Expected, 12);
    }

    [Fact]
    public void Own_bikes_are_for_practice_and_only_other_workshops_bikes_for_papers()
    {
        var bikes = new Bikes(Corpus.Sample).Add(routine: false, Bikes.Truth("older", []), [Reading("bar-height", 140)]);
        var own = Assert.Single(RealCases.Of(bikes.Notebook));
        Assert.Empty(RealCases.ForPapers(bikes.Notebook));
        bikes.Put(new LogEntry.CaseTaken(own with { Key = "Home: " + own.Key, From = "Home" }));
        Assert.Empty(RealCases.ForPapers(bikes.Notebook));
        bikes.Put(new LogEntry.CaseTaken(own with { Key = "Yard: " + own.Key, From = "Yard", Findings = [Reading("bar-height", 139)] }));
        Assert.Equal("Yard", Assert.Single(RealCases.ForPapers(bikes.Notebook)).From);
    }

    [Fact]
    public void Who_learned_the_old_version_is_told_and_who_learned_later_is_not()
    {
        var job = new LogEntry.JobStarted(1, "Kim", Corpus.Sample.Id, "v", 1, new("own", "grips", null, Engine.Cases.Selection.AsTheyCome, Channel.Bench), false, 1);
        var given = new Given([], [], null, null, null, false);
        var verdict = new Verdict(Engine.Grading.InShort.RightForTheRightReason, [], true, false);
        LogEntry[] entries =
        [
            new LogEntry.PersonAdded("Kim"), new LogEntry.PersonAdded("Sam"), new LogEntry.PersonAdded("Lou"), job, new LogEntry.Answered(1, given, verdict),
            new LogEntry.LessonQuestioned("Sam", "other/x.md", "card", "too long"), new LogEntry.ReportAnswered(1, ReportAnswer.Accepted, "Jo", "Yes.", Corpus.Sample.Id, []),
            job with { Job = 2, Person = "Lou" }, new LogEntry.Answered(2, given, verdict), new LogEntry.ReportShown("Kim", 1),
        ];
        var history = History.Of(entries.Select((e, i) => new Logged(Day.AddMinutes(i), e)));
        Assert.True(Assert.Single(News.Of(history, "Kim")).IsSeen);
        Assert.True(Assert.Single(News.Of(history, "Sam")).IsOwn);
        Assert.Empty(News.Of(history, "Lou"));
    }

    [Fact]
    public void A_report_asked_back_is_open_again_once_more_was_said()
    {
        var notebook = BenchNotebook.Empty.With(At(new LogEntry.BikeQuestioned(1, "Sam", "bar", "longer"))).With(At(new LogEntry.ReportAnswered(1, ReportAnswer.AskedBack, "Jo", "How long?", "bar", [])));
        Assert.False(notebook.Reports[0].IsOpen);
        Assert.True(notebook.With(At(new LogEntry.ReportAdded(1, "150 mm"))).Reports[0].IsOpen);
    }

    [Fact]
    public void Erasing_a_person_keeps_bikes_without_the_name_and_numbers_the_lines_anew()
    {
        LogEntry[] entries =
        [
            new LogEntry.PersonAdded("Sam"), new LogEntry.BikePut(1, "Sam", "blue", null, false, Channel.Bench, 3), new LogEntry.LessonQuestioned("Sam", "a/b.md", "c", "one"),
            new LogEntry.BikeQuestioned(1, "Sam", "bar", "two"), new LogEntry.ReportAnswered(1, ReportAnswer.Refused, "Jo", "no", "", []), new LogEntry.ReportAnswered(2, ReportAnswer.Refused, "Jo", "never", "", []),
        ];
        var left = History.Of(PersonEntries.Without([.. entries.Select(At)], "Sam"));
        Assert.Null(Assert.Single(left.Notebook.Bikes).Put.Person);
        var report = Assert.Single(left.Notebook.Reports);
        Assert.Equal(("two", "never"), (report.Text, report.Answer?.Text));
    }

    [Fact]
    public void An_entry_of_a_bike_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentException>(() => BenchNotebook.Empty.With(At(new LogEntry.BikeStruck(1, 0))));

    static Logged At(LogEntry entry) => new(Day, entry);

    static Bike Said(Bike bike, Topic topic, string id)
    {
        var clue = topic.Clues.First(c => c.Id == "sort");
        var finding = new Finding("sort", Channel.Bench, new Seen.Named(id));
        return bike.With(At(new LogEntry.BikeFound(1, topic.Id, finding, StandView.TextOf(clue, finding) ?? "")));
    }

    static HeldBelief Held(double belief) => new("bar", [new ClassBelief(["older"], belief), new ClassBelief(["newer"], 1 - belief)], Settled: false);

    static Finding Reading(string clue, double mm) => new(clue, Channel.Bench, new Seen.Reading(mm));

    static StandView View(out Bikes bikes, params Finding[] findings)
    {
        bikes = new Bikes(Corpus.Sample);
        bikes.Put(new LogEntry.BikePut(1, null, "blue", null, false, Channel.Bench, 3));
        bikes.Put(new LogEntry.BikeAsked(1, Corpus.Sample.Id, Corpus.Sample.Version, "grips", "own"));
        foreach (var finding in findings) bikes.Put(new LogEntry.BikeFound(1, Corpus.Sample.Id, finding, ""));
        return ViewOf(bikes);
    }

    static StandView ViewOf(Bikes bikes) => StandView.Of(bikes.Notebook.Bikes[0], _ => new Workbench(bikes.Notebook.Priced(Corpus.Sample)))[0];
}
