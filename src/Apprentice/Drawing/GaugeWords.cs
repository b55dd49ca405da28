using Apprentice.Content;

namespace Apprentice.Drawing;

/// <summary>A gauge on a part in sentences: how it stands, never which one it is.</summary>
static class GaugeWords
{
    const double Least = 0.04;

    /// <summary>A leaf on a thread: how far its teeth are off the grooves after 5 and 10 turns.</summary>
    /// <param name="thread">Pitch of the thread, mm.</param>
    /// <param name="leaf">Pitch of the leaf, mm; null for no leaf.</param>
    /// <param name="name">The name on the leaf.</param>
    public static IReadOnlyList<string> Thread(double thread, double? leaf, string name) => leaf is not { } pitch
        ? [Words.Of("gauge.words-bare")]
        : [Words.Of("gauge.words-leaf", ("leaf", name)), Off(5, 5 * (pitch - thread) / thread), Off(10, 10 * (pitch - thread) / thread)];

    /// <summary>One end of a chain gauge.</summary>
    public static IReadOnlyList<string> Chain(ChainView view, string name) =>
        [Words.Of("gauge.words-chain", ("end", name)), Words.Of(view.DropsIn ? "gauge.words-drops" : "gauge.words-stands")];

    static string Off(int turns, double off)
    {
        if (Math.Abs(off) < Least) return Words.Of("gauge.words-in", ("turns", turns));
        if (Math.Abs(off) >= 1) return Words.Of("gauge.words-far", ("turns", turns));
        return Words.Of(off > 0 ? "gauge.words-past" : "gauge.words-before", ("turns", turns), ("tenths", Math.Max(1, Math.Round(10 * Math.Abs(off)))));
    }
}
