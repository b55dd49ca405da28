using System.Collections.Immutable;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Notebook;

namespace Apprentice.Engine.Learning;

/// <summary>What the log amounts to. Always derived, never stored.</summary>
/// <remarks>Histories of one log share what they hold, and are for one thread at a time.</remarks>
public sealed partial record History
{
    /// <summary>The history of an empty log.</summary>
    public static History Empty => new();

    /// <summary>The number drawn at the first start, or null before it.</summary>
    public long? Luck { get; private init; }

    /// <summary>People, in the order in which they came.</summary>
    public IReadOnlyList<string> People { get; private init; } = [];

    /// <summary>Who sits at the machine, or null for nobody.</summary>
    public string? Current { get; private init; }

    /// <summary>Jobs, oldest first; job n is at index n − 1. Each is put together when it is asked for.</summary>
    public IReadOnlyList<PastJob> Jobs => AllJobs;

    /// <summary>Numbers of the answered jobs, in the order of the log.</summary>
    public IReadOnlyList<int> Answered => AllAnswered;

    ChunkList<int> AllAnswered { get; init; } = ChunkList<int>.Empty;

    // A page asks for the jobs of one person many times over.
    Asked? _lastAsked;

    SkillBook? _book;

    /// <summary>Everybody's skills. Worked out when first asked for, from the last state that was.</summary>
    public SkillBook Book => _book = SkillBook.Of(this, _book);

    JobList AllJobs { get; init; } = new();

    /// <summary>The workshop, or null when none was set up.</summary>
    public LogEntry.WorkshopSet? Workshop { get; private init; }

    /// <summary>Lines about lessons for the lead, oldest first.</summary>
    public IReadOnlyList<LogEntry.LessonQuestioned> LessonQuestions { get; private init; } = [];

    ImmutableDictionary<(string Person, string Lesson), DateTimeOffset> Lessons { get; init; } = ImmutableDictionary<(string, string), DateTimeOffset>.Empty;

    /// <summary>When a person last opened a lesson, or null.</summary>
    /// <param name="person">A name, or null for nobody known.</param>
    /// <param name="lesson">Path of the lesson.</param>
    public DateTimeOffset? Read(string? person, string lesson) => Lessons.TryGetValue((person ?? "", lesson), out var at) ? at : null;

    /// <summary>Lessons that a person opened, with the last time.</summary>
    /// <param name="person">A name.</param>
    public IEnumerable<(string Lesson, DateTimeOffset At)> LessonsOf(string person) => Lessons.Where(l => l.Key.Person == person).Select(l => (l.Key.Lesson, l.Value));

    /// <summary>Topics that the lead chose for this month; empty for all.</summary>
    public IReadOnlyList<string> MonthTopics { get; private init; } = [];

    /// <summary>Sets of jobs aimed at a habit, oldest first.</summary>
    public IReadOnlyList<Aim> Aims { get; private init; } = [];

    /// <summary>Habits that were shown to a learner.</summary>
    public ImmutableHashSet<(string Person, Habit Habit)> HabitsTold { get; private init; } = [];

    /// <summary>The last placement a person asked for: its topics, and the number of the first job that can belong to it.</summary>
    public ImmutableDictionary<string, (IReadOnlyList<string> Topics, int From)> Placements { get; private init; } =
        ImmutableDictionary<string, (IReadOnlyList<string>, int)>.Empty;

    /// <summary>Hashes of the PINs that are set, by person.</summary>
    public ImmutableDictionary<string, string> Pins { get; private init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Drills, oldest first; drill n is at index n − 1.</summary>
    public IReadOnlyList<PastDrill> Drills { get; private init; } = [];

    /// <summary>Series of real parts that were measured, oldest first.</summary>
    public IReadOnlyList<RealSeries> RealParts { get; private init; } = [];

    // Each person's last session, with the number of the first job that can belong to it.
    ImmutableDictionary<string, (IReadOnlyList<PlannedJob> Jobs, int From)> Sessions { get; init; } = ImmutableDictionary<string, (IReadOnlyList<PlannedJob>, int)>.Empty;

    // Numbers of each person's jobs, in order.
    ImmutableDictionary<string, ChunkList<int>> ByPerson { get; init; } = ImmutableDictionary<string, ChunkList<int>>.Empty;

    /// <summary>Plans, papers and permissions.</summary>
    public Assessments Assessments { get; private init; } = Assessments.Empty;

    /// <summary>Real bikes, the inbox and the lead's list.</summary>
    public BenchNotebook Notebook { get; private init; } = BenchNotebook.Empty;

    /// <summary>The number of the next job.</summary>
    public int NextJob => Jobs.Count + 1;

    /// <summary>The history of a log.</summary>
    /// <param name="log">Entries, oldest first.</param>
    public static History Of(IEnumerable<Logged> log) => log.Aggregate(Empty, (history, entry) => history.With(entry));

    /// <summary>This history with one more entry.</summary>
    /// <exception cref="ArgumentException">The entry speaks of a job that was never started.</exception>
    public History With(Logged entry) => Told(Called.Of(entry));

    History Told(Logged entry) => entry.What switch
    {
        LogEntry.Began began => this with { Luck = Luck ?? began.Luck },
        LogEntry.PersonAdded added => (added.Job is { } job ? Named(job, added.Name) : this) with
        {
            People = [.. People.Except([added.Name], StringComparer.Ordinal), added.Name],
        },
        LogEntry.PersonRenamed renamed => Renamed(renamed),
        LogEntry.SatDown sat => this with { Current = sat.Name },
        LogEntry.PinSet pin => this with { Pins = pin.Hash is { } hash ? Pins.SetItem(pin.Person, hash) : Pins.Remove(pin.Person) },
        LogEntry.SessionPlanned planned => this with { Sessions = Sessions.SetItem(KeyOf(planned.Person), (planned.Jobs, NextJob)) },
        LogEntry.JobStarted started => this with { AllJobs = AllJobs.Add(new PastJob(started, entry.At)), ByPerson = Owned(started.Person, NextJob) },
        LogEntry.Looked looked => Changed(looked.Job, j => j with { Looks = [.. j.Looks, AllJobs.Same(looked.Look)] }),
        LogEntry.Answered answered => Changed(
            answered.Job, j => j with { Given = answered.Given, Verdict = answered.Verdict, Observed = answered.Observed, Ended = entry.At }) with
        {
            AllAnswered = AllAnswered.Add(answered.Job),
        },
        LogEntry.Updated updated => Changed(updated.Job, j => j with { Updates = [.. j.Updates, updated] }),
        LogEntry.HabitTold told => this with { HabitsTold = HabitsTold.Add((told.Person, told.Habit)) },
        LogEntry.AimedAt aimed => this with { Aims = [.. Aims, new Aim(aimed.Person, aimed.Habit, NextJob)] },
        LogEntry.PlacementAsked asked => this with { Placements = Placements.SetItem(asked.Person, (asked.Topics, NextJob)) },
        LogEntry.TopicsChosen chosen => this with { MonthTopics = chosen.Topics },
        LogEntry.Questioned asked => Changed(asked.Job, j => j with { Questions = [.. j.Questions, asked.Text] }) with { Notebook = Notebook.With(entry) },
        LogEntry.LessonRead read => this with { Lessons = Lessons.SetItem((read.Person ?? "", read.Lesson), entry.At) },
        LogEntry.LessonQuestioned asked => this with { LessonQuestions = [.. LessonQuestions, asked], Notebook = Notebook.With(entry) },
        LogEntry.WorkshopSet workshop => this with { Workshop = workshop },
        LogEntry.DrillStarted started => this with { Drills = [.. Drills, new PastDrill(started)] },
        LogEntry.DrillAsked asked => Drilled(asked.Drill, d => d.With(asked.Item, entry.At)),
        LogEntry.DrillAnswered answered => Drilled(answered.Drill, d => d.With(answered, entry.At)),
        LogEntry.DrillEnded ended => Drilled(ended.Drill, d => d with { IsOver = true }),
        LogEntry.Paused => Drills.Count == 0 ? this : Drilled(Drills.Count, d => d with { Since = null }),
        LogEntry.RealPartRead read => this with { RealParts = With(RealParts, read) },
        _ => this with { Assessments = Assessments.With(entry), Notebook = Notebook.With(entry) },
    };

    /// <summary>The person's jobs, oldest first.</summary>
    /// <param name="person">A name, or null for jobs of nobody known.</param>
    public IReadOnlyList<PastJob> JobsOf(string? person)
    {
        var numbers = NumbersOf(person);
        if (_lastAsked is { } last && last.All == AllJobs && last.Numbers == numbers) return last.Jobs;
        var jobs = new PastJob[numbers.Count];
        for (var i = 0; i < jobs.Length; i++) jobs[i] = AllJobs[numbers[i] - 1];
        _lastAsked = new Asked(AllJobs, numbers, jobs);
        return jobs;
    }

    /// <summary>The person's last job if it has no answer yet, or null.</summary>
    public PastJob? Unfinished(string? person) => NumbersOf(person) is { Count: > 0 } numbers && AllJobs[numbers[^1] - 1] is { Given: null } job ? job : null;

    /// <summary>What is left of the session to which a job belongs, the job itself first; empty for a job that belongs to none.</summary>
    /// <param name="job">A job of this history.</param>
    public IReadOnlyList<PlannedJob> LeftFrom(PastJob job)
    {
        if (!Sessions.TryGetValue(KeyOf(job.Person), out var session) || job.Started.Job < session.From) return [];
        var nth = JobsOf(job.Person).Count(j => j.Started.Job >= session.From && j.Started.Job < job.Started.Job);
        var isIts = nth < session.Jobs.Count && session.Jobs[nth].Topic == job.Started.Topic && (job.Started.Guided || session.Jobs[nth].Draw.Seed == job.Started.Seed);
        return isIts ? [.. session.Jobs.Skip(nth)] : [];
    }

    /// <summary>How many jobs of a topic the person has answered, guided ones left out.</summary>
    public int Done(string? person, string topic) => JobsOf(person).Count(j => j.Counts && string.Equals(j.Started.Topic, topic, StringComparison.Ordinal));

    /// <summary>The person's answers in drills of a skill, oldest first.</summary>
    public IReadOnlyList<DrillAnswer> DrillAnswers(string? person, string skill) =>
    [
        .. Drills.Where(d => string.Equals(d.Started.Person, person, StringComparison.Ordinal) && string.Equals(d.Started.Skill, skill, StringComparison.Ordinal))
            .SelectMany(d => d.Answers),
    ];

    // No name begins like that of nobody known.
    static string KeyOf(string? person) => person is null ? "\0" : "p" + person;

    ChunkList<int> NumbersOf(string? person) => ByPerson.GetValueOrDefault(KeyOf(person), ChunkList<int>.Empty);

    ImmutableDictionary<string, ChunkList<int>> Owned(string? person, int job) => ByPerson.SetItem(KeyOf(person), NumbersOf(person).Add(job));

    // The book is made afresh: it has left out what nobody known had done.
    History Named(int job, string person)
    {
        var changed = Changed(job, j => j with { Person = person });
        var before = Jobs[job - 1].Person;
        var rest = ChunkList<int>.Of(NumbersOf(before).Where(n => n != job));
        var owned = changed with { ByPerson = ByPerson.SetItem(KeyOf(before), rest), _book = null };
        return owned with { ByPerson = owned.ByPerson.SetItem(KeyOf(person), ChunkList<int>.Of(owned.NumbersOf(person).Append(job).Order())) };
    }

    History Drilled(int drill, Func<PastDrill, PastDrill> change)
    {
        if (drill < 1 || drill > Drills.Count) throw new ArgumentException($"Drill {drill} was never started.", nameof(drill));
        var drills = Drills.ToArray();
        drills[drill - 1] = change(drills[drill - 1]);
        return this with { Drills = drills };
    }

    static IReadOnlyList<RealSeries> With(IReadOnlyList<RealSeries> all, LogEntry.RealPartRead read)
    {
        var known = all.FirstOrDefault(s => s.Number == read.Series) ?? new RealSeries(read.Series, read.Person, read.Set, []);
        return [.. all.Where(s => s.Number != read.Series), known with { Readings = [.. known.Readings, read] }];
    }

    History Changed(int job, Func<PastJob, PastJob> change)
    {
        if (job < 1 || job > Jobs.Count) throw new ArgumentException($"Job {job} was never started.", nameof(job));
        return this with { AllJobs = AllJobs.SetItem(job - 1, change(AllJobs[job - 1])) };
    }

    sealed record Asked(JobList All, ChunkList<int> Numbers, IReadOnlyList<PastJob> Jobs);
}

/// <summary>A set of jobs aimed at a habit.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Habit">The habit.</param>
/// <param name="From">Number of the first job on this file that can belong to it.</param>
public sealed record Aim(string Person, Habit Habit, int From);
