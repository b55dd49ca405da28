using Apprentice.Engine.Cases;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Assessing;

/// <summary>Fills in a plan from a permission and its topics: provenances, what is told, how the jobs are seen. Only MODEL 5's means steer it.</summary>
/// <param name="benches">Topics of the permission, in their order.</param>
public sealed class TestPlanner(IReadOnlyList<Workbench> benches)
{
    const int Sorts = 12;
    const int SafetySorts = 2;
    const ulong ProbeSeed = 20;

    /// <summary>What stands in the way of a plan, a sentence each; empty when one can be made.</summary>
    public IReadOnlyList<string> Faults =>
    [
        .. benches.Count == 0 ? ["choose at least one topic"] : Array.Empty<string>(),
        .. benches.Where(b => b.Topic.State == TopicState.Draft)
            .Select(b => $"the topic {b.Topic.Id} is a draft: practice only; have it checked first"),
    ];

    /// <summary>The plan with everything filled in.</summary>
    /// <param name="permission">The permission.</param>
    /// <param name="wishes">How the twelve are mixed and seen, or null for the usual.</param>
    /// <exception cref="ArgumentException">See <see cref="Faults"/>.</exception>
    public TestPlan Plan(string permission, PlanWishes? wishes = null)
    {
        var wished = wishes ?? PlanWishes.Usual;
        if (Faults is [var fault, ..]) throw new ArgumentException(fault, nameof(permission));
        var families = new List<JobFamily>();
        for (var i = 0; i < Sorts; i++)
        {
            var slot = i;
            var safety = slot < SafetySorts;
            var found = Candidates(slot, safety, wished).FirstOrDefault(f => !families.Any(known => known.Key == f.Key) && CanBeMade(f));
            if (found is not null) families.Add(found);
        }

        return new TestPlan
        {
            Permission = permission,
            Topics = [.. benches.Select(b => new PlanTopic(b.Topic.Id, b.Topic.Version))],
            Families = [.. families.OrderByDescending(f => f.Safety)],
        };
    }

    /// <summary>What is to be expected of the cases of a plan, from a seeded sample: shown, never used to choose.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="each">Cases of each sort of job.</param>
    /// <param name="seed">Seed.</param>
    public PlanForecast Forecast(TestPlan plan, int each, ulong seed)
    {
        var rng = new Rng(Seeds.Mixed(seed));
        var cases = plan.Families.SelectMany(f => Enumerable.Range(0, each).Select(_ => (Bench: BenchOf(f), Made: BenchOf(f).Make(f.Request, rng.Next())))).ToList();
        var settled = cases.Count(c => c.Made is { } made && c.Bench.Prove(made) is { Stops.Count: 0 } proof && proof.Parts.All(p => p.Settled));
        var classes = cases.Select(c => c.Made is null ? [] : ClassesOf(c.Bench, c.Made)).ToList();
        return new PlanForecast(
            cases.Count, (double)settled / cases.Count, (double)classes.Count(c => c.Count > 0) / cases.Count,
            [.. classes.SelectMany(c => c).GroupBy(c => c).OrderBy(g => g.Key).Select(g => (g.Key, (double)g.Count() / cases.Count))]);
    }

    static IReadOnlyList<PitfallClass> ClassesOf(Workbench bench, Case made)
    {
        var tags = bench.SceneOf(made.Job.Request.Provenance).Table.Tags;
        return
        [
            .. made.Truth.Story.Select(s => tags.FirstOrDefault(t => t.Id == s)?.Pitfall).OfType<string>()
                .Select(p => bench.Topic.Pitfalls.FirstOrDefault(x => x.Id == p)).OfType<Pitfall>().Select(p => p.Class).Distinct(),
        ];
    }

    // From what the slot asks for to whatever else can stand there; a slot that nothing fits stays empty.
    IEnumerable<JobFamily> Candidates(int slot, bool safety, PlanWishes wishes)
    {
        foreach (var select in new[] { wishes.SelectAt(slot), Selection.AsTheyCome }.Distinct())
        {
            foreach (var offer in new[] { wishes.OfferAt(slot), Channel.Bench }.Distinct())
            {
                for (var turn = 0; turn < benches.Count; turn++)
                {
                    foreach (var family in OfTopic(benches[(slot + turn) % benches.Count].Topic, slot, safety, select, offer)) yield return family;
                }
            }
        }
    }

    // Papers never use bikes that were picked because they puzzle: their provenance leaves every plan as it was.
    static IEnumerable<JobFamily> OfTopic(Topic topic, int slot, bool safety, Selection select, Channel offer)
    {
        var wants = topic.Wants.Where(w => !safety || CanHurt(topic, w)).ToList();
        string?[] openings = topic.Openings.Count == 0 ? [null] : [.. topic.Openings.Select(o => o.Id)];
        var all = topic.Provenances.Where(p => !p.IsPuzzling).SelectMany(p => wants.SelectMany(w => openings.Select(o => new JobFamily(topic.Id, p.Id, w.Id, o, select, offer, CanHurt(topic, w))))).ToList();
        return all.Count == 0 ? [] : Enumerable.Range(0, all.Count).Select(i => all[(i + (slot * 5)) % all.Count]);
    }

    static bool CanHurt(Topic topic, Want want) => topic.Spares.Any(s => s.Hazard && want.OrderLines.Any(l => l.Id == s.OrderLine));

    bool CanBeMade(JobFamily family)
    {
        var bench = BenchOf(family);
        if (CaseMaker.OnOffer(bench.Topic, family.Request).Count == 0) return false;
        if (family.Opening is null && family.Select != Selection.AsTheyCome) return false;
        return bench.Make(family.Request, ProbeSeed) is not null;
    }

    Workbench BenchOf(JobFamily family) => benches.First(b => b.Topic.Id == family.Topic);
}
