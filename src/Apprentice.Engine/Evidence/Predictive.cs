using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>What a reading is expected to be, given other findings.</summary>
sealed class Predictive
{
    const double Reach = 6;
    const double Faint = 1e-9;
    readonly MeasuredModel _model;
    readonly List<(double Weight, SizeSpread Spread)> _states;
    readonly List<(double Size, double Weight)> _grid;

    Predictive(MeasuredModel model, List<(double Weight, SizeSpread Spread)> states, List<(double Size, double Weight)> grid) =>
        (_model, _states, _grid) = (model, states, grid);

    /// <summary>What the i-th finding is expected to be, given all the others.</summary>
    public static Predictive Of(Scene scene, IReadOnlyList<Finding> findings, FindingSet set, int i)
    {
        var table = scene.Table;
        var dimension = ((Shows.Measured)table.Names.ClueOf(findings[i].Clue).Shows).Dimension;
        var size = table.Topic.Dimensions[table.Names.Dimension(dimension)];
        var part = table.Names.Part(size.Part);
        var same = Enumerable.Range(0, findings.Count).Where(j => j != i && findings[j].Seen is Seen.Reading
            && ((Shows.Measured)table.Names.ClueOf(findings[j].Clue).Shows).Dimension == dimension).ToList();
        var rest = set.Everything & ~(1UL << i);
        foreach (var j in same) rest &= ~(1UL << j);
        var weights = Belief.Joint(table.Model, set.Of(rest), [new Query(part, table.States[part].Count, [.. Enumerable.Range(0, table.States[part].Count)])]);
        var total = weights.Sum();
        var states = weights.Select((w, s) => (Weight: w / total, Spread: scene.Reader.SpreadOf(size, table.States[part][s]))).Where(s => s.Weight > 0).ToList();
        var model = scene.Reader.ModelOf(findings[i].Clue, findings[i].Channel, findings[i].Datum);
        var others = same.Select(j => (Model: scene.Reader.ModelOf(findings[j].Clue, findings[j].Channel, findings[j].Datum), Value: ((Seen.Reading)findings[j].Seen).Millimetres)).ToList();
        return new Predictive(model, states, others.Count == 0 ? [] : Grid(states, others));
    }

    /// <summary>P(this step).</summary>
    public double At(double reading)
    {
        var half = _model.Step / 2;
        var sum = 0.0;
        if (_grid.Count == 0)
        {
            foreach (var (weight, spread) in _states) sum += weight * _model.Between(reading - half, reading + half, spread);
        }

        foreach (var (size, weight) in _grid) sum += weight * _model.Given(reading, size);
        return sum;
    }

    /// <summary>P(a step no likelier than <paramref name="mine"/>), summed over the tool's range.</summary>
    public double NoLikelierThan(double mine)
    {
        var tail = 0.0;
        foreach (var p in _grid.Count == 0 ? Steps().Select(At) : FromGrid())
        {
            if (p <= mine * (1 + 1e-9)) tail += p;
        }

        return tail;
    }

    IEnumerable<double> Steps()
    {
        var first = Math.Floor((_model.Range.Low / _model.Step) + 0.5);
        var last = Math.Floor((_model.Range.High / _model.Step) + 0.5);
        for (var k = first; k <= last; k++) yield return k * _model.Step;
    }

    // Each point of the true size is spread over the few steps within its reach.
    double[] FromGrid()
    {
        var first = Math.Floor((_model.Range.Low / _model.Step) + 0.5);
        var steps = new double[(int)(Math.Floor((_model.Range.High / _model.Step) + 0.5) - first) + 1];
        Array.Fill(steps, _model.Blunder * _model.FlatStep);
        foreach (var (size, weight) in _grid)
        {
            foreach (var way in _model.Ways.Where(w => w.Share > 0)) Spread(steps, first, way, (way.Slope * size) + way.Intercept, weight * way.Share);
        }

        return steps;
    }

    void Spread(double[] steps, double first, Way way, double middle, double weight)
    {
        var from = Math.Max(0, (int)Math.Floor(((middle - (Reach * way.Uncertainty)) / _model.Step) - first));
        var to = Math.Min(steps.Length - 1, (int)Math.Ceiling(((middle + (Reach * way.Uncertainty)) / _model.Step) - first));
        var before = Real.Phi((((from + first - 0.5) * _model.Step) - middle) / way.Uncertainty);
        for (var k = from; k <= to; k++)
        {
            var after = Real.Phi((((k + first + 0.5) * _model.Step) - middle) / way.Uncertainty);
            steps[k] += weight * (after - before);
            before = after;
        }
    }

    // The true size after the other readings, as weighted points over all states; points of no weight are dropped.
    static List<(double Size, double Weight)> Grid(
        List<(double Weight, SizeSpread Spread)> states, List<(MeasuredModel Model, double Value)> others)
    {
        var points = new List<(double Size, double Weight)>();
        foreach (var (weight, spread) in states)
        {
            foreach (var (size, w) in SizePoints.Of(spread, others).Points)
                points.Add((size, others.Aggregate(weight * w, (product, o) => product * o.Model.Given(o.Value, size))));
        }

        var total = points.Sum(p => p.Weight);
        return [.. points.Where(p => p.Weight > total * Faint).Select(p => (p.Size, p.Weight / total))];
    }
}
