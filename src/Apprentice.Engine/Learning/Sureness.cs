using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Learning;

/// <summary>How sure against how right, from the log alone.</summary>
/// <remarks>Interval: Jeffreys, the 5 and 95 of 100 points of Beta(right + ½, wrong + ½); 0 and 1 where none or all were right. Source: Brown, Cai, DasGupta, Interval Estimation for a Binomial Proportion, Statistical Science 16(2), 2001.</remarks>
public static class Sureness
{
    /// <summary>Below so many answers the sentence says that they are few.</summary>
    public const int Enough = 20;

    /// <summary>From so many answers on a sentence for a single topic.</summary>
    public const int EnoughForTopic = 40;

    const int HighFrom = 8;
    const double Tail = 0.05;
    const double Much = 0.2;

    /// <summary>The report of a person.</summary>
    /// <param name="history">The history.</param>
    /// <param name="person">A name, or null for nobody known.</param>
    public static SureReport Of(History history, string? person)
    {
        var answers = Answers(history, person);
        var high = answers.Where(a => a.Sure.Tenths >= HighFrom).ToList();
        return new SureReport(
            answers.Count,
            [.. answers.GroupBy(a => a.Sure.Tenths).OrderBy(g => g.Key).Select(g => LevelOf([.. g.Select(a => a.Sure)]))],
            LevelOf([.. high.Select(a => a.Sure)]),
            [.. high.GroupBy(a => a.Topic, StringComparer.Ordinal).Where(g => g.Count() >= EnoughForTopic).OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => (g.Key, LevelOf([.. g.Select(a => a.Sure)])))]);
    }

    /// <summary>All answers of a person with a kind named: the topic and how sure.</summary>
    public static IReadOnlyList<SureAnswer> Answers(History history, string? person) =>
    [
        .. history.JobsOf(person).Where(j => j.Counts).SelectMany(j => j.Observed.OfType<Observed.Sure>().Select(s => new SureAnswer(j.Started.Topic, s))),
    ];

    /// <summary>Answers taken together.</summary>
    public static SureLevel LevelOf(IReadOnlyList<Observed.Sure> answers)
    {
        if (answers.Count == 0) return new SureLevel(0, 0, 0, 0, 1, SureWord.None);
        var right = answers.Count(a => a.Right);
        var said = answers.Average(a => Said(a.Tenths));
        var (low, high) = Interval(right, answers.Count);
        return new SureLevel(said * 10, answers.Count, right, low, high, WordOf(said, right, answers.Count, low, high));
    }

    /// <summary>Jeffreys' interval, 90 of 100.</summary>
    public static (double Low, double High) Interval(int right, int asked) => (
        right == 0 ? 0 : BetaShare.Quantile(Tail, right + 0.5, asked - right + 0.5),
        right == asked ? 1 : BetaShare.Quantile(1 - Tail, right + 0.5, asked - right + 0.5));

    /// <summary>The probability that tenths stand for: 10 is 0.99, 0 is 0.01.</summary>
    public static double Said(int tenths) => tenths >= 10 ? 0.99 : tenths <= 0 ? 0.01 : tenths / 10.0;

    static SureWord WordOf(double said, int right, int asked, double low, double high)
    {
        if (said >= low && said <= high) return SureWord.Fits;
        var much = asked >= Enough && Math.Abs(said - ((double)right / asked)) >= Much;
        return said > high ? (much ? SureWord.TooSure : SureWord.BitTooSure) : (much ? SureWord.TooUnsure : SureWord.BitTooUnsure);
    }
}

/// <summary>An answer with a kind named.</summary>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Sure">How sure.</param>
public sealed record SureAnswer(string Topic, Observed.Sure Sure);
