using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Learning;

/// <summary>Learners with one way of working, on bikes of shipped topics: the facts that their answers show.</summary>
public sealed class ObservationsTests
{
    const int Bikes = 25;

    public static TheoryData<string> Topics => ["folding-bar", "rim-size", "bottom-bracket"];

    // Whoever goes the engine's own path, safety looks first, and says what it says shows every skill and no habit.
    [Theory]
    [MemberData(nameof(Topics))]
    public void Going_the_engines_path_shows_no_habit(string topic)
    {
        var observed = Watch(topic, Safely);
        Assert.DoesNotContain(observed.OfType<Observed.Pattern>(), p => p.Shown);
        Assert.Contains(observed, o => o is Observed.Pattern);
        Assert.All(observed.OfType<Observed.Mark>(), m => Assert.True(m.Right, m.ToString()));
        Assert.Contains(observed.OfType<Observed.Mark>(), m => m.Skill.Sort == SkillSort.Clue);
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Ordering_without_the_safety_look_is_a_habit_whatever_the_bike_is_like(string topic)
    {
        List<bool> Shown(Func<Workbench, Case, Answer> answering) =>
            [.. Watch(topic, answering).OfType<Observed.Pattern>().Where(p => p.Habit == Habit.SkipsSafetyLook).Select(p => p.Shown)];
        Assert.Contains(true, Shown((bench, made) => Honest(bench, made, bench.PathOf(made))));
        Assert.DoesNotContain(false, Shown((bench, made) => Honest(bench, made, bench.PathOf(made))));
        Assert.Contains(false, Shown(Safely));
        Assert.DoesNotContain(true, Shown(Safely));
        Assert.Empty(Shown((bench, made) => Waiting(Honest(bench, made, bench.PathOf(made)))));
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Looking_at_nothing_and_naming_the_likeliest_is_too_soon(string topic)
    {
        var patterns = Watch(topic, (bench, made) => Honest(bench, made, made.Job.Told, naming: true)).OfType<Observed.Pattern>().Where(p => p.Habit == Habit.OrdersTooSoon).ToList();
        Assert.NotEmpty(patterns);
        Assert.InRange(patterns.Count(p => p.Shown), patterns.Count * 0.6, patterns.Count);
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Leaving_open_what_is_settled_is_waiting_too_often(string topic)
    {
        var patterns = Watch(topic, (bench, made) => Waiting(Honest(bench, made, bench.PathOf(made))))
            .OfType<Observed.Pattern>().Where(p => p.Habit is Habit.WaitsTooOften or Habit.AsksThoughSafe).ToList();
        Assert.NotEmpty(patterns);
        Assert.All(patterns, p => Assert.True(p.Shown));
    }

    [Fact]
    public void Going_by_the_marking_alone_is_trusting_it()
    {
        var patterns = Watch("rim-size", (bench, made) => ByFamily(bench, made, ClueFamily.SizeMarking), odd: true).OfType<Observed.Pattern>().Where(p => p.Habit == Habit.TrustsMarking).ToList();
        Assert.NotEmpty(patterns);
        Assert.Contains(patterns, p => p.Shown);
    }

    // A learner whose log odds move as the engine's do has a slope of 1, but for tenths.
    [Fact]
    public void What_moves_the_learner_is_set_beside_what_it_is_worth()
    {
        var bench = Corpus.Bench("folding-bar");
        var weighed = Made(bench, odd: false).SelectMany(made =>
        {
            var path = bench.PathOf(made);
            var answer = Honest(bench, made, path);
            var part = answer.Parts[0].Part;
            var updates = Enumerable.Range(0, answer.Looks.Count).Select(i => Update(bench, made, path, part, i)).ToList();
            return Observations.Of(bench, made, answer, bench.Grade(made, answer), updates).OfType<Observed.Weighed>();
        }).ToList();
        Assert.NotEmpty(weighed);
        Assert.InRange(Trust.SlopeOf(weighed).Slope, 0.85, 1.15);
    }

    static List<Observed> Watch(string topic, Func<Workbench, Case, Answer> answering, bool odd = false)
    {
        var bench = Corpus.Bench(topic);
        return [.. Made(bench, odd).SelectMany(made => answering(bench, made) is var answer ? Observations.Of(bench, made, answer, bench.Grade(made, answer)) : [])];
    }

    static IEnumerable<Case> Made(Workbench bench, bool odd) => Enumerable.Range(1, Bikes).Select(job => Mix.Of(bench.Topic, job, 4711))
        .Select(d => bench.Make(odd && d.Request.Opening is not null ? d.Request with { Select = Selection.Conflicting, Offer = Channel.Bench, Questions = null } : d.Request with { Select = Selection.AsTheyCome }, d.Seed)).OfType<Case>();

    static Answer Honest(Workbench bench, Case made, IReadOnlyList<Finding> findings, bool naming = false)
    {
        var looks = Looks(made, findings);
        var left = made.Job.Request.Questions is { } most && looks.Count >= most ? [] : made.Job.Bench;
        var reasoning = bench.Reason(bench.EnquiryOf(made.Job) with { OnOffer = left }, findings);
        return new Answer
        {
            Looks = looks,
            Parts = [.. reasoning.Parts.Select(p => new PartAnswer(p.Part, p.Settled || naming ? p.Classes[p.Leading].Kinds[0] : null, Tenths(p.Highest)))],
            Orders = [.. reasoning.Decisions.Select(d => d.Options.First(o => naming ? o.Choice is Choice.Order or Choice.Ask : o.Choice is not Choice.Wait).Choice)],
        };
    }

    // The engine's path after the safety looks; where questions are counted, without them.
    static Answer Safely(Workbench bench, Case made)
    {
        var path = bench.PathOf(made);
        if (made.Job.Request.Questions is not null) return Honest(bench, made, path);
        var looks = made.Job.Bench.Where(c => bench.Topic.Clues.First(x => x.Id == c).Safety).Select(c => made.Look(c, 0));
        return Honest(bench, made, [.. made.Job.Told, .. looks, .. path.Skip(made.Job.Told.Count)]);
    }

    static List<Look> Looks(Case made, IReadOnlyList<Finding> findings)
    {
        var looks = new List<Look>();
        foreach (var finding in findings.Skip(made.Job.Told.Count)) looks.Add(new Look(finding.Clue, looks.Count(l => l.Clue == finding.Clue)));
        return looks;
    }

    static Answer Waiting(Answer answer) => answer with { Parts = [.. answer.Parts.Select(p => p with { Kind = null })], Orders = [.. answer.Orders.Select(_ => new Choice.Ask())] };

    // Looks at everything, and then names what the findings of one family say by themselves.
    static Answer ByFamily(Workbench bench, Case made, ClueFamily family)
    {
        var findings = made.Job.Told.Concat(made.Job.Bench.Select(c => made.Look(c, 0))).ToList();
        var honest = Honest(bench, made, findings);
        var its = findings.Where(f => bench.Topic.Clues.First(c => c.Id == f.Clue).Family == family).ToList();
        var said = bench.Reason(bench.EnquiryOf(made.Job) with { OnOffer = [] }, its);
        return honest with { Parts = [.. said.Parts.Select(p => new PartAnswer(p.Part, p.Classes[p.Leading].Kinds[0], 9))] };
    }

    static LogEntry.Updated Update(Workbench bench, Case made, IReadOnlyList<Finding> path, string part, int look)
    {
        var told = made.Job.Told.Count;
        PartBelief At(int count) => bench.Reason(bench.EnquiryOf(made.Job) with { OnOffer = [] }, [.. path.Take(count)]).Parts.First(p => p.Part == part);
        var (before, after) = (At(told + look), At(told + look + 1));
        return new LogEntry.Updated(1, look, part, before.Classes[before.Leading].Kinds[0], Tenths(before.Highest), Tenths(after.Classes[before.Leading].Belief));
    }

    static int Tenths(double chance) => Math.Clamp((int)Math.Round(chance * 10), 1, 10);
}
