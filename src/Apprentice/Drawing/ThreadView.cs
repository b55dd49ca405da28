namespace Apprentice.Drawing;

/// <summary>A thread and one leaf of a pitch gauge, above each other at one scale: the geometry in dots, all that the drawing shows.</summary>
/// <param name="Columns">Width in characters; a character is two dots wide.</param>
/// <param name="Thread">Pitch of the thread in dots.</param>
/// <param name="Leaf">Pitch of the leaf in dots.</param>
/// <param name="Depth">Depth of the teeth in dots.</param>
sealed record ThreadView(int Columns, double Thread, double Leaf, double Depth)
{
    // Height of a 60-degree profile over its pitch, half the square root of 3. Source: facts U1.1 (60-degree profiles, S90).
    const double Profile = 0.866;

    /// <summary>Turns of the thread in the window, from far to near.</summary>
    public static IReadOnlyList<int> Turns { get; } = [20, 14, 10];

    /// <summary>Width in dots.</summary>
    public int Width => 2 * Columns;

    /// <summary>How far the leaf stands off because its teeth meet no grooves, in dots: nearly nothing for the leaf that fits.</summary>
    public double Lift => Enumerable.Range(0, Width).Max(x => Depth * (Tooth(x, Thread) - Tooth(x, Leaf)));

    /// <summary>A thread and a leaf in a window.</summary>
    /// <param name="thread">Pitch of the thread, mm.</param>
    /// <param name="leaf">Pitch of the leaf, mm.</param>
    /// <param name="columns">Width in characters.</param>
    /// <param name="rows">Height in characters.</param>
    /// <param name="zoom">Index into <see cref="Turns"/>.</param>
    public static ThreadView Of(double thread, double leaf, int columns, int rows, int zoom)
    {
        var dots = 2.0 * columns / (Turns[zoom] * thread);
        return new ThreadView(columns, thread * dots, leaf * dots, Math.Clamp(Profile * thread * dots, 4, Math.Max(4, ((4 * rows) - 10) / 2)));
    }

    /// <summary>How far a tooth of some pitch reaches down at a place: 0 to 1, with its first groove at half a pitch.</summary>
    /// <param name="x">Dots from the left.</param>
    /// <param name="pitch">Pitch in dots.</param>
    public static double Tooth(double x, double pitch)
    {
        var turn = (x / pitch) - Math.Floor(x / pitch);
        return 1 - Math.Abs((2 * turn) - 1);
    }
}
