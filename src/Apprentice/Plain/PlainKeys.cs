using System.Globalization;
using Apprentice.Screens;

namespace Apprentice.Plain;

/// <summary>A typed line as the keys that the screens know.</summary>
static class PlainKeys
{
    /// <summary>The keys of a line, or null when it means nothing here.</summary>
    /// <param name="line">The line, without spaces around it.</param>
    /// <param name="screen">The screen that is shown.</param>
    /// <param name="page">Its page.</param>
    public static IReadOnlyList<Input>? Of(string line, Screen screen, PlainPage page)
    {
        if (line.Length == 0) return [new Input(Press.Enter)];
        if (line.Equals("esc", StringComparison.OrdinalIgnoreCase)) return [new Input(Press.Esc)];
        if (screen is FieldScreen field && (field.Typing || line.Length > 1 || char.IsAsciiDigit(line[0]))) return Field(line, field);
        if (int.TryParse(line, NumberStyles.None, null, out var number) && (line.Length > 1 || (number > 0 && page.Numbers.Count > 0))) return Number(number, page);
        return Arrow(line) is { } arrow ? [new Input(arrow)] : line.Length == 1 ? [Input.Typed(line[0])] : null;
    }

    // What stood in the field before is taken out first.
    static List<Input> Field(string line, FieldScreen field) =>
        [.. field.Typed.Select(_ => new Input(Press.Backspace)), .. line.Select(Input.Typed), new Input(Press.Enter)];

    static List<Input>? Number(int number, PlainPage page)
    {
        if (!page.Numbers.Contains(number)) return null;
        var digits = number.ToString().Select(Input.Typed).ToList();
        return Cursor.IsLong(page.Numbers.Count) ? [.. digits, new Input(Press.Enter)] : digits;
    }

    static Press? Arrow(string line) => line.ToLowerInvariant() switch
    {
        "up" => Press.Up,
        "down" => Press.Down,
        "left" => Press.Left,
        "right" => Press.Right,
        _ => null,
    };
}
