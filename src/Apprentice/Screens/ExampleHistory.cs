using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using Apprentice.Screens.Assess;

namespace Apprentice.Screens;

/// <summary>The history of the example workshop. The people and all they did are made up. No bike was drawn for their jobs of practice; their papers are real jobs with real marks (<see cref="ExamplePapers"/>).</summary>
static class ExampleHistory
{
    const int Seed = 4417;
    const int MostTopics = 2;
    const int OrdersSeen = 4;
    const double Guess = 0.25;
    const string First = "EX7F2A";
    const string Second = "EX8G3D";

    static readonly Given Nothing = new([], [], null, null, null, Forced: false);

    /// <summary>First day; tenth day; sure and often wrong, who knows of a habit and had six jobs for it; safe in most things.</summary>
    /// <param name="benches">Topics at hand; at least one.</param>
    /// <param name="now">The day on which it ends.</param>
    public static History Of(IReadOnlyList<Workbench> benches, DateTimeOffset now)
    {
        Topic[] topics = [.. benches.Select(b => b.Topic)];
        var names = ExampleWorkshop.Names(Seed, 5);
        var made = new Writer([.. topics.Where(t => Clues(t).Count > 1).OrderByDescending(t => AimedSets.Fits(t, Habit.TrustsNumber)).Take(MostTopics)], now);
        made.Say(-20, new LogEntry.Began(Seed));
        made.Say(-20, new LogEntry.WorkshopSet(Words.Of("example.name"), names[4], [.. topics.Select(t => t.Id)]));
        foreach (var name in names.Take(4)) made.Say(-20, new LogEntry.PersonAdded(name));
        made.Jobs(names[1], days: 10, until: 0, perDay: 3, (job, rng) => new Shown(rng.Unit() < 0.4 + (job * 0.015), 6 + (job % 3), rng.Unit() < 0.65, Sound: job % 5 != 0, Habit: false));
        made.Jobs(names[2], days: 6, until: 2, perDay: 4, Sure);
        made.Say(-2, new LogEntry.HabitTold(names[2], made.Habit));
        made.Say(-2, new LogEntry.AimedAt(names[2], made.Habit));
        made.Jobs(names[2], days: 1, until: 0, perDay: Habits.AimedJobs, Sure);
        made.Jobs(names[3], days: 14, until: 0, perDay: 3, (_, rng) => new Shown(rng.Unit() < 0.95, 8 + (rng.Unit() < 0.5 ? 1 : 0), rng.Unit() < 0.88, Sound: rng.Unit() < 0.95, Habit: false));
        if (ExamplePapers.Tested(benches) is { } tested) Tests(made, tested, names);
        return made.History;
    }

    static Shown Sure(int job, Rng rng) => new(rng.Unit() < 0.45, 9, job % 3 == 0, Sound: job % 3 == 0, Habit: job % 6 != 0);

    // One passed, was signed with a second look and questions a job; one made a safety error, and waits to be told.
    static void Tests(Writer made, Workbench bench, IReadOnlyList<string> names)
    {
        var (tenth, safe, lead) = (names[1], names[3], names[4]);
        var plan = new TestPlanner([bench]).Plan(PlansScreen.Suggested(bench.Topic));
        var papers = new ExamplePapers(bench, plan);
        made.Say(-12, new LogEntry.PlanSaved(plan, Words.Of("example.name")));
        foreach (var (paper, person) in (IEnumerable<(string, string)>)[(First, safe), (Second, tenth)]) made.Say(-11, new LogEntry.PaperMade(paper, plan.Permission, person, 1));
        made.Say(-9, new LogEntry.PaperMarked(papers.Sat(First, safe, ExampleSlip.StopsTooSoon), Published: true));
        if (made.History.Assessments.Result(First)?.Jobs.FirstOrDefault(j => !j.Sound) is { } unsound) made.Say(-8, new LogEntry.PaperQuestioned(First, unsound.Place, Words.Of("example.questions")));
        for (var bike = 1; bike <= Register.Bikes; bike++)
        {
            made.Say(-8 + bike, new LogEntry.BenchDone(safe, plan.Permission, new BenchForm(made.Day(-8 + bike), Words.Of($"example.bike-{bike}"), Odd: bike == Register.Bikes, lead, [], Agreed: true, WhysGood: 3)));
        }

        made.Say(-4, new LogEntry.PermissionSigned(new Signature(
            safe, plan.Permission, PermissionLevel.WithSecondLook, lead, made.Day(-4), made.Day(-4).AddYears(1), First, plan.Topics, SetByOnePerson: true)));
        for (var order = 1; order <= OrdersSeen; order++) made.Say(-3 + (order / 10.0), new LogEntry.OrderCountersigned(safe, plan.Permission, lead, Right: true, Words.Of("example.order")));
        made.Say(-2, new LogEntry.BenchDone(tenth, plan.Permission, new BenchForm(made.Day(-2), Words.Of("example.bike-1"), Odd: false, lead, [], Agreed: true, WhysGood: 3)));
        made.Say(-1, new LogEntry.PaperMarked(papers.Sat(Second, tenth, ExampleSlip.OrdersTooSoon), Published: false));
    }

    static IReadOnlyList<Clue> Clues(Topic topic) => [.. topic.Clues.Where(c => !c.Safety && c.Node is Node.OfPart)];

    /// <summary>What one made-up job showed.</summary>
    readonly record struct Shown(bool Follows, int Tenths, bool Right, bool Sound, bool Habit);

    /// <summary>Writes the history, job by job.</summary>
    sealed class Writer(IReadOnlyList<Topic> topics, DateTimeOffset now)
    {
        readonly Rng _rng = new(Seed);

        public History History { get; private set; } = History.Empty;

        public Habit Habit { get; } = topics.Any(t => AimedSets.Fits(t, Habit.TrustsNumber)) ? Habit.TrustsNumber : Habit.OrdersTooSoon;

        public DateOnly Day(int days) => DateOnly.FromDateTime(now.AddDays(days).Date);

        public void Say(double days, LogEntry entry) => History = History.With(new Logged(now.AddDays(days), entry));

        public void Jobs(string person, int days, int until, int perDay, Func<int, Rng, Shown> showed)
        {
            for (var job = 0; job < days * perDay; job++) Job(person, (job / perDay) - days - until + (job % perDay / 100.0), topics[job % topics.Count], showed(job, _rng));
        }

        void Job(string person, double days, Topic topic, Shown shown)
        {
            var number = History.NextJob;
            var clues = Clues(topic);
            Say(days, new LogEntry.JobStarted(number, person, topic.Id, "", (ulong)number, new CaseRequest(topic.Provenances[0].Id, topic.Wants[0].Id, null, Selection.AsTheyCome, Channel.Bench), Guided: false, 1));
            Say(days + 0.003, new LogEntry.Answered(number, Nothing, new Verdict(shown.Sound ? InShort.RightForTheRightReason : InShort.ChecksPointedOtherWay, [], shown.Sound, SafetyError: false))
            {
                Observed =
                [
                    .. Enumerable.Range(0, 2).Select(n => new Observed.Mark(new SkillKey(SkillSort.Clue, topic.Id, clues[(number + n) % Math.Min(clues.Count, 4)].Id), n == 0 ? shown.Follows : shown.Right, Guess)),
                    new Observed.Mark(new SkillKey(SkillSort.Stopping, topic.Id, ""), shown.Sound, 0),
                    new Observed.Sure(topic.Wants[0].Asks[0], shown.Tenths, shown.Right),
                    new Observed.Pattern(Habit, shown.Habit),
                    new Observed.Bench(3 + (number % 4), 4),
                    new Observed.Ordered(Wrong: !shown.Right && number % 2 == 0),
                    Weighed(clues[0], shown),
                ],
            });
        }

        Observed.Weighed Weighed(Clue clue, Shown shown)
        {
            var worth = 0.5 + (1.5 * _rng.Unit());
            return new Observed.Weighed(clue.Id, clue.Family, Linked: false, worth, worth * (shown.Habit ? 1.8 : 1) * (0.8 + (0.4 * _rng.Unit())));
        }
    }
}
