using Apprentice.Assess;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Assessing;

/// <summary>The screens of the desk and of a sitting as they were looked at, at three sizes.</summary>
public sealed class DeskScreensTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    static readonly Seat Seat = new(Exam.Paper, [1], Exam.Sealed.File, "/papers");
    static readonly string[] Stages = ["nothing", "desk", "sitting", "answered"];

    static DeskScreen Desk => new(new HomeScreen());

    static readonly Lazy<PlanDraft> Filled = new(() => PlanDraft.Of(new World([Exam.Bench], History.Empty), Exam.Permission, [Exam.Topic.Id]));

    static PlanDraft Draft(World world) => world.Benches.Count == 1 ? Filled.Value : throw new InvalidOperationException("one topic is enough here");

    public static TheoryData<string> Names => [.. Screens.Select(s => s.Name)];

    static IReadOnlyList<(string Name, string Stage, Func<World, Screen> Screen)> Screens => [.. OfTheDesk, .. OfPapers];

    static IReadOnlyList<(string Name, string Stage, Func<World, Screen> Screen)> OfTheDesk =>
    [
        ("desk-first", "nothing", _ => Desk),
        ("desk-menu", "desk", _ => Desk),
        ("desk-set", "nothing", _ => new DeskSetScreen(Desk, _ => Turn.To(Desk)) { Typed = "eight old" }),
        ("desk-code", "desk", _ => new DeskCodeScreen("ABCD-EFGH-2345-6789-KMNP-QRST", _ => Turn.To(Desk))),
        ("desk-passphrase", "desk", _ => new DeskOpenScreen(Desk, _ => Turn.To(Desk)) { Wrong = Apprentice.Content.Words.Of("desk.open-wait", ("seconds", 4)) }),
        ("plan-list", "nothing", _ => new PlansScreen(Desk)),
        ("plan", "nothing", w => new PlanScreen(Draft(w), Desk)),
        ("plan-judged", "desk", w => new PlanScreen(Draft(w) with { Line = Judged(Draft(w).Plan) }, Desk)),
        ("plan-topics", "nothing", w => new PlanTopicsScreen(new PlanScreen(Draft(w), Desk), [Exam.Topic.Id])),
        ("plan-mix", "nothing", w => new PlanScreen(Draft(w), Desk).Press(w, Input.Typed('5')).Next),
        ("plan-name", "nothing", w => new PlanScreen(Draft(w), Desk).Press(w, Input.Typed('1')).Next),
        ("plan-reason", "desk", w => new PlanReasonScreen(new PlanScreen(Draft(w), Desk))),
        ("plan-line", "nothing", w => new PassLineScreen(new PlanScreen(Draft(w) with { Line = Judged(Draft(w).Plan) }, Desk))),
        ("plan-rate", "nothing", w => new PassLineSortScreen(new PassLineScreen(new PlanScreen(Draft(w), Desk)), "Lee", [16])),
        ("plan-sample", "nothing", w => SampleScreen.Of(w, new PlanScreen(Draft(w), Desk), 1)),
        ("plan-sample-truth", "nothing", w => SampleScreen.Of(w, new PlanScreen(Draft(w), Desk), 1).Press(w, new Input(Press.Enter)).Next),
    ];

    static IReadOnlyList<(string Name, string Stage, Func<World, Screen> Screen)> OfPapers =>
    [
        ("papers-plan", "desk", _ => new MakePlanScreen(Desk)),
        ("papers-names", "desk", _ => new MakeNamesScreen(Desk, Exam.Plan, ["Sam", "Kim"], ["Kim"])),
        ("papers-made", "desk", _ => new MadeScreen(Desk, [new MadePaper(new LogEntry.PaperMade("7F2ABC", Exam.Permission, "Sam", 2), "/papers/7F2ABC-Sam.paper", "ABCD-EFGH-2345", 3, 12), new MadePaper(new LogEntry.PaperMade("8G3DEF", Exam.Permission, "Kim", 1), "/papers/8G3DEF-Kim.paper", "KMNP-QRST-6789", 0, 12)], "/papers")),
        ("sit-pick", "desk", _ => new SitPickScreen(Desk, [("/papers/7F2ABC-Sam.paper", "7F2ABC", "Sam", Exam.Permission)])),
        ("sit-code", "desk", _ => new SitCodeScreen(Exam.Sealed.File, "/papers", Desk)),
        ("sit-who", "desk", _ => new SitWhoScreen(Seat, Desk)),
        ("sit-time", "desk", _ => new SitTimeScreen(Seat, "Jo", Desk)),
        ("sit-rules", "desk", _ => new SitRulesScreen(Seat, "Jo", 1, Desk)),
        ("sit-resume", "answered", w => new SitResumeScreen(Seat, w.Sitting ?? throw new InvalidOperationException(), Desk)),
        ("sit-again", "desk", _ => new SitAgainScreen(Seat, Desk)),
        ("sit-bench", "sitting", w => Sit.To(w, 1).Next),
        ("sit-pause", "sitting", w => new PauseScreen(Sit.To(w, 1).Next)),
        ("sit-menu", "answered", _ => new SitMenuScreen(2)),
        ("sit-list", "answered", _ => new SitListScreen(2)),
        ("sit-hand-in", "answered", _ => new SitHandInScreen(2)),
        ("sit-stop", "answered", _ => new SitStopScreen(2)),
        ("sit-stopped", "answered", _ => new SitStoppedScreen(Nine)),
        ("sit-break", "answered", _ => new SitBreakScreen(4)),
        ("sit-end", "desk", _ => new SitEndScreen(Apprentice.Content.Words.Of("sit.written", ("file", "/papers/7F2ABC-Sam.result")))),
        ("collect", "desk", _ => new CollectScreen(Desk, "/papers", ["/papers/7F2ABC-Sam.result"])),
        ("collect-path", "desk", _ => new CollectPathScreen(new CollectScreen(Desk, "/papers", [])) { Wrong = Apprentice.Content.Words.Of("collect.none") }),
        ("collected", "desk", _ => new CollectedScreen(Desk,
        [
            ("/papers/7F2ABC-Sam.result", Apprentice.Content.Words.Of("collect.done", ("candidate", "Sam"), ("paper", "7F2ABC"), ("jobs", 20), ("minutes", 71), ("by", "Jo"))),
            ("/papers/7F2ABC-Sam-2.result", "The result of paper 7F2ABC, Sam, was collected before. A paper counts once."),
        ])),
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_screen_is_as_it_was_looked_at(string name)
    {
        var (_, stage, screen) = Screens.First(s => s.Name == name);
        var world = WorldAt(stage);
        var conversation = new Conversation(world, e => new Logged(world.Now, e), (file, _) => file, () => world.Now).OpenedAt(screen(world));
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", string.Join('\n', Layout.Of(conversation.Page, size).Select(l => l.Text.TrimEnd())) + "\n");
    }

    /// <summary>Every screen, in every state, fits: the bottom line is not cut.</summary>
    [Fact]
    public void Keys_stand_in_the_bottom_line_at_every_size() => Assert.All(Screens, s =>
    {
        var page = s.Screen(WorldAt(s.Stage)).Show(WorldAt(s.Stage));
        Assert.All(Sizes, size => Assert.Contains(page.Keys[^1], string.Join('\n', Layout.Of(page, size).Select(l => l.Text)), StringComparison.Ordinal));
    });

    static World WorldAt(string stage)
    {
        Assert.Contains(stage, Stages);
        List<LogEntry> entries = [new LogEntry.Began(17), .. stage == "nothing" ? Exam.Before.Take(3) : Exam.Before];
        if (stage is "sitting" or "answered")
        {
            entries.Add(new LogEntry.SittingStarted(Exam.Number, Exam.Permission, "Sam", 1, "Jo", 4, 4, 1, Plain: false));
            entries.Add(new LogEntry.SittingOpened(Exam.Number, 1));
        }

        if (stage is "answered") entries.AddRange([new LogEntry.SittingAnswered(Exam.Number, 1, Given), new LogEntry.SittingSkipped(Exam.Number, 3)]);
        return new World([Exam.Bench], History.Of(entries.Select(e => new Logged(Nine, e)))) { Now = Nine.AddMinutes(3), Seat = stage is "sitting" or "answered" ? Seat : null };
    }

    static Given Given => new([], [], null, null, null, Forced: false);

    static PassLine Judged(TestPlan plan) => new([.. plan.Families.Select((f, i) => new Rating("Jo", f.Key, 15 + (i % 3))), .. plan.Families.Select((f, i) => new Rating("Lee", f.Key, 16 + (i % 2)))]);
}
