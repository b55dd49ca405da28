using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads how kinds and findings look: a row each, or a block of text art each.</summary>
sealed class LookReader(Draft draft, Passage entry, DrawingValues values)
{
    /// <summary>A look per kind of the part; none when the drawing shows findings only.</summary>
    /// <param name="part">The part, or null.</param>
    /// <param name="alike">True when kinds without a row are all drawn from the points alone: the drawing says from where to where.</param>
    public IReadOnlyList<DrawnLook> Kinds(string? part, bool alike)
    {
        var rows = Rows("kind");
        var kinds = part is null ? Names.None("kind") : draft.KindsOf(part);
        var arts = entry.Arts.Where(art => kinds.Has(art.Heading.Text)).ToArray();
        if (rows.Count > 0 && part is null) draft.Faults.Add(rows[0].Line, "A table of kinds needs the field \"Part\": whose kinds are they?");
        if (alike && part is not null && rows.Count + entry.Arts.Count == 0) return [.. kinds.All.Select(name => new DrawnLook(name, new Dictionary<string, FigureValue>(StringComparer.Ordinal), []))];
        return part is null || rows.Count + arts.Length == 0 ? [] : Looks("kind", kinds, rows, arts, part, sized: true);
    }

    /// <summary>A look per finding of the one clue that has findings; none when the drawing shows kinds only.</summary>
    public IReadOnlyList<DrawnLook> Findings(IReadOnlyList<Clue> clues)
    {
        var rows = Rows("finding");
        var seen = clues.Where(clue => clue.Shows is not Shows.Measured).ToArray();
        if (rows.Count > 0 && seen.Length != 1) draft.Faults.Add(rows[0].Line, "A table of findings needs the field \"Clue\" with one clue that has findings.");
        if (seen.Length != 1) return [];
        var names = new Names("finding", [.. FindingsOf(seen[0]).Select(id => new Cell(id, entry.Heading.Line))]);
        var arts = entry.Arts.Where(art => names.Has(art.Heading.Text)).ToArray();
        return rows.Count + arts.Length == 0 ? [] : Looks("finding", names, rows, arts, part: null, sized: false);
    }

    IReadOnlyList<Row> Rows(string column) =>
        draft.Rows(entry, new Shape([column], [.. values.Figure.Parameters.Select(p => p.Name)]), needed: false);

    IReadOnlyList<DrawnLook> Looks(string column, Names names, IReadOnlyList<Row> rows, IReadOnlyList<Art> arts, string? part, bool sized)
    {
        var looks = new Dictionary<string, DrawnLook>(StringComparer.Ordinal);
        var before = draft.Faults.Count;
        foreach (var row in rows.Where(row => names.Known(row[column], draft.Faults)))
        {
            var own = values.Of(name => row[name], part, part is null ? null : row[column].Text, sized);
            if (!looks.TryAdd(row[column].Text, new DrawnLook(row[column].Text, own, []))) Twice(column, row[column]);
        }

        foreach (var art in arts)
        {
            if (!looks.TryAdd(art.Heading.Text, new DrawnLook(art.Heading.Text, new Dictionary<string, FigureValue>(StringComparer.Ordinal), art.Lines))) Twice(column, art.Heading);
        }

        // A name that was mistyped above is not missed as well.
        foreach (var missing in names.All.Where(name => draft.Faults.Count == before && !looks.ContainsKey(name)).ToArray())
            draft.Faults.Add(entry.Heading, $"\"{entry.Heading.Text}\" does not show the {column} \"{missing}\": add it.");
        return [.. names.All.Where(looks.ContainsKey).Select(name => looks[name])];
    }

    void Twice(string column, Cell cell) => draft.Faults.Add(cell, $"The {column} \"{cell.Text}\" is drawn twice here.");

    static IEnumerable<string> FindingsOf(Clue clue) => clue.Shows switch
    {
        Shows.Table table => table.Findings.Select(finding => finding.Id),
        Shows.Code code => code.Findings.Select(finding => finding.Id),
        _ => [],
    };
}
