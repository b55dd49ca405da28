using System.Runtime.InteropServices;

namespace Apprentice.Screens;

/// <summary>The marked line of a list, and the number typed so far. In a list of up to nine lines a digit takes its line; in a longer one it only marks, and Enter takes.</summary>
/// <param name="Marked">The marked line, from 0; -1 when none is marked yet.</param>
/// <param name="Pending">Number typed so far in a long list, or 0.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct Cursor(int Marked, int Pending = 0)
{
    const int MostDigitLines = 9;

    /// <summary>No line marked: Enter takes nothing until one is.</summary>
    public static Cursor None { get; } = new(-1);

    /// <summary>True for a list in which a number is followed by Enter.</summary>
    /// <param name="count">Number of lines.</param>
    public static bool IsLong(int count) => count > MostDigitLines;

    /// <summary>The cursor after a key, and the line that the key takes, if any.</summary>
    /// <param name="key">The key.</param>
    /// <param name="count">Number of lines.</param>
    public (Cursor Cursor, int? Taken) After(Input key, int count)
    {
        if (key.Digit is { } digit) return Digit(digit, count);
        return key.Press switch
        {
            Press.Up or Press.Left when count > 0 => (new Cursor((Math.Max(Marked, 0) + count - 1) % count), null),
            Press.Down or Press.Right when count > 0 => (new Cursor((Marked + 1) % count), null),
            Press.Backspace when Pending > 9 => (new Cursor((Pending / 10) - 1, Pending / 10), null),
            Press.Enter when count > 0 && Marked >= 0 => (new Cursor(Math.Min(Marked, count - 1)), Math.Min(Marked, count - 1)),
            _ => (this with { Pending = 0 }, null),
        };
    }

    (Cursor Cursor, int? Taken) Digit(int digit, int count)
    {
        if (!IsLong(count)) return digit >= 1 && digit <= count ? (new Cursor(digit - 1), digit - 1) : (this, null);
        var number = (10 * Pending) + digit;
        if (number >= 1 && number <= count) return (new Cursor(number - 1, number), null);
        return digit >= 1 ? (new Cursor(digit - 1, digit), null) : (this with { Pending = 0 }, null);
    }
}
