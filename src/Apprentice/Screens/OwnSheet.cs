using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;

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
        if (bike.Stops.Count == 0 || bike.TellsMore) text.AddRange(reasoning.Parts.Select(p => Part(p, words)));
        if (Guide.DoNotGoTogether(reasoning))
        {
            text.Add(Words.Of("own.conflict"));
            text.AddRange(reasoning.Conflict.Explanations.Take(1).Select(e => Words.Of("own.maybe", ("story", Spoken.List([.. e.Story.Select(words.Tag)])))));
        }
        text.Add("");
        if (bike.Stops.Count == 0)
        {
            text.AddRange(reasoning.Decisions.Select(d => Spoken.Capital(Words.Of("own.order", ("line", Line(bike, d)), ("choice", d.Best.Choice is Choice.Ask ? Words.Of("own.ask") : words.Choice(d.Best.Choice))))));
            if (bike.Want.AlsoChanges.Length > 0) text.Add(Words.Of("own.also", ("text", bike.Want.AlsoChanges)));
            if (bike.Beyond(reasoning) is [_, ..] beyond) text.Add(Words.Of("own.beyond", ("checks", Spoken.List([.. beyond.Select(c => $"{c.Name} ({c.Tool})")]))));
            if (Hurts(bike)) text.Add(Words.Of("own.hurt"));
            text.Add("");
        }
        text.Add(bike.Findings.Count == 0 ? Words.Of("own.nothing") : Words.Of("own.found") + ":");
        text.AddRange(bike.Findings.Select(f => $"  {words.Clue(f.Clue)}: {words.Seen(f)}"));
        text.Add("");
        text.Add(Words.Of("own.list-only"));
        return text;
    }

    static string Part(PartBelief part, TopicWords words)
    {
        var name = Spoken.Capital(words.Part(part.Part));
        if (part.Settled)
        {
            var leading = part.Classes[part.Leading];
            return Words.Of(
                "own.settled", ("part", name), ("kind", words.Class(part.Part, leading.Kinds)), ("tenths", Spoken.Twentieths(leading.Belief)));
        }
        var open = part.Survivors.Take(3).Select(s => Words.Of(
            "own.open-kind", ("kind", words.Class(part.Part, part.Classes[s].Kinds)), ("tenths", Spoken.Twentieths(part.Classes[s].Belief))));
        return Words.Of("own.open", ("part", name), ("kinds", string.Join(", ", open)));
    }

    static string Line(OwnBike bike, LineDecision decision) =>
        bike.Want.OrderLines.First(l => string.Equals(l.Id, decision.OrderLine, StringComparison.Ordinal)).Name;

    static bool Hurts(OwnBike bike) => bike.Topic.Spares.Any(s => s.Hazard && bike.Want.OrderLines.Any(l => string.Equals(l.Id, s.OrderLine, StringComparison.Ordinal)));
}
