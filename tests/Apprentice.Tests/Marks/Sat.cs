using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using Apprentice.Tests.Laws;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Marks;

/// <summary>Invented people who sat papers of real topics: real cases, answers worked out by a rule, real marks.</summary>
static class Sat
{
    public const string Permission = "may order bar parts alone";

    /// <summary>A paper of twenty jobs, two of them not sound.</summary>
    public const string Passed = "7F2KQ3";

    /// <summary>A paper of twelve jobs, six of them not sound.</summary>
    public const string NotYet = "8A1MM7";

    public static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    static readonly Channel[] Seen = [Channel.Bench, Channel.Phone, Channel.Bench, Channel.Photo];

    static readonly Lazy<IReadOnlyList<Logged>> Whole = new(Made);

    public static Topic Topic { get; } = Corpus.Sample with { State = TopicState.Checked, CheckedBy = "J. and M." };

    public static Workbench Bench { get; } = new(Topic);

    /// <summary>Sam passed and was told, Kim has not yet and was told; Jo leads.</summary>
    public static List<Logged> Log() => [.. Whole.Value];

    public static Talk Talk(params LogEntry[] more) => new(With(Log(), more), [Topic]);

    public static List<Logged> With(List<Logged> log, params LogEntry[] more)
    {
        foreach (var entry in more) log.Add(new Logged(log[^1].At.AddMinutes(1), entry));
        return log;
    }

    public static PaperResult Result(string paper) => History.Of(Whole.Value).Assessments.Result(paper) ?? throw new InvalidOperationException("no result");

    public static TestPlan Plan { get; } = new() { Permission = Permission, Topics = [new PlanTopic(Topic.Id, Topic.Version)], Families = [.. Families()] };

    /// <summary>A paper with seeds of its own.</summary>
    public static Paper Paper(string id, string candidate)
    {
        var rng = new Rng((ulong)id.Sum(c => c * 31));
        return new Paper
        {
            Id = id,
            Candidate = candidate,
            Number = 1,
            Permission = Permission,
            Rule = StagedRule.Default,
            MinutesPerJob = 4,
            Jobs = [.. Enumerable.Range(1, 36).Select(p => new PaperJob(p, Plan.FamilyAt(p), Topic.Version, ((ulong)rng.Next() << 32) | rng.Next()))],
            SafetyAgain = [],
        };
    }

    /// <summary>What was sat: every job by the book, but those at some places another kind or nothing looked at.</summary>
    public static SatPaper Sitting(Paper paper, int jobs, params int[] slips) => new(
        paper.Id, paper.Candidate, paper.Number, jobs, [.. Enumerable.Range(1, jobs).Select(p => Job(paper, p, slips))], TimeSpan.FromMinutes(2.5 * jobs), Nine.AddMinutes(2.5 * jobs), SittingEnd.Decided, []);

    static List<Logged> Made()
    {
        var (sams, kims) = (Paper(Passed, "Sam"), Paper(NotYet, "Kim"));
        List<Logged> log = [new(Nine, new LogEntry.Began(Screens.Talk.Luck))];
        return With(
            log,
            [
                new LogEntry.PersonAdded("Kim"), new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"), new LogEntry.WorkshopSet("Back yard", "Jo", [Topic.Id]),
                new LogEntry.DeskSet("Jo", "locked"), new LogEntry.PlanSaved(Plan, ""),
                new LogEntry.PassLineSet(Permission, new PassLine([.. Plan.Families.Select(f => new Rating("Jo", f.Key, 16))]), ""),
                .. Entries(sams, Sitting(sams, 20, 5, LeftOpen(sams))), .. Entries(kims, Sitting(kims, 12, 1, 3, 5, 7, 9, 11)),
            ]);
    }

    // The first even place from 8 on at which leaving it open without a look is not sound.
    static int LeftOpen(Paper paper) => Enumerable.Range(4, 6).Select(n => 2 * n).First(place => !SatPaper.MarkOf(paper, [Bench], Job(paper, place, [place])).Sound);

    static IEnumerable<LogEntry> Entries(Paper paper, SatPaper sat) =>
    [
        new LogEntry.PaperMade(paper.Id, Permission, paper.Candidate, 1),
        new LogEntry.SittingStarted(paper.Id, Permission, paper.Candidate, 1, "Jo", sat.Places, 4, 1, Plain: false),
        new LogEntry.SittingEnded(paper.Id, SittingEnd.Decided),
        new LogEntry.PaperMarked(sat.Mark(paper, [Bench]), Published: true),
    ];

    static SittingJob Job(Paper paper, int place, int[] slips)
    {
        var made = paper.Make(Bench, place);
        var answer = Strategies.Honest(Bench, made, slips.Contains(place) && place % 2 == 0 ? [] : Strategies.Path(Bench, made));
        if (slips.Contains(place)) answer = Slipped(made, answer, place);
        var looks = answer.Looks.Select(l => Bench.Shown(made, l) is { Seen: Seen.Reading reading } ? l with { OwnReading = reading.Millimetres } : l).ToList();
        return new SittingJob(place) { Looks = looks, Given = new Given(answer.Parts, answer.Orders, null, null, null, Forced: false) };
    }

    // At even places nothing is looked at and it is left open; at odd ones another kind is named and its part ordered.
    static Answer Slipped(Case made, Answer answer, int place)
    {
        if (place % 2 == 0) return answer with { Parts = [.. answer.Parts.Select(p => p with { Kind = null })], Orders = [.. answer.Orders.Select(_ => (Choice)new Choice.Ask())] };
        var part = Topic.Parts.Select((p, i) => (p, i)).First(x => x.p.Id == answer.Parts[0].Part);
        var other = part.p.Kinds.First(k => k.Id != made.Truth.Kinds[part.i]).Id;
        var line = Topic.Wants.First(w => w.Id == made.Job.Request.Want).OrderLines;
        return answer with
        {
            Parts = [answer.Parts[0] with { Kind = other }, .. answer.Parts.Skip(1)],
            Orders = [.. line.Select(l => (Choice)new Choice.Order(Topic.Spares.First(s => s.OrderLine == l.Id && s.Fits.Any(f => f.Part == part.p.Id && f.Kinds.Contains(other))).Id))],
        };
    }

    static IEnumerable<JobFamily> Families() => Enumerable.Range(0, 8).Select(i => new JobFamily(
        Topic.Id, Topic.Provenances[i % Topic.Provenances.Count].Id, Topic.Wants[i % 3].Id, Topic.Openings[i / 3].Id, Selection.AsTheyCome, Seen[i % 4], Topic.Wants[i % 3].Id is "lever"));
}
