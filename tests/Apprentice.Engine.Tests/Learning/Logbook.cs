using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Learning;

/// <summary>A log written for a test: jobs with nothing in them but what they showed.</summary>
sealed class Logbook
{
    public static readonly DateTimeOffset Start = new(2026, 11, 2, 9, 0, 0, TimeSpan.Zero);

    static readonly CaseRequest Request = new("own", "want", null, Selection.AsTheyCome, Channel.Bench);

    static readonly Given Nothing = new([], [], null, null, null, Forced: false);

    static readonly Verdict Fine = new(InShort.RightForTheRightReason, [], Sound: true, SafetyError: false);

    readonly List<Logged> _entries = [];
    int _jobs;

    public IReadOnlyList<Logged> Entries => _entries;

    public History History => History.Of(_entries);

    public int Jobs => _jobs;

    public Logbook Job(string? person, double day, params IEnumerable<Observed> observed) => Job(person, day, "bar", guided: false, observed);

    public Logbook Job(string? person, double day, string topic, bool guided, IEnumerable<Observed> observed)
    {
        _entries.AddRange(JobEntries(++_jobs, person, day, topic, guided, observed));
        return this;
    }

    public Logbook Add(LogEntry entry)
    {
        _entries.Add(new Logged(Start, entry));
        return this;
    }

    public static IEnumerable<Logged> JobEntries(int job, string? person, double day, string topic, bool guided, IEnumerable<Observed> observed) =>
    [
        new Logged(Start.AddDays(day), new LogEntry.JobStarted(job, person, topic, "v", (ulong)job, Request, guided, 1)),
        new Logged(Start.AddDays(day), new LogEntry.Answered(job, Nothing, Fine) { Observed = [.. observed] }),
    ];

    public static SkillKey Skill(string id) => new(SkillSort.Clue, "bar", id);

    public static Observed.Mark Mark(string id, bool right, double guess = 0) => new(Skill(id), right, guess);
}
