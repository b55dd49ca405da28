using System.Globalization;
using System.Runtime.InteropServices;

namespace Apprentice.Screens;

/// <summary>One key, or a tick.</summary>
/// <param name="Press">Which.</param>
/// <param name="Character">The character of <see cref="Press.Typed"/>, else 0.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct Input(Press Press, char Character = '\0')
{
    /// <summary>A typed character.</summary>
    public static Input Typed(char character) => new(Press.Typed, character);

    /// <summary>The digit, or null.</summary>
    public int? Digit => Press == Press.Typed && char.IsAsciiDigit(Character) ? Character - '0' : null;

    /// <summary>The letter or sign in upper case, or NUL for other keys.</summary>
    public char Letter => Press == Press.Typed ? char.ToUpper(Character, CultureInfo.InvariantCulture) : '\0';

    /// <summary>True for Esc and for 0.</summary>
    public bool IsBack => Press == Press.Esc || Digit == 0;
}

/// <summary>What a person can do: press a key, or let time pass.</summary>
enum Press
{
    /// <summary>A character: a digit, a letter, or something typed into a field.</summary>
    Typed,

    /// <summary>Take the marked line, or go on.</summary>
    Enter,

    /// <summary>Take the last character back.</summary>
    Backspace,

    /// <summary>Go back.</summary>
    Esc,

    /// <summary>A line up.</summary>
    Up,

    /// <summary>A line down.</summary>
    Down,

    /// <summary>To the left: the same as up.</summary>
    Left,

    /// <summary>To the right: the same as down.</summary>
    Right,

    /// <summary>A page up.</summary>
    PageUp,

    /// <summary>A page down.</summary>
    PageDown,

    /// <summary>Help, in a field too.</summary>
    Help,

    /// <summary>Three minutes have passed without a key.</summary>
    Tick,
}
