using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Assessing;

/// <summary>Makes papers of a plan: fresh cases each time, alike in how hard they are. Same plan, seed and topics: same paper.</summary>
/// <param name="plan">The plan.</param>
/// <param name="benches">Its topics, in the planned versions.</param>
public sealed class PaperMaker(TestPlan plan, IReadOnlyList<Workbench> benches)
{
    const int FirstSafetyPlace = 101;
    const ulong Stream = 97;
    const ulong RealStream = 98;

    /// <summary>Natural draws for each place: at least the 40 of MODEL 5.</summary>
    public const int DrawsPerPlace = 60;

    /// <summary>A paper.</summary>
    /// <param name="id">Number of the paper; it must not be worked out from the seed.</param>
    /// <param name="candidate">Who sits it.</param>
    /// <param name="number">The candidate's how-manieth paper of this permission, from 1.</param>
    /// <param name="seed">Drawn anew for every paper, and kept sealed.</param>
    /// <param name="real">Real bikes that the candidate may get; as many as the plan wants are taken, by luck of its own, so that no job changes.</param>
    /// <exception cref="ArgumentException">A topic is missing or has another version, or a sort of job cannot be made.</exception>
    public Paper Make(string id, string candidate, int number, ulong seed, IReadOnlyList<RealCase>? real = null)
    {
        Check();
        var rng = new Rng(Seeds.Mixed(seed), Stream);
        var jobs = new List<PaperJob>();
        foreach (var stage in plan.Rule.Stages)
        {
            var families = Enumerable.Range(jobs.Count + 1, stage).Select(plan.FamilyAt).ToList();
            var chosen = Stage(families, rng);
            jobs.AddRange(Balanced.Shuffled(stage, rng).Select((from, i) => Job(jobs.Count + i + 1, families[from], chosen[from])).ToList());
        }

        var safety = plan.Families.Where(f => f.Safety).ToList();
        return new Paper
        {
            Id = id,
            Candidate = candidate,
            Number = number,
            Permission = plan.Permission,
            Rule = plan.Rule,
            MinutesPerJob = plan.MinutesPerJob,
            Jobs = jobs,
            SafetyAgain = safety.Count == 0 ? [] : [.. Enumerable.Range(0, PaperResult.FreshSafetyJobs)
                .Select(i => Job(FirstSafetyPlace + i, safety[i % safety.Count], Draws(safety[i % safety.Count], 1, rng)[0].Seed))],
            Real = RealJobs(real ?? [], new Rng(Seeds.Mixed(seed), RealStream)),
        };
    }

    /// <summary>Natural draws of a sort of job with the chance of a sound answer of a modelled candidate.</summary>
    /// <exception cref="ArgumentException">The sort of job cannot be made.</exception>
    public IReadOnlyList<(ulong Seed, double Chance)> Draws(JobFamily family, int count, Rng rng)
    {
        var bench = BenchOf(family);
        var draws = new List<(ulong, double)>();
        while (draws.Count < count)
        {
            var seed = ((ulong)rng.Next() << 32) | rng.Next();
            var made = bench.Make(family.Request, seed) ?? throw new ArgumentException($"the sort of job {family.Key} is met less than once in 5,000 bikes; take it out of the plan", nameof(family));
            draws.Add((seed, Difficulty.ChanceOfSound(bench, made)));
        }

        return draws;
    }

    IReadOnlyList<ulong> Stage(List<JobFamily> families, Rng rng)
    {
        var pools = families.Select(f => Draws(f, DrawsPerPlace, rng)).ToList();
        return [.. Balanced.Choose(pools, d => d.Chance, rng).Select(d => d.Seed)];
    }

    PaperJob Job(int place, JobFamily family, ulong seed) => new(place, family, BenchOf(family).Topic.Version, seed);

    IReadOnlyList<RealJob> RealJobs(IReadOnlyList<RealCase> cases, Rng rng) =>
        [.. Balanced.Shuffled(cases.Count, rng).Take(plan.RealBikes).Select((from, i) => RealJob(i + 1, cases[from]))];

    RealJob RealJob(int place, RealCase it)
    {
        if (benches.FirstOrDefault(b => b.Topic.Id == it.Topic) is not { } bench || !RealBench.Fits(bench.Topic, it)) throw new ArgumentException($"the real bike {it.Key} is of no topic of the plan", nameof(it));
        return new RealJob(place, bench.Topic.Version, bench.Topic.Wants.First(w => w.Id == it.Want).Asks[0], it);
    }

    Workbench BenchOf(JobFamily family) => benches.First(b => b.Topic.Id == family.Topic);

    void Check()
    {
        if (plan.Rule.Fault is { } fault) throw new ArgumentException(fault, nameof(plan));
        if (plan.Families.Count == 0) throw new ArgumentException("the plan has no sorts of jobs; choose at least one topic", nameof(plan));
        foreach (var topic in plan.Topics)
        {
            if (benches.FirstOrDefault(b => b.Topic.Id == topic.Id) is not { } bench) throw new ArgumentException($"the topic {topic.Id} of the plan is not there", nameof(plan));
            if (bench.Topic.Version != topic.Version) throw new ArgumentException($"the topic {topic.Id} was changed since the plan was made; look at the plan again and save it", nameof(plan));
        }

        if (plan.Families.FirstOrDefault(f => BenchOf(f).Topic.Provenances.Any(p => p.Id == f.Provenance && p.IsPuzzling)) is { } puzzling)
            throw new ArgumentException($"the sort of job {puzzling.Key} is of bikes that were asked about, which no paper uses; take it out of the plan", nameof(plan));
    }
}
