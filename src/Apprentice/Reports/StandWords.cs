using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>Sentences about a real bike, the same on screens, on sheets and in commands.</summary>
static class StandWords
{
    const int MostKinds = 3;

    /// <summary>"Bike 3   blue folder".</summary>
    public static string Title(Bike bike) => Words.Of("stand.bike", ("n", bike.Number), ("name", bike.Put.Name));

    /// <summary>"routine bike", "puzzling bike", or that it has no job card: by that number the rule would say which of the two it is.</summary>
    public static string Entered(Bike bike) => Words.Of(bike.Put.Routine ? "stand.routine" : bike.Put.Card is null ? "stand.no-card" : "stand.puzzling");

    /// <summary>What bikes that were asked about are, how many there are, and how many are missing.</summary>
    public static IReadOnlyList<string> Asked(Topic topic, AskedBikes asked) =>
    [
        Words.Of("stand.asked-what"),
        asked.Bikes == 0
            ? Words.Of("stand.asked-none")
            : Words.Of("stand.asked-start", ("bikes", asked.Bikes), ("where", topic.Provenances.First(p => p.Id == asked.Like).Name), ("weight", LearnedRates.EventWeight)),
        .. asked.Missing > 0 ? [Words.Of("stand.asked-missing", ("n", asked.Missing), ("least", AskedBikes.Least))] : Array.Empty<string>(),
    ];

    /// <summary>How the bike is seen.</summary>
    public static string Seen(Channel channel) => Words.Of(channel switch
    {
        Channel.Phone => "stand.by-phone",
        Channel.Photo => "stand.by-photo",
        _ => "stand.by-bench",
    });

    /// <summary>What stops the bike: never ride it, and whom to ask.</summary>
    public static IReadOnlyList<string> Stops(StandView view) =>
        [.. view.Reasoning.Stops.Select(s => Words.Of(s.Contains("ride", StringComparison.OrdinalIgnoreCase) ? "stand.stop" : "stand.stop-ride", ("text", Spoken.Capital(s.TrimEnd('.')) + ".")))];

    /// <summary>After a stop: nothing is ordered, and whom to ask.</summary>
    public static IReadOnlyList<string> AfterStop() => [Words.Of("stand.stop-order"), Words.Of("stand.stop-ask")];

    /// <summary>What is settled and what is not, a sentence a part. Nothing once a stop sign was found.</summary>
    public static IReadOnlyList<string> Standing(StandView view) => view.Reasoning.Stops.Count > 0 ? [] : Standing(view.Topic, view.Reasoning);

    /// <summary>What is settled and what is not, a sentence a part.</summary>
    public static IReadOnlyList<string> Standing(Topic topic, Reasoning reasoning)
    {
        var words = new TopicWords(topic);
        return [.. reasoning.Parts.Select(p => Part(p, words))];
    }

    /// <summary>True when findings clash so much that a beginner should hear of it: the engine also marks the faintest conflict. The levels are judgement.</summary>
    public static bool DoNotGoTogether(Reasoning reasoning) =>
        reasoning.Conflict.Shown && (reasoning.Conflict.Score > 0.3 || reasoning.Conflict.Clashes.Any(c => c > 0.5));

    /// <summary>A day, or nothing when no time is known.</summary>
    public static string Day(DateTimeOffset now) => now == default ? "" : now.ToString("ddd d MMMM", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>What does not go together, and what would explain it; none where all goes together, or once a stop sign was found.</summary>
    public static IReadOnlyList<string> Clash(StandView view)
    {
        if (view.Reasoning.Stops.Count > 0) return [];
        var words = new TopicWords(view.Topic);
        var reasoning = view.Reasoning;
        var lines = new List<string>();
        if (reasoning.Conflict.Impossible)
        {
            lines.Add(Words.Of("stand.impossible", ("clue", words.Clue(view.Findings[reasoning.Conflict.Worst].Clue))));
        }
        else if (DoNotGoTogether(reasoning))
        {
            var worst = reasoning.Conflict.Worst;
            lines.Add(worst < 0 ? Words.Of("own.conflict") : Words.Of("stand.clash", ("clue", words.Clue(view.Findings[worst].Clue))));
            lines.AddRange(reasoning.Conflict.Explanations.Select(e => (Story: Spoken.List([.. e.Story.Select(words.Tag)]), e.After)).DistinctBy(e => e.Story)
                .Select(e => Words.Of("stand.maybe", ("story", e.Story), ("tenths", Spoken.Twentieths(e.After)))));
        }

        lines.AddRange(reasoning.Odd.Where(o => o.Stands).Select(o => Words.Of("stand.odd", ("clue", words.Clue(view.Findings[o.Finding].Clue)))));
        return lines;
    }

    /// <summary>The best next check in a sentence, or why there is none.</summary>
    public static string Next(StandView view)
    {
        var words = new TopicWords(view.Topic);
        if (view.Reasoning.Stops.Count > 0) return Words.Of("stand.next-stop");
        if (view.Next.Count == 0) return Words.Of(view.Reasoning.Parts.All(p => p.Settled) ? "stand.next-settled" : "stand.next-none");
        var clue = view.Next[0];
        if (clue.Safety) return Words.Of("stand.next-safety", ("clue", words.Clue(clue.Id)));
        var next = view.Reasoning.Next.First(n => string.Equals(n.Clue, clue.Id, StringComparison.Ordinal));
        var name = next.With is { } with ? Words.Of("stand.next-pair", ("clue", words.Clue(clue.Id)), ("with", words.Clue(with))) : words.Clue(clue.Id);
        return next.Settles >= 0.05
            ? Words.Of("stand.next", ("clue", name), ("minutes", Spoken.Minutes(next.Minutes)), ("tenths", Spoken.Tenths(next.Settles)))
            : Words.Of("stand.next-some", ("clue", name), ("minutes", Spoken.Minutes(next.Minutes)));
    }

    /// <summary>A finding with the way it came.</summary>
    public static string Finding(Topic topic, Finding finding)
    {
        var seen = new TopicWords(topic).Seen(finding);
        return finding.Channel == Channel.Bench ? seen : Words.Of(finding.Channel == Channel.Phone ? "stand.told" : "stand.photo", ("seen", seen));
    }

    /// <summary>A real kind in words.</summary>
    public static string Kind(Topic topic, TruePart part) => Words.Of("stand.part-kind", ("part", new TopicWords(topic).Part(part.Part)), ("kind", new TopicWords(topic).Kind(part.Part, part.Kind)));

    static string Part(PartBelief part, TopicWords words)
    {
        var name = Spoken.Capital(words.Part(part.Part));
        var leading = part.Classes[part.Leading];
        if (part.Settled) return Words.Of("own.settled", ("part", name), ("kind", words.Class(part.Part, leading.Kinds)), ("tenths", Spoken.Twentieths(leading.Belief)));
        var open = part.Survivors.Take(MostKinds).Select(s => Words.Of(
            "own.open-kind", ("kind", words.Class(part.Part, part.Classes[s].Kinds)), ("tenths", Spoken.Twentieths(part.Classes[s].Belief))));
        return Words.Of("own.open", ("part", name), ("kinds", string.Join(", ", open)));
    }
}
