using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Storage.Papers;
using DeskLock = Apprentice.Storage.Papers.Desk;

namespace Apprentice.Tests.Assessing;

/// <summary>A small plan of the sample topic with a paper of a fixed seed, sealed at a desk: four jobs, and four more while it is close.</summary>
static class Exam
{
    public const string Permission = "may order bar parts alone";
    public const string Passphrase = "eight old bicycles";
    public const string Number = "7F2ABC";

    public static Topic Topic { get; } = Corpus.Sample with { State = TopicState.Checked, CheckedBy = "J. and M., 2026-11-03" };

    public static Workbench Bench { get; } = new(Topic);

    public static TestPlan Plan { get; } = Small(new TestPlanner([Bench]).Plan(Permission));

    public static Paper Paper { get; } = new PaperMaker(Plan, [Bench]).Make(Number, "Sam", 1, 5);

    public static (string Locked, byte[] Key, string Recovery) Desk { get; } = Opened();

    public static (byte[] File, string Code) Sealed { get; } = PaperFile.Sealed(Paper, Desk.Key);

    /// <summary>A workshop with its desk, plan and paper.</summary>
    public static LogEntry[] Before =>
    [
        new LogEntry.WorkshopSet("Back yard", "Jo", [Topic.Id]),
        new LogEntry.PersonAdded("Sam"),
        new LogEntry.PersonAdded("Kim"),
        new LogEntry.DeskSet("Jo", Desk.Locked),
        new LogEntry.PlanSaved(Plan, ""),
        new LogEntry.PaperMade(Number, Permission, "Sam", 1),
    ];

    static TestPlan Small(TestPlan plan) => plan with
    {
        Families = [.. plan.Families.Take(4)],
        Rule = new StagedRule([new StageCheck(4, -1, 5), new StageCheck(8, 1, 2)]),
        MinutesPerJob = 4,
    };

    static (string Locked, byte[] Key, string Recovery) Opened() => DeskLock.SetUp(Passphrase);
}
