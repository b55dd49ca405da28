using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Storage;

/// <summary>An entry of each kind around papers and permissions.</summary>
static class AssessEntries
{
    static readonly DateOnly Day = new(2026, 11, 25);

    public static LogEntry[] All =>
    [
        new LogEntry.DeskSet("Jo", "locked"),
        new LogEntry.DeskTried(Opened: false),
        new LogEntry.PlanSaved(Plan, "a topic was added"),
        new LogEntry.PassLineSet(Plan.Permission, new PassLine([new Rating("Jo", Plan.Families[0].Key, 15.5), new Rating("Lee", Plan.Families[0].Key, 16)]), ""),
        new LogEntry.PaperMade("7F2", Plan.Permission, "Sam", 2),
        new LogEntry.SittingStarted("7F2", Plan.Permission, "Sam", 2, "Jo", 12, 4.5, 1.25, Plain: true),
        new LogEntry.SittingOpened("7F2", 1),
        new LogEntry.SittingTicked("7F2"),
        new LogEntry.SittingLooked("7F2", 1, new Look("tape", 0, 622.5, 1), new Finding("tape", Channel.Bench, new Seen.Reading(622), 1)),
        new LogEntry.SittingAnswered("7F2", 1, new Given([new PartAnswer("rim", null, 5)], [new Choice.Ask()], null, null, null, Forced: false)),
        new LogEntry.SittingSkipped("7F2", 2),
        new LogEntry.SittingStopped("7F2", 2, "fire alarm"),
        new LogEntry.SittingStopped("7F2", null, "break"),
        new LogEntry.SittingResumed("7F2"),
        new LogEntry.SittingWidened("7F2", 16),
        new LogEntry.SittingEnded("7F2", SittingEnd.Decided),
        new LogEntry.SittingRealLooked("7F2", 1, 2),
        new LogEntry.SittingRealAnswered("7F2", 1, "r622", 8),
        new LogEntry.SittingRealAnswered("7F2", 1, null, 5),
        new LogEntry.SittingRealEnded("7F2"),
        new LogEntry.PaperMarked(Result, Published: true),
        new LogEntry.PaperMarked(Result with { Jobs = [Mark with { Record = Record }, Mark with { Record = Record with { Given = null, Judged = null } }] }, Published: false),
        new LogEntry.SafetyTalked("7F2", "Jo", "the cable that slips"),
        new LogEntry.ResultShown("7F2"),
        new LogEntry.SafetyAgainMarked("7F2", [Mark]),
        new LogEntry.PaperQuestioned("7F2", 1, "the tape said 622"),
        new LogEntry.AppealDecided("7F2", 1, "Lee", AppealDecision.NewJob, "the plate cannot be read"),
        new LogEntry.NewJobMarked("7F2", 1, Mark with { Place = 201 }),
        new LogEntry.FamilyUnfair(Plan.Families[0].Key, "v1", Standing.TakenOut, "Jo", "drawn upside down"),
        new LogEntry.BenchDone("Sam", Plan.Permission, new BenchForm(Day, "old roadster", Odd: true, "Jo", [new BenchReading("rim", "622", "622.5")], Agreed: true, 3)),
        new LogEntry.PermissionSigned(new Signature("Sam", Plan.Permission, PermissionLevel.Alone, "Jo", Day, Day.AddYears(1), "7F2", Plan.Topics, SetByOnePerson: true)),
        new LogEntry.OrderCountersigned("Sam", Plan.Permission, "Jo", Right: true, "tyre for 622"),
        new LogEntry.PermissionTakenBack("Sam", Plan.Permission, "Jo", "three wrong orders"),
        new LogEntry.KitMade("K7M2QX", Plan.Permission, 20, "apprentice kit 1"),
        new LogEntry.KitEntered("K7M2QX", "Sam", "Jo", [new KitMark(1, Plan.Families[0].Key, "v1", "120", Sound: true, SafetyError: false, NextRight: false)]),
    ];

    static TestPlan Plan => new()
    {
        Permission = "may order tyres alone",
        Topics = [new PlanTopic("rim-size", "v1")],
        Families = [new JobFamily("rim-size", "own", "tyre", null, Selection.LeavesTwoOpen, Channel.Photo, Safety: true)],
        MinutesPerJob = 4.5,
        RealBikes = 2,
    };

    static PaperResult Result => new()
    {
        Paper = "7F2",
        Permission = Plan.Permission,
        Candidate = "Sam",
        Number = 2,
        Rule = StagedRule.Default,
        Jobs = [Mark],
        SafetyAgain = [Mark with { Place = 101, Standing = Standing.CountedSound }],
        NewJobs = [Mark with { Place = 201 }],
        Talked = true,
        Real = [Real, Real with { Sat = new SittingReal(2), Found = [], Opened = null, All = null }],
    };

    static RealMark Real => new(
        new RealJob(1, "v1", "rim", new RealCase("Yard: bike 2 rim-size", "Yard", "rim-size", "tyre", "own", [new Finding("tape", Channel.Bench, new Seen.Reading(622))], new BikeTruth([new TruePart("rim", "r622")], ["wrong-tyre"], null, null))),
        new SittingReal(1) { Opened = [1, 0], Kind = "r622", Tenths = 8 }, [new Finding("tape", Channel.Bench, new Seen.Reading(622))],
        new HeldBelief("rim", [new ClassBelief(["r622"], 0.9), new ClassBelief(["r630", "none"], 0.1)], Settled: false), new HeldBelief("rim", [new ClassBelief(["r622"], 0.99)], Settled: true));

    static JobMark Mark => new()
    {
        Place = 1,
        Family = Plan.Families[0].Key,
        Version = "v1",
        Sound = false,
        SafetyError = true,
        SafetyJob = true,
        Rule = "paper.rule.part",
        Values = new Dictionary<string, string>(StringComparer.Ordinal) { ["part"] = "0.25" },
        Readings = 3,
        ReadingsRight = 2,
    };

    static JobRecord Record => new()
    {
        Family = Plan.Families[0],
        Fresh = 1,
        Told = [new Finding("said", Channel.Phone, new Seen.Named("not-known"))],
        Looks = [new LookTaken(new Look("tape", 0, 622.5, 1), new Finding("tape", Channel.Bench, new Seen.Reading(622), 1))],
        Unused = [new Finding("plate", Channel.Bench, new Seen.Hidden())],
        Given = new Given([new PartAnswer("rim", "r622", 9)], [new Choice.Order("tyre-622")], null, null, null, Forced: false),
        Was = [("rim", "r622")],
        Story = ["wrong-tyre"],
        Judged = new Judged(
            [new PartJudged("rim", null, [new ClassBelief(["r622"], 0.9), new ClassBelief(["r630", "none"], 0.1)], 0.95, 0.5, JudgedBy.Formula, Own: true)],
            [new OrderJudged("tyre", new Choice.Order("tyre-622"), 1.5, new Choice.Ask(), 0.5, 25, 0.1, 0.99, 0.96, JudgedBy.Accepted, Own: false), new OrderJudged("tube", new Choice.Wait("tape"), null, new Choice.OrderTwo("a", "b"), 0.5, 25, 0, null, 0, JudgedBy.TooEarly, Own: false)],
            SafetyFault.TooThin, ["side worn hollow"], "tape", 4, (0.2, 0.99)),
        Proof = [("rim", new ClassBelief(["r622"], 0.99), true)],
    };
}
