using System.Diagnostics;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Benchmarks;

/// <summary>A made-up log of 200 learners with 1,000 attempts each: how long the folds of the learner's and the workshop's page take, and how much the history weighs.</summary>
static class Log
{
    const int People = 200;
    const int Attempts = 1000;

    static readonly CaseRequest Request = new("own", "want", null, Selection.AsTheyCome, Channel.Bench);
    static readonly Verdict Fine = new(InShort.RightForTheRightReason, [new AspectMark(Aspect.Stopping, 1, "grade.rule.stopping"), new AspectMark(Aspect.Identification, 1, "grade.rule.which")], Sound: true, SafetyError: false);
    static readonly DateTimeOffset Start = new(2026, 1, 1, 9, 0, 0, TimeSpan.Zero);

    /// <summary>A history with one more answered job of nothing but what it showed.</summary>
    public static History Job(History history, string person, DateTimeOffset at, IReadOnlyList<Observed> observed, string topic = "topic")
    {
        var job = history.NextJob;
        return history.With(new Logged(at, new LogEntry.JobStarted(job, person, topic, "v", (ulong)job, Request, Guided: false, 1)))
            .With(new Logged(at, new LogEntry.Answered(job, new Given([new PartAnswer("part", "kind", 9)], [], null, null, null, Forced: false), Fine) { Observed = observed }));
    }

    public static void Print(IReadOnlyList<Topic> topics)
    {
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var watch = Stopwatch.StartNew();
        var history = History.Of(Entries(topics));
        Console.WriteLine($"history of {People} x {Attempts} attempts: read in {watch.Elapsed.TotalSeconds:0.0} s, weighs {(GC.GetTotalMemory(forceFullCollection: true) - before) / 1048576.0:0} MB (goal under 250)");
        var now = Start.AddDays(1001);
        Time("all skills folded for the first time", null, () => SkillBook.Of(history));
        _ = history.Book;
        var next = Job(history, "P7", now, [new Observed.Mark(new SkillKey(SkillSort.Clue, topics[0].Id, topics[0].Clues[0].Id), Right: true, 0)], topics[0].Id);
        Time("learner's page, one answer after the last time", 100, () => (next.With(new Logged(now, new LogEntry.Paused(null))).Book.Of("P7", now), Sureness.Of(next, "P7"), Trust.Of(next, "P7"), Habits.Of(next, "P7")));
        Time("workshop's page", 1000, () => WorkshopNeeds.Of(next, now));
        Console.WriteLine($"weighs with everybody's skills {(GC.GetTotalMemory(forceFullCollection: true) - before) / 1048576.0:0} MB (goal under 250)");
        GC.KeepAlive(history);
        GC.KeepAlive(next);
    }

    /// <summary>The log: 200 people who take turns at the topics, a job a day each; one in five has a habit, knows of it and has begun a set of jobs for it.</summary>
    public static IEnumerable<Logged> Entries(IReadOnlyList<Topic> topics)
    {
        var rng = new Rng(801);
        yield return new Logged(Start, new LogEntry.Began(801));
        for (var p = 0; p < People; p++) yield return new Logged(Start, new LogEntry.PersonAdded("P" + p));
        yield return new Logged(Start, new LogEntry.WorkshopSet("Made up", "Jo", [.. topics.Select(t => t.Id)]));
        for (var a = 0; a < Attempts; a++)
        {
            for (var p = 0; p < People; p++)
            {
                foreach (var entry in Attempt((a * People) + p + 1, p, a, topics[a % topics.Count], rng)) yield return entry;
            }
        }
    }

    // Three checks looked at and what a usual answer shows: six skills, how sure, minutes, an order, four patterns, and an update in one job of three.
    static IEnumerable<Logged> Attempt(int job, int p, int attempt, Topic topic, Rng rng)
    {
        var (person, at) = ("P" + p, Start.AddDays(attempt).AddMinutes(p));
        var clues = topic.Clues.Take(8).ToList();
        if (p % 5 == 0 && attempt == Attempts / 2)
        {
            yield return new Logged(at, new LogEntry.HabitTold(person, Habit.TrustsNumber));
            yield return new Logged(at, new LogEntry.AimedAt(person, Habit.TrustsNumber));
        }

        yield return new Logged(at, new LogEntry.JobStarted(job, person, topic.Id, topic.Version, (ulong)job, Request, Guided: false, 1));
        for (var l = 0; l < 3; l++) yield return new Logged(at, new LogEntry.Looked(job, new Look(clues[l].Id, 0), new Finding(clues[l].Id, Channel.Bench, new Seen.Reading(310))));
        var observed = new List<Observed> { new Observed.Sure("part", 1 + (int)(rng.Unit() * 10), rng.Unit() < 0.7), new Observed.Bench(4, 3), new Observed.Ordered(Wrong: false) };
        for (var s = 0; s < 4; s++) observed.Add(new Observed.Mark(new SkillKey((SkillSort)(s % 3), topic.Id, clues[(int)(rng.Unit() * clues.Count)].Id), rng.Unit() < 0.7, 0.2));
        observed.Add(new Observed.Mark(new SkillKey(SkillSort.Deciding, topic.Id, ""), rng.Unit() < 0.7, 0.2));
        observed.Add(new Observed.Mark(new SkillKey(SkillSort.Stopping, topic.Id, ""), rng.Unit() < 0.7, 0));
        for (var h = 0; h < 4; h++) observed.Add(new Observed.Pattern((Habit)((attempt + (h * 4)) % 16), rng.Unit() < (p % 5 == 0 && h == 0 ? 0.6 : 0.05)));
        if (attempt % 3 == 0) observed.Add(new Observed.Weighed(clues[1].Id, (ClueFamily)(attempt % 6), Linked: false, 1, rng.Unit()));
        yield return new Logged(at.AddMinutes(4), new LogEntry.Answered(job, new Given([new PartAnswer("part", "kind", 9)], [], null, null, null, Forced: false), Fine) { Observed = observed });
    }

    static void Time<T>(string what, int? goal, Func<T> once)
    {
        once();
        var before = Environment.CpuUsage.TotalTime;
        once();
        Console.WriteLine($"{(Environment.CpuUsage.TotalTime - before).TotalMilliseconds,8:0.0} ms of processor time  {what}{(goal is { } g ? $" (goal under {g} ms)" : "")}");
    }
}
