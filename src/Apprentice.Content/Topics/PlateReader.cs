using Apprentice.Content.Pages;
using Apprentice.Content.Values;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the plate of a clue: its surface and the writings on it.</summary>
static class PlateReader
{
    /// <summary>Longest writing, in characters: two of them stand side by side in the narrowest window.</summary>
    public const int Longest = 18;

    const int Fewest = 2;
    const int Most = 6;

    static readonly (string Name, Surface Surface)[] Surfaces =
    [
        ("number plate", Surface.NumberPlate),
        ("tyre wall", Surface.TyreWall),
        ("cup face", Surface.CupFace),
        ("hub", Surface.Hub),
        ("crank end", Surface.CrankEnd),
        ("stem", Surface.Stem),
        ("post", Surface.Post),
        ("tube", Surface.Tube),
        ("rim", Surface.Rim),
        ("bare metal", Surface.BareMetal),
    ];

    /// <summary>The plate of a clue, or null when it names none.</summary>
    public static Plate? Plate(Draft draft, Passage entry, Fields fields, Shows shows)
    {
        var shape = new Shape(["writing", "is", "says"], "where");
        if (!fields.Has("Plate"))
        {
            if (entry.Grids.FirstOrDefault(shape.Fits) is { } stray) draft.Faults.Add(stray.Line, "Writings need a surface to stand on: add \"- Plate: number plate\".");
            foreach (var cell in LooksLike(entry)) draft.Faults.Add(cell, "\"looks like\" is only for clues with a plate: add \"- Plate: number plate\".");
            return null;
        }

        var surface = SurfaceOf(draft, fields["Plate"]);
        if (shows is Shows.Measured)
        {
            draft.Faults.Add(fields["Plate"], "\"Plate\" is only for clues that are not measured.");
            return null;
        }

        foreach (var cell in Described(entry)) draft.Faults.Add(cell, "A clue with a plate is drawn: leave \"described\" out.");
        var rows = draft.Rows(entry, shape, needed: true);
        if (rows.Count == 0) return null;
        var before = draft.Faults.Count;
        var longest = Characters(draft, entry, shows);
        Writings(draft, rows, shows as Shows.Code, longest);
        if (draft.Faults.Count > before) return null;
        var decoys = shows is Shows.Code code ? code.Decoys.Select(d => d.Name).ToArray() : [];
        var others = rows.Skip(1).ToList();
        return new Plate(surface, [WritingOf(rows[0]), .. decoys.Select(d => WritingOf(others.First(r => r["is"].Is(d)))), .. others.Where(r => !decoys.Any(r["is"].Is)).Select(WritingOf)]);
    }

    static Writing WritingOf(Row row) => new(row["writing"].Text, row["is"].Text, row["says"].Text, row["where"].Text);

    static IEnumerable<Cell> LooksLike(Passage entry) => Column(entry, "looks like");

    static IEnumerable<Cell> Described(Passage entry) => Column(entry, "described");

    static IEnumerable<Cell> Column(Passage entry, string name) =>
        entry.Grids.SelectMany(grid => grid.Column(name)).Where(cell => !cell.IsBlank);

    static Surface SurfaceOf(Draft draft, Cell cell)
    {
        foreach (var (name, surface) in Surfaces)
        {
            if (cell.Is(name)) return surface;
        }

        draft.Faults.Add(cell, $"There is no surface \"{cell.Text}\" to draw on: use {Nearest.Or([.. Surfaces.Select(pair => pair.Name)])}.");
        return default;
    }

    // The characters of each finding: there, told apart, understood. The length of the longest comes out.
    static int Characters(Draft draft, Passage entry, Shows shows)
    {
        IReadOnlyList<Finding> findings = shows switch
        {
            Shows.Table table => [.. table.Findings.Select(f => new Finding(f.Id, f.LooksLike))],
            Shows.Code code => [.. code.Findings.Select(f => new Finding(f.Id, f.LooksLike))],
            _ => [],
        };
        var cells = LooksLike(entry).ToList();
        foreach (var bare in findings.Where(f => f.Looks.Length == 0))
            draft.Faults.Add(entry.Heading, $"The finding \"{bare.Id}\" needs its characters in the column \"looks like\": write them, or {Engine.Topics.Plate.Worn}, or {Engine.Topics.Plate.Nothing}.");
        foreach (var cell in cells)
        {
            if (PatternText.Texts(cell.Text) > 0) draft.Faults.Add(cell, "\"looks like\" gives the characters that {text} stands for, so {text} cannot stand in it.");
            else if (PatternText.Unknown(cell.Text) is { } unknown) draft.Faults.Add(cell, $"\"{unknown}\" is not understood: use {PatternText.Forms}.");
        }

        foreach (var alike in findings.Where(f => f.Looks.Length > 0).GroupBy(f => f.Looks, StringComparer.Ordinal).Where(g => g.Count() > 1))
            draft.Faults.Add(cells.First(c => c.Is(alike.Key)), $"The findings {string.Join(" and ", alike.Select(f => $"\"{f.Id}\""))} look alike: nobody could tell them apart.");
        return findings.Select(f => PatternText.Length(f.Looks)).DefaultIfEmpty(0).Max();
    }

    static void Writings(Draft draft, IReadOnlyList<Row> rows, Shows.Code? code, int longest)
    {
        if (rows.Count is < Fewest or > Most) draft.Faults.Add(rows[0].Line, $"A plate has {Fewest} to {Most} writings, the one to go by and others, not {rows.Count}.");
        var names = code?.Decoys.Select(d => d.Name).ToArray() ?? [];
        foreach (var missing in names.Where(n => !rows.Skip(1).Any(r => r["is"].Is(n))))
            draft.Faults.Add(rows[0].Line, $"The decoy \"{missing}\" has no writing: add a row whose \"is\" is its name.");
        for (var i = 0; i < rows.Count; i++) Check(draft, rows, i, names, longest);
    }

    static void Check(Draft draft, IReadOnlyList<Row> rows, int at, string[] decoys, int longest)
    {
        var (row, pattern) = (rows[at], rows[at]["writing"]);
        _ = draft.Cells.Needed(row, "writing");
        _ = draft.Cells.Needed(row, "says");
        var named = draft.Cells.Needed(row, "is");
        var texts = PatternText.Texts(pattern.Text);
        if (rows.Take(at).FirstOrDefault(r => r["is"].Is(named)) is { } first) draft.Faults.Add(row.Line, $"The writing \"{named}\" stands twice: also on line {first.Line}.");
        if (PatternText.Unknown(pattern.Text) is { } unknown) draft.Faults.Add(pattern, $"\"{unknown}\" is not understood: use {PatternText.Forms}.");
        else if (at == 0 && texts != 1) draft.Faults.Add(pattern, "The first writing is the one to go by: {text} must stand in it, once.");
        else if (at > 0 && texts > 0 && !decoys.Any(row["is"].Is)) draft.Faults.Add(pattern, $"{{text}} stands for a finding, and no decoy \"{named}\" leads to one: write other characters.");
        else if (PatternText.Length(pattern.Text) + (texts * longest) is > Longest and var length)
            draft.Faults.Add(pattern, $"\"{pattern.Text}\" can be {length} characters long: at most {Longest}.");
    }

    sealed record Finding(string Id, string Looks);
}
