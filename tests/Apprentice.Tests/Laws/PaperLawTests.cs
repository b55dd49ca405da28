using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>MODEL 8, law 4, on the cases of stratified papers: choosing among natural draws so that papers are alike must not bend what the engine says. Simulation, marked as such; every draw serves one paper only.</summary>
public class PaperLawTests
{
    const int Papers = 50;
    const int Places = 12;
    const int DrawsEach = 10;

    static readonly Workbench Bench = new(Corpus.Sample with { State = TopicState.Checked });

    [Fact]
    public void Cases_of_alike_papers_keep_the_law()
    {
        var check = Filled(all: false);
        Assert.NotEmpty(check.Cells);
        Assert.True(check.Worst <= 4, $"{check.Cells.MaxBy(c => Math.Abs(c.Z))}");
    }

    // The test can fail: papers of the hardest draws alone break the law.
    [Fact]
    public void Papers_of_the_hardest_draws_break_it()
    {
        var check = Filled(all: true);
        Assert.True(check.Worst > 4, $"{check.Worst}");
    }

    static CalibrationCheck Filled(bool all)
    {
        var provenance = Corpus.Sample.Provenances[1].Id;
        var families = Corpus.Sample.Openings.Select(o => new JobFamily(Corpus.Sample.Id, provenance, "grips", o.Id, Selection.AsTheyCome, Channel.Bench, Safety: false)).ToList();
        var maker = new PaperMaker(new TestPlan { Permission = "may order grips alone", Topics = [new PlanTopic(Bench.Topic.Id, Bench.Topic.Version)], Families = families }, [Bench]);
        var check = new CalibrationCheck(Bench.SceneOf(provenance), ["bar"]);
        var rng = new Rng(31);
        for (var paper = 0; paper < Papers; paper++)
        {
            var pools = Enumerable.Range(0, Places).Select(p => (Family: families[p % families.Count], Draws: maker.Draws(families[p % families.Count], DrawsEach, rng))).ToList();
            var chosen = all ? [.. pools.Select(p => Hardest(p.Family, p.Draws))] : Balanced.Choose([.. pools.Select(p => p.Draws)], d => d.Chance, rng);
            for (var place = 0; place < Places; place++)
                check.AddStages(Bench.Make(pools[place].Family.Request, chosen[place].Seed) ?? throw new InvalidOperationException("no case"));
        }

        return check;
    }

    // Chosen by what is true: the draw whose bike is least what the first findings say.
    static (ulong Seed, double Chance) Hardest(JobFamily family, IReadOnlyList<(ulong Seed, double Chance)> draws) => draws.MinBy(d => d.Chance);
}
