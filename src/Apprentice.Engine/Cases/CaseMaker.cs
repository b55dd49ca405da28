using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Cases;

/// <summary>Draws cases from the topic's own distribution and selects them by their opening findings alone.</summary>
public sealed class CaseMaker
{
    /// <summary>A request is refused after this many draws without a fit: one met once in 5,000 draws is refused in 1 of 55 seeds, one met once in 2,000 never in practice.</summary>
    public const int MostDraws = 20_000;

    readonly Scene _scene;
    readonly BikeSampler _bikes;
    readonly Dictionary<string, bool> _fits = new(StringComparer.Ordinal);

    /// <summary>A maker for a topic and provenance.</summary>
    public CaseMaker(Scene scene)
    {
        _scene = scene;
        _bikes = new BikeSampler(scene);
    }

    /// <summary>The case of a request and a seed, or null when the request is not met.</summary>
    /// <exception cref="InvalidOperationException">The request names an opening or want that the topic does not have.</exception>
    public Case? Make(CaseRequest request, ulong seed)
    {
        var rng = new Rng(Mixed(seed));
        var opening = _scene.Table.Topic.Openings.FirstOrDefault(o => o.Id == request.Opening)
            ?? (request.Opening is null ? null : throw new InvalidOperationException($"the topic has no opening {request.Opening}"));
        for (var draw = 0; draw < MostDraws; draw++)
        {
            var bike = _bikes.Draw(rng);
            IReadOnlyList<Finding> told = opening is null ? [] : [.. opening.Clues.Select(c => bike.Look(c.Clue, c.Channel, rng))];
            if (Fits(request, told)) return Finish(request, seed, bike, told, rng);
        }

        return null;
    }

    /// <summary>Clues on offer for a request, in the topic's order, safety looks last.</summary>
    public static IReadOnlyList<string> OnOffer(Topic topic, CaseRequest request) =>
    [
        .. topic.Clues
            .Where(c => c.Channels.Any(ch => ch.Channel == request.Offer) && (request.Tools is null || request.Tools.Contains(c.Tool)))
            .OrderBy(c => c.Safety).Select(c => c.Id),
    ];

    /// <summary>True when opening findings look as the request wants.</summary>
    /// <param name="scene">The topic.</param>
    /// <param name="request">The request.</param>
    /// <param name="told">The opening findings.</param>
    public static bool Fits(Scene scene, CaseRequest request, IReadOnlyList<Finding> told)
    {
        var model = scene.Table.Model;
        var set = scene.Reader.SetOf(told);
        switch (request.Select)
        {
            case Selection.AsTheyCome:
                return true;
            case Selection.Conflicting:
                return told.Count > 1 && (Conflicts.Score(model, set) > 1e-9 || Conflicts.Clashes(model, set).Any(c => c > 0.5));
            case Selection.SuggestsChange:
                var events = scene.Table.Topic.Events.Count == 0 ? 0 : ulong.MaxValue >> (64 - scene.Table.Topic.Events.Count);
                var unchanged = Belief.Total(model, set.All, new Belief.Story(0, events)) / Belief.Total(model, set.All);
                return 1 - unchanged >= 1.0 / 3 && unchanged < Belief.Total(model, scene.Nothing, new Belief.Story(0, events));
            case Selection.LeavesTwoOpen:
                var part = scene.Table.Names.Part(scene.Table.Topic.Wants.First(w => w.Id == request.Want).Asks[0]);
                return scene.ClassBeliefs(part, set.All) is { } beliefs && beliefs.OrderDescending().Skip(1).First() >= 0.2;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    // Neighbouring seeds of one stream are not independent in their first numbers; mixed ones are.
    // Source: G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014 (the finaliser of SplitMix64).
    static ulong Mixed(ulong seed)
    {
        unchecked
        {
            seed += 0x9E3779B97F4A7C15;
            seed = (seed ^ (seed >> 30)) * 0xBF58476D1CE4E5B9;
            seed = (seed ^ (seed >> 27)) * 0x94D049BB133111EB;
            return seed ^ (seed >> 31);
        }
    }

    // Openings are few and finite: what fits is worked out once for each.
    bool Fits(CaseRequest request, IReadOnlyList<Finding> told)
    {
        if (request.Select == Selection.AsTheyCome) return true;
        var key = $"{request.Select}|{request.Want}|{string.Join('|', told.Select(f => f.ToString()))}";
        if (!_fits.TryGetValue(key, out var fits)) fits = _fits[key] = Fits(_scene, request, told);
        return fits;
    }

    // A stream of its own, so that the writings change nothing else of a case.
    Dictionary<string, IReadOnlyList<IReadOnlyList<string>>> Writings(ulong seed, Bike bike, Channel offer, Dictionary<string, IReadOnlyList<Finding>> shows)
    {
        var rng = new Rng(Mixed(~seed), stream: 71);
        return _scene.Table.Topic.Clues.Where(c => c.Shows is Shows.Code && shows.TryGetValue(c.Id, out var looks) && looks[0].Seen is Seen.Named)
            .ToDictionary(c => c.Id, c => bike.Writings(c, offer, Case.LooksPerClue, rng), StringComparer.Ordinal);
    }

    Case Finish(CaseRequest request, ulong seed, Bike bike, IReadOnlyList<Finding> told, Rng rng)
    {
        var topic = _scene.Table.Topic;
        var bench = OnOffer(topic, request);
        var shows = new Dictionary<string, IReadOnlyList<Finding>>(StringComparer.Ordinal);
        foreach (var clue in bench)
        {
            var hidden = rng.Unit() < _scene.Table.Names.ClueOf(clue).HiddenShare;
            shows[clue] = [.. Enumerable.Range(0, Case.LooksPerClue).Select(_ => hidden ? new Finding(clue, request.Offer, new Seen.Hidden()) : bike.Look(clue, request.Offer, rng))];
        }

        var errors = bench.Where(c => _scene.Table.Names.ClueOf(c).Shows is Shows.Measured)
            .ToDictionary(c => c, _ => (IReadOnlyList<double>)[.. Enumerable.Range(0, Case.LooksPerClue).Select(_ => rng.Normal())], StringComparer.Ordinal);
        return new Case(new Job(topic.Id, topic.Version, seed, request, told, bench), bike.Truth, shows, errors) { Writings = Writings(seed, bike, request.Offer, shows) };
    }
}
