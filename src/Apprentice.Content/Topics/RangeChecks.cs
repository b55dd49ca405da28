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
            else Check(draft, draft.LineOf(size), $"Real parts of \"{size.Id}\"", Ends(spreads, [new Way(1, 0)], 0), size.Low, size.High);
        }
    }

    /// <summary>Notes readings whose range is too narrow.</summary>
    public static void Readings(Draft draft, Topic topic)
    {
        foreach (var clue in topic.Clues)
        {
            if (clue.Shows is not Shows.Measured measured) continue;
            var size = topic.Dimensions.First(other => string.Equals(other.Id, measured.Dimension, StringComparison.Ordinal));
            var error = 0.0;
            foreach (var channel in clue.Channels) error = Math.Max(error, channel.ExtraError);
            var u = Math.Sqrt((measured.Uncertainty * measured.Uncertainty) + (error * error));
            Way[] ways = [new(1, 0), .. measured.Slips.Select(slip => new Way(slip.Factor, slip.Offset))];
            var spreads = Real(topic, size);
            if (spreads.Count > 0)
                Check(draft, draft.LineOf(measured), $"Readings of \"{clue.Id}\"", Ends(spreads, [.. ways.Select(way => new Way(measured.Scale * way.Factor, (measured.Offset * way.Factor) + way.Offset))], u), measured.Low, measured.High);
        }
    }

    static void Check(Draft draft, int line, string what, Reached reached, double low, double high)
    {
        var (from, to) = (Math.Max(0, reached.From), reached.To);
        if (from < low || to > high)
            draft.Faults.Add(line, $"{what} reach from {Math.Floor(from):0} to {Math.Ceiling(to):0} mm, the range only from {low:0.#} to {high:0.#} mm: widen it.");
    }

    /// <summary>How far kinds reach, read in any of the ways with an uncertainty.</summary>
    static Reached Ends(List<Means> spreads, Way[] ways, double u)
    {
        var (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var spread in spreads)
        {
            foreach (var way in ways)
            {
                var sigma = Math.Sqrt((way.Factor * way.Factor * spread.Sigma * spread.Sigma) + (u * u));
                var (low, high) = ((way.Factor * spread.Low) + way.Offset - (Reach * sigma), (way.Factor * spread.High) + way.Offset + (Reach * sigma));
                (from, to) = (Math.Min(from, Math.Min(low, high)), Math.Max(to, Math.Max(low, high)));
            }
        }

        return new Reached(from, to);
    }

    /// <summary>Lowest and highest mean and the standard deviation of each kind, everything that moves the size included.</summary>
    static List<Means> Real(Topic topic, Dimension size)
    {
        var shifts = topic.Events.SelectMany(happened => happened.Effects).OfType<Effect.Shift>()
            .Where(shift => string.Equals(shift.Dimension, size.Id, StringComparison.Ordinal)).ToArray();
        var (down, up, variance) = (0.0, 0.0, 0.0);
        foreach (var shift in shifts)
        {
            down += Math.Min(0, shift.Millimetres);
            up += Math.Max(0, shift.Millimetres);
            variance += shift.Spread * shift.Spread;
        }

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

    sealed record Reached(double From, double To);
}
