using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>How a person weighs evidence: the change of their log odds on that of the engine's, one slope a family.</summary>
/// <remarks>
/// Slope through 0 with prior Normal(1, ½²) and a spread of 0.7 nats around it; the spread is assumed, not measured on learners. A single clue has the prior of its family
/// without the clue's own updates, spread ¼ more. Conjugate normal regression: Gelman and others, Bayesian Data Analysis, 3rd edition, 14.2.
/// </remarks>
public static class Trust
{
    /// <summary>Below so many updates it is not yet known.</summary>
    public const int Enough = 10;

    const double Spread = 0.7;
    const double PriorMean = 1;
    const double PriorSpread = 0.5;
    const double ClueSpread = 0.25;
    const double Interval = 1.6448536269514722;

    /// <summary>The report of a person.</summary>
    public static TrustReport Of(History history, string? person)
    {
        var updates = Updates(history, person);
        var plain = updates.Where(u => !u.Weighed.Linked).ToList();
        var families = Enum.GetValues<ClueFamily>().Select(f => (f, Sums.Of(plain.Where(u => u.Weighed.Family == f).Select(u => u.Weighed)))).ToList();
        var clues = plain.GroupBy(u => (u.Topic, u.Weighed.Clue, u.Weighed.Family)).OrderBy(g => g.Key.Topic, StringComparer.Ordinal).ThenBy(g => g.Key.Clue, StringComparer.Ordinal)
            .Select(g => (g.Key.Topic, g.Key.Clue, g.Key.Family, OfClue(Sums.Of(g.Select(u => u.Weighed)), families[(int)g.Key.Family].Item2)));
        return new TrustReport(
            updates.Count, [.. families.Select(f => (f.f, SlopeOf(f.Item2, PriorMean, PriorSpread * PriorSpread)))], [.. clues],
            SlopeOf(Sums.Of(updates.Where(u => u.Weighed.Linked).Select(u => u.Weighed)), PriorMean, PriorSpread * PriorSpread));
    }

    /// <summary>All updates of a person, with their topic.</summary>
    public static IReadOnlyList<(string Topic, Observed.Weighed Weighed)> Updates(History history, string? person) =>
        [.. history.JobsOf(person).Where(j => j.Counts).SelectMany(j => j.Observed.OfType<Observed.Weighed>().Select(w => (j.Started.Topic, w)))];

    /// <summary>The slope of some updates under the prior of a family.</summary>
    public static TrustSlope SlopeOf(IEnumerable<Observed.Weighed> updates) => SlopeOf(Sums.Of(updates), PriorMean, PriorSpread * PriorSpread);

    static TrustSlope OfClue(Sums clue, Sums family)
    {
        var (mean, variance) = Posterior(family.Less(clue), PriorMean, PriorSpread * PriorSpread);
        return SlopeOf(clue, mean, variance + (ClueSpread * ClueSpread));
    }

    static TrustSlope SlopeOf(Sums sums, double priorMean, double priorVariance)
    {
        var (mean, variance) = Posterior(sums, priorMean, priorVariance);
        var half = Interval * Math.Sqrt(variance);
        var word = sums.Count < Enough ? TrustWord.NotYetKnown : mean + half < 1 ? TrustWord.TooLittle : mean - half > 1 ? TrustWord.TooMuch : TrustWord.AboutRight;
        return new TrustSlope(sums.Count, mean, mean - half, mean + half, word);
    }

    static (double Mean, double Variance) Posterior(Sums sums, double priorMean, double priorVariance)
    {
        var precision = (sums.Squares / (Spread * Spread)) + (1 / priorVariance);
        return (((sums.Products / (Spread * Spread)) + (priorMean / priorVariance)) / precision, 1 / precision);
    }

    /// <summary>What a slope needs to know of its updates.</summary>
    sealed record Sums(int Count, double Squares, double Products)
    {
        public static Sums Of(IEnumerable<Observed.Weighed> updates)
        {
            var (count, squares, products) = (0, 0.0, 0.0);
            foreach (var u in updates) (count, squares, products) = (count + 1, squares + (u.Worth * u.Worth), products + (u.Worth * u.Taken));
            return new Sums(count, squares, products);
        }

        public Sums Less(Sums other) => new(Count - other.Count, Squares - other.Squares, Products - other.Products);
    }
}

/// <summary>In which jobs it is asked after each check how sure the learner is now.</summary>
public static class TrustAsks
{
    const int OneOfUntilKnown = 3;
    const int OneOfOnceKnown = 10;
    const int FewestInAll = 30;
    const int Stream = 0x5472;

    /// <summary>True when it is asked in a job: one of three until every family met has ten updates and there are thirty in all, then one of ten. Never in a guided job.</summary>
    /// <param name="history">The history; jobs from this one on change nothing.</param>
    /// <param name="person">A name, or null for nobody known: never asked.</param>
    /// <param name="job">Number of the job on this file.</param>
    public static bool Asked(History history, string? person, int job)
    {
        if (person is null || history.Jobs.Count >= job && history.Jobs[job - 1].Started.Guided) return false;
        var updates = history.JobsOf(person).Where(j => j.Counts && j.Started.Job < job).SelectMany(j => j.Observed.OfType<Observed.Weighed>()).ToList();
        var known = updates.Count >= FewestInAll && updates.GroupBy(u => u.Family).All(g => g.Count() >= Trust.Enough);
        return new Dice(unchecked((history.Luck ?? 0) + Stream), job).Below(known ? OneOfOnceKnown : OneOfUntilKnown) == 0;
    }
}
