using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Assessing;

/// <summary>Makes paper kits of a plan: natural draws of its sorts of jobs, and as many looks of the best path as luck says, so that what is right can be to wait, to order or to ask.</summary>
/// <param name="plan">The plan.</param>
/// <param name="benches">Its topics, in the planned versions.</param>
public sealed class KitMaker(TestPlan plan, IReadOnlyList<Workbench> benches)
{
    const int MostOptions = 9;
    const ulong Stream = 131;

    // A check that tells nearly as much a minute as the best one is right too. Judgement.
    const double NearBest = 0.8;

    // An order is right when it loses at most half of what asking costs more than the best: the mark 1/2 of the screens.
    const double Tolerance = 0.5;

    /// <summary>A kit.</summary>
    /// <param name="id">Number of the kit; it must not be worked out from the seed.</param>
    /// <param name="jobs">Jobs.</param>
    /// <param name="seed">Drawn anew for every kit, and kept sealed.</param>
    /// <exception cref="ArgumentException">A topic is missing or has another version, or a sort of job cannot be made.</exception>
    public Kit Make(string id, int jobs, ulong seed)
    {
        var rng = new Rng(Seeds.Mixed(seed), Stream);
        return new Kit(id, plan.Permission, [.. Enumerable.Range(1, jobs).Select(place => JobAt(place, rng))]);
    }

    /// <summary>The job as it was met, for its card.</summary>
    /// <param name="job">A job of a kit.</param>
    public Case CaseOf(KitJob job) => BenchOf(job.Family).Make(job.Family.Request, job.Seed) ?? throw new ArgumentException($"job {job.Place} cannot be made", nameof(job));

    KitJob JobAt(int place, Rng rng)
    {
        var family = plan.FamilyAt(place);
        var bench = BenchOf(family);
        var seed = ((ulong)rng.Next() << 32) | rng.Next();
        var made = bench.Make(family.Request, seed) ?? throw new ArgumentException($"the sort of job {family.Key} is met less than once in 5,000 bikes; take it out of the plan", nameof(place));
        var path = bench.PathOf(made).Skip(made.Job.Told.Count).ToList();
        IReadOnlyList<Finding> given = [.. made.Job.Told, .. path.Take(rng.Below(path.Count + 1))];
        return new KitJob(place, family, bench.Topic.Version, seed, given, QuestionsOf(bench, made, given));
    }

    static IReadOnlyList<KitQuestion> QuestionsOf(Workbench bench, Case made, IReadOnlyList<Finding> given)
    {
        var reasoning = bench.Reason(bench.EnquiryOf(made.Job), given);
        var outlines = bench.Variants.Select(v => new Reasoner(v.SceneOf(made.Job.Request.Provenance)).Outline(v.EnquiryOf(made.Job) with { OnOffer = [] }, given)).ToList();
        // Ripe now, or as soon as the judged figures are moved within reason: then to answer is accepted too.
        var near = reasoning.Stops.Count == 0 && outlines.Any(o => o.Parts.All(p => p.Settled));
        return
        [
            .. reasoning.Parts.Select((p, i) => new KitQuestion(KitAsk.Part, p.Part, PartOptions(p, [.. outlines.Select(o => o.Parts[i])], reasoning.Stops.Count > 0))),
            .. reasoning.Decisions.Where(_ => bench.Topic.Wants.First(w => w.Id == made.Job.Request.Want).OrderLines.Count > 0)
                .Select((d, i) => new KitQuestion(KitAsk.Order, d.OrderLine, OrderOptions(bench.Topic, d, [.. outlines.Select(o => o.Decisions[i])], reasoning, near))),
            new KitQuestion(KitAsk.Next, "", NextOptions(bench.Topic, made, given, reasoning, near)),
        ];
    }

    // A stop sign leaves only to name nothing.
    static IReadOnlyList<KitOption> PartOptions(PartBelief part, IReadOnlyList<PartBelief> variants, bool stopped)
    {
        var right = variants.Append(part).Select(p => p.Settled && !stopped ? p.Leading : -1).ToHashSet();
        var shown = Enumerable.Range(0, part.Classes.Count).OrderByDescending(c => right.Contains(c)).ThenByDescending(c => part.Classes[c].Belief).Take(MostOptions - 1).Order();
        return [.. shown.Select(c => new KitOption(part.Classes[c].Kinds, null, null, right.Contains(c), Hurts: false)), new KitOption(null, null, null, right.Contains(-1), Hurts: false)];
    }

    static IReadOnlyList<KitOption> OrderOptions(Topic topic, LineDecision decision, IReadOnlyList<LineDecision> variants, Reasoning reasoning, bool near)
    {
        var now = decision.Options.Where(o => o.Choice is not Choice.Wait).ToList();
        var ripe = reasoning.Ripe || near;
        var best = variants.Select(v => v.Options.First(o => o.Choice is not Choice.Wait).Choice).ToHashSet();
        bool Right(Option o) => ripe && !Hurts(topic, o, reasoning) && (best.Contains(o.Choice) || (o.Loss - now[0].Loss) / topic.Costs.AskCost <= Tolerance);
        var shown = now.Where(o => o.Choice is Choice.Ask || Right(o)).Concat(now.Where(o => o.Choice is Choice.Order)).Concat(now).Distinct().Take(MostOptions - 1).ToList();
        return
        [
            .. now.Where(shown.Contains).OrderBy(o => o.Choice is Choice.Ask).ThenBy(o => Place(topic, o.Choice)).Select(o => new KitOption(null, o.Choice, null, Right(o), Hurts(topic, o, reasoning))),
            new KitOption(null, null, null, !reasoning.Ripe, Hurts: false),
        ];
    }

    static IReadOnlyList<KitOption> NextOptions(Topic topic, Case made, IReadOnlyList<Finding> given, Reasoning reasoning, bool near)
    {
        var best = reasoning.Ripe || reasoning.Next.Count == 0 ? 0 : reasoning.Next[0].Score;
        bool Right(string clue) => best > 0 && reasoning.Next.Any(n => n.Clue == clue && (n.Score >= NearBest * best || n == reasoning.Next[0]));
        var open = made.Job.Bench.Where(c => given.Skip(made.Job.Told.Count).All(f => f.Clue != c) || Right(c)).ToList();
        var shown = open.OrderByDescending(Right).ThenByDescending(c => reasoning.Next.FirstOrDefault(n => n.Clue == c)?.Score ?? 0).Take(MostOptions - 1).ToList();
        return [.. open.Where(shown.Contains).Select(c => new KitOption(null, null, c, Right(c), Hurts: false)), new KitOption(null, null, null, reasoning.Ripe || reasoning.Next.Count == 0 || near, Hurts: false)];
    }

    // As on screens: a part that can hurt, ordered with more doubt than its level allows, or anything ordered at a stop sign.
    static bool Hurts(Topic topic, Option option, Reasoning reasoning)
    {
        string[] ordered = option.Choice switch
        {
            Choice.Order order => [order.Spare],
            Choice.OrderTwo two => [two.First, two.Second],
            _ => [],
        };
        if (ordered.Length > 0 && reasoning.Stops.Count > 0) return true;
        return topic.Spares.Where(s => s.Hazard && ordered.Contains(s.Id)).Any(s =>
        {
            var level = topic.Parts.Where(p => s.Fits.Any(f => f.Part == p.Id)).Max(p => p.SettleAt);
            var alone = reasoning.Decisions.SelectMany(d => d.Options).FirstOrDefault(o => o.Choice.Equals(new Choice.Order(s.Id)));
            return alone is null || alone.WrongShare > 1 - level + 1e-9;
        });
    }

    static int Place(Topic topic, Choice choice) => choice switch
    {
        Choice.Order order => topic.Spares.ToList().FindIndex(s => s.Id == order.Spare),
        Choice.OrderTwo two => topic.Spares.Count + topic.Spares.ToList().FindIndex(s => s.Id == two.First),
        _ => int.MaxValue,
    };

    Workbench BenchOf(JobFamily family)
    {
        var bench = benches.FirstOrDefault(b => b.Topic.Id == family.Topic) ?? throw new ArgumentException($"the topic {family.Topic} of the plan is not there", nameof(family));
        var planned = plan.Topics.FirstOrDefault(t => t.Id == family.Topic);
        return planned is null || planned.Version == bench.Topic.Version ? bench
            : throw new ArgumentException($"the topic {family.Topic} was changed since the plan was made; look at the plan again and save it", nameof(family));
    }
}
