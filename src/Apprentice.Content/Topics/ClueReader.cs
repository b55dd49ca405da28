using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads what can be looked at.</summary>
static class ClueReader
{
    static readonly (string Name, ClueFamily Family)[] Families =
    [
        ("number or date", ClueFamily.NumberOrDate),
        ("size marking", ClueFamily.SizeMarking),
        ("measured", ClueFamily.Measured),
        ("shape seen", ClueFamily.ShapeSeen),
        ("felt or heard", ClueFamily.FeltOrHeard),
        ("told", ClueFamily.Told),
    ];

    static readonly IReadOnlyList<string> Valid =
    [
        "From where to where", "Datum", "Tool", "Minutes", "Comes off", "Seen by", "Family", "Reads", "Measures", "Reading", "Formula", "Ask", "Caution", "Lies",
        "Cannot be seen", "Pitfalls", "Safety", "Source", "Misread", "Lag", "Plate",
    ];

    /// <summary>Clues in the order of the file.</summary>
    public static IReadOnlyList<Clue> Clues(Draft draft, IReadOnlyList<Dimension> dimensions)
    {
        var entries = draft.Entries(Headings.Clues);
        draft.Clues = draft.NamesOf("clue", entries.Select(entry => entry.Heading.Cut(":").Before));
        if (entries.Count == 0 && draft.Section(Headings.Clues) is { } section)
            draft.Faults.Add(section.Heading, "There are no clues: add entries such as \"### grip-length: Grip, end to end\".");
        return [.. entries.Select(entry => ClueOf(draft, entry, dimensions))];
    }

    static Clue ClueOf(Draft draft, Passage entry, IReadOnlyList<Dimension> dimensions)
    {
        var fields = new Fields(entry, draft.Faults, Valid);
        var (id, name) = entry.Heading.Cut(":");
        if (name.IsBlank) draft.Faults.Add(entry.Heading, $"The clue \"{id.Text}\" needs a name: write ### {id.Text}: its name.");
        var node = NodeOf(draft, fields.Needed("Reads"));
        var shows = ShowsReader.Shows(draft, entry, fields, node, dimensions);
        return draft.At(entry.Heading.Line, new Clue
        {
            Id = id.Text,
            Name = name.Text,
            FromTo = fields.Needed("From where to where").Text,
            Datum = DatumOf(draft, fields, shows),
            Tool = ToolOf(draft, fields.Needed("Tool")),
            Minutes = fields.Needed("Minutes") is { IsBlank: false } minutes ? draft.Cells.Number(minutes, "Minutes") : 0,
            Access = draft.Cells.Name(fields["Comes off"], draft.Accesses),
            Channels = ChannelReader.Channels(draft, fields.Needed("Seen by"), shows),
            Family = FamilyOf(draft, fields.Needed("Family")),
            Node = node,
            Shows = shows,
            Ask = fields["Ask"].Text,
            Caution = fields["Caution"].Text,
            Lies = fields["Lies"].Text,
            HiddenShare = Hidden(draft, fields["Cannot be seen"]),
            Pitfalls = draft.Cells.List(fields["Pitfalls"], draft.Pitfalls),
            Safety = draft.Cells.YesNo(fields["Safety"]),
            Plate = PlateReader.Plate(draft, entry, fields, shows),
            Source = NoteReader.SourceOf(draft, fields["Source"], $"The clue \"{id.Text}\""),
        });
    }

    // Chosen among the slips, so it must not stand out by its length or style.
    static string DatumOf(Draft draft, Fields fields, Shows shows)
    {
        if (fields.Has("Datum") && shows is not Shows.Measured) draft.Faults.Add(fields["Datum"], "\"Datum\" is only for clues that are measured.");
        return fields["Datum"].Text;
    }

    static string ToolOf(Draft draft, Cell cell)
    {
        if (Instrument.Of(cell.Text) is { Sort: InstrumentSort.Caliper } && cell.Text.Contains("inches", StringComparison.OrdinalIgnoreCase))
            draft.Faults.Add(cell, "A caliper reads millimetres here: write \"caliper\", or \"rule, inches\" for a scale in inches.");
        return cell.Text;
    }

    static double Hidden(Draft draft, Cell cell)
    {
        var share = draft.Cells.Share(cell, 0);
        if (share >= 1) draft.Faults.Add(cell, "A clue that can never be seen is no clue: leave it out.");
        return share;
    }

    static Node NodeOf(Draft draft, Cell cell)
    {
        if (cell.IsBlank || cell.Is("build date")) return new Node.OfDate();
        if (cell.Is("line")) return new Node.OfLine();
        var (first, rest) = cell.Cut(" ");
        if (first.Is("event") && !rest.IsBlank)
        {
            _ = draft.Events.Known(rest, draft.Faults);
            return new Node.OfEvent(rest.Text);
        }

        if (!draft.Parts.Has(cell.Text))
        {
            var nearest = Nearest.Of(cell.Text, draft.Parts.All, 3);
            draft.Faults.Add(cell, $"Nothing is called \"{cell.Text}\": a clue reads a part ({Nearest.Or(nearest)}), build date, line or event with its name.");
        }

        return new Node.OfPart(cell.Text);
    }

    static ClueFamily FamilyOf(Draft draft, Cell cell)
    {
        foreach (var (name, family) in Families)
        {
            if (cell.Is(name)) return family;
        }

        if (!cell.IsBlank) draft.Faults.Add(cell, $"There is no family of clues \"{cell.Text}\": use {Nearest.Or([.. Families.Select(pair => pair.Name)])}.");
        return default;
    }
}
