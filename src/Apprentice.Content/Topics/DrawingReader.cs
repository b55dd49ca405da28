using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the pictures of parts: a figure of the catalogue, its parameters, and text art.</summary>
static class DrawingReader
{
    const int WidestArt = 58;

    /// <summary>Drawings in the order of the file.</summary>
    public static IReadOnlyList<TopicDrawing> Drawings(Draft draft, IReadOnlyList<Clue> clues, IReadOnlyList<Dimension> dimensions)
    {
        var entries = draft.Entries(Headings.Drawings);
        if (draft.Section(Headings.Drawings) is { } section && entries.Count == 0)
            draft.Faults.Add(section.Heading, "There are no drawings: add entries such as \"### bar: Bar from the side\", or leave the section out.");
        _ = draft.NamesOf("drawing", entries.Select(entry => entry.Heading.Cut(":").Before));
        return [.. entries.Select(entry => DrawingOf(draft, entry, clues, dimensions)).OfType<TopicDrawing>()];
    }

    static TopicDrawing? DrawingOf(Draft draft, Passage entry, IReadOnlyList<Clue> clues, IReadOnlyList<Dimension> dimensions)
    {
        var (id, title) = entry.Heading.Cut(":");
        if (title.IsBlank) draft.Faults.Add(entry.Heading, $"The drawing \"{id.Text}\" needs a title: write ### {id.Text}: its title.");
        if (FigureOf(draft, entry) is not { } figure) return null;
        var fields = new Fields(entry, draft.Faults, ["Figure", "Clue", "Part", .. figure.Parameters.Select(p => p.Name)]);
        var part = draft.Cells.Name(fields["Part"], draft.Parts);
        var shown = draft.Cells.List(fields["Clue"], draft.Clues).Select(name => clues.First(c => c.Id.Equals(name, StringComparison.Ordinal))).ToArray();
        var values = new DrawingValues(draft, figure, dimensions);
        var looks = new LookReader(draft, entry, values);
        var before = draft.Faults.Count;
        Art(draft, entry, figure);
        var datums = DatumReader.Datums(draft, entry, figure, shown);
        var kinds = looks.Kinds(part, alike: datums.Count > 0);
        var findings = looks.Findings(shown);
        foreach (var art in entry.Arts.Where(art => !kinds.Concat(findings).Any(look => art.Heading.Is(look.Of))))
            draft.Faults.Add(art.Heading, $"\"{art.Heading.Text}\" is no kind or finding that is drawn here: write its short name behind the opening marks of the text art.");
        if (kinds.Count + findings.Count == 0 && draft.Faults.Count == before)
            draft.Faults.Add(entry.Heading, $"\"{entry.Heading.Text}\" shows nothing: add a table with a column kind or finding, or text art.");
        return new TopicDrawing
        {
            Id = id.Text,
            Title = title.Text,
            Figure = figure.Id,
            Clues = [.. shown.Select(clue => clue.Id)],
            Part = part,
            Fixed = values.Of(name => fields[name], part, kind: null, sized: findings.Count == 0),
            Kinds = kinds,
            Findings = findings,
            Datums = datums,
        };
    }

    static Figure? FigureOf(Draft draft, Passage entry)
    {
        var bullet = entry.Bullets.Select(point => point.Cut(":")).Where(point => point.Before.Is("Figure")).Select(point => point.After).FirstOrDefault(Cell.Absent);
        if (FigureCatalogue.Of(bullet.Text) is { } figure) return figure;
        if (bullet.IsBlank) draft.Faults.Add(entry.Heading, $"\"{entry.Heading.Text}\" needs the field \"Figure\".");
        else draft.Faults.Add(bullet, $"There is no figure \"{bullet.Text}\": use {Nearest.Or(Nearest.Of(bullet.Text, FigureCatalogue.All.Select(f => f.Id), 3))}.");
        return null;
    }

    static void Art(Draft draft, Passage entry, Figure figure)
    {
        foreach (var art in entry.Arts)
        {
            if (figure.Id != Figure.PlainArt) draft.Faults.Add(art.Heading, $"Text art is for the figure {Figure.PlainArt}: this drawing is a {figure.Id}.");
            if (art.Lines.Count == 0) draft.Faults.Add(art.Heading, "This block of text art is empty.");
            var line = art.Lines.ToList().FindIndex(text => text.Length > WidestArt || text.Any(char.IsControl));
            if (line >= 0) draft.Faults.Add(art.Heading.Line + 1 + line, $"A line of text art has at most {WidestArt} characters and no tabs.");
        }
    }
}
