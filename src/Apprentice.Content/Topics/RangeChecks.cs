using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Checks that ranges hold what can be: six standard deviations around every nominal size, slips, wear and channels included.</summary>
static class RangeChecks
{
    const double Reach = 6;

    /// <summary>Notes sizes whose range is too narrow or that have no kind.</summary>
    public static void Sizes(Draft draft, Topic topic)
    {
        foreach (var size in topic.Dimensions)
        {
            var spreads = Real(topic, size);
            if (spreads.Count == 0) draft.Faults.Add(draft.LineOf(size), $"The size \"{size.Id}\" has no nominal for any kind: it tells nothing.");
            else Check(draft, draft.LineOf(size), $"Real parts of \"{size.Id}\"", [.. spreads.SelectMany(spread => Ends(spread, 1, 0, 0))], size.Low, size.High);
        }
    }

    /// <summary>Notes readings whose range is too narrow.</summary>
    public static void Readings(Draft draft, Topic topic)
    {
        foreach (var clue in topic.Clues)
        {
            if (clue.Shows is not Shows.Measured measured) continue;
            var size = topic.Dimensions.First(other => string.Equals(other.Id, measured.Dimension, StringComparison.Ordinal));
            var error = clue.Channels.Select(channel => channel.ExtraError).DefaultIfEmpty(0).Max();
            var u = Math.Sqrt((measured.Uncertainty * measured.Uncertainty) + (error * error));
            Way[] ways = [new(1, 0), .. measured.Slips.Select(slip => new Way(slip.Factor, slip.Offset))];
            var ends = Real(topic, size).SelectMany(spread => ways.SelectMany(way =>
                Ends(spread, measured.Scale * way.Factor, (measured.Offset * way.Factor) + way.Offset, u))).ToArray();
            if (ends.Length > 0) Check(draft, draft.LineOf(measured), $"Readings of \"{clue.Id}\"", ends, measured.Low, measured.High);
        }
    }

    static void Check(Draft draft, int line, string what, IReadOnlyList<double> ends, double low, double high)
    {
        var (from, to) = (Math.Max(0, ends.Min()), ends.Max());
        if (from < low || to > high)
            draft.Faults.Add(line, $"{what} reach from {Math.Floor(from):0} to {Math.Ceiling(to):0} mm, the range only from {low:0.#} to {high:0.#} mm: widen it.");
    }

    static IEnumerable<double> Ends(Means spread, double slope, double intercept, double u)
    {
        var sigma = Math.Sqrt((slope * slope * spread.Sigma * spread.Sigma) + (u * u));
        return [(slope * spread.Low) + intercept - (Reach * sigma), (slope * spread.High) + intercept + (Reach * sigma)];
    }

    /// <summary>Lowest and highest mean and the standard deviation of each kind, everything that moves the size included.</summary>
    static List<Means> Real(Topic topic, Dimension size)
    {
        var shifts = topic.Events.SelectMany(happened => happened.Effects).OfType<Effect.Shift>()
            .Where(shift => string.Equals(shift.Dimension, size.Id, StringComparison.Ordinal)).ToArray();
        var down = shifts.Sum(shift => Math.Min(0, shift.Millimetres));
        var up = shifts.Sum(shift => Math.Max(0, shift.Millimetres));
        var variance = shifts.Sum(shift => shift.Spread * shift.Spread);
        var real = new List<Means>();
        for (var at = 0; at < size.Nominals.Count; at++)
        {
            var spread = size.Spreads[at];
            if (size.Nominals[at] is { } nominal) real.Add(new Means(nominal + down, nominal + up, Math.Sqrt((spread * spread) + variance)));
        }

        return real;
    }

    sealed record Means(double Low, double High, double Sigma);

    sealed record Way(double Factor, double Offset);
}
