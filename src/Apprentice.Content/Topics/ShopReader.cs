using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads openings, wants, spares and what time costs.</summary>
static class ShopReader
{
    /// <summary>Openings in the order of the file.</summary>
    public static IReadOnlyList<Opening> Openings(Draft draft, IReadOnlyList<Clue> clues)
    {
        var rows = draft.Rows(Headings.Openings, new Shape(["id", "name", "told"]));
        _ = draft.NamesOf("opening", rows.Select(row => row["id"]));
        return [.. rows.Select(row => new Opening(row["id"].Text, draft.Cells.Needed(row, "name"), Told(draft, row["told"], clues)))];
    }

    /// <summary>Wants in the order of the file.</summary>
    public static IReadOnlyList<Want> Wants(Draft draft)
    {
        var entries = draft.Entries(Headings.Wants);
        _ = draft.NamesOf("want", entries.Select(entry => entry.Heading.Cut(":").Before));
        if (entries.Count == 0 && draft.Section(Headings.Wants) is { } section)
            draft.Faults.Add(section.Heading, "Nobody wants anything: add entries such as \"### grips: New grips\".");
        var wants = entries.Select(entry => WantOf(draft, entry)).ToArray();
        var lines = wants.SelectMany(want => want.OrderLines).DistinctBy(line => line.Id, StringComparer.Ordinal);
        draft.OrderLines = new Names("order line", [.. lines.Select(line => new Cell(line.Id, 1))]);
        return wants;
    }

    /// <summary>Spares in the order of the file.</summary>
    public static IReadOnlyList<Spare> Spares(Draft draft)
    {
        var rows = draft.Rows(
            Headings.Spares, new Shape(["id", "order line", "name", "fits", "price", "sending back", "days"], "can hurt"));
        _ = draft.NamesOf("spare", rows.Select(row => row["id"]));
        return [.. rows.Select(row => SpareOf(draft, row))];
    }

    /// <summary>What time costs.</summary>
    public static Costs Costs(Draft draft)
    {
        string[] columns = ["bench minute", "day of waiting", "asking the lead"];
        var rows = draft.Rows(Headings.Costs, new Shape(columns));
        if (rows.Count != 1 && draft.Section(Headings.Costs) is { } section) draft.Faults.Add(section.Heading, $"\"{Headings.Costs}\" needs a table with one row.");
        double[] costs = [.. columns.Select(column => rows.Count > 0 ? draft.Cells.Number(rows[0][column], column) : 0)];
        return new Costs(costs[0], costs[1], costs[2]);
    }

    static List<(string Clue, Channel Channel)> Told(Draft draft, Cell cell, IReadOnlyList<Clue> clues)
    {
        var told = new List<(string, Channel)>();
        if (cell.IsBlank) draft.Faults.Add(cell, "What is told is missing: write plate by phone; grip-length by photo.");
        foreach (var piece in cell.Split(';'))
        {
            var (name, by) = piece.Cut(" by ");
            if (!draft.Clues.Known(name, draft.Faults) || ChannelReader.Named(draft, by) is not { } channel) continue;
            var clue = clues.First(other => string.Equals(other.Id, name.Text, StringComparison.Ordinal));
            if (!clue.Channels.Any(own => own.Channel == channel)) draft.Faults.Add(piece, $"The clue \"{name.Text}\" is not seen by {by.Text}: add it to \"Seen by\".");
            told.Add((name.Text, channel));
        }

        return told;
    }

    static Want WantOf(Draft draft, Passage entry)
    {
        var fields = new Fields(entry, draft.Faults, ["Asks", "Order", "Also changes", "Says"], "Says");
        var (id, name) = entry.Heading.Cut(":");
        if (name.IsBlank) draft.Faults.Add(entry.Heading, $"The want \"{id.Text}\" needs a name: write ### {id.Text}: its name.");
        _ = fields.Needed("Says");
        var lines = fields.Needed("Order").Split(';').Select(piece => OrderLineOf(draft, piece)).ToArray();
        return draft.At(entry.Heading.Line, new Want(
            id.Text, name.Text, [.. fields.All("Says").Where(says => !says.IsBlank).Select(says => says.Text.Trim('"', '“', '”'))],
            draft.Cells.List(fields.Needed("Asks"), draft.Parts), lines, fields["Also changes"].Text));
    }

    static OrderLine OrderLineOf(Draft draft, Cell cell)
    {
        var (id, name) = cell.Cut("=");
        if (name.IsBlank) draft.Faults.Add(cell, $"\"{cell.Text}\" is no order line: write grips = Grips, pair.");
        _ = draft.NamesOf("order line", [id]);
        return draft.At(cell.Line, new OrderLine(id.Text, name.Text));
    }

    static Spare SpareOf(Draft draft, Row row)
    {
        _ = draft.OrderLines.Known(row["order line"], draft.Faults);
        return draft.At(row.Line, new Spare
        {
            Id = row["id"].Text,
            OrderLine = row["order line"].Text,
            Name = draft.Cells.Needed(row, "name"),
            Fits = Fits(draft, row["fits"]),
            Price = draft.Cells.Number(row["price"], "price"),
            ReturnCost = draft.Cells.Number(row["sending back"], "sending back"),
            DelayDays = draft.Cells.Number(row["days"], "days"),
            Hazard = !row["can hurt"].IsBlank,
            HazardText = row["can hurt"].Text,
        });
    }

    static List<(string Part, IReadOnlyList<string> Kinds)> Fits(Draft draft, Cell cell)
    {
        var fits = new List<(string Part, IReadOnlyList<string> Kinds)>();
        if (cell.IsBlank) draft.Faults.Add(cell, "This spare fits nothing: write bar: low, mid; stem: long.");
        foreach (var piece in cell.Split(';'))
        {
            var (part, kinds) = piece.Cut(":");
            if (!draft.Parts.Known(part, draft.Faults)) continue;
            var listed = draft.Cells.List(kinds, draft.KindsOf(part.Text));
            if (kinds.IsBlank) draft.Faults.Add(piece, $"The kinds of \"{part.Text}\" that it fits are missing: write {part.Text}: low, mid.");
            if (fits.Exists(fit => string.Equals(fit.Part, part.Text, StringComparison.Ordinal)))
                draft.Faults.Add(piece, $"The part \"{part.Text}\" stands twice in \"fits\": put its kinds together, {part.Text}: low, mid.");
            fits.Add((part.Text, listed));
        }

        return fits;
    }
}
