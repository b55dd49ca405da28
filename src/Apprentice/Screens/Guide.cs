using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>The help of a guided job: what the engine would do next, in a sentence or two.</summary>
static class Guide
{
    /// <summary>The sentences; none for a job without help.</summary>
    public static IReadOnlyList<string> Of(BenchJob on)
    {
        if (!on.Guided) return [];
        var words = new TopicWords(on.Topic);
        return on.Looks.Count == 0 && SafetyLeft(on) is { } safety
            ? [Words.Of("guide.start", ("n", safety)), Before(on.Reasoning.Parts[0], words)]
            : [.. Of(on, on.Reasoning, words)];
    }

    static IEnumerable<string> Of(BenchJob on, Reasoning reasoning, TopicWords words)
    {
        if (on.Looks.Count == 0) yield return Words.Of(Cursor.IsLong(on.OnOffer.Count + 1) ? "guide.take-long" : "guide.take");
        if (StandWords.DoNotGoTogether(reasoning)) yield return Words.Of("guide.conflict");
        if (reasoning.Odd.FirstOrDefault(o => o.Stands) is { } odd)
            yield return Words.Of("guide.odd", ("clue", words.Clue(on.Findings[odd.Finding].Clue)));
        else if (reasoning.Ripe && reasoning.Stops.Count == 0 && SafetyLeft(on) is { } safety) yield return Words.Of("guide.safety", ("n", safety));
        else yield return Next(on, reasoning, words);
    }

    // Number of the safety look on the bench that was not taken, or null.
    static int? SafetyLeft(BenchJob on)
    {
        var at = on.OnOffer.ToList().FindIndex(c => c.Safety && on.Times(c.Id) == 0);
        return at < 0 ? null : at + 1;
    }

    static string Before(PartBelief part, TopicWords words)
    {
        var leading = part.Classes[part.Leading];
        return Words.Of("guide.before", ("tenths", Spoken.Tenths(leading.Belief)), ("kind", words.Class(part.Part, leading.Kinds)));
    }

    static string Next(BenchJob on, Reasoning reasoning, TopicWords words)
    {
        if (reasoning.Parts.All(p => p.Settled)) return Words.Of("guide.settled");
        if (reasoning.Ripe || reasoning.Next.Count == 0) return Words.Of("guide.ripe");
        var next = reasoning.Next[0];
        string Name(string clue) => Words.Of(
            "spoken.check", ("n", on.OnOffer.ToList().FindIndex(c => string.Equals(c.Id, clue, StringComparison.Ordinal)) + 1), ("name", words.Clue(clue)));
        var name = Name(next.Clue);
        if (next.With is { } with && next.Settles >= 0.05)
            return Words.Of("guide.pair", ("clue", name), ("with", Name(with)), ("tenths", Spoken.Tenths(next.Settles)));
        return next.Settles >= 0.05
            ? Words.Of("guide.best", ("clue", name), ("minutes", Spoken.Minutes(next.Minutes)), ("tenths", Spoken.Tenths(next.Settles)))
            : Words.Of("guide.some", ("clue", name), ("minutes", Spoken.Minutes(next.Minutes)));
    }
}
