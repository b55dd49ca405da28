using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using Apprentice.Tests.Laws;

namespace Apprentice.Tests.Assessing;

/// <summary>Plans and papers of real topics.</summary>
public class PaperTests
{
    const string Permission = "may order tyres and rims alone";
    static readonly Workbench Rims = new(Corpus.Topic("rim-size") with { State = TopicState.Checked });
    static readonly Workbench Seatposts = new(Corpus.Topic("seatpost") with { State = TopicState.Checked });
    static readonly TestPlan Plan = new TestPlanner([Rims, Seatposts]).Plan(Permission);

    [Fact]
    public void A_draft_is_refused()
    {
        var planner = new TestPlanner([new Workbench(Corpus.Topic("rim-size") with { State = TopicState.Draft })]);
        Assert.Contains("draft", Assert.Single(planner.Faults));
        Assert.Throws<ArgumentException>(() => planner.Plan(Permission));
        Assert.Contains("at least one topic", Assert.Single(new TestPlanner([]).Faults));
    }

    [Fact]
    public void A_plan_fills_itself_in()
    {
        Assert.InRange(Plan.Families.Count, 8, 12);
        Assert.Equal(Plan.Families.Count, Plan.Families.Select(f => f.Key).Distinct().Count());
        Assert.Equal(["rim-size", "seatpost"], Plan.Families.Select(f => f.Topic).Distinct().Order());
        Assert.True(Plan.Families.Select(f => f.Offer).Distinct().Count() > 1);
        Assert.Equal(12, Enum.GetValues<Channel>().Sum(Plan.SeenBy));
        Assert.Equal((1, 2, 3), (Plan.Sittings(12), Plan.Sittings(13), Plan.Sittings(36)));
        Assert.Equal(0.95, Plan.Tells[1].Prospect.Passed, 0.005);
    }

    [Fact]
    public void What_is_to_be_expected_is_told()
    {
        var forecast = new TestPlanner([Rims, Seatposts]).Forecast(Plan, 5, 1);
        Assert.Equal(5 * Plan.Families.Count, forecast.Cases);
        Assert.InRange(forecast.Settled, 0.3, 1);
        Assert.InRange(forecast.Odd, 0.05, 0.95);
        Assert.NotEmpty(forecast.Pitfalls);
        Assert.Equivalent(forecast, new TestPlanner([Rims, Seatposts]).Forecast(Plan, 5, 1), strict: true);
    }

    [Fact]
    public void The_same_seed_makes_the_same_paper_and_a_retake_meets_no_case_again()
    {
        var maker = new PaperMaker(Small, [Rims]);
        var first = maker.Make("A", "Sam", 1, 5);
        Assert.Equivalent(first, new PaperMaker(Small, [Rims]).Make("A", "Sam", 1, 5), strict: true);
        var again = maker.Make("B", "Sam", 2, 6);
        Assert.Empty(first.Jobs.Select(j => j.Seed).Intersect(again.Jobs.Select(j => j.Seed)));
        Assert.Equal(Enumerable.Range(1, Small.Rule.Most), first.Jobs.Select(j => j.Place));
        Assert.Equal(Small.Families.Select(f => f.Key).Order(), first.Jobs.Take(Small.Rule.First).Select(j => j.Family.Key).Distinct().Order());
        Assert.NotEqual(first.Jobs[0].SeedOf(0), first.Jobs[0].SeedOf(1));
    }

    [Fact]
    public void A_topic_that_was_changed_since_is_refused()
    {
        var changed = new Workbench(Rims.Topic with { Version = "other" });
        Assert.Contains("changed since", Assert.Throws<ArgumentException>(() => new PaperMaker(Small, [changed]).Make("A", "Sam", 1, 5)).Message);
        Assert.Contains("not there", Assert.Throws<ArgumentException>(() => new PaperMaker(Small, []).Make("A", "Sam", 1, 5)).Message);
    }

    [Fact]
    public void A_paper_is_sat_and_marked()
    {
        var paper = new PaperMaker(Small, [Rims]).Make("A", "Sam", 1, 5);
        var sat = new SatPaper("A", "Sam", 1, 4, [.. Enumerable.Range(1, 4).Select(p => Sat(paper, p, careful: true))], TimeSpan.FromMinutes(9), default, SittingEnd.Decided, []);
        var result = sat.Mark(paper, [Rims]);
        Assert.All(result.Jobs, j => Assert.True(j.Sound, $"{j.Place} {j.Family} {j.Rule}"));
        Assert.Equal(Outcome.Passed, result.Outcome);
        Assert.Equal(0, result.SafetyErrors);
        var careless = sat with { Jobs = [.. Enumerable.Range(1, 3).Select(p => Sat(paper, p, careful: false))] };
        var not = careless.Mark(paper, [Rims]);
        Assert.Equal("paper.rule.unanswered", not.Jobs[3].Rule);
        Assert.All(not.Jobs, j => Assert.False(j.Sound));
        Assert.Throws<ArgumentException>(() => (sat with { Candidate = "Kim" }).Mark(paper, [Rims]));
    }

    [Fact]
    public void A_person_is_told_how_many_sorts_they_have_met()
    {
        var paper = new PaperMaker(Small, [Rims]).Make("A", "Sam", 1, 5);
        var marked = new SatPaper("A", "Sam", 1, 1, [], default, default, SittingEnd.TimeUp, []).Mark(paper, [Rims]);
        var all = Assessments.Of([new Logged(default, new LogEntry.PaperMarked(marked, Published: true))]);
        Assert.Equal((1, Small.Families.Count), all.MetBefore("Sam", Small));
        Assert.Equal((0, Small.Families.Count), all.MetBefore("Kim", Small));
    }

    /// <summary>Simulation, marked as such: 1,000 pairs of papers of 30 jobs of one plan. The expected score is that of a modelled candidate (<see cref="Difficulty"/>); for each paper, draws come afresh out of a large pool of natural draws.</summary>
    [Fact]
    public void Two_papers_of_thirty_differ_by_less_than_six_tenths_of_a_job()
    {
        const int Each = 3;
        var families = Plan.Families.Take(10).ToList();
        Assert.Equal(10, families.Count);
        var maker = new PaperMaker(Plan, [Rims, Seatposts]);
        var rng = new Rng(8);
        var pools = families.Select(f => maker.Draws(f, 300, rng).Select(d => d.Chance).ToList()).ToList();
        var sorts = Enumerable.Range(0, families.Count * Each).Select(i => i / Each).ToList();
        var balanced = Gaps(() => Balanced.Choose([.. sorts.Select(s => (IReadOnlyList<double>)[.. Enumerable.Range(0, PaperMaker.DrawsPerPlace).Select(_ => pools[s][rng.Below(300)])])], c => c, rng).Sum());
        var random = Gaps(() => sorts.Sum(s => pools[s][rng.Below(300)]));
        Assert.True(balanced < 0.6, $"95th percentile: balanced {balanced:0.000}, at random {random:0.000}");
        Assert.True(random > 1.2, $"at random {random:0.000}: the papers would be alike without any balance, and this test could not fail");
    }

    static TestPlan Small => Plan with
    {
        Topics = [new PlanTopic("rim-size", Rims.Topic.Version)],
        Families = [.. Plan.Families.Where(f => f.Topic == "rim-size").Take(4)],
        Rule = new StagedRule([new StageCheck(4, 0, 2), new StageCheck(8, 1, 2)]),
    };

    static double Gaps(Func<double> paper) => Enumerable.Range(0, 1000).Select(_ => Math.Abs(paper() - paper())).Order().ElementAt(949);

    static SittingJob Sat(Paper paper, int place, bool careful)
    {
        var made = paper.Make(Rims, place);
        var answer = careful ? Strategies.Honest(Rims, made, Strategies.Path(Rims, made)) : Strategies.Honest(Rims, made, []) with { Parts = [.. made.Truth.Kinds.Take(1).Select(_ => new PartAnswer(Rims.EnquiryOf(made.Job).Asks[0], null, 1))] };
        if (!careful) answer = answer with { Parts = [.. Rims.EnquiryOf(made.Job).Asks.Select(a => new PartAnswer(a, null, 1))], Orders = [.. answer.Orders.Select(_ => (Choice)new Choice.Ask())] };
        return new SittingJob(place) { Looks = answer.Looks, Given = new Given(answer.Parts, answer.Orders, null, null, null, Forced: false) };
    }
}
