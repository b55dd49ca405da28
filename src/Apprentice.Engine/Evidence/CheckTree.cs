using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>The shortest way to each kind, as a tree: the best next check, a branch for what it can show.</summary>
/// <param name="Findings">What was found on the way here.</param>
/// <param name="Part">The part that is looked for.</param>
/// <param name="Clue">The check to take here, or null where the way ends.</param>
/// <param name="Branches">What it can show, likeliest first; what is rarer than the least share is left out.</param>
/// <param name="Kinds">Kinds of the leading class.</param>
/// <param name="Belief">Its belief.</param>
/// <param name="Settled">True when it is settled.</param>
/// <param name="Minutes">Bench minutes on the way here, what must come off with them.</param>
public sealed record CheckTree(
    IReadOnlyList<Finding> Findings, string Part, string? Clue, IReadOnlyList<CheckBranch> Branches, IReadOnlyList<string> Kinds, double Belief, bool Settled, double Minutes)
{
    const double LeastShare = 0.01;

    /// <summary>The tree of a part.</summary>
    /// <param name="bench">The topic.</param>
    /// <param name="provenance">Where the bike comes from.</param>
    /// <param name="part">The part, one that is asked about.</param>
    /// <param name="deepest">At most so many checks on a way.</param>
    public static CheckTree Of(Workbench bench, string provenance, string part, int deepest)
    {
        var offer = bench.Topic.Clues.Where(c => !c.Safety && c.Channels.Any(x => x.Channel == Channel.Bench)).Select(c => c.Id).ToList();
        return Grow(bench, new Enquiry(provenance, [part], null, Channel.Bench, offer), [], deepest, 1);
    }

    /// <summary>This node and all below it.</summary>
    public IEnumerable<CheckTree> All => Branches.SelectMany(b => b.Then.All).Prepend(this);

    /// <summary>Least bench minutes on a way that settles a kind, or null when no way in the tree does.</summary>
    /// <param name="kind">Short name of the kind.</param>
    public double? MinutesTo(string kind) => All.Where(n => n.Settled && n.Kinds.Contains(kind)).Select(n => (double?)n.Minutes).Min();

    static CheckTree Grow(Workbench bench, Enquiry enquiry, IReadOnlyList<Finding> findings, int left, double share)
    {
        var (next, _, parts) = new Reasoner(bench.SceneOf(enquiry.Provenance)).Look(enquiry, findings);
        if (parts.Count == 0) parts = bench.Reason(enquiry, findings).Parts;
        var part = parts[0];
        var lead = part.Classes[part.Leading];
        var node = new CheckTree(findings, part.Part, null, [], lead.Kinds, lead.Belief, part.Settled, MinutesOf(bench.Topic, findings));
        if (left == 0 || part.Settled || next.Count == 0 || findings.Any(f => f.Clue == next[0].Clue)) return node;
        var clue = bench.Topic.Clues.First(c => c.Id == next[0].Clue);
        var branches = Shown(bench, enquiry, findings, clue, part).Where(b => share * b.Share >= LeastShare).OrderByDescending(b => b.Share)
            .Select(b => new CheckBranch(b.Finding, b.Share, Grow(bench, enquiry, [.. findings, b.Finding], left - 1, share * b.Share))).ToList();
        return branches.Count == 0 ? node : node with { Clue = clue.Id, Branches = branches };
    }

    // A reading branches by the size of each kind that is still possible, kinds of one size together; anything else by its findings.
    static IEnumerable<(Finding Finding, double Share)> Shown(Workbench bench, Enquiry enquiry, IReadOnlyList<Finding> findings, Clue clue, PartBelief part)
    {
        var scene = bench.SceneOf(enquiry.Provenance);
        if (clue.Shows is Shows.Measured measured && scene.Table.Topic.Dimensions.First(d => d.Id == measured.Dimension) is var size && size.Part == part.Part)
        {
            var kinds = scene.Table.Topic.Parts.First(p => p.Id == size.Part).Kinds;
            return part.Classes.SelectMany(c => c.Kinds.Select(k => (Kind: k, Share: c.Belief / c.Kinds.Count)))
                .Select(k => (At: kinds.ToList().FindIndex(x => x.Id == k.Kind), k.Share)).Where(k => k.At >= 0 && size.Nominals[k.At] is not null)
                .GroupBy(k => Step(measured, size.Nominals[k.At] ?? 0))
                .Select(g => (new Finding(clue.Id, Channel.Bench, new Seen.Reading(g.Key)), g.Sum(k => k.Share)));
        }

        if (clue.Shows is Shows.Measured) return [];
        var all = Histories.Belief.Total(scene.Table.Model, scene.Reader.SetOf(findings).All);
        return ClueReader.FindingsOf(clue, Channel.Bench).Ids.Select(id => new Finding(clue.Id, Channel.Bench, new Seen.Named(id)))
            .Select(f => (f, Histories.Belief.Total(scene.Table.Model, scene.Reader.SetOf([.. findings, f]).All) / all));
    }

    static double Step(Shows.Measured measured, double nominal) => Math.Floor((((measured.Scale * nominal) + measured.Offset) / measured.Step) + 0.5) * measured.Step;

    static double MinutesOf(Topic topic, IReadOnlyList<Finding> findings)
    {
        var clues = findings.Select(f => topic.Clues.First(c => c.Id == f.Clue)).ToList();
        return clues.Sum(c => c.Minutes) + clues.Select(c => c.Access).OfType<string>().Distinct(StringComparer.Ordinal).Sum(a => topic.Accesses.First(x => x.Id == a).Minutes);
    }
}

/// <summary>A branch: what a check shows, and what follows.</summary>
/// <param name="Finding">What is found.</param>
/// <param name="Share">Share of bikes here that show it.</param>
/// <param name="Then">What follows.</param>
public sealed record CheckBranch(Finding Finding, double Share, CheckTree Then);
