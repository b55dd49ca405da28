using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>What a reading is expected to be, given other findings.</summary>
sealed class Predictive
{
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

    /// <summary>All steps of the tool.</summary>
    public IEnumerable<double> Steps()
    {
        var first = Math.Floor((_model.Range.Low / _model.Step) + 0.5);
        var last = Math.Floor((_model.Range.High / _model.Step) + 0.5);
        for (var k = first; k <= last; k++) yield return k * _model.Step;
    }

    // The true size after the other readings, as weighted points over all states; points of no weight are dropped.
    static List<(double Size, double Weight)> Grid(
        List<(double Weight, SizeSpread Spread)> states, List<(MeasuredModel Model, double Value)> others)
    {
        var precision = others.Sum(o => o.Model.Ways.Max(w => w.Slope * w.Slope / (w.Uncertainty * w.Uncertainty)));
        var points = new List<(double Size, double Weight)>();
        foreach (var (weight, spread) in states)
        {
            var width = 1 / Math.Sqrt(precision + (spread.Mean is null ? 0 : 1 / (spread.Sigma * spread.Sigma)));
            foreach (var (size, w) in spread.Points(width))
                points.Add((size, others.Aggregate(weight * w, (product, o) => product * o.Model.Given(o.Value, size))));
        }

        var total = points.Sum(p => p.Weight);
        return [.. points.Where(p => p.Weight > total * 1e-12).Select(p => (p.Size, p.Weight / total))];
    }
}
