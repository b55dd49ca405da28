using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Assessing;

/// <summary>What the log says of plans, papers and permissions. Always derived, never stored.</summary>
public sealed record Assessments
{
    /// <summary>Nothing yet.</summary>
    public static Assessments Empty { get; } = new();

    /// <summary>The desk, or null before it is set up.</summary>
    public LogEntry.DeskSet? Desk { get; private init; }

    /// <summary>Wrong passphrases since the last right one.</summary>
    public int WrongTries { get; private init; }

    /// <summary>When the last passphrase was tried, or null.</summary>
    public DateTimeOffset? LastTry { get; private init; }

    /// <summary>How long to wait from a moment until a passphrase may be tried again.</summary>
    /// <param name="now">The moment.</param>
    /// <param name="delay">The wait after the last wrong try.</param>
    public TimeSpan WaitFrom(DateTimeOffset now, TimeSpan delay) => LastTry is { } last && last + delay > now ? last + delay - now : TimeSpan.Zero;

    /// <summary>Plans, the newest of each permission, in order of their first saving.</summary>
    public IReadOnlyList<TestPlan> Plans { get; private init; } = [];

    /// <summary>Changes of plans and pass lines with their reasons, oldest first.</summary>
    public IReadOnlyList<(DateTimeOffset At, string Permission, string Reason)> Changes { get; private init; } = [];

    /// <summary>Pass lines, the newest of each permission.</summary>
    public IReadOnlyList<LogEntry.PassLineSet> PassLines { get; private init; } = [];

    /// <summary>Papers made, oldest first.</summary>
    public IReadOnlyList<LogEntry.PaperMade> Papers { get; private init; } = [];

    /// <summary>Sittings, oldest first.</summary>
    public IReadOnlyList<Sitting> Sittings { get; private init; } = [];

    /// <summary>Results, the newest of each paper, in order of their first marking.</summary>
    public IReadOnlyList<PaperResult> Results { get; private init; } = [];

    /// <summary>Questioned jobs, oldest first.</summary>
    public IReadOnlyList<Appeal> Appeals { get; private init; } = [];

    /// <summary>Sorts of jobs found unfair.</summary>
    public IReadOnlyList<LogEntry.FamilyUnfair> Unfair { get; private init; } = [];

    /// <summary>Registers by person and permission, in order of their first entry.</summary>
    public IReadOnlyList<Register> Registers { get; private init; } = [];

    /// <summary>Paper kits made, oldest first.</summary>
    public IReadOnlyList<LogEntry.KitMade> Kits { get; private init; } = [];

    /// <summary>What was done with paper kits, oldest first: never counted with papers.</summary>
    public IReadOnlyList<KitResult> KitResults { get; private init; } = [];

    /// <summary>What was told and not opened by the candidate since: a result, or the answer to a questioned job, whose place then stands beside it.</summary>
    public IReadOnlyList<(string Paper, int? Place)> Waiting { get; private init; } = [];

    /// <summary>What people are called now; a sealed file may still carry a former name.</summary>
    public CalledNow Called { get; private init; } = CalledNow.Empty;

    IReadOnlyList<(string Paper, DateTimeOffset At)> Publications { get; init; } = [];

    /// <summary>What a log says.</summary>
    public static Assessments Of(IEnumerable<Logged> log) => log.Aggregate(Empty, (all, entry) => all.With(entry));

    /// <summary>The plan of a permission, or null.</summary>
    public TestPlan? Plan(string permission) => Plans.FirstOrDefault(p => p.Permission == permission);

    /// <summary>The sitting of a paper, or null.</summary>
    public Sitting? SittingOf(string paper) => Sittings.FirstOrDefault(s => s.Paper == paper);

    /// <summary>The result of a paper, or null.</summary>
    public PaperResult? Result(string paper) => Results.FirstOrDefault(r => r.Paper == paper);

    /// <summary>When a result was first published, or null.</summary>
    public DateTimeOffset? PublishedAt(string paper) => Publications.Where(p => p.Paper == paper).Select(p => (DateTimeOffset?)p.At).FirstOrDefault();

    /// <summary>The number of a person's next paper of a permission.</summary>
    public int NextNumber(string candidate, string permission) => Papers.Count(p => p.Candidate == candidate && p.Permission == permission) + 1;

    /// <summary>How many of a paper's sorts of jobs a person has met in papers before.</summary>
    public (int Met, int Of) MetBefore(string candidate, TestPlan plan)
    {
        var met = Results.Where(r => r.Candidate == candidate).SelectMany(r => r.Jobs).Select(j => j.Family).ToHashSet(StringComparer.Ordinal);
        return (plan.Families.Count(f => met.Contains(f.Key)), plan.Families.Count);
    }

    /// <summary>The register of a person and a permission.</summary>
    public Register RegisterOf(string person, string permission) =>
        Registers.FirstOrDefault(r => r.Person == person && r.Permission == permission) ?? new Register(person, permission);

    /// <summary>Everybody who met a sort of job in a version: paper and candidate.</summary>
    public IReadOnlyList<(string Paper, string Candidate)> TouchedBy(string family, string version) =>
        [.. Results.Where(r => r.Jobs.Any(j => j.Family == family && j.Version == version)).Select(r => (r.Paper, r.Candidate))];

    /// <summary>This with one more entry; entries of other rooms change nothing.</summary>
    /// <exception cref="ArgumentException">The entry speaks of a sitting that was never started.</exception>
    public Assessments With(Logged entry) => entry.What switch
    {
        LogEntry.DeskSet e => this with { Desk = e, WrongTries = 0 },
        LogEntry.DeskTried e => this with { WrongTries = e.Opened ? 0 : WrongTries + 1, LastTry = entry.At },
        LogEntry.PlanSaved e => this with { Plans = Replaced(Plans, p => p.Permission == e.Plan.Permission, e.Plan), Changes = [.. Changes, (entry.At, e.Plan.Permission, e.Reason)] },
        LogEntry.PassLineSet e => this with { PassLines = Replaced(PassLines, p => p.Permission == e.Permission, e), Changes = [.. Changes, (entry.At, e.Permission, e.Reason)] },
        LogEntry.PaperMade e => this with { Papers = [.. Papers, e] },
        LogEntry.SittingStarted e => this with { Sittings = [.. Sittings.Where(s => s.Paper != e.Paper), new Sitting(e, entry.At)] },
        LogEntry.PaperMarked e => Marked(e, entry.At),
        LogEntry.SafetyTalked e => Changed(e.Paper, r => r with { Talked = true }),
        LogEntry.SafetyAgainMarked e => Changed(e.Paper, r => r with { SafetyAgain = e.Marks }).Told(e.Paper, null),
        LogEntry.ResultShown e => this with { Waiting = [.. Waiting.Where(w => w.Paper != e.Paper)] },
        LogEntry.PaperQuestioned e => this with { Appeals = [.. Appeals, new Appeal(e.Paper, e.Place, e.Text, entry.At)] },
        LogEntry.AppealDecided e => Decided(e).Told(e.Paper, e.Place),
        LogEntry.NewJobMarked e => Changed(e.Paper, r => Renewed(r, e)).Told(e.Paper, e.Place),
        LogEntry.FamilyUnfair e => FoundUnfair(e),
        LogEntry.BenchDone e => Registered(e.Person, e.Permission, r => r with { Bench = [.. r.Bench, e.Form] }),
        LogEntry.PermissionSigned e => Registered(e.Signature.Person, e.Signature.Permission, r => r with { Signatures = [.. r.Signatures, e.Signature], Countersigned = [], TakenBack = null }),
        LogEntry.OrderCountersigned e => Registered(e.Person, e.Permission, r => r with { Countersigned = [.. r.Countersigned, e] }),
        LogEntry.PermissionTakenBack e => Registered(e.Person, e.Permission, r => r with { TakenBack = e }),
        LogEntry.KitMade e => this with { Kits = [.. Kits, e] },
        LogEntry.KitEntered e => this with { KitResults = [.. KitResults, new KitResult(e.Kit, Kits.FirstOrDefault(k => k.Kit == e.Kit)?.Permission ?? "", e.Candidate, e.By, entry.At, e.Marks)] },
        _ => PaperOf(entry.What) is { } paper ? Sat(paper, entry) : this,
    };

    /// <summary>Everybody with a paper, a kit or a permission.</summary>
    public IEnumerable<string> Names => [.. Papers.Select(p => p.Candidate), .. Results.Select(r => r.Candidate), .. Registers.Select(r => r.Person), .. KitResults.Select(k => k.Candidate)];

    /// <summary>This with the names of people as they are now.</summary>
    internal Assessments Renamed(CalledNow called) => this with
    {
        Called = called,
        Desk = Desk is { } desk ? called.Same(desk) : null,
        Papers = [.. Papers.Select(called.Same)],
        Sittings = [.. Sittings.Select(s => s with { Started = called.Same(s.Started) })],
        Results = [.. Results.Select(r => r with { Candidate = called.Of(r.Candidate) })],
        Registers = [.. Registers.Select(r => r.Renamed(called))],
        KitResults = [.. KitResults.Select(k => k with { Candidate = called.Of(k.Candidate) })],
    };

    static string? PaperOf(LogEntry entry) => entry switch
    {
        LogEntry.SittingOpened e => e.Paper,
        LogEntry.SittingTicked e => e.Paper,
        LogEntry.SittingLooked e => e.Paper,
        LogEntry.SittingAnswered e => e.Paper,
        LogEntry.SittingSkipped e => e.Paper,
        LogEntry.SittingStopped e => e.Paper,
        LogEntry.SittingResumed e => e.Paper,
        LogEntry.SittingWidened e => e.Paper,
        LogEntry.SittingEnded e => e.Paper,
        LogEntry.SittingRealLooked e => e.Paper,
        LogEntry.SittingRealAnswered e => e.Paper,
        LogEntry.SittingRealEnded e => e.Paper,
        _ => null,
    };

    static IReadOnlyList<T> Replaced<T>(IReadOnlyList<T> all, Func<T, bool> old, T now) => all.Any(old) ? [.. all.Select(x => old(x) ? now : x)] : [.. all, now];

    Assessments Sat(string paper, Logged entry)
    {
        var sitting = SittingOf(paper) ?? throw new ArgumentException($"The sitting of paper {paper} was never started.", nameof(entry));
        return this with { Sittings = Replaced(Sittings, s => s.Paper == paper, sitting.With(entry.What, entry.At)) };
    }

    Assessments Marked(LogEntry.PaperMarked marked, DateTimeOffset at)
    {
        var known = Result(marked.Result.Paper);
        var published = Higher(known?.Published, marked.Published ? marked.Result.Marked : null);
        var result = Unfair.Aggregate(marked.Result with { Published = published }, Repaired);
        var all = this with { Results = Replaced(Results, r => r.Paper == result.Paper, result) };
        if (marked.Published) all = (all with { Publications = [.. all.Publications, (result.Paper, at)] }).Told(result.Paper, null);
        return all.Registered(result.Candidate, result.Permission, r => r with { Results = Replaced(r.Results, x => x.Paper == result.Paper, result) });
    }

    Assessments Changed(string paper, Func<PaperResult, PaperResult> change)
    {
        if (Result(paper) is not { } known) throw new ArgumentException($"Paper {paper} was never marked.", nameof(paper));
        var result = change(known);
        if (known.Published is not null) result = result with { Published = Higher(known.Published, result.Marked) };
        return (this with { Results = Replaced(Results, r => r.Paper == paper, result) })
            .Registered(result.Candidate, result.Permission, r => r with { Results = Replaced(r.Results, x => x.Paper == paper, result) });
    }

    Assessments Decided(LogEntry.AppealDecided decided)
    {
        var all = this with
        {
            Appeals = [.. Appeals.Select(a => a.Paper == decided.Paper && a.Place == decided.Place ? a with { Decided = decided } : a)],
        };
        var standing = decided.Decision switch
        {
            AppealDecision.CountedSound => Standing.CountedSound,
            AppealDecision.NewJob => Standing.NewJob,
            _ => Standing.Counted,
        };
        return standing == Standing.Counted ? all : all.Changed(decided.Paper, r => r with
        {
            Jobs = [.. r.Jobs.Select(j => j.Place == decided.Place ? j with { Standing = standing } : j)],
        });
    }

    // What was not published waits for nobody.
    Assessments Told(string paper, int? place) =>
        PublishedAt(paper) is null || Waiting.Contains((paper, place)) ? this : this with { Waiting = [.. Waiting, (paper, place)] };

    // Sound: the job counts as sound. Not sound: its own mark stands again, and what was published stays. Only the first one counts.
    static PaperResult Renewed(PaperResult result, LogEntry.NewJobMarked renewed) => result.NewJobFor(renewed.Place) is not null ? result : result with
    {
        NewJobs = [.. result.NewJobs, renewed.Mark],
        Jobs = [.. result.Jobs.Select(j => j.Place == renewed.Place && j.Standing == Standing.NewJob ? j with { Standing = renewed.Mark.Sound ? Standing.CountedSound : Standing.Counted } : j)],
    };

    Assessments FoundUnfair(LogEntry.FamilyUnfair unfair)
    {
        var all = this with { Unfair = [.. Unfair, unfair] };
        return TouchedBy(unfair.Family, unfair.Version).Aggregate(all, (now, touched) => now.Changed(touched.Paper, r => Repaired(r, unfair)).Told(touched.Paper, null));
    }

    static PaperResult Repaired(PaperResult result, LogEntry.FamilyUnfair unfair) => result with
    {
        Jobs = [.. result.Jobs.Select(j => j.Family == unfair.Family && j.Version == unfair.Version ? j with { Standing = unfair.Remedy } : j)],
    };

    // Passed stands above all others; what was once said is kept unless it is better now.
    static Outcome? Higher(Outcome? before, Outcome? now) => before == Outcome.Passed || now is null ? before : now;

    Assessments Registered(string person, string permission, Func<Register, Register> change) => this with
    {
        Registers = Replaced(Registers, r => r.Person == person && r.Permission == permission, change(RegisterOf(person, permission))),
    };
}
