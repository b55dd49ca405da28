using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Pages;

/// <summary>Logs of invented people: what their jobs showed is written down, nothing else.</summary>
static class Lives
{
    public static readonly DateTimeOffset Start = new(2026, 11, 2, 9, 0, 0, TimeSpan.Zero);

    static readonly Given Nothing = new([], [], null, null, null, Forced: false);

    static readonly string[] Clues = ["plate", "stem-length", "bar-height", "grip-length"];

    static Topic Topic => Corpus.Sample;

    /// <summary>Ten days of one person: 30 jobs, better from the fifth day on.</summary>
    public static List<Logged> TenthDay() => Person("Sam", jobs: 30, perDay: 3, (job, n) =>
    [
        Mark(Clues[n % 2], right: job >= 15 || job % 3 == 0),
        Mark(Clues[2 + (n % 2)], right: job % 4 != 0),
        new Observed.Mark(new SkillKey(SkillSort.Stopping, Topic.Id, ""), Right: job % 2 == 0, 0),
        new Observed.Sure("bar", 5 + (job % 4), Right: job % 4 != 0),
        new Observed.Bench(4 + (job % 3), 4),
        new Observed.Ordered(Wrong: job % 7 == 3),
    ]);

    /// <summary>Somebody who is sure and wrong, always by the number.</summary>
    public static List<Logged> OverConfident() => Person("Kim", jobs: 24, perDay: 4, (job, _) =>
    [
        Mark("plate", right: job % 3 == 0),
        Mark("bar-height", right: job % 5 == 0),
        new Observed.Sure("bar", 9, Right: job % 3 == 0),
        new Observed.Pattern(Habit.TrustsNumber, Shown: job % 6 != 0),
        new Observed.Bench(1, 4),
        new Observed.Ordered(Wrong: job % 3 != 0),
        new Observed.Weighed("plate", ClueFamily.NumberOrDate, Linked: false, 0.5 + (job % 3), 2 * (0.5 + (job % 3))),
    ]);

    /// <summary>A workshop of three: Kim's habit is known to Kim, who had six jobs for it; Lou has not begun.</summary>
    public static List<Logged> Workshop()
    {
        var kim = OverConfident();
        var sam = PersonEntries.After(History.Of(kim), [.. TenthDay().Skip(1).Where(e => e.What is not LogEntry.SatDown)]);
        List<Logged> log = [.. kim, .. sam];
        Add(log, new LogEntry.PersonAdded("Lou"), new LogEntry.WorkshopSet("Back yard", "Jo", [Topic.Id]), new LogEntry.HabitTold("Kim", Habit.TrustsNumber), new LogEntry.AimedAt("Kim", Habit.TrustsNumber));
        for (var n = 0; n < Habits.AimedJobs; n++)
            log.AddRange(Job(History.Of(log).NextJob, "Kim", log[^1].At.AddMinutes(5), [new Observed.Pattern(Habit.TrustsNumber, Shown: true), Mark("plate", right: false)]));
        return log;
    }

    public static void Add(List<Logged> log, params LogEntry[] entries) => log.AddRange(entries.Select((e, i) => new Logged(log[^1].At.AddMinutes(i + 1), e)));

    static Observed.Mark Mark(string clue, bool right) => new(new SkillKey(SkillSort.Clue, Topic.Id, clue), right, 0.25);

    static List<Logged> Person(string name, int jobs, int perDay, Func<int, int, Observed[]> showed)
    {
        List<Logged> log = [new(Start, new LogEntry.Began(Talk.Luck)), new(Start, new LogEntry.PersonAdded(name)), new(Start, new LogEntry.SatDown(name))];
        for (var job = 0; job < jobs; job++) log.AddRange(Job(job + 1, name, Start.AddDays(job / perDay).AddMinutes(10 * (job % perDay)), showed(job, job / 2)));
        return log;
    }

    static IEnumerable<Logged> Job(int number, string person, DateTimeOffset at, Observed[] observed) =>
    [
        new(at, new LogEntry.JobStarted(number, person, Topic.Id, Topic.Version, (ulong)number, new CaseRequest(Topic.Provenances[0].Id, Topic.Wants[0].Id, null, Selection.AsTheyCome, Channel.Bench), Guided: false, 1)),
        new(at.AddMinutes(4), new LogEntry.Answered(number, Nothing, new Verdict(InShort.RightForTheRightReason, [], Sound: true, SafetyError: false)) { Observed = observed }),
    ];
}
