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
    const int TopicCount = 15;
    const int CluesOfTopic = 8;

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

    public static void Print()
    {
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var watch = Stopwatch.StartNew();
        var history = Filled();
        Console.WriteLine($"history of {People} x {Attempts} attempts: read in {watch.Elapsed.TotalSeconds:0.0} s, weighs {(GC.GetTotalMemory(forceFullCollection: true) - before) / 1048576.0:0} MB (goal under 250)");
        var now = Start.AddDays(1001);
        Time("all skills folded for the first time", null, () => SkillBook.Of(history));
        _ = history.Book;
        var next = Job(history, "P7", now, [new Observed.Mark(new SkillKey(SkillSort.Clue, "t0", "c0"), Right: true, 0)], "t0");
        Time("learner's page, one answer after the last time", 100, () => (next.With(new Logged(now, new LogEntry.Paused(null))).Book.Of("P7", now), Sureness.Of(next, "P7"), Trust.Of(next, "P7"), Habits.Of(next, "P7")));
        Time("workshop's page", 1000, () => WorkshopNeeds.Of(next, now));
        Console.WriteLine($"weighs with everybody's skills {(GC.GetTotalMemory(forceFullCollection: true) - before) / 1048576.0:0} MB (goal under 250)");
        GC.KeepAlive(history);
        GC.KeepAlive(next);
    }

    static History Filled()
    {
        var rng = new Rng(801);
        var history = History.Empty;
        for (var p = 0; p < People; p++) history = history.With(new Logged(Start, new LogEntry.PersonAdded("P" + p)));
        for (var a = 0; a < Attempts; a++)
        {
            for (var p = 0; p < People; p++) history = Attempt(history, "P" + p, a, rng);
        }

        return history;
    }

    // Three checks looked at and what a usual answer shows: six skills, how sure, minutes, an order, four patterns, and an update in one job of three.
    static History Attempt(History history, string person, int attempt, Rng rng)
    {
        var topic = "t" + (attempt % TopicCount);
        var job = history.NextJob;
        var observed = new List<Observed> { new Observed.Sure("part", 1 + (int)(rng.Unit() * 10), rng.Unit() < 0.7), new Observed.Bench(4, 3), new Observed.Ordered(Wrong: false) };
        for (var s = 0; s < 4; s++) observed.Add(new Observed.Mark(new SkillKey((SkillSort)(s % 3), topic, "c" + (int)(rng.Unit() * CluesOfTopic)), rng.Unit() < 0.7, 0.2));
        observed.Add(new Observed.Mark(new SkillKey(SkillSort.Deciding, topic, ""), rng.Unit() < 0.7, 0.2));
        observed.Add(new Observed.Mark(new SkillKey(SkillSort.Stopping, topic, ""), rng.Unit() < 0.7, 0));
        for (var h = 0; h < 4; h++) observed.Add(new Observed.Pattern((Habit)((attempt + (h * 4)) % 16), rng.Unit() < 0.05));
        if (attempt % 3 == 0) observed.Add(new Observed.Weighed("c1", (ClueFamily)(attempt % 6), Linked: false, 1, rng.Unit()));
        history = Job(history, person, Start.AddDays(attempt).AddMinutes(rng.Unit() * 60), observed, topic);
        for (var l = 0; l < 3; l++)
            history = history.With(new Logged(Start.AddDays(attempt), new LogEntry.Looked(job, new Look("c" + l, 0), new Finding("c" + l, Channel.Bench, new Seen.Reading(310)))));
        return history;
    }

    static void Time<T>(string what, int? goal, Func<T> once)
    {
        once();
        var before = Environment.CpuUsage.TotalTime;
        once();
        Console.WriteLine($"{(Environment.CpuUsage.TotalTime - before).TotalMilliseconds,8:0.0} ms of processor time  {what}{(goal is { } g ? $" (goal under {g} ms)" : "")}");
    }
}
