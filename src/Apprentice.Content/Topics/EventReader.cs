using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads what can have happened, and what cannot be fitted.</summary>
static class EventReader
{
    /// <summary>Names of the events, needed by the clues.</summary>
    public static void Names(Draft draft) => draft.Events = draft.NamesIn(Headings.Events, "event", Rows(draft));

    /// <summary>Events in the order of the file.</summary>
    /// <param name="draft">The file.</param>
    /// <param name="clues">Its clues.</param>
    public static IReadOnlyList<BikeEvent> Events(Draft draft, IReadOnlyList<Clue> clues) => [.. Rows(draft).Select(row => EventOf(draft, row, clues))];

    /// <summary>Fit rules in the order of the file.</summary>
    /// <param name="draft">The file.</param>
    /// <param name="parts">Its parts.</param>
    public static IReadOnlyList<FitRule> FitRules(Draft draft, IReadOnlyList<Part> parts)
    {
        var rules = new List<FitRule>();
        foreach (var row in draft.Rows(Headings.FitRules, new Shape(["part", "kind", "not on"])))
        {
            if (!draft.Parts.Known(row["part"], draft.Faults)) continue;
            var part = row["part"].Text;
            var host = parts.FirstOrDefault(other => string.Equals(other.Id, part, StringComparison.Ordinal))?.Host;
            if (host is null) draft.Faults.Add(row.Line, $"The part \"{part}\" sits on nothing: fill \"sits on\" in \"{Headings.Parts}\".");
            else if (draft.KindsOf(part).Known(row["kind"], draft.Faults) && draft.KindsOf(host).Known(row["not on"], draft.Faults))
                rules.Add(draft.At(row.Line, new FitRule(part, row["kind"].Text, row["not on"].Text)));
        }

        return rules;
    }

    static IReadOnlyList<Row> Rows(Draft draft) => draft.Rows(
        Headings.Events, new Shape(["id", "what happened", "pitfall", .. draft.Provenances.All, "does", "rates from"], "lines", "built"));

    static BikeEvent EventOf(Draft draft, Row row, IReadOnlyList<Clue> clues)
    {
        var (from, to) = draft.Cells.Months(row["built"]);
        _ = draft.Pitfalls.Known(row["pitfall"], draft.Faults);
        double[] rates = [.. draft.Provenances.All.Select(provenance => draft.Cells.Share(row[provenance]))];
        if (rates.Any(rate => rate >= 1)) draft.Faults.Add(row.Line, $"\"{row["id"].Text}\" always happens: fit it as built instead.");
        return draft.At(row.Line, new BikeEvent
        {
            Id = row["id"].Text,
            Story = draft.Cells.Needed(row, "what happened"),
            Pitfall = row["pitfall"].Text,
            Rates = rates,
            RateSource = NoteReader.SourceOf(draft, row["rates from"], $"The event \"{row["id"].Text}\""),
            Lines = draft.Cells.List(row["lines"], draft.Lines),
            BuiltFrom = from,
            BuiltTo = to,
            Effects = EffectReader.Effects(draft, row["does"], clues),
        });
    }
}
