using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the true sizes.</summary>
static class SizeReader
{
    /// <summary>Sizes in the order of the file.</summary>
    public static IReadOnlyList<Dimension> Dimensions(Draft draft)
    {
        var rows = draft.Rows(Headings.Sizes, new Shape(["id", "part", "name", "range", "source"]));
        draft.Dimensions = draft.NamesIn(Headings.Sizes, "size", rows);
        var nominals = draft.Section(Headings.Sizes) is { } section
            ? draft.Rows(section, new Shape(["size", "kind", "nominal", "spread"], "source"), needed: rows.Count > 0)
            : [];
        foreach (var row in nominals) _ = draft.Dimensions.Known(row["size"], draft.Faults);
        var bySize = nominals.ToLookup(row => row["size"].Text, StringComparer.Ordinal);
        return [.. rows.Select(row => DimensionOf(draft, row, [.. bySize[row["id"].Text]]))];
    }

    static Dimension DimensionOf(Draft draft, Row row, IReadOnlyList<Row> rows)
    {
        var (low, high) = draft.Cells.Lengths(row["range"]);
        var known = draft.Parts.Known(row["part"], draft.Faults);
        var kinds = draft.KindsOf(row["part"].Text);
        var nominals = new double?[kinds.Count];
        var spreads = new double[kinds.Count];
        var apart = new string[kinds.Count];
        for (var at = 0; at < kinds.Count; at++) (spreads[at], apart[at]) = (1, "");
        foreach (var sized in rows)
        {
            var (nominal, spread) = (draft.Cells.Length(sized["nominal"]), draft.Cells.Length(sized["spread"]));
            var mark = sized["source"].IsBlank ? "" : NoteReader.SourceOf(draft, sized["source"], "A nominal size");
            if (spread <= 0) draft.Faults.Add(sized.Line, "A spread must be greater than 0: real parts differ.");
            foreach (var kind in known ? draft.Cells.List(sized["kind"], kinds) : [])
            {
                var index = kinds.IndexOf(kind);
                if (nominals[index] is not null) draft.Faults.Add(sized.Line, $"The kind \"{kind}\" has this size twice.");
                (nominals[index], spreads[index], apart[index]) = (nominal, spread, mark);
            }
        }

        var source = NoteReader.SourceOf(draft, row["source"], $"The size \"{row["id"].Text}\"");
        var name = draft.Cells.Needed(row, "name");
        return draft.At(row.Line, new Dimension(row["id"].Text, row["part"].Text, name, nominals, spreads, low, high, source) { Apart = apart });
    }
}
