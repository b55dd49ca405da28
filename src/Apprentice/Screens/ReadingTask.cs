using Apprentice.Drawing;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>A scale to be read: all that the two screens need, and what follows.</summary>
/// <param name="Title">Top line.</param>
/// <param name="Tool">The tool as the bench names it.</param>
/// <param name="Datums">From where to where: the right datum first, then the named slips.</param>
/// <param name="ExactFor">What truly lies between the edges for a datum, mm, without a zero error; falls between marks as real parts do.</param>
/// <param name="Step">How fine the tool is read, mm.</param>
sealed record ReadingTask(string Title, string Tool, IReadOnlyList<string> Datums, Func<int, double> ExactFor, double Step)
{
    /// <summary>The scale that is drawn.</summary>
    public required Scale Scale { get; init; }

    /// <summary>Lowest reading of the tool here, mm.</summary>
    public required double Low { get; init; }

    /// <summary>Highest reading of the tool here, mm.</summary>
    public required double High { get; init; }

    /// <summary>Fixes the order in which the datums are shown.</summary>
    public required ulong Seed { get; init; }

    /// <summary>The screen to go back to.</summary>
    public required Screen Below { get; init; }

    /// <summary>What follows once it is read.</summary>
    public required Func<World, OwnReading, Turn> Done { get; init; }

    /// <summary>Sentences that stand above the question and above the scale.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Number of the job, or null.</summary>
    public int? Job { get; init; }

    /// <summary>Datums in the order in which they are shown: indices into <see cref="Datums"/>, every order equally likely over the seeds.</summary>
    public IReadOnlyList<int> Order => Shuffle.Of(Datums.Count, Seed, stream: 3);

    /// <summary>The part with its points, where the topic draws it; null to choose by words alone.</summary>
    public DrawnDatums? Drawn { get; init; }

    /// <summary>The task of a measured clue, or null when its tool has no scale that is drawn.</summary>
    /// <param name="title">Top line.</param>
    /// <param name="clue">The clue; its own datum comes first, then its slips in their order.</param>
    /// <param name="exactFor">What truly lies between the edges for a datum, mm.</param>
    /// <param name="seed">Fixes the order in which the datums are shown.</param>
    /// <param name="below">The screen to go back to.</param>
    /// <param name="done">What follows once it is read.</param>
    /// <param name="zeroError">What a caliper reads with its jaws closed, mm.</param>
    public static ReadingTask? Of(
        string title, Clue clue, Func<int, double> exactFor, ulong seed, Screen below, Func<World, OwnReading, Turn> done, double zeroError = 0)
    {
        if (clue.Shows is not Shows.Measured measured || Scale.Of(clue.Tool, zeroError) is not { } scale) return null;
        var around = Math.Abs(measured.Scale - Math.PI) < 1e-6;
        return new ReadingTask(title, clue.Tool, [clue.Datum.Length > 0 ? clue.Datum : clue.FromTo, .. measured.Slips.Select(s => s.Name)], exactFor, measured.Step)
        {
            Scale = around && scale is Scale.Ruled ruled ? ruled.LaidRound(seed) : scale,
            Low = measured.Low,
            High = measured.High,
            Seed = seed,
            Below = below,
            Done = done,
        };
    }

    /// <summary>The first screen: the choice of the datum, or the scale at once where there is only one.</summary>
    public Screen Start() => Datums.Count > 1 ? new DatumScreen(this) : new ScaleScreen(this, 0);
}

/// <summary>What a learner read off a scale.</summary>
/// <param name="Datum">The datum they chose: 0 right, n the n-th slip.</param>
/// <param name="Millimetres">The reading, mm, not rounded.</param>
/// <param name="Text">The reading as it was typed.</param>
sealed record OwnReading(int Datum, double Millimetres, string Text);
