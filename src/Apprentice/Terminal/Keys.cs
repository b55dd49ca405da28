using Apprentice.Screens;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace Apprentice.Terminal;

/// <summary>The terminal's keys as the conversation knows them.</summary>
static class Keys
{
    /// <summary>The input of a key; empty for keys that mean nothing here. A sign beyond the first 65,536 comes as its two halves.</summary>
    public static IReadOnlyList<Input> Of(Key key)
    {
        if (key.IsCtrl || key.IsAlt) return [];
        return key.NoShift.KeyCode switch
        {
            KeyCode.Enter => [new Input(Press.Enter)],
            KeyCode.Backspace => [new Input(Press.Backspace)],
            KeyCode.Esc => [new Input(Press.Esc)],
            KeyCode.CursorUp => [new Input(Press.Up)],
            KeyCode.CursorDown => [new Input(Press.Down)],
            KeyCode.CursorLeft => [new Input(Press.Left)],
            KeyCode.CursorRight => [new Input(Press.Right)],
            KeyCode.PageUp => [new Input(Press.PageUp)],
            KeyCode.PageDown => [new Input(Press.PageDown)],
            KeyCode.F1 => [new Input(Press.Help)],
            _ => key.AsRune is { Value: >= ' ' and not 127 } rune ? [.. rune.ToString().Select(Input.Typed)] : [],
        };
    }
}
