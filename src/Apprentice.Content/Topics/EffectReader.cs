using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads what an event does: <c>bar low becomes tall; stem-length plus 0.3 mm spread 0.1 mm; plate shows worn</c>.</summary>
static class EffectReader
{
    /// <summary>Effects in the order of the text.</summary>
    public static IReadOnlyList<Effect> Effects(Draft draft, Cell cell, IReadOnlyList<Clue> clues)
    {
        if (cell.IsBlank) draft.Faults.Add(cell, "What the event does is missing: write bar becomes low.");
        return [.. cell.Split(';').Select(piece => EffectOf(draft, piece, clues)).OfType<Effect>()];
    }

    /// <summary>Shares of choices as written: <c>low</c> alone, or <c>low 3 in 4, tall rest</c>.</summary>
    /// <param name="draft">The file.</param>
    /// <param name="cell">The choices.</param>
    /// <param name="names">Valid names.</param>
    public static IReadOnlyList<(string Name, double Share)> Choices(Draft draft, Cell cell, Names names)
    {
        var pieces = cell.Split(',').Select(piece => piece.Cut(" ")).ToArray();
        if (pieces.Length == 0) draft.Faults.Add(cell, "A name is missing: write low, or low 3 in 4, tall rest.");
        if (pieces.Length == 0 || !pieces.All(piece => names.Known(piece.Before, draft.Faults))) return [];
        if (pieces.Length == 1 && pieces[0].After.IsBlank) return [(pieces[0].Before.Text, 1)];
        var shares = draft.Cells.Whole([.. pieces.Select(piece => piece.After)], cell.Line, $"\"{cell.Text}\"");
        var choices = new (string Name, double Share)[pieces.Length];
        for (var at = 0; at < pieces.Length; at++) choices[at] = (pieces[at].Before.Text, shares[at]);
        return choices;
    }

    /// <summary>A share per finding, in order.</summary>
    public static IReadOnlyList<double> Spread(IReadOnlyList<string> findings, IReadOnlyList<(string Name, double Share)> choices)
    {
        var spread = new double[findings.Count];
        for (var at = 0; at < spread.Length; at++)
        {
            foreach (var (name, share) in choices)
            {
                if (string.Equals(name, findings[at], StringComparison.Ordinal)) spread[at] += share;
            }
        }

        return spread;
    }

    /// <summary>Names of the findings of a clue with a table or codes; none for a measured one.</summary>
    public static IReadOnlyList<string> FindingsOf(Clue clue) => clue.Shows switch
    {
        Shows.Table table => [.. table.Findings.Select(finding => finding.Id)],
        Shows.Code code => [.. code.Findings.Select(finding => finding.Id)],
        _ => [],
    };

    static Effect? EffectOf(Draft draft, Cell cell, IReadOnlyList<Clue> clues)
    {
        if (cell.Text.Contains(" becomes ", StringComparison.Ordinal)) return Becomes(draft, cell);
        if (cell.Text.Contains(" shows ", StringComparison.Ordinal)) return ShowsOf(draft, cell, clues);
        if (cell.Text.Contains(" plus ", StringComparison.Ordinal) || cell.Text.Contains(" minus ", StringComparison.Ordinal)) return Moves(draft, cell);
        draft.Faults.Add(
            cell, $"\"{cell.Text}\" is not understood: write bar becomes low, bar low becomes tall, stem-length plus 0.3 mm spread 0.1 mm, or plate shows worn.");
        return null;
    }

    static Effect.ChangeKind? Becomes(Draft draft, Cell cell)
    {
        var (what, to) = cell.Cut(" becomes ");
        var (part, from) = what.Cut(" ");
        if (!draft.Parts.Known(part, draft.Faults)) return null;
        var kinds = draft.KindsOf(part.Text);
        return new Effect.ChangeKind(part.Text, draft.Cells.Name(from, kinds), Choices(draft, to, kinds));
    }

    static Effect.Shift? Moves(Draft draft, Cell cell)
    {
        var minus = cell.Text.Contains(" minus ", StringComparison.Ordinal);
        var (dimension, length) = cell.Cut(minus ? " minus " : " plus ");
        if (!draft.Dimensions.Known(dimension, draft.Faults)) return null;
        var (mean, spread) = length.Cut(" spread ");
        var shift = draft.Cells.Length(mean);
        return new Effect.Shift(dimension.Text, minus ? -shift : shift, spread.IsBlank ? 0 : Math.Abs(draft.Cells.Length(spread)));
    }

    static Effect.Overrule? ShowsOf(Draft draft, Cell cell, IReadOnlyList<Clue> clues)
    {
        var (name, choices) = cell.Cut(" shows ");
        if (!draft.Clues.Known(name, draft.Faults)) return null;
        var clue = clues.FirstOrDefault(other => string.Equals(other.Id, name.Text, StringComparison.Ordinal));
        if (clue?.Shows is Shows.Measured) draft.Faults.Add(cell, $"\"{name.Text}\" is measured: an event moves its size with plus or minus.");
        if (clue is null || clue.Shows is Shows.Measured) return null;
        var findings = FindingsOf(clue);
        var names = new Names($"finding of {name.Text}", [.. findings.Select(finding => new Cell(finding, 1))]);
        return new Effect.Overrule(name.Text, Spread(findings, Choices(draft, choices, names)));
    }
}
