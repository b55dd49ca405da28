using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Storage;

namespace Apprentice.Tests.Storage;

public sealed class LogTests : IDisposable
{
    static readonly DateTimeOffset At = new DateTimeOffset(2026, 11, 25, 23, 59, 59, TimeSpan.FromHours(-3.5)).AddTicks(1234567);

    readonly string _folder = Directory.CreateTempSubdirectory("log-tests").FullName;

    string FilePath => Path.Combine(_folder, "deep", "log.db");

    public static TheoryData<string> Kinds => [.. Entries.Select(e => e.GetType().Name).Distinct(StringComparer.Ordinal)];

    static LogEntry[] Entries =>
    [
        new LogEntry.Began(long.MinValue),
        new LogEntry.PersonAdded("  Sam \u00e4 ", 3),
        new LogEntry.PersonAdded(""),
        new LogEntry.SatDown("sam"),
        new LogEntry.SatDown(null),
        new LogEntry.JobStarted(3, null, "bar", "v1", ulong.MaxValue, new CaseRequest("own", "grips", null, Selection.Conflicting, Channel.Phone, ["eyes", "rule"], 3), Guided: true, 3),
        new LogEntry.JobStarted(1, "Sam", "bar", "v1", 0, new CaseRequest("own", "grips", "told", Selection.AsTheyCome, Channel.Bench), Guided: false, 1),
        new LogEntry.Looked(3, new Look("stem", 1, 310.5, 2), new Finding("stem", Channel.Photo, new Seen.Reading(0.1 + 0.2), 0)),
        new LogEntry.Looked(3, new Look("plate", 0), new Finding("plate", Channel.Bench, new Seen.Named("worn"))),
        new LogEntry.Looked(3, new Look("plate", 1, OwnFinding: "2012", Writing: 3, OwnBearing: Bearing.Date), new Finding("plate", Channel.Bench, new Seen.Named("2012"), Writing: 3)),
        new LogEntry.Looked(3, new Look("bend", 0), new Finding("bend", Channel.Phone, new Seen.Hidden())),
        new LogEntry.Answered(3, Full, new Verdict(InShort.RightByLuck, [new AspectMark(Aspect.Certainty, -0.25, "grade.rule.sure")], Sound: false, SafetyError: true)),
        new LogEntry.Answered(3, Full, new Verdict(InShort.RightByLuck, [], Sound: true, SafetyError: false))
        {
            Observed =
            [
                new Observed.Mark(new SkillKey(SkillSort.Reading, "bar", "stem"), Right: true, 1.0 / 3), new Observed.Sure("bar", 10, Right: false),
                new Observed.Pattern(Habit.TakesNearer, Shown: true), new Observed.Bench(3.5, 0.1 + 0.2), new Observed.Ordered(Wrong: true),
                new Observed.Weighed("plate", ClueFamily.NumberOrDate, Linked: true, -0.7, 1.0 / 7),
            ],
        },
        new LogEntry.Updated(3, 2, "bar", "none", 0, 10),
        new LogEntry.PinSet("Sam", "pbkdf2"), new LogEntry.PinSet("Sam", null),
        new LogEntry.HabitTold("Sam", Habit.WaitsTooOften), new LogEntry.AimedAt("Sam", Habit.Forces),
        new LogEntry.PlacementAsked("Sam", ["bar", "rim-size"]),
        new LogEntry.SessionPlanned(null, [new PlannedJob("bar", new Draw(new CaseRequest("own", "grips", null, Selection.Conflicting, Channel.Phone, null, 3), ulong.MaxValue))]),
        new LogEntry.TopicsChosen([]),
        new LogEntry.Questioned(3, "Zu kurz? {\"a\": 1}"),
        new LogEntry.Paused(3), new LogEntry.Paused(null),
        new LogEntry.DrillStarted(1, null, "vernier", ulong.MaxValue),
        new LogEntry.DrillAsked(1, new DrillDraw("zero", ulong.MaxValue, 3)),
        new LogEntry.DrillAsked(1, new DrillDraw("plain", 0, null)),
        new LogEntry.DrillAnswered(1, "27.15 mm", Right: true),
        new LogEntry.DrillEnded(1),
        new LogEntry.RealPartRead(2, null, "spokes", 5, 2, 288.5, "288.5 mm"),
        new LogEntry.WorkshopSet("Back yard", "Jo", ["bar", "rim-size"]), new LogEntry.LessonRead(null, "rim-size/overview.md"),
        new LogEntry.LessonQuestioned("Sam", "rim-size/round.md", "how-it-lies", "the hook was bent"),
        new LogEntry.PersonRenamed("Smm", "Sam"), .. AssessEntries.All, .. StandEntries.All,
    ];

    static Given Full => new(
        [new PartAnswer("bar", "low", 10), new PartAnswer("stem", null, 5)],
        [new Choice.Order("a"), new Choice.OrderTwo("a", "b"), new Choice.Wait("stem"), new Choice.Ask()],
        "stem", "none", "set-fitted", Forced: true);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_was_written_is_read(string kind)
    {
        var written = Entries.Where(e => string.Equals(e.GetType().Name, kind, StringComparison.Ordinal)).Select(e => new Logged(At, e)).ToList();
        using (var log = Log.Open(FilePath)) written.ForEach(log.Append);
        using var again = Log.Open(FilePath);
        Assert.Equivalent(written, again.Read(), strict: true);
    }

    [Fact]
    public void Every_kind_of_entry_is_among_the_tests() =>
        Assert.Equal(typeof(LogEntry).GetNestedTypes().Select(t => t.Name).Order(StringComparer.Ordinal), Entries.Select(e => e.GetType().Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    [Fact]
    public void The_time_keeps_its_offset_and_its_last_digit()
    {
        using var log = Log.Open(FilePath);
        log.Append(new Logged(At, new LogEntry.Paused(null)));
        Assert.True(At.EqualsExact(log.Read()[0].At));
    }

    [Fact]
    public void Entries_come_in_the_order_in_which_they_were_added()
    {
        using var log = Log.Open(FilePath);
        for (var n = 1; n <= 300; n++) log.Append(new Logged(At, new LogEntry.Paused(n)));
        Assert.Equal(Enumerable.Range(1, 300), log.Read().Select(e => ((LogEntry.Paused)e.What).Job ?? 0));
    }

    [Fact]
    public void A_second_copy_on_the_same_file_is_told_so()
    {
        using var first = Log.Open(FilePath);
        var refused = Assert.Throws<LogException>(() => Log.Open(FilePath));
        Assert.Equal($"Another copy of this program is using {FilePath}. Close it first, or choose another file with --data.", refused.Message);
        first.Append(new Logged(At, new LogEntry.Began(1)));
        Assert.Single(first.Read());
    }

    [Fact]
    public void A_closed_file_can_be_opened_again()
    {
        Log.Open(FilePath).Dispose();
        using var again = Log.Open(FilePath);
        Assert.Empty(again.Read());
    }

    [Fact]
    public void A_file_that_is_no_log_is_left_as_it_is()
    {
        var path = Path.Combine(_folder, "notes.txt");
        File.WriteAllText(path, new string('x', 20000));
        var refused = Assert.Throws<LogException>(() => Log.Open(path));
        Assert.Equal($"{path} is not a log of this program, or it is damaged. Choose another file.", refused.Message);
        Assert.Equal(new string('x', 20000), File.ReadAllText(path));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_told()
    {
        var file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "");
        var refused = Assert.Throws<LogException>(() => Log.Open(Path.Combine(file, "log.db")));
        Assert.StartsWith($"{Path.Combine(file, "log.db")} cannot be written:", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_look_from_before_writings_were_chosen_is_still_read()
    {
        using (var log = Log.Open(FilePath)) log.Append(new Logged(At, Entries[7]));
        using (var file = new LiteDB.LiteDatabase(new LiteDB.ConnectionString { Filename = FilePath, Collation = LiteDB.Collation.Binary }))
        {
            var entries = file.GetCollection("log", LiteDB.BsonAutoId.Int64);
            var old = entries.FindAll().Single();
            foreach (var field in new[] { "finding", "writing", "bearing" }) Assert.True(old["look"].AsDocument.Remove(field));
            Assert.True(old["shown"].AsDocument.Remove("writing"));
            Assert.True(entries.Update(old));
        }
        using var again = Log.Open(FilePath);
        Assert.Equivalent(Entries[7], Assert.Single(again.Read()).What, strict: true);
    }

    [Fact]
    public void An_answer_from_before_it_was_kept_what_it_showed_is_still_read()
    {
        var answer = new LogEntry.Answered(3, Full, new Verdict(InShort.RightByLuck, [], Sound: true, SafetyError: false));
        using (var log = Log.Open(FilePath)) log.Append(new Logged(At, answer));
        using (var file = new LiteDB.LiteDatabase(new LiteDB.ConnectionString { Filename = FilePath, Collation = LiteDB.Collation.Binary }))
        {
            var entries = file.GetCollection("log", LiteDB.BsonAutoId.Int64);
            var old = entries.FindAll().Single();
            Assert.True(old.Remove("observed"));
            Assert.True(entries.Update(old));
        }

        using var again = Log.Open(FilePath);
        Assert.Equivalent(answer, Assert.Single(again.Read()).What, strict: true);
    }

    [Fact]
    public void A_job_left_in_the_middle_is_found_again()
    {
        using (var log = Log.Open(FilePath))
        {
            log.Append(new Logged(At, Entries[6]));
            log.Append(new Logged(At, new LogEntry.Looked(1, new Look("plate", 0), new Finding("plate", Channel.Bench, new Seen.Named("worn")))));
        }
        using var again = Log.Open(FilePath);
        Assert.Equal("plate", History.Of(again.Read()).Unfinished("Sam")?.Looks.Single().Clue);
    }
}
