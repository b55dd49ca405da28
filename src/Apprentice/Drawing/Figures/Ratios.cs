using Apprentice.Content;

namespace Apprentice.Drawing.Figures;

/// <summary>Sizes said as the eye sees them: against another size in the picture, never in mm.</summary>
static class Ratios
{
    /// <summary>"6.5 times", in halves; "as long" near 1; below that in tenths.</summary>
    /// <param name="size">The size, mm.</param>
    /// <param name="against">What it is compared with, mm.</param>
    public static string Times(double size, double against)
    {
        var (halves, tenths) = (Math.Round(2 * size / against) / 2, Math.Round(10 * size / against));
        return size < 0.75 * against ? tenths == 1 ? Words.Of("figure.tenth-of") : Words.Of("figure.tenths-of", ("n", Math.Max(0, tenths)))
            : halves == 1 ? Words.Of("figure.once") : Words.Of("figure.times", ("n", halves.ToString("0.#")));
    }

    /// <summary>An angle in steps of 5 degrees.</summary>
    public static string Degrees(double degrees) => Words.Of("figure.degrees", ("n", 5 * Math.Round(degrees / 5)));
}
