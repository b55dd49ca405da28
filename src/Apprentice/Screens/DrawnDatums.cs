using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>From where to where on a drawn part: lettered points, and between which of them each datum goes.</summary>
/// <param name="Part">The part as it is on this bike.</param>
/// <param name="Letters">Letter of each named point, in no order that tells anything.</param>
/// <param name="Ways">From and to per datum: the right one first, then the slips.</param>
sealed record DrawnDatums(DrawnPart Part, IReadOnlyDictionary<string, string> Letters, IReadOnlyList<(string From, string To)> Ways)
{
    /// <summary>Letters to set at the points.</summary>
    public IReadOnlyList<(string Point, string Text)> Marks => [.. Letters.Select(l => (l.Key, l.Value))];

    /// <summary>The choices of a measured clue on a drawing of its topic, or null when no drawing names points for every datum.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="clue">The clue.</param>
    /// <param name="truth">The bike: the part is drawn with its true sizes.</param>
    /// <param name="seed">Gives out the letters, and draws one part in three as the shop sees it.</param>
    public static DrawnDatums? Of(Topic topic, Clue clue, Truth truth, ulong seed)
    {
        if (clue.Shows is not Shows.Measured measured) return null;
        foreach (var drawing in topic.Drawings.Where(d => d.Part is not null && d.Kinds.Count > 0))
        {
            var ways = Enumerable.Range(0, measured.Slips.Count + 1)
                .Select(n => drawing.Datums.FirstOrDefault(d => string.Equals(d.Clue, clue.Id, StringComparison.Ordinal) && d.Datum == n)).OfType<DrawnDatum>().ToList();
            if (ways.Count != measured.Slips.Count + 1) continue;
            var kind = truth.Kinds[topic.Parts.ToList().FindIndex(p => string.Equals(p.Id, drawing.Part, StringComparison.Ordinal))];
            var look = TopicDrawing.Look(drawing.Kinds, kind) ?? drawing.Kinds[0];
            var part = DrawnPart.Of(topic, drawing.Id, DrawnChoice.Kind(look.Of), truth.Sizes, seed);
            return new DrawnDatums(part, LettersOf([.. ways.SelectMany(w => (string[])[w.From, w.To]).Distinct(StringComparer.Ordinal)], seed), [.. ways.Select(w => (w.From, w.To))]);
        }
        return null;
    }

    /// <summary>"A to C: upper edge of the plate to the bolt"; "round at B: …" for a tape laid round.</summary>
    /// <param name="datum">Index of the datum.</param>
    /// <param name="what">Its words.</param>
    public string Say(int datum, string what)
    {
        var (from, to) = Ways[datum];
        return string.Equals(from, to, StringComparison.Ordinal)
            ? Words.Of("scale.datum-round", ("from", Letters[from]), ("what", what))
            : Words.Of("scale.datum-drawn", ("from", Letters[from]), ("to", Letters[to]), ("what", what));
    }

    static Dictionary<string, string> LettersOf(string[] points, ulong seed)
    {
        var order = Shuffle.Of(points.Length, seed, stream: 9);
        return Enumerable.Range(0, points.Length).ToDictionary(i => points[order[i]], i => $"{(char)('A' + i)}", StringComparer.Ordinal);
    }
}

/// <summary>Orders that a seed fixes, every one equally likely over the seeds.</summary>
static class Shuffle
{
    /// <summary>The numbers from 0 to a count less 1 in an order.</summary>
    /// <param name="count">How many.</param>
    /// <param name="seed">The seed; neighbouring ones give unlike orders.</param>
    /// <param name="stream">Stream of the generator: one for each use.</param>
    public static int[] Of(int count, ulong seed, ulong stream)
    {
        // Neighbouring seeds of the generator are not independent in their first numbers: spread them (odd multiplier of SplitMix64) and skip some.
        var rng = new Rng(unchecked(seed * 0x9E3779B97F4A7C15UL), stream);
        for (var i = 0; i < 8; i++) rng.Next();
        var order = Enumerable.Range(0, count).ToArray();
        for (var i = order.Length - 1; i > 0; i--)
        {
            var j = rng.Below(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }
        return order;
    }
}
