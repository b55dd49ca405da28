namespace Apprentice.Engine.Evidence;

/// <summary>Points of the true size over which readings are integrated, and the share of a flat spread where they could all only be blunders.</summary>
/// <param name="Points">True sizes with weights.</param>
/// <param name="Elsewhere">Probability that the true size lies where no reading tells anything but a blunder.</param>
sealed record SizePoints(IEnumerable<(double Size, double Weight)> Points, double Elsewhere)
{
    /// <summary>The points for some readings of one size.</summary>
    public static SizePoints Of(SizeSpread spread, IReadOnlyList<(MeasuredModel Model, double Value)> readings)
    {
        var precision = spread.Mean is null ? 0 : 1 / (spread.Sigma * spread.Sigma);
        precision += readings.Sum(r => r.Model.Ways.Max(w => w.Slope * w.Slope / (w.Uncertainty * w.Uncertainty)));
        var width = 1 / Math.Sqrt(precision);
        if (spread.Mean is not null) return new SizePoints(spread.Points(width), 0);
        var windows = Joined(spread, readings.SelectMany(r => r.Model.Windows(r.Value)));
        var elsewhere = 1 - (windows.Sum(w => w.High - w.Low) / (spread.High - spread.Low));
        return new SizePoints(spread.Points(width, windows), elsewhere);
    }

    static List<(double Low, double High)> Joined(SizeSpread spread, IEnumerable<(double Low, double High)> windows)
    {
        var joined = new List<(double Low, double High)>();
        foreach (var window in windows.Select(w => (Low: Math.Max(w.Low, spread.Low), High: Math.Min(w.High, spread.High))).Where(w => w.Low < w.High).OrderBy(w => w.Low))
        {
            if (joined.Count > 0 && window.Low <= joined[^1].High) joined[^1] = (joined[^1].Low, Math.Max(joined[^1].High, window.High));
            else joined.Add(window);
        }

        return joined;
    }
}
