using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Learning;

/// <summary>A name that is corrected: an entry more, and everything before and after is the same person's.</summary>
public sealed class CalledNowTests
{
    static readonly LogEntry[] Life =
    [
        new LogEntry.WorkshopSet("Yard", "Smm", ["bar"]), new LogEntry.PersonAdded("Smm"), new LogEntry.PersonAdded("Kim"), new LogEntry.SatDown("Smm"),
        new LogEntry.PinSet("Smm", "hash"), new LogEntry.HabitTold("Smm", Habit.TrustsNumber), new LogEntry.AimedAt("Smm", Habit.TrustsNumber), new LogEntry.PlacementAsked("Smm", ["bar"]),
        new LogEntry.LessonRead("Smm", "bar/overview.md"), new LogEntry.LessonQuestioned("Smm", "bar/overview.md", "top", "odd"),
        new LogEntry.DrillStarted(1, "Smm", "vernier", 3), new LogEntry.RealPartRead(1, "Smm", "posts", 1, 1, 25.4, "25.4"),
        new LogEntry.BikePut(1, "Smm", "blue tourer", null, Routine: false, Channel.Bench, 1), new LogEntry.BikeQuestioned(1, "Smm", "bar", "did not match"),
        new LogEntry.ReportShown("Smm", 1), new LogEntry.RealTried("Smm", "bike 1 bar", null, 5, Right: false),
        new LogEntry.PaperMade("7F2ABC", "may order", "Smm", 1), new LogEntry.SittingStarted("7F2ABC", "may order", "Smm", 1, "Jo", 12, 4, 1, Plain: false),
        new LogEntry.PermissionTakenBack("Smm", "may order", "Jo", "left"), new LogEntry.OrderCountersigned("Smm", "may order", "Smm", Right: true, "grips"),
        new LogEntry.KitEntered("K1", "Smm", "Jo", []),
    ];

    [Fact]
    public void A_corrected_name_stands_wherever_the_old_one_stood()
    {
        var history = Log().Add(new LogEntry.PersonRenamed("Smm", "Sam")).Job("Smm", 3).History;
        Assert.Equal(["Sam", "Kim"], history.People);
        Assert.Equal("Sam", history.Current);
        Assert.Equal("Sam", history.Workshop?.Lead);
        Assert.Equal(3, history.JobsOf("Sam").Count);
        Assert.Equal(["Sam", "Kim"], history.Names);
        Assert.Equal("hash", history.Pins["Sam"]);
        Assert.NotNull(history.Read("Sam", "bar/overview.md"));
        Assert.Equal(["Sam"], history.Assessments.Papers.Select(p => p.Candidate));
        Assert.Equal("Sam", history.Assessments.SittingOf("7F2ABC")?.Started.Candidate);
        Assert.Equal("left", history.Assessments.RegisterOf("Sam", "may order").TakenBack?.Reason);
        Assert.Equal("Sam", history.Assessments.KitResults[0].Candidate);
        Assert.Equal("Sam", history.Notebook.Reports[1].PersonOf(history));
    }

    [Fact]
    public void What_was_done_before_counts_as_if_it_had_always_been_so_called()
    {
        var later = Log().Add(new LogEntry.PersonRenamed("Smm", "Sam")).History;
        var always = History.Of(Log().Entries.Select(e => e with { What = CalledNow.Empty.With(new LogEntry.PersonRenamed("Smm", "Sam")).Of(e.What) }));
        Assert.Equal(Everything(always), Everything(later));
        Assert.DoesNotContain("Smm", Everything(later).Replace("By = Smm", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Who_signed_keeps_the_name_under_which_it_was_signed() =>
        Assert.Equal("Smm", Log().Add(new LogEntry.PersonRenamed("Smm", "Sam")).History.Assessments.RegisterOf("Sam", "may order").Countersigned[0].By);

    [Fact]
    public void Another_correction_takes_it_back()
    {
        var history = Log().Add(new LogEntry.PersonRenamed("Smm", "Sim")).Job("Sim", 3).Add(new LogEntry.PersonRenamed("Sim", "Smm")).Job("Sim", 4).History;
        Assert.Equal(["Smm", "Kim"], history.People);
        Assert.Equal(4, history.JobsOf("Smm").Count);
        Assert.Equal("Smm", history.OwnerOf("sim"));
    }

    [Fact]
    public void Two_corrections_on_end_lead_from_every_name_to_the_last()
    {
        var history = Log().Add(new LogEntry.PersonRenamed("Smm", "Sim")).Add(new LogEntry.PersonRenamed("Sim", "Sam")).History;
        Assert.Equal("Sam", history.Called.Of("Smm"));
        Assert.Equal("Sam", history.Called.OfTyped(" sim "));
        Assert.Equal(["Sam", "Sim", "Smm"], history.NamesOf("Sam").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_name_that_is_taken_is_refused() =>
        Assert.Throws<ArgumentException>(() => Log().Add(new LogEntry.PersonRenamed("Smm", "kim")).History);

    [Fact]
    public void Capitals_can_be_corrected() =>
        Assert.Equal(["SMM", "Kim"], Log().Add(new LogEntry.PersonRenamed("Smm", "SMM")).History.People);

    [Fact]
    public void Records_move_under_the_name_now_and_without_the_correction()
    {
        var moved = PersonEntries.Of(Log().Add(new LogEntry.PersonRenamed("Smm", "Sam")).Entries, "Sam");
        Assert.Equal(2, History.Of(moved).JobsOf("Sam").Count);
        Assert.DoesNotContain("Smm", string.Concat(moved.Select(e => e.What.ToString())), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_left_of_an_erased_person_under_any_name()
    {
        var log = Log().Add(new LogEntry.PersonRenamed("Smm", "Sam")).Job("Sam", 3).Job("Kim", 3);
        var left = PersonEntries.Without([.. log.Entries.Where(e => e.What is not LogEntry.OrderCountersigned)], "Sam");
        Assert.DoesNotContain(left, e => e.What.ToString() is { } text && (text.Contains("Smm", StringComparison.Ordinal) || text.Contains("Sam", StringComparison.Ordinal)));
        Assert.Single(History.Of(left).JobsOf("Kim"));
        Assert.Null(History.Of(left).Current);
    }

    static Logbook Log() => Life.Aggregate(new Logbook().Job("Smm", 1).Job("Smm", 2), (log, entry) => log.Add(entry));

    static string Everything(History history) => string.Join('\n', (object?[])
    [
        .. history.People, history.Current, history.Workshop?.Lead, .. history.Jobs.Select(j => $"{j.Person} {j.Started.Person}"), .. history.LessonQuestions, .. history.LessonsOf("Sam"),
        .. history.Aims, .. history.HabitsTold, .. history.Placements.Select(p => $"{p.Key} {p.Value.From}"), .. history.Pins, .. history.Drills.Select(d => d.Started),
        .. history.RealParts.SelectMany(r => r.Readings.Select(x => $"{r.Person} {x}")), .. history.Book.Of("Sam", Logbook.Start.AddDays(9)),
        .. history.Assessments.Papers, .. history.Assessments.Sittings.Select(s => s.Started), .. history.Assessments.Registers.Select(r => $"{r.Person} {r.TakenBack} {string.Join(';', r.Countersigned)}"),
        .. history.Assessments.KitResults.Select(k => k.Candidate), .. history.Notebook.Bikes.Select(b => b.Put), .. history.Notebook.Reports.Select(r => r.What), .. history.Notebook.Shown, .. history.Notebook.Tried,
    ]);
}
