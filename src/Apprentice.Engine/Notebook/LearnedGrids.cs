using Apprentice.Engine.Evidence;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Notebook;

/// <summary>Spreads and running changes learned from bikes, on a grid of values.</summary>
public static class LearnedGrids
{
    /// <summary>Degrees of freedom of a topic's spread. Judgement.</summary>
    public const double SpreadWeight = 10;

    /// <summary>Standard deviation of where a running change lies, months. Judgement.</summary>
    public const double WindowMonths = 6;

    const int Steps = 80;
    const double Widest = 5;
    const int MostMonths = 30;
    const double Misread = 0.002;

    /// <summary>The spread of real parts by kind, from readings taken on the stand.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="known">Bikes whose truth is known.</param>
    public static IEnumerable<Learned> Spreads(Topic topic, IReadOnlyList<KnownBike> known)
    {
        foreach (var size in topic.Dimensions)
        {
            var part = topic.Parts.First(p => p.Id == size.Part);
            for (var k = 0; k < part.Kinds.Count; k++)
            {
                if (size.Nominals[k] is not { } nominal) continue;
                var its = known.Where(b => b.Truth.KindOf(part.Id) == part.Kinds[k].Id && !IsShifted(topic, size.Id, b.Truth)).ToList();
                var rests = its.Select(b => RestOf(topic, size.Id, nominal, b.Bike)).OfType<Rest>().ToList();
                if (rests.Count == 0) continue;
                var (mean, low, high) = Spread(size.Spreads[k], rests);
                yield return new Learned(LearnedSort.Spread, size.Id, part.Kinds[k].Id, size.Spreads[k], rests.Count, rests.Count, mean, low, high);
            }
        }
    }

    /// <summary>A spread after readings: scaled inverse χ² prior around the topic's spread; each rest is Normal(0, spread² + reading²), or a blunder.</summary>
    /// <param name="before">The topic's spread, mm.</param>
    /// <param name="rests">What the readings differ from the nominal size.</param>
    /// <returns>Mean, and the two ends that leave out 1 in 20 each, mm.</returns>
    public static (double Mean, double Low, double High) Spread(double before, IReadOnlyList<Rest> rests)
    {
        var values = Enumerable.Range(-Steps, (2 * Steps) + 1).Select(i => before * Real.Exp(i * Real.Log(Widest) / Steps)).ToArray();
        var logs = values.Select(s => PriorOf(s, before) + rests.Sum(r => LogOf(r, s))).ToArray();
        return Summary(values, logs);
    }

    /// <summary>By how many months a running change comes later than the topic says, from build month and kind.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="known">Bikes whose truth is known.</param>
    public static IEnumerable<Learned> Windows(Topic topic, IReadOnlyList<KnownBike> known)
    {
        foreach (var package in topic.Packages)
        {
            for (var n = 0; n < package.Builds.Count; n++)
            {
                if (package.Builds[n] is not { From: { } window } build) continue;
                var seen = known.Select(b => SeenAt(topic, package, build, b.Truth)).OfType<(Month Built, bool IsNew)>().ToList();
                if (seen.Count == 0) continue;
                var (mean, low, high) = Shift(window, seen);
                yield return new Learned(LearnedSort.Window, package.Id, $"{n}", 0, seen.Count(s => s.IsNew), seen.Count, mean, low, high);
            }
        }
    }

    /// <summary>The shift of a window: Normal prior around 0, whole months.</summary>
    /// <param name="window">The topic's window.</param>
    /// <param name="seen">Build month and whether the new one was fitted.</param>
    /// <returns>Mean, and the two ends that leave out at most 1 in 20 each, months.</returns>
    public static (double Mean, double Low, double High) Shift(Window window, IReadOnlyList<(Month Built, bool IsNew)> seen)
    {
        var values = Enumerable.Range(-MostMonths, (2 * MostMonths) + 1).Select(i => (double)i).ToArray();
        var logs = values.Select(s => (-0.5 * s * s / (WindowMonths * WindowMonths)) + seen.Sum(b => Real.Log(b.IsNew ? ShareOf(window, b.Built, (int)s) : 1 - ShareOf(window, b.Built, (int)s)))).ToArray();
        return Summary(values, logs);
    }

    // In the logarithm of the spread the density of a scaled inverse chi-squared variance is s^−ν · exp(−ν s0² / 2 s²).
    static double PriorOf(double spread, double before) => (-SpreadWeight * Real.Log(spread)) - (SpreadWeight * before * before / (2 * spread * spread));

    static double LogOf(Rest rest, double spread)
    {
        var variance = (rest.Scale * rest.Scale * spread * spread) + (rest.Uncertainty * rest.Uncertainty);
        var normal = Real.Exp(-0.5 * rest.Millimetres * rest.Millimetres / variance) / Math.Sqrt(2 * Math.PI * variance);
        return Real.Log(((1 - rest.Blunder) * normal) + (rest.Blunder / rest.Range));
    }

    // (m + ½ − opens)/(closes − opens), moved; never quite 0 or 1, since a month is misread now and then.
    static double ShareOf(Window window, Month built, int shift)
    {
        var (opens, closes) = (window.Opens.Index + shift, window.Closes.Index + shift);
        var share = closes > opens ? (built.Index + 0.5 - opens) / (closes - opens) : built.Index >= opens ? 1 : 0;
        return Math.Clamp(share, Misread, 1 - Misread);
    }

    static (double Mean, double Low, double High) Summary(double[] values, double[] logs)
    {
        var most = logs.Max();
        var weights = logs.Select(l => Real.Exp(l - most)).ToArray();
        var total = weights.Sum();
        var mean = values.Zip(weights, (v, w) => v * w).Sum() / total;
        return (mean, At(LearnedRates.Tail), At(1 - LearnedRates.Tail));

        double At(double share)
        {
            var sum = 0.0;
            for (var i = 0; i < values.Length; i++)
            {
                sum += weights[i] / total;
                if (sum >= share) return values[i];
            }

            return values[^1];
        }
    }

    static bool IsShifted(Topic topic, string size, BikeTruth truth) =>
        topic.Events.Any(e => truth.Events.Contains(e.Id) && e.Effects.OfType<Effect.Shift>().Any(s => s.Dimension == size));

    // The mean of the readings of one clue on the stand, less what the nominal size would read.
    static Rest? RestOf(Topic topic, string size, double nominal, Bike bike)
    {
        foreach (var clue in topic.Clues)
        {
            if (clue.Shows is not Shows.Measured measured || measured.Dimension != size) continue;
            var readings = bike.Findings.Where(f => !f.IsStruck && f.Topic == topic.Id && f.Finding.Clue == clue.Id && f.Finding.Channel == Channel.Bench)
                .Select(f => f.Finding.Seen).OfType<Seen.Reading>().Select(r => r.Millimetres).ToList();
            if (readings.Count == 0) continue;
            return new Rest(
                readings.Average() - (measured.Scale * nominal) - measured.Offset, measured.Uncertainty / Math.Sqrt(readings.Count), measured.Scale,
                measured.Blunder + measured.Slips.Sum(s => s.Share), measured.High - measured.Low);
        }

        return null;
    }

    static (Month Built, bool IsNew)? SeenAt(Topic topic, Package package, Build build, BikeTruth truth)
    {
        if (truth.Built is not { } built || truth.Line is not { } line || !Holds(package, build, line)) return null;
        var before = package.Builds.Where(b => Holds(package, b, line) && b != build && (b.From is not { } from || from.Opens.CompareTo(build.From?.Opens ?? default) < 0)).LastOrDefault();
        if (before is null) return null;
        for (var p = 0; p < package.Parts.Count; p++)
        {
            var part = package.Parts[p];
            if (build.Kinds[p] == before.Kinds[p] || truth.KindOf(part) is not { } kind || IsChanged(topic, part, truth)) continue;
            if (kind == build.Kinds[p] || kind == before.Kinds[p]) return (built, kind == build.Kinds[p]);
        }

        return null;
    }

    static bool Holds(Package package, Build build, string line) =>
        build.Lines.Count > 0 ? build.Lines.Contains(line) : package.Builds.All(b => !b.Lines.Contains(line));

    static bool IsChanged(Topic topic, string part, BikeTruth truth) =>
        topic.Events.Any(e => truth.Events.Contains(e.Id) && e.Effects.OfType<Effect.ChangeKind>().Any(c => c.Part == part));
}

/// <summary>What a reading differs from the nominal size.</summary>
/// <param name="Millimetres">The difference, mm.</param>
/// <param name="Uncertainty">Standard uncertainty of the reading, mm.</param>
/// <param name="Scale">Factor from the true size to the reading.</param>
/// <param name="Blunder">Share of blunders and slips.</param>
/// <param name="Range">Range of the tool, mm.</param>
public sealed record Rest(double Millimetres, double Uncertainty, double Scale, double Blunder, double Range);
