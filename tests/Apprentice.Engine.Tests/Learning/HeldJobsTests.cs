using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using CsCheck;

namespace Apprentice.Engine.Tests.Learning;

/// <summary>What a history holds of a job is what the log said.</summary>
public sealed class HeldJobsTests
{
    const string Seed = "0N0XIzNsQ0O2";

    static readonly string[] Words = ["bar", "none", "", "grüner Lenker"];

    static readonly Gen<string> Word = Gen.Int[0, 3].Select(n => Words[n]);

    static readonly Gen<string?> Maybe = Gen.Int[-1, 3].Select(n => n < 0 ? null : Words[n]);

    static readonly Gen<DateTimeOffset> Time = Gen.Select(Gen.DateTime[new DateTime(1, 1, 2), new DateTime(9999, 12, 30)], Gen.Int[-14 * 60, 14 * 60], (t, minutes) =>
        new DateTimeOffset(DateTime.SpecifyKind(t, DateTimeKind.Unspecified), TimeSpan.FromMinutes(minutes)));

    static readonly Gen<CaseRequest> Request = Gen.Select(Word, Word, Maybe, Gen.Enum<Selection>(), Gen.Enum<Channel>(), Word.Array[0, 3], Gen.Bool, Gen.Nullable(Gen.Int))
        .Select((provenance, want, opening, select, offer, tools, all, questions) => new CaseRequest(provenance, want, opening, select, offer, all ? null : tools, questions));

    static readonly Gen<Look> Look = Gen.Select(Word, Gen.Int[0, 3], Gen.Nullable(Gen.Double[0, 700]), Gen.Nullable(Gen.Int[0, 3]), Maybe, Gen.Nullable(Gen.Int[0, 3]), Gen.Nullable(Gen.Enum<Bearing>()))
        .Select((clue, nth, own, datum, finding, writing, bearing) => new Look(clue, nth, own, datum, finding, writing, bearing));

    static readonly Gen<Choice> Choice = Gen.OneOf<Choice>(
        Word.Select(s => (Choice)new Choice.Order(s)), Gen.Select(Word, Word, (a, b) => (Choice)new Choice.OrderTwo(a, b)), Word.Select(c => (Choice)new Choice.Wait(c)), Gen.Const((Choice)new Choice.Ask()));

    static readonly Gen<Given> Given = Gen.Select(
        Gen.Select(Word, Maybe, Gen.Int[1, 10], (part, kind, tenths) => new PartAnswer(part, kind, tenths)).Array[0, 3], Choice.Array[0, 3], Maybe, Maybe, Maybe, Gen.Bool)
        .Select((parts, orders, settled, aside, story, forced) => new Given(parts, orders, settled, aside, story, forced));

    static readonly Gen<Verdict> Verdict = Gen.Select(
        Gen.Enum<InShort>(), Gen.Select(Gen.Enum<Aspect>(), Gen.Double[0, 1], Word, (aspect, mark, rule) => new AspectMark(aspect, mark, rule)).Array[0, 4], Gen.Bool, Gen.Bool)
        .Select((inShort, marks, sound, safety) => new Verdict(inShort, marks, sound, safety));

    static readonly Gen<Observed> Observed = Gen.OneOf<Observed>(
        Gen.Select(Gen.Enum<SkillSort>(), Word, Word, Gen.Bool, Gen.Double[0, 0.9], (sort, topic, id, right, guess) => (Observed)new Observed.Mark(new SkillKey(sort, topic, id), right, guess)),
        Gen.Select(Gen.Enum<Habit>(), Gen.Bool, (habit, shown) => (Observed)new Observed.Pattern(habit, shown)),
        Gen.Select(Word, Gen.Enum<ClueFamily>(), Gen.Bool, Gen.Double, Gen.Double, (clue, family, linked, worth, taken) => (Observed)new Observed.Weighed(clue, family, linked, worth, taken)));

    static readonly Gen<PastJob> Job = Gen.Select(
        Gen.Select(Maybe, Word, Word, Gen.ULong, Request, Gen.Bool, Gen.Int[1, 3], Time, (person, topic, version, seed, request, guided, step, at) =>
            new PastJob(new LogEntry.JobStarted(0, person, topic, version, seed, request, guided, step), at)),
        Gen.Select(Look.Array[0, 4], Given, Verdict, Observed.Array[0, 15], Time),
        Word.Array[0, 2], Gen.Int[0, 2], Gen.Bool)
        .Select((job, answer, questions, updates, answered) => !answered
            ? job with { Looks = answer.Item1, Questions = questions }
            : job with { Looks = answer.Item1, Given = answer.Item2, Verdict = answer.Item3, Observed = answer.Item4, Ended = answer.Item5, Questions = questions, Updates = Updates(updates) });

    [Fact]
    public void Each_job_is_as_the_log_told_it() => Job.Array[1, 100].Sample(
        drawn =>
        {
            var jobs = drawn.Select((j, i) => j with { Started = j.Started with { Job = i + 1 }, Updates = [.. j.Updates.Select(u => u with { Job = i + 1 })] }).ToList();
            var history = History.Of(Entries(jobs));
            Assert.Equal(jobs.Select(Said), history.Jobs.Select(Said));
            Assert.Equal(jobs.Where(j => j.Given is not null).Select(j => j.Started.Job), history.Answered);
            foreach (var person in jobs.Select(j => j.Person).Distinct()) Assert.Equal(jobs.Where(j => j.Person == person).Select(Said), history.JobsOf(person).Select(Said));
        },
        iter: 200,
        seed: Seed);

    [Fact]
    public void What_comes_later_does_not_change_an_earlier_history()
    {
        var first = Enumerable.Range(1, 100).Aggregate(new Logbook(), (log, n) => log.Job("Sam", n)).History;
        var kims = Logbook.JobEntries(101, "Kim", 101, "bar", guided: false, []).Aggregate(first, (h, e) => h.With(e));
        var sams = Logbook.JobEntries(101, "Sam", 101, "bar", guided: false, []).Aggregate(first, (h, e) => h.With(e)).With(new Logged(Logbook.Start, new LogEntry.Questioned(7, "why?")));
        Assert.Equal((100, 101, 101), (first.Jobs.Count, kims.Jobs.Count, sams.Jobs.Count));
        Assert.Equal((100, 100, 101), (first.JobsOf("Sam").Count, kims.JobsOf("Sam").Count, sams.JobsOf("Sam").Count));
        Assert.Equal((0, 0, 1), (first.Jobs[6].Questions.Count, kims.Jobs[6].Questions.Count, sams.JobsOf("Sam")[6].Questions.Count));
    }

    [Fact]
    public void A_late_name_puts_the_job_in_its_place()
    {
        var log = new Logbook().Job("Sam", 1).Job(null, 2).Job(null, 3).Job("Sam", 4).Add(new LogEntry.PersonAdded("Sam", 2)).History;
        Assert.Equal([1, 2, 4], log.JobsOf("Sam").Select(j => j.Started.Job));
        Assert.Equal([3], log.JobsOf(null).Select(j => j.Started.Job));
        Assert.Null(log.Jobs[1].Started.Person);
    }

    static LogEntry.Updated[] Updates(int count) => [.. Enumerable.Range(0, count).Select(n => new LogEntry.Updated(0, n, "bar", "none", n, 10 - n))];

    static IEnumerable<Logged> Entries(IReadOnlyList<PastJob> jobs)
    {
        foreach (var job in jobs)
        {
            yield return new Logged(job.At, job.Started);
            foreach (var look in job.Looks) yield return new Logged(job.At, new LogEntry.Looked(job.Started.Job, look, new Finding(look.Clue, Channel.Bench, new Seen.Hidden())));
        }

        foreach (var job in jobs)
        {
            if (job is { Given: { } given, Verdict: { } verdict, Ended: { } ended }) yield return new Logged(ended, new LogEntry.Answered(job.Started.Job, given, verdict) { Observed = job.Observed });
            foreach (var update in job.Updates) yield return new Logged(job.At, update);
            foreach (var line in job.Questions) yield return new Logged(job.At, new LogEntry.Questioned(job.Started.Job, line));
        }
    }

    // Every field in words, since lists of records are alike only when they are the same.
    static string Said(PastJob job) => System.Text.Json.JsonSerializer.Serialize(new
    {
        Started = job.Started with { Request = job.Started.Request with { Tools = null } },
        job.Started.Request.Tools,
        job.At,
        job.Person,
        Looks = job.Looks.Select(l => l.ToString()),
        Parts = job.Given?.Parts.Select(p => p.ToString()),
        Orders = job.Given?.Orders.Select(o => o.ToString()),
        Rest = job.Given is { } given ? (object)new { given.SettledBy, given.SetAside, given.Story, given.Forced } : null,
        Marks = job.Verdict?.Marks.Select(m => m.ToString()),
        Verdict = job.Verdict is { } verdict ? (object)new { verdict.InShort, verdict.Sound, verdict.SafetyError } : null,
        Observed = job.Observed.Select(o => o.ToString()),
        Updates = job.Updates.Select(u => u.ToString()),
        job.Ended,
        job.Questions,
    });
}
