using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads values of a figure's parameters and holds them to the ranges of the catalogue.</summary>
sealed class DrawingValues(Draft draft, Figure figure, IReadOnlyList<Dimension> dimensions)
{
    /// <summary>The figure.</summary>
    public Figure Figure => figure;

    /// <summary>The values that are written, by name of the parameter.</summary>
    /// <param name="written">What is written of a parameter, by its name; a blank one keeps what stands elsewhere.</param>
    /// <param name="part">The part that is drawn, or null.</param>
    /// <param name="kind">The kind that is drawn, or null for all of the part.</param>
    /// <param name="sized">False where a true size would show the truth behind a finding.</param>
    public IReadOnlyDictionary<string, FigureValue> Of(Func<string, Cell> written, string? part, string? kind, bool sized)
    {
        var values = new Dictionary<string, FigureValue>(StringComparer.Ordinal);
        foreach (var parameter in figure.Parameters)
        {
            if (written(parameter.Name) is { IsBlank: false } cell && ValueOf(parameter, cell, part, kind, sized) is { } value) values[parameter.Name] = value;
        }

        return values;
    }

    FigureValue? ValueOf(FigureParameter parameter, Cell cell, string? part, string? kind, bool sized)
    {
        if (parameter.Sort == ParameterSort.Word) return WordOf(parameter, cell);
        if (draft.Dimensions.Has(cell.Text)) return SizeOf(parameter, cell, part, kind, sized);
        var before = draft.Faults.Count;
        var number = parameter.Sort switch
        {
            ParameterSort.Length when char.IsAsciiLetter(cell.Text[0]) => Unknown(cell),
            ParameterSort.Length => draft.Cells.Length(cell),
            ParameterSort.Share => draft.Cells.Share(cell),
            ParameterSort.Angle => draft.Cells.Number(cell.Cut(" degrees").Before, parameter.Name),
            _ => draft.Cells.Number(cell, parameter.Name),
        };
        if (draft.Faults.Count > before) return null;
        if (parameter.Sort == ParameterSort.Count && number != Math.Floor(number)) draft.Faults.Add(cell, $"\"{parameter.Name}\" is counted: \"{cell.Text}\" is no whole number.");
        Range(parameter, cell, number);
        return new FigureValue.Number(number);
    }

    double Unknown(Cell cell)
    {
        _ = draft.Dimensions.Known(cell, draft.Faults);
        return 0;
    }

    FigureValue.Word? WordOf(FigureParameter parameter, Cell cell)
    {
        if (parameter.Words.Contains(cell.Text, StringComparer.Ordinal)) return new FigureValue.Word(cell.Text);
        draft.Faults.Add(cell, $"\"{parameter.Name}\" cannot be \"{cell.Text}\": use {Nearest.Or(parameter.Words)}.");
        return null;
    }

    /// <summary>A true size: its nominals must lie in the range of the parameter.</summary>
    FigureValue.Size? SizeOf(FigureParameter parameter, Cell cell, string? part, string? kind, bool sized)
    {
        if (!sized || parameter.Sort != ParameterSort.Length)
        {
            draft.Faults.Add(cell, sized
                ? $"\"{parameter.Name}\" is no length: \"{cell.Text}\" cannot be drawn as one."
                : $"A finding shows what it says, never the true \"{cell.Text}\" behind it: write a length.");
            return null;
        }

        var dimension = dimensions.First(d => d.Id.Equals(cell.Text, StringComparison.Ordinal));
        var kinds = draft.KindsOf(dimension.Part);
        var own = string.Equals(dimension.Part, part, StringComparison.Ordinal) && kind is not null;
        for (var i = 0; i < kinds.Count; i++)
        {
            if (own && kinds.IndexOf(kind ?? "") != i) continue;
            if (dimension.Nominals[i] is { } nominal) Range(parameter, cell, nominal);
            else if (own) draft.Faults.Add(cell, $"The size \"{cell.Text}\" has no nominal for the kind \"{kind}\": write a length.");
        }

        return new FigureValue.Size(cell.Text);
    }

    void Range(FigureParameter parameter, Cell cell, double number)
    {
        if (number >= parameter.Low && number <= parameter.High) return;
        var unit = parameter.Sort switch { ParameterSort.Length => " mm", ParameterSort.Angle => " degrees", _ => "" };
        draft.Faults.Add(cell, $"\"{parameter.Name}\" is {number:0.###}{unit}: a {figure.Id} has {parameter.Low:0.###} to {parameter.High:0.###}{unit}.");
    }
}
