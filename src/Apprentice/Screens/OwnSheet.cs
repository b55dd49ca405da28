using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>What a walk round a real bike ends with: what to order, what is open, what was found. The same on screen and on the sheet.</summary>
static class OwnSheet
{
    /// <summary>The paragraphs; an empty one stands for an empty line.</summary>
    public static IReadOnlyList<string> Of(OwnBike bike, Reasoning reasoning)
    {
        var words = new TopicWords(bike.Topic);
        List<string> text = [];
        if (bike.Stops.Count > 0)
        {
            text.AddRange(bike.Stops.Select(s => Spoken.Capital(s.TrimEnd('.')) + "."));
            text.Add(Words.Of("own.stop-first-of-all"));
        }
        text.AddRange(bike.Blind.Select(bike.Clue).Where(c => c.Safety).Select(c => Words.Of("own.not-looked", ("look", c.Name))));
        text.AddRange(SafetyLook.NotSound(bike.Topic, bike.Findings).Select(f => Words.Of("own.not-sound", ("look", words.Clue(f.Clue)), ("seen", words.Seen(f)))));
        text.AddRange(bike.Stops.Count > 0 ? [""] : Told(bike, reasoning, words));
        text.Add(bike.Findings.Count == 0 ? Words.Of("own.nothing") : Words.Of("own.found") + ":");
        text.AddRange(bike.Findings.Select(f => $"  {words.Clue(f.Clue)}: {words.Seen(f)}"));
        if (bike.Stops.Count == 0) text.AddRange(["", Words.Of("own.list-only")]);
        return text;
    }

    // Nothing of this is said once a stop sign was found: then it is not guessed which part it is.
    static IEnumerable<string> Told(OwnBike bike, Reasoning reasoning, TopicWords words)
    {
        foreach (var line in StandWords.Standing(bike.Topic, reasoning)) yield return line;
        if (StandWords.DoNotGoTogether(reasoning))
        {
            yield return Words.Of("own.conflict");
            foreach (var explained in reasoning.Conflict.Explanations.Take(1)) yield return Words.Of("own.maybe", ("story", Spoken.List([.. explained.Story.Select(words.Tag)])));
        }

        yield return "";
        foreach (var decision in reasoning.Decisions)
            yield return Spoken.Capital(Words.Of("own.order", ("line", Line(bike, decision)), ("choice", decision.Best.Choice is Choice.Ask ? Words.Of("own.ask") : words.Choice(decision.Best.Choice))));
        if (bike.Want.AlsoChanges.Length > 0) yield return Words.Of("own.also", ("text", bike.Want.AlsoChanges));
        if (bike.Beyond(reasoning) is [_, ..] beyond) yield return Words.Of("own.beyond", ("checks", Spoken.List([.. beyond.Select(c => $"{c.Name} ({c.Tool})")])));
        if (Hurts(bike)) yield return Words.Of("own.hurt");
        yield return "";
    }

    static string Line(OwnBike bike, LineDecision decision) =>
        bike.Want.OrderLines.First(l => string.Equals(l.Id, decision.OrderLine, StringComparison.Ordinal)).Name;

    static bool Hurts(OwnBike bike) => bike.Topic.Spares.Any(s => s.Hazard && bike.Want.OrderLines.Any(l => string.Equals(l.Id, s.OrderLine, StringComparison.Ordinal)));
}
