using Apprentice.Engine.Assessing;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Storage.Papers;

namespace Apprentice.Tests.Assessing;

/// <summary>The small exam with two real bikes of another workshop at its end. All bikes are invented.</summary>
static class RealExam
{
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    public static IReadOnlyList<RealCase> Bikes { get; } = [Bike(1, "older", 140, "2012"), Bike(2, "newer", 118, "2019"), Bike(3, "newer", 121, "2016")];

    public static TestPlan Plan { get; } = Exam.Plan with { RealBikes = 2 };

    /// <summary>The paper of the exam, made with the same seed.</summary>
    public static Paper Paper { get; } = new PaperMaker(Plan, [Exam.Bench]).Make(Exam.Number, "Sam", 1, 5, [Bikes[0], Bikes[1]]);

    public static (byte[] File, string Code) Sealed { get; } = PaperFile.Sealed(Paper, Exam.Desk.Key);

    public static LogEntry[] Before => [.. Exam.Before.Where(e => e is not LogEntry.PlanSaved), new LogEntry.PlanSaved(Plan, ""), .. Bikes.Select(b => new LogEntry.CaseTaken(b))];

    public static BenchNotebook Notebook(params LogEntry[] more) => more.Concat(Bikes.Select(b => new LogEntry.CaseTaken(b))).Aggregate(BenchNotebook.Empty, (book, e) => book.With(new Logged(Nine, e)));

    /// <summary>What was sat: the counted jobs without answers, the first bike named, the second looked at only.</summary>
    public static SatPaper Sat { get; } = new(Exam.Number, "Sam", 1, 8, [], TimeSpan.FromMinutes(9), Nine.AddMinutes(30), SittingEnd.HandedIn, [])
    {
        Real = [new SittingReal(1) { Opened = [1], Kind = Paper.Real[0].Case.Truth.KindOf("bar"), Tenths = 8 }, new SittingReal(2) { Opened = [0, 1] }],
    };

    static RealCase Bike(int number, string bar, double height, string plate) => new(
        $"Yard: bike {number} {Exam.Topic.Id}", "Yard", Exam.Topic.Id, "grips", "own",
        [new Finding("bar-height", Channel.Bench, new Seen.Reading(height)), new Finding("plate", Channel.Bench, new Seen.Named(plate)), new Finding("grip-length", Channel.Photo, new Seen.Hidden())],
        new BikeTruth([new TruePart("bar", bar)], [], null, null));
}
