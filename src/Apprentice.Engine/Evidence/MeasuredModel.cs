using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>How a measured clue reads a true size T: with a share each, Normal(Slope·T + Intercept, Uncertainty) rounded to the step, or a blunder, flat over the tool's range.</summary>
public sealed class MeasuredModel
{
    readonly Shows.Measured _shows;

    /// <summary>The model of a clue's readings by a channel.</summary>
    /// <param name="shows">What the clue measures.</param>
    /// <param name="channel">How the reading reached the bench: its error is added as a root sum of squares, its slips to the named slips in their proportion, or to the blunders where no slip is named.</param>
    /// <param name="datum">The datum chosen (0 right, n the n-th slip), or null when it is not known.</param>
    public MeasuredModel(Shows.Measured shows, ClueChannel channel, int? datum)
    {
        _shows = shows;
        var named = shows.Slips.Sum(s => s.Share);
        var slips = named > 0 ? named + channel.ExtraMisread : 0;
        Blunder = shows.Blunder + (named > 0 ? 0 : channel.ExtraMisread);
        var u = Math.Sqrt((shows.Uncertainty * shows.Uncertainty) + (channel.ExtraError * channel.ExtraError));
        var ways = new List<Way> { new(1 - slips - Blunder, shows.Scale, shows.Offset, u) };
        foreach (var slip in shows.Slips)
            ways.Add(new Way(slip.Share * slips / named, shows.Scale * slip.Factor, (shows.Offset * slip.Factor) + slip.Offset, u));
        Ways = datum is { } d ? [.. ways.Select((w, i) => w with { Share = i == d ? 1 - Blunder : 0 })] : ways;
        FlatStep = 1 / (Math.Floor(((shows.High - shows.Low) / shows.Step) + 0.5) + 1);
    }

    /// <summary>Ways of reading: the right datum first, then the named slips.</summary>
    public IReadOnlyList<Way> Ways { get; }

    /// <summary>Share of blunders.</summary>
    public double Blunder { get; }

    /// <summary>Probability of each step of the range in a blunder.</summary>
    public double FlatStep { get; }

    /// <summary>Step of the tool, mm.</summary>
    public double Step => _shows.Step;

    /// <summary>Lowest and highest reading, mm.</summary>
    public (double Low, double High) Range => (_shows.Low, _shows.High);

    /// <summary>P(the step of this reading | true size).</summary>
    /// <param name="reading">Reading, mm.</param>
    /// <param name="size">True size, mm.</param>
    /// <param name="right">True to count the right datum only: neither slip nor blunder.</param>
    public double Given(double reading, double size, bool right = false)
    {
        var half = Step / 2;
        var sum = right ? 0 : Blunder * FlatStep;
        for (var w = 0; w < (right ? 1 : Ways.Count); w++)
        {
            var way = Ways[w];
            if (way.Share <= 0) continue;
            var z = (reading - way.Intercept - (way.Slope * size)) / way.Uncertainty;
            var h = half / way.Uncertainty;
            if (z - h > 9 || z + h < -9) continue;
            sum += way.Share * (Real.Phi(z + h) - Real.Phi(z - h));
        }

        return sum;
    }

    /// <summary>Where on the true size a reading tells anything but a blunder, for each way of reading.</summary>
    public IEnumerable<(double Low, double High)> Windows(double reading)
    {
        foreach (var way in Ways.Where(w => w.Share > 0))
        {
            var reach = ((9 * way.Uncertainty) + (Step / 2)) / Math.Abs(way.Slope);
            var middle = (reading - way.Intercept) / way.Slope;
            yield return (middle - reach, middle + reach);
        }
    }

    /// <summary>P(low ≤ reading &lt; high) when the true size is spread as given; closed form.</summary>
    /// <param name="low">Lower end, mm.</param>
    /// <param name="high">Upper end, mm.</param>
    /// <param name="spread">Distribution of the true size.</param>
    /// <param name="right">True to count the right datum only.</param>
    public double Between(double low, double high, SizeSpread spread, bool right = false)
    {
        var sum = right ? 0 : Blunder * FlatStep * (high - low) / Step;
        for (var w = 0; w < (right ? 1 : Ways.Count); w++)
        {
            var way = Ways[w];
            if (way.Share > 0) sum += way.Share * spread.Between(low - way.Intercept, high - way.Intercept, way.Slope, way.Uncertainty);
        }

        return sum;
    }
}

/// <summary>A way of reading.</summary>
/// <param name="Share">Share of readings.</param>
/// <param name="Slope">Factor on the true size.</param>
/// <param name="Intercept">Added then, mm.</param>
/// <param name="Uncertainty">Standard uncertainty, mm.</param>
public sealed record Way(double Share, double Slope, double Intercept, double Uncertainty);

/// <summary>Distribution of a true size: Normal(Mean, Sigma), or flat from Low to High.</summary>
/// <param name="Mean">Mean, mm; null for flat.</param>
/// <param name="Sigma">Standard deviation, mm.</param>
/// <param name="Low">Lower end of the range, mm.</param>
/// <param name="High">Upper end of the range, mm.</param>
public sealed record SizeSpread(double? Mean, double Sigma, double Low, double High)
{
    // Roots of the Legendre polynomial of degree 8 above 0, and the weights of Gauss's rule, to 18 digits.
    static readonly (double Node, double Weight)[] Legendre =
    [
        (0.183434642495649805, 0.362683783378361983),
        (0.525532409916328986, 0.313706645877887287),
        (0.79666647741362674, 0.222381034453374471),
        (0.960289856497536232, 0.101228536290376259),
    ];

    /// <summary>P(low ≤ slope·T + u·N &lt; high), N ~ Normal(0, 1).</summary>
    public double Between(double low, double high, double slope, double u)
    {
        if (Mean is not { } mean) return Flat(high, slope, u) - Flat(low, slope, u);
        var s = Math.Sqrt((u * u) + (slope * slope * Sigma * Sigma));
        return Real.Phi((high - (slope * mean)) / s) - Real.Phi((low - (slope * mean)) / s);
    }

    /// <summary>Points and weights of a rule over the true size: exact to about 1e-12 for products of readings at least as wide as <paramref name="width"/>.</summary>
    /// <param name="width">Effective width of what is integrated, mm: (1/σ² + Σ slope²/u²)^−½.</param>
    public IEnumerable<(double Size, double Weight)> Points(double width) => Mean is { } mean ? Trapezoid(mean, width) : Panels(Low, High, width);

    /// <summary>The same for a flat spread, within some intervals only.</summary>
    /// <param name="width">Effective width, mm.</param>
    /// <param name="within">Intervals inside the range that do not overlap.</param>
    public IEnumerable<(double Size, double Weight)> Points(double width, IReadOnlyList<(double Low, double High)> within) =>
        within.SelectMany(i => Panels(i.Low, i.High, width));

    // All that is integrated has faded out at the ends, where the trapezoid rule is exact.
    IEnumerable<(double Size, double Weight)> Trapezoid(double mean, double width)
    {
        var n = (int)Math.Ceiling(18 * Sigma / (0.5 * width));
        var h = 18 * Sigma / n;
        for (var i = 0; i <= n; i++)
        {
            var t = mean - (9 * Sigma) + (i * h);
            yield return (t, Real.Density((t - mean) / Sigma) / Sigma * h * (i == 0 || i == n ? 0.5 : 1));
        }
    }

    // A flat spread ends abruptly: eight points of Gauss and Legendre on each panel of two widths.
    IEnumerable<(double Size, double Weight)> Panels(double low, double high, double width)
    {
        var n = (int)Math.Ceiling((high - low) / (2 * width));
        var half = (high - low) / (2 * n);
        for (var i = 0; i < n; i++)
        {
            var middle = low + (((2 * i) + 1) * half);
            foreach (var (node, weight) in Legendre)
            {
                yield return (middle - (node * half), weight * half / (High - Low));
                yield return (middle + (node * half), weight * half / (High - Low));
            }
        }
    }

    // P(slope·T + u·N < x) for T flat from Low to High.
    double Flat(double x, double slope, double u) =>
        u / (slope * (High - Low)) * (Real.PhiIntegral((x - (slope * Low)) / u) - Real.PhiIntegral((x - (slope * High)) / u));
}
