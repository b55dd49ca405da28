using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>Bikes we asked about: the puzzling bikes of a notebook as a population of their own, with its own event rates and shares of lines. Figures of other bikes never move with it.</summary>
/// <param name="Like">The provenance most of them come from, whose figures were held before.</param>
/// <param name="Bikes">Puzzling bikes of the topic whose truth is known.</param>
/// <param name="Figures">What was learned; updates and weights are those of <see cref="LearnedRates"/>.</param>
public sealed record AskedBikes(string Like, int Bikes, IReadOnlyList<Learned> Figures)
{
    /// <summary>Short name of the provenance.</summary>
    public const string Id = "asked";

    /// <summary>Bikes from which on they can count: half the weight of a rate that was held before. Judgement.</summary>
    public const int Least = 10;

    /// <summary>How many bikes are missing.</summary>
    public int Missing => Math.Max(0, Least - Bikes);

    /// <summary>What the puzzling bikes of a notebook say.</summary>
    /// <param name="topic">The topic, with the figures that were held before any was learned.</param>
    /// <param name="notebook">The notebook.</param>
    public static AskedBikes Of(Topic topic, BenchNotebook notebook)
    {
        var known = LearnedRates.KnownOf(topic, notebook.Bikes.Where(b => !b.Put.Routine));
        var like = topic.Provenances.Where(p => !p.IsPuzzling).MaxBy(p => known.Count(k => k.Provenance == p.Id)) ?? topic.Provenances[0];
        return new AskedBikes(like.Id, known.Count, LearnedRates.Population(topic, Id, like.Id, known));
    }
}
