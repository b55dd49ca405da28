using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>MODEL 8, law 4: where the engine says p, the share that is so is p, within four standard deviations. The full 20,000 cases a request: `apprentice laws`.</summary>
public class CalibrationTests
{
    const int Cases = 100;
    static readonly Dictionary<string, Workbench> Benches = new(StringComparer.Ordinal);

    /// <summary>Every topic with every kind of selection; the provenances take turns, so that each is met by several kinds.</summary>
    public static TheoryData<string, string, Selection> Requests()
    {
        var data = new TheoryData<string, string, Selection>();
        foreach (var (id, turn) in Corpus.Shipped.Select((id, i) => (id, i)))
        {
            var provenances = Corpus.Topic(id).Provenances;
            foreach (var select in Enum.GetValues<Selection>()) data.Add(id, provenances[(turn + (int)select) % provenances.Count].Id, select);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Requests))]
    public void What_is_said_p_is_so_in_p_of_the_cases(string id, string provenance, Selection select)
    {
        if (!Benches.TryGetValue(id, out var bench)) bench = Benches[id] = Corpus.Bench(id);
        var requests = Some.WantsAndOpenings(bench.Topic).Select(p => (p.Want.Asks, Request: new CaseRequest(provenance, p.Want.Id, p.Opening.Id, select, Channel.Bench)));
        var (asks, request) = requests.FirstOrDefault(r => bench.Make(r.Request, 0) is not null);
        if (request is null)
        {
            // A selection that no opening of a topic meets is refused for every seed.
            Assert.NotEqual(Selection.AsTheyCome, select);
            Assert.All(requests, r => Assert.Null(bench.Make(r.Request, 1)));
            return;
        }

        var check = new CalibrationCheck(bench.SceneOf(provenance), asks);
        foreach (var made in Some.Cases(bench, request, Cases)) check.AddStages(made);
        Assert.True(check.Worst <= 4, $"{request.Want} {request.Opening}: {check.Cells.MaxBy(c => Math.Abs(c.Z))}");
    }

    [Fact]
    public void Cases_chosen_by_the_truth_break_it()
    {
        var (bench, request, check) = Sample();
        var all = Some.Cases(bench, request, 3000);
        var swapped = all.Where(c => c.Truth.Events.Count > 0).ToList();
        var quota = swapped.Concat(all.Where(c => c.Truth.Events.Count == 0).Take(swapped.Count));
        foreach (var made in quota) check.Add("opening", made.Truth, made.Job.Told);
        Assert.True(check.Worst > 4, $"{check.Worst}");
        Assert.True(check.Error("opening") > 0.05, $"{check.Error("opening")}");
    }

    [Fact]
    public void A_quota_of_settled_and_unsettled_cases_breaks_it()
    {
        var (bench, request, check) = Sample();
        var all = Some.Cases(bench, request, 800).Select(c => (Case: c, Settled: bench.Prove(c).Parts.All(p => p.Settled))).ToList();
        var unsettled = all.Where(c => !c.Settled).ToList();
        foreach (var (made, _) in unsettled.Concat(all.Where(c => c.Settled).Take(unsettled.Count))) check.AddStages(made);
        Assert.True(check.Worst > 4, $"{check.Worst}");
    }

    [Fact]
    public void Papers_of_equal_blocks_keep_it()
    {
        var (bench, request, check) = Sample();
        var rng = new Rng(11);
        const int Places = 12;
        const int Draws = 10;
        for (var paper = 0; paper < 50; paper++)
        {
            var drawn = Enumerable.Range(0, Places * Draws).Select(i => Some.Case(bench, request, (ulong)((paper * 1000) + i))).ToList();
            foreach (var made in EqualBlocks.Choose(drawn, c => bench.Prove(c).Parts.Min(p => p.Highest), Places, rng)) check.AddStages(made);
        }

        Assert.True(check.Cells.Count > 3);
        Assert.True(check.Worst <= 4, $"{check.Cells.MaxBy(c => Math.Abs(c.Z))}");
    }

    static (Workbench Bench, CaseRequest Request, CalibrationCheck Check) Sample()
    {
        var bench = new Workbench(Corpus.Sample);
        return (bench, new CaseRequest("own", "cables", "both", Selection.AsTheyCome, Channel.Bench), new CalibrationCheck(bench.SceneOf("own"), ["bar", "stem"]));
    }
}
