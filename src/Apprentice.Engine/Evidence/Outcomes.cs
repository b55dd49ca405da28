using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>All that a look can show: a partition of its findings, with P(outcome | state or row).</summary>
/// <param name="Part">Index of the part that it reads, or −1 for the spine.</param>
/// <param name="Fine">Outcomes × columns. For a reading, bins of a quarter of its standard deviation.</param>
/// <param name="Coarse">The same with bins of one standard deviation, for pairs.</param>
/// <param name="ColumnOf">Column per state of the part, or per row of the spine: alike ones share a column.</param>
/// <param name="Columns">Number of columns.</param>
public sealed record Outcomes(int Part, double[][] Fine, double[][] Coarse, int[] ColumnOf, int Columns)
{
    const double Reach = 6;
    const double Faint = 1e-9;

    /// <summary>The outcomes of a look.</summary>
    /// <param name="table">The histories.</param>
    /// <param name="reader">The reader of its clues.</param>
    /// <param name="clue">The clue.</param>
    /// <param name="channel">How it reaches the bench.</param>
    /// <param name="before">Looks at the same clue, or readings of the same size, that were taken before; none for a first look.</param>
    public static Outcomes Of(HistoryTable table, ClueReader reader, string clue, Channel channel, IReadOnlyList<Finding> before)
    {
        var it = table.Names.ClueOf(clue);
        if (it.Shows is Shows.Measured measured) return OfReading(table, reader, measured, reader.ModelOf(clue, channel, null), before);
        var (part, shares) = reader.SharesOf(it, before);
        var (ids, misread) = ClueReader.FindingsOf(it, channel);
        var (columnOf, first) = Alike(shares);
        var all = Enumerable.Range(0, ids.Count)
            .Select(f => first.Select(c => ((1 - misread) * shares[c][f]) + (misread / ids.Count)).ToArray()).ToArray();
        return new Outcomes(part, all, all, columnOf, first.Count);
    }

    static (int[] ColumnOf, List<int> First) Alike(IReadOnlyList<IReadOnlyList<double>> shares)
    {
        var ids = new Dictionary<string, int>(StringComparer.Ordinal);
        var first = new List<int>();
        var columnOf = new int[shares.Count];
        for (var i = 0; i < shares.Count; i++)
        {
            var key = string.Join(';', shares[i].Select(s => s.ToString("R")));
            if (!ids.TryGetValue(key, out var column))
            {
                column = ids[key] = first.Count;
                first.Add(i);
            }

            columnOf[i] = column;
        }

        return (columnOf, first);
    }

    static Outcomes OfReading(HistoryTable table, ClueReader reader, Shows.Measured measured, MeasuredModel model, IReadOnlyList<Finding> before)
    {
        var size = table.Topic.Dimensions[table.Names.Dimension(measured.Dimension)];
        var part = table.Names.Part(size.Part);
        var spreads = table.States[part].Select(s => reader.SpreadOf(size, s)).ToList();
        var others = before.Select(f => (Model: reader.ModelOf(f.Clue, f.Channel, f.Datum), Value: ((Seen.Reading)f.Seen).Millimetres)).ToList();
        var known = spreads.Select(s => others.Count == 0 ? null : Known(s, others)).ToList();
        var fine = Joined(Bins(model, spreads, known, 0.25), 1e-4);
        return new Outcomes(part, fine, Joined(Bins(model, spreads, known, 1), 0.02), [.. Enumerable.Range(0, spreads.Count)], spreads.Count);
    }

    // Bins cover what any state and way can show; what lies outside is one outcome more, on either side.
    static double[][] Bins(MeasuredModel model, List<SizeSpread> spreads, List<List<(double Size, double Weight)>?> known, double fraction)
    {
        var normals = spreads.Where(s => s.Mean is not null).ToList();
        var u = model.Ways[0].Uncertainty;
        var sigma = normals.Count == 0 || known.Exists(k => k is not null) ? u : normals.Min(s => Math.Sqrt((u * u) + (model.Ways[0].Slope * model.Ways[0].Slope * s.Sigma * s.Sigma)));
        var steps = Math.Max(1, Math.Floor(fraction * sigma / model.Step));
        var width = steps * model.Step;
        var ends = model.Ways.Where(w => w.Share > 0).SelectMany(w => normals.SelectMany(s => Ends(s, w))).Append(model.Range.Low).Append(model.Range.High).ToList();
        var from = model.Range.Low - (model.Step / 2);
        var low = Math.Max(ends.Min(), from - (200 * width));
        var high = Math.Min(ends.Max(), model.Range.High + (200 * width));
        var edges = new List<double> { double.NegativeInfinity };
        for (var x = Math.Min(low, from); x < high; x += width) edges.Add(x);
        edges.Add(high + width);
        edges.Add(double.PositiveInfinity);
        return [.. edges.Zip(edges.Skip(1), (a, b) => spreads.Select((s, i) => Bin(model, s, known[i], a, b)).ToArray())];
    }

    // The true size of a state after other readings of it, as points that add up to 1; none where those could only be blunders.
    static List<(double Size, double Weight)> Known(SizeSpread spread, List<(MeasuredModel Model, double Value)> others)
    {
        var points = SizePoints.Of(spread, others).Points.Select(p => (p.Size, Weight: others.Aggregate(p.Weight, (w, o) => w * o.Model.Given(o.Value, p.Size)))).ToList();
        var most = points.Select(p => p.Weight).DefaultIfEmpty(0).Max();
        points.RemoveAll(p => p.Weight <= most * Faint);
        var total = points.Sum(p => p.Weight);
        return [.. points.Select(p => (p.Size, p.Weight / total))];
    }

    // Neighbouring bins that point the same way tell the same, so they are one.
    static double[][] Joined(double[][] bins, double tolerance)
    {
        var joined = new List<double[]>();
        foreach (var bin in bins)
        {
            if (bin.Sum() <= 0) continue;
            if (joined.Count > 0 && Alike(joined[^1], bin, tolerance)) joined[^1] = [.. joined[^1].Zip(bin, (a, b) => a + b)];
            else joined.Add(bin);
        }

        return [.. joined];
    }

    static bool Alike(double[] a, double[] b, double tolerance)
    {
        var (sumA, sumB) = (a.Sum(), b.Sum());
        for (var i = 0; i < a.Length; i++)
        {
            if (Math.Abs((a[i] / sumA) - (b[i] / sumB)) > tolerance) return false;
        }

        return true;
    }

    static IEnumerable<double> Ends(SizeSpread spread, Way way)
    {
        var mean = (way.Slope * (spread.Mean ?? 0)) + way.Intercept;
        var s = Math.Sqrt((way.Uncertainty * way.Uncertainty) + (way.Slope * way.Slope * spread.Sigma * spread.Sigma));
        return [mean - (Reach * s), mean + (Reach * s)];
    }

    static double Bin(MeasuredModel model, SizeSpread spread, List<(double Size, double Weight)>? known, double low, double high)
    {
        var inside = Math.Max(0, Math.Min(high, model.Range.High + (model.Step / 2)) - Math.Max(low, model.Range.Low - (model.Step / 2)));
        var sum = model.Blunder * model.FlatStep * inside / model.Step;
        foreach (var way in model.Ways)
        {
            if (way.Share > 0) sum += way.Share * (known is { Count: > 0 } ? AtPoints(known, way, low, high) : spread.Between(Clip(low, spread, way), Clip(high, spread, way), way.Slope, way.Uncertainty));
        }

        return sum;
    }

    static double AtPoints(List<(double Size, double Weight)> points, Way way, double low, double high)
    {
        var sum = 0.0;
        foreach (var (size, weight) in points)
        {
            var middle = (way.Slope * size) + way.Intercept;
            var (from, to) = (Math.Max(-9, (low - middle) / way.Uncertainty), Math.Min(9, (high - middle) / way.Uncertainty));
            if (from < to) sum += weight * (Real.Phi(to) - Real.Phi(from));
        }

        return sum;
    }

    static double Clip(double x, SizeSpread spread, Way way)
    {
        var far = (Math.Abs(way.Slope) * (Math.Abs(spread.High) + Math.Abs(spread.Low) + (20 * spread.Sigma) + Math.Abs(spread.Mean ?? 0))) + (20 * way.Uncertainty);
        return Math.Clamp(x - way.Intercept, -far, far);
    }
}
