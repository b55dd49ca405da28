using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>Figures of a topic learned from bikes whose truth is known.</summary>
/// <remarks>
/// Event rates: Beta prior with mean the topic's rate and the weight of 20 bikes; h of n bikes make Beta(a + h, b + n − h). Shares of lines: Dirichlet prior of the weight of 40 bikes,
/// whose single shares are Beta. Spreads: scaled inverse χ² prior of 10 degrees of freedom. Running changes: Normal prior of 6 months around the topic's window. The last two are worked out
/// on a grid (<see cref="LearnedGrids"/>). Conjugate updates: A. Gelman and others, Bayesian Data Analysis, 3rd edition, 2.4, 2.6, 3.4. The weights are judgement: few bikes change little.
/// Only bikes that a fixed rule took in may be handed over for rates that count: bikes that puzzled somebody say "everything was changed".
/// </remarks>
public static class LearnedRates
{
    /// <summary>Weight of a topic's event rate, in bikes. Judgement.</summary>
    public const double EventWeight = 20;

    /// <summary>Weight of a topic's shares of lines, in bikes. Judgement.</summary>
    public const double LineWeight = 40;

    /// <summary>Each end of an interval leaves out this share.</summary>
    public const double Tail = 0.05;

    const double LeastRate = 0.002;

    /// <summary>Figures from the routine bikes of a notebook: those that may count once the lead lets them.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="notebook">The notebook.</param>
    public static IReadOnlyList<Learned> Of(Topic topic, BenchNotebook notebook) => Of(topic, [.. notebook.Bikes.Where(b => b.Put.Routine)]);

    /// <summary>Figures from some bikes; those about which no bike says anything are left out.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="bikes">The bikes.</param>
    public static IReadOnlyList<Learned> Of(Topic topic, IReadOnlyList<Bike> bikes)
    {
        var known = KnownOf(topic, bikes);
        return
        [
            .. topic.Provenances.Where(p => !p.IsPuzzling).SelectMany(p => Population(topic, p.Id, p.Id, [.. known.Where(k => k.Provenance == p.Id)])),
            .. LearnedGrids.Spreads(topic, known),
            .. LearnedGrids.Windows(topic, known),
        ];
    }

    /// <summary>Bikes whose truth is known. One that is said to come from puzzling bikes, or from where the topic knows none, comes from what stands for it.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="bikes">The bikes.</param>
    public static IReadOnlyList<KnownBike> KnownOf(Topic topic, IEnumerable<Bike> bikes) =>
    [
        .. from bike in bikes
           let asked = bike.Asked.FirstOrDefault(a => a.Topic == topic.Id)
           let truth = bike.TruthOf(topic.Id)?.Truth
           where asked is not null && truth is not null
           let source = topic.Provenances.First(p => p.Id == StandView.ProvenanceIn(topic, asked.Provenance))
           select new KnownBike(bike, truth, source.Like ?? source.Id),
    ];

    /// <summary>Event rates and shares of lines of one population; those about which no bike says anything are left out.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="name">What the population is called in the figures.</param>
    /// <param name="like">The provenance whose figures were held before.</param>
    /// <param name="known">Its bikes.</param>
    public static IReadOnlyList<Learned> Population(Topic topic, string name, string like, IReadOnlyList<KnownBike> known)
    {
        var index = topic.Provenances.ToList().FindIndex(p => p.Id == like);
        return [.. topic.Events.Select(e => RateOf(e, name, e.Rates[index], known)).Where(l => l.Bikes > 0), .. LinesOf(topic, name, index, known)];
    }

    /// <summary>A share after so many bikes.</summary>
    /// <param name="before">The topic's share, 0 to 1.</param>
    /// <param name="weight">Its weight in bikes, greater than 0.</param>
    /// <param name="hits">How often it was seen.</param>
    /// <param name="bikes">Of how many bikes; one on which it would show only sometimes counts as that much.</param>
    /// <returns>Mean and the two ends that leave out <see cref="Tail"/> each.</returns>
    public static (double Mean, double Low, double High) Share(double before, double weight, int hits, double bikes)
    {
        var held = Math.Clamp(before, LeastRate, 1 - LeastRate);
        var (a, b) = ((weight * held) + hits, (weight * (1 - held)) + bikes - hits);
        return (a / (a + b), BetaShare.Quantile(Tail, a, b), BetaShare.Quantile(1 - Tail, a, b));
    }

    static Learned RateOf(BikeEvent happened, string provenance, double before, IReadOnlyList<KnownBike> known)
    {
        var counted = known.Select(k => (Hit: k.Truth.Events.Contains(happened.Id), Weight: WeightOf(happened, k.Truth))).Where(k => k.Weight > 0).ToList();
        var hits = counted.Count(k => k.Hit);
        var (mean, low, high) = Share(before, EventWeight, hits, counted.Sum(k => k.Weight));
        return new Learned(LearnedSort.EventRate, happened.Id, provenance, before, hits, counted.Count, mean, low, high);
    }

    // How likely the event would show on a bike, 0 to 1. An event of some lines or dates is counted only on bikes that are known to be such, and one that puts a kind on only as far as that can be told.
    static double WeightOf(BikeEvent happened, BikeTruth truth)
    {
        var counts = (happened.Lines.Count == 0 || (truth.Line is { } line && happened.Lines.Contains(line)))
            && (happened.BuiltFrom is not { } from || (truth.Built is { } built && built.CompareTo(from) >= 0))
            && (happened.BuiltTo is not { } to || (truth.Built is { } month && month.CompareTo(to) <= 0));
        if (!counts || truth.Events.Contains(happened.Id)) return counts ? 1 : 0;
        return happened.Effects.OfType<Effect.ChangeKind>().Aggregate(1.0, (weight, change) => weight * ShowsOn(change, truth));
    }

    // What changes nothing on a bike has not happened: a swap of the old part for the new one can be seen only on bikes that were built with the old one.
    // Where it has not happened, such a bike still has it; where it puts on one of several kinds, it shows unless it puts on the kind that is there.
    static double ShowsOn(Effect.ChangeKind change, BikeTruth truth) => truth.KindOf(change.Part) is { } kind && (change.From is null || change.From == kind)
        ? 1 - change.To.Where(t => t.Kind == kind).Sum(t => t.Share)
        : 0;

    static IEnumerable<Learned> LinesOf(Topic topic, string provenance, int index, IReadOnlyList<KnownBike> known)
    {
        var lines = known.Where(k => k.Truth.Line is not null).Select(k => k.Truth.Line).ToList();
        if (lines.Count == 0 || topic.Lines.Count < 2) return [];
        return topic.Lines.Select(l =>
        {
            var hits = lines.Count(k => k == l.Id);
            var (mean, low, high) = Share(l.Shares[index], LineWeight, hits, lines.Count);
            return new Learned(LearnedSort.LineShare, l.Id, provenance, l.Shares[index], hits, lines.Count, mean, low, high);
        });
    }
}

/// <summary>A bike whose truth is known.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="Truth">What it really was.</param>
/// <param name="Provenance">Where it came from.</param>
public sealed record KnownBike(Bike Bike, BikeTruth Truth, string Provenance);
