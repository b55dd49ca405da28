namespace Apprentice.Engine.Learning;

/// <summary>The entries of one person in a log: taken out to go to another machine, put in there, or left out for good.</summary>
/// <remarks>Jobs, drills and series are numbered anew, since a log counts them without gaps.</remarks>
public static class PersonEntries
{
    /// <summary>The entries that belong to a person, numbered as in a log of their own; all under the name now, without the corrections that led to it.</summary>
    /// <param name="log">Entries, oldest first.</param>
    /// <param name="person">A name.</param>
    public static IReadOnlyList<Logged> Of(IReadOnlyList<Logged> log, string person) =>
        Kept([.. log.Where(e => e.What is not LogEntry.PersonRenamed).Select(History.Of(log).Called.Of)], person, isTheirs: true);

    /// <summary>A log without a person. Who sat at the machine is then nobody; earlier set-ups of the workshop that name the person as lead are left out.</summary>
    /// <param name="log">Entries, oldest first.</param>
    /// <param name="person">A name.</param>
    public static IReadOnlyList<Logged> Without(IReadOnlyList<Logged> log, string person) => Kept(log, person, isTheirs: false);

    /// <summary>Entries of a person, numbered to follow a log.</summary>
    /// <param name="history">The history of that log.</param>
    /// <param name="entries">What <see cref="Of"/> gave.</param>
    public static IReadOnlyList<Logged> After(History history, IReadOnlyList<Logged> entries)
    {
        var series = history.RealParts.Select(s => s.Number).DefaultIfEmpty(0).Max();
        return [.. entries.Select(e => e with { What = Numbered(e.What, j => j + history.Jobs.Count, d => d + history.Drills.Count, s => s + series) })];
    }

    static List<Logged> Kept(IReadOnlyList<Logged> log, string person, bool isTheirs)
    {
        var owners = new Owners(log, person);
        var tests = new TestEntries(log, owners.Is);
        var reports = new ReportNumbers(log, e => owners.IsTheirs(e) == isTheirs);
        var kept = log.Where(e => owners.IsTheirs(e.What) == isTheirs && !tests.AreTheirs(e.What) && !(isTheirs && (e.What is LogEntry.WorkshopSet or LogEntry.ReportShown)) && reports.IsKept(e.What)).ToList();
        var (jobs, drills, series) = (new Dictionary<int, int>(), new Dictionary<int, int>(), new Dictionary<int, int>());
        foreach (var entry in kept)
        {
            if (entry.What is LogEntry.JobStarted job) jobs[job.Job] = jobs.Count + 1;
            if (entry.What is LogEntry.DrillStarted drill) drills[drill.Drill] = drills.Count + 1;
            if (entry.What is LogEntry.RealPartRead read) series.TryAdd(read.Series, series.Count + 1);
        }

        LogEntry Anew(LogEntry entry) => Numbered(entry, j => jobs[j], d => drills[d], s => series[s]);

        return
        [
            .. kept.Select(e => e with
            {
                What = e.What is LogEntry.SatDown { Name: { } name } && !isTheirs && owners.Is(name)
                    ? new LogEntry.SatDown(null)
                    : reports.Numbered(isTheirs ? Anew(e.What) : StandEntries.Without(Anew(e.What), owners.Is)),
            }),
        ];
    }

    static LogEntry Numbered(LogEntry entry, Func<int, int> job, Func<int, int> drill, Func<int, int> series) => entry switch
    {
        LogEntry.PersonAdded { Job: { } n } e => e with { Job = job(n) },
        LogEntry.JobStarted e => e with { Job = job(e.Job) },
        LogEntry.Looked e => e with { Job = job(e.Job) },
        LogEntry.Answered e => e with { Job = job(e.Job) },
        LogEntry.Updated e => e with { Job = job(e.Job) },
        LogEntry.Questioned e => e with { Job = job(e.Job) },
        LogEntry.Paused { Job: { } n } e => e with { Job = job(n) },
        LogEntry.DrillStarted e => e with { Drill = drill(e.Drill) },
        LogEntry.DrillAsked e => e with { Drill = drill(e.Drill) },
        LogEntry.DrillAnswered e => e with { Drill = drill(e.Drill) },
        LogEntry.DrillEnded e => e with { Drill = drill(e.Drill) },
        LogEntry.RealPartRead e => e with { Series = series(e.Series) },
        _ => entry,
    };

    /// <summary>Which jobs, drills and series are a person's.</summary>
    sealed class Owners
    {
        readonly string _person;
        readonly CalledNow _called;
        readonly HashSet<int> _jobs;
        readonly HashSet<int> _drills;

        public Owners(IReadOnlyList<Logged> log, string person)
        {
            _person = person;
            var history = History.Of(log);
            _called = history.Called;
            _jobs = [.. history.JobsOf(person).Select(j => j.Started.Job)];
            _drills = [.. history.Drills.Where(d => Is(d.Started.Person)).Select(d => d.Started.Drill)];
        }

        public bool IsTheirs(LogEntry entry) => entry switch
        {
            LogEntry.PersonAdded e => Is(e.Name),
            LogEntry.PersonRenamed e => Is(e.Person),
            LogEntry.PinSet e => Is(e.Person),
            LogEntry.SessionPlanned e => Is(e.Person),
            LogEntry.JobStarted e => _jobs.Contains(e.Job),
            LogEntry.Looked e => _jobs.Contains(e.Job),
            LogEntry.Answered e => _jobs.Contains(e.Job),
            LogEntry.Updated e => _jobs.Contains(e.Job),
            LogEntry.Questioned e => _jobs.Contains(e.Job),
            LogEntry.Paused e => e.Job is { } n && _jobs.Contains(n),
            LogEntry.HabitTold e => Is(e.Person),
            LogEntry.AimedAt e => Is(e.Person),
            LogEntry.PlacementAsked e => Is(e.Person),
            LogEntry.LessonRead e => Is(e.Person),
            LogEntry.LessonQuestioned e => Is(e.Person),
            LogEntry.WorkshopSet e => Is(e.Lead),
            LogEntry.DrillStarted e => _drills.Contains(e.Drill),
            LogEntry.DrillAsked e => _drills.Contains(e.Drill),
            LogEntry.DrillAnswered e => _drills.Contains(e.Drill),
            LogEntry.DrillEnded e => _drills.Contains(e.Drill),
            LogEntry.RealPartRead e => Is(e.Person),
            LogEntry.RealTried e => Is(e.Person),
            LogEntry.ReportShown e => Is(e.Person),
            LogEntry.WalkBegun e => Is(e.Person),
            LogEntry.WalkFound e => Is(e.Person),
            LogEntry.WalkStruck e => Is(e.Person),
            LogEntry.WalkEnded e => Is(e.Person),
            _ => false,
        };

        /// <summary>True for the person's name, and for one that they had before.</summary>
        public bool Is(string? name) => string.Equals(_called.Of(name), _person, StringComparison.Ordinal);
    }
}
