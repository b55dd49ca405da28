using System.Runtime.InteropServices;

namespace Apprentice.Screens;

/// <summary>The marked line of a list, and a first digit that may still become two.</summary>
/// <param name="Marked">The marked line, from 0.</param>
/// <param name="Pending">First digit typed of a number with two, or 0.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct Cursor(int Marked, int Pending = 0)
{
    /// <summary>The cursor after a key, and the line that the key takes, if any.</summary>
    /// <param name="key">The key.</param>
    /// <param name="count">Number of lines; those after the ninth are taken by two digits.</param>
    public (Cursor Cursor, int? Taken) After(Input key, int count)
    {
        if (key.Digit is { } digit) return Digit(digit, count);
        return key.Press switch
        {
            Press.Up or Press.Left when count > 0 => (new Cursor((Marked + count - 1) % count), null),
            Press.Down or Press.Right when count > 0 => (new Cursor((Marked + 1) % count), null),
            Press.Enter when count > 0 => (new Cursor(Math.Min(Marked, count - 1)), Math.Min(Marked, count - 1)),
            _ => (this with { Pending = 0 }, null),
        };
    }

    (Cursor Cursor, int? Taken) Digit(int digit, int count)
    {
        var number = (10 * Pending) + digit;
        if (number < 1 || number > count) return (this with { Pending = 0 }, null);
        return number * 10 <= count ? (new Cursor(number - 1, number), null) : (new Cursor(number - 1), number - 1);
    }
}
