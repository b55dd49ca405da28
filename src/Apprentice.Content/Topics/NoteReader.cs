using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads pitfalls, sources and what must come off.</summary>
static class NoteReader
{
    static readonly (string Name, PitfallClass Class)[] Classes =
    [
        ("swapped part", PitfallClass.SwappedPart),
        ("changed as a set", PitfallClass.ChangedAsSet),
        ("running change", PitfallClass.RunningChange),
        ("kept old line", PitfallClass.KeptOldLine),
        ("decoy number", PitfallClass.DecoyNumber),
        ("wrong datum", PitfallClass.WrongDatum),
        ("wear", PitfallClass.Wear),
        ("marking is not the size", PitfallClass.MarkingNotSize),
        ("neighbour size", PitfallClass.NeighbourSize),
        ("side by side only", PitfallClass.SideBySideOnly),
        ("other family", PitfallClass.OtherFamily),
    ];

    /// <summary>Pitfalls in the order of the file.</summary>
    public static IReadOnlyList<Pitfall> Pitfalls(Draft draft)
    {
        var rows = draft.Rows(Headings.Pitfalls, new Shape(["id", "class", "what to know"]));
        draft.Pitfalls = draft.NamesIn(Headings.Pitfalls, "pitfall", rows);
        return [.. rows.Select(row => new Pitfall(row["id"].Text, ClassOf(draft, row["class"]), draft.Cells.Needed(row, "what to know")))];
    }

    /// <summary>Sources in the order of the file, then those of the register.</summary>
    public static IReadOnlyList<Source> Sources(Draft draft, IReadOnlyList<Source> register)
    {
        var rows = draft.Rows(Headings.Sources, new Shape(["key", "source"]));
        var cells = rows.Select(row => row["key"]).ToArray();
        draft.Sources = new Names("source", [.. cells, .. register.Select(source => new Cell(source.Key, 1))]);
        foreach (var cell in cells.Where(cell => cell.IsBlank || cell.Text.Contains(','))) draft.Faults.Add(cell, "A source needs a key without commas.");
        foreach (var again in cells.GroupBy(cell => cell.Text, StringComparer.Ordinal).SelectMany(group => group.Skip(1)))
            draft.Faults.Add(again, $"The source \"{again.Text}\" stands twice.");
        foreach (var twice in cells.Join(register, cell => cell.Text, source => source.Key, (cell, source) => new { Cell = cell, Source = source }, StringComparer.Ordinal))
            draft.Faults.Add(twice.Cell, $"The source \"{twice.Cell.Text}\" stands in the register of sources already (\"{twice.Source.Text}\"): leave it out here.");
        return [.. rows.Select(row => new Source(row["key"].Text, draft.Cells.Needed(row, "source"))), .. register];
    }

    /// <summary>What must come off, in the order of the file.</summary>
    public static IReadOnlyList<Access> Accesses(Draft draft)
    {
        var rows = draft.Rows(Headings.Accesses, new Shape(["id", "name", "minutes"]));
        draft.Accesses = draft.NamesIn(Headings.Accesses, "thing to take off", rows);
        return [.. rows.Select(row => new Access(row["id"].Text, draft.Cells.Needed(row, "name"), draft.Cells.Number(row["minutes"], "minutes")))];
    }

    /// <summary>The mark of where a figure comes from: judgement, common practice, the workshop's bikes, or keys of sources.</summary>
    public static string SourceOf(Draft draft, Cell cell, string whose)
    {
        if (cell.IsBlank) draft.Faults.Add(cell, $"{whose} needs a source: write a key of \"{Headings.Sources}\", \"{SourceMark.Judgement}\" or \"{SourceMark.CommonPractice}\".");
        if (SourceMark.IsOfBikes(cell.Text)) return cell.Text;
        foreach (var key in new Cell(cell.Text.Replace(SourceMark.CommonPractice, SourceMark.Judgement, StringComparison.OrdinalIgnoreCase), cell.Line).Split(','))
        {
            if (!key.Is(SourceMark.Judgement) && !draft.Sources.Has(key.Text)) UnknownSource(draft, key);
        }

        return cell.Text;
    }

    static void UnknownSource(Draft draft, Cell key)
    {
        var valid = Nearest.Of(key.Text, [.. draft.Sources.All, SourceMark.Judgement], 3);
        draft.Faults.Add(key, $"There is no source \"{key.Text}\": use {Nearest.Or([.. valid.Select(name => $"\"{name}\"")])}, or \"{SourceMark.CommonPractice}\".");
    }

    static PitfallClass ClassOf(Draft draft, Cell cell)
    {
        foreach (var (name, known) in Classes)
        {
            if (cell.Is(name)) return known;
        }

        var nearest = Nearest.Of(cell.Text, Classes.Select(pair => pair.Name), 3);
        draft.Faults.Add(cell, $"There is no class of pitfalls \"{cell.Text}\": use {Nearest.Or(nearest)}.");
        return default;
    }
}
