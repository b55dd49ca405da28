using Apprentice.Screens;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace Apprentice.Terminal;

/// <summary>The terminal's keys as the conversation knows them.</summary>
static class Keys
{
    /// <summary>The input of a key, or null for keys that mean nothing here.</summary>
    public static Input? Of(Key key)
    {
        if (key.IsCtrl || key.IsAlt) return null;
        return key.NoShift.KeyCode switch
        {
            KeyCode.Enter => new Input(Press.Enter),
            KeyCode.Backspace => new Input(Press.Backspace),
            KeyCode.Esc => new Input(Press.Esc),
            KeyCode.CursorUp => new Input(Press.Up),
            KeyCode.CursorDown => new Input(Press.Down),
            KeyCode.CursorLeft => new Input(Press.Left),
            KeyCode.CursorRight => new Input(Press.Right),
            KeyCode.PageUp => new Input(Press.PageUp),
            KeyCode.PageDown => new Input(Press.PageDown),
            _ => key.AsRune is { IsBmp: true, Value: >= ' ' and not 127 } rune ? Input.Typed((char)rune.Value) : null,
        };
    }
}
