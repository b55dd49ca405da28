using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads what a clue shows: a measured size, a table of findings, or codes of build dates.</summary>
static class ShowsReader
{
    const double LeastMisread = 0.002;

    /// <summary>What the clue shows.</summary>
    public static Shows Shows(Draft draft, Passage entry, Fields fields, Node node, IReadOnlyList<Dimension> dimensions)
    {
        if (fields.Has("Measures") || fields.Has("Reading")) return Measured(draft, entry, fields, node, dimensions);
        OnlyFor(draft, fields, "are measured", "Formula");
        if (node is Node.OfDate && fields.Has("Reads")) return CodeReader.Codes(draft, entry, fields, Misread(draft, fields["Misread"]));
        OnlyFor(draft, fields, "read the build date", "Lag");
        return TableReader.Table(draft, entry, node, Misread(draft, fields["Misread"]), fields["Tool"].Text);
    }

    static Shows.Measured Measured(Draft draft, Passage entry, Fields fields, Node node, IReadOnlyList<Dimension> dimensions)
    {
        OnlyFor(draft, fields, "are not measured", "Misread", "Lag");
        var measures = fields.Needed("Measures");
        var (name, scale, offset) = MeasureReader.Measures(draft, measures);
        var dimension = dimensions.FirstOrDefault(other => string.Equals(other.Id, name, StringComparison.Ordinal));
        if (dimension is not null && node is Node.OfPart part && !string.Equals(part.Part, dimension.Part, StringComparison.Ordinal))
            draft.Faults.Add(measures, $"\"{name}\" is a size of \"{dimension.Part}\", but the clue reads \"{part.Part}\".");
        else if (node is not Node.OfPart) draft.Faults.Add(measures, "A measured clue reads a part: put it into \"Reads\".");
        var reading = MeasureReader.Reading(draft, fields.Needed("Reading"));
        return draft.At(fields["Reading"].Line, reading with
        {
            Dimension = name,
            Scale = scale,
            Offset = offset,
            Formula = fields["Formula"].Text,
            Slips = MeasureReader.Slips(draft, entry),
        });
    }

    static double Misread(Draft draft, Cell cell)
    {
        var share = draft.Cells.Share(cell, LeastMisread);
        if (share < LeastMisread) draft.Faults.Add(cell, $"\"Misread\" is {share:0.####}: everybody misreads at least {LeastMisread}, so leave it out or write more.");
        return share;
    }

    static void OnlyFor(Draft draft, Fields fields, string sort, params string[] names)
    {
        foreach (var name in names)
        {
            if (fields.Has(name)) draft.Faults.Add(fields[name], $"\"{name}\" is only for clues that {sort}.");
        }
    }
}
