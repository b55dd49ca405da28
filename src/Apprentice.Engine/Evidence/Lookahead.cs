using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Evidence;

/// <summary>What one more check, or a pair of them, would bring.</summary>
sealed class Lookahead
{
    readonly Scene _scene;
    readonly FindingSet _set;
    readonly IReadOnlyList<int> _parts;
    readonly IReadOnlyList<int[]> _combinations;
    readonly int[] _live;
    readonly IReadOnlyList<LineLosses> _losses;
    readonly int[][] _classOf;
    readonly int[] _unsettledKey;
    readonly int _unsettledKeys;
    readonly double _total;

    /// <summary>Looks ahead from a set of findings.</summary>
    /// <param name="scene">The topic.</param>
    /// <param name="set">The findings.</param>
    /// <param name="parts">Parts asked about, ascending.</param>
    /// <param name="unsettled">Those of them that are not settled.</param>
    /// <param name="losses">Losses over the combinations of the parts' classes.</param>
    public Lookahead(Scene scene, FindingSet set, IReadOnlyList<int> parts, IReadOnlyList<int> unsettled, IReadOnlyList<LineLosses> losses)
    {
        (_scene, _set, _parts) = (scene, set, parts);
        _combinations = Losses.Combinations(scene, parts);
        var joint = Belief.Joint(scene.Table.Model, set.All, [.. parts.Select(scene.ClassQuery)]);
        _live = [.. Enumerable.Range(0, joint.Length).Where(c => joint[c] > 0)];
        _losses = [.. losses.Select(l => l.Over(_live))];
        _classOf = [.. parts.Select((_, i) => _live.Select(c => _combinations[c][i]).ToArray())];
        (_unsettledKey, _unsettledKeys) = Keys(unsettled);
        _total = Belief.Total(scene.Table.Model, set.All);
        Doubt = Entropy(joint);
    }

    /// <summary>Entropy of the unsettled parts, bits: no check can tell more.</summary>
    public double Doubt { get; }

    /// <summary>What a single check brings.</summary>
    public Prospect Single(Outcomes x) => Judge(Weigh(x, null), x.Fine, null);

    /// <summary>What two checks bring together.</summary>
    public Prospect Pair(Outcomes x, Outcomes y) => Judge(Weigh(x, y), x.Coarse, y.Coarse);

    double Entropy(double[] joint)
    {
        var keyed = new double[_unsettledKeys];
        for (var i = 0; i < _live.Length; i++) keyed[_unsettledKey[i]] += joint[_live[i]] / _total;
        return -keyed.Where(k => k > 0).Sum(k => k * Real.Log2(k));
    }

    (int[] Key, int Keys) Keys(IReadOnlyList<int> unsettled)
    {
        var ids = new Dictionary<string, int>(StringComparer.Ordinal);
        var key = new int[_live.Length];
        for (var c = 0; c < key.Length; c++)
        {
            var text = string.Join(',', unsettled.Select(p => _combinations[_live[c]][_parts.ToList().IndexOf(p)]));
            if (!ids.TryGetValue(text, out var id)) id = ids[text] = ids.Count;
            key[c] = id;
        }

        return (key, ids.Count);
    }

    // P(findings, combination, column of x, column of y), as [combination][x × y].
    double[][] Weigh(Outcomes x, Outcomes? y)
    {
        var yColumns = y?.Columns ?? 1;
        var variables = new List<Variable>();
        if (Spine(x, y) is { } spine) variables.Add(spine);
        foreach (var part in _parts.Append(x.Part).Append(y?.Part ?? -1).Where(p => p >= 0).Distinct().Order()) variables.Add(OfPart(part, x, y));
        var joint = Belief.Joint(_scene.Table.Model, _set.All, [.. variables.Select(v => v.Query)]);
        var result = new double[_combinations.Count][];
        for (var c = 0; c < result.Length; c++) result[c] = new double[x.Columns * yColumns];
        for (var i = 0; i < joint.Length; i++)
        {
            if (joint[i] == 0) continue;
            var (rest, combination, column) = (i, 0, 0);
            for (var v = variables.Count - 1; v >= 0; v--)
            {
                var value = rest % variables[v].Query.Values;
                rest /= variables[v].Query.Values;
                combination += variables[v].Combination[value];
                column += variables[v].Column[value];
            }

            result[combination][column] += joint[i];
        }

        return result;
    }

    static Variable? Spine(Outcomes x, Outcomes? y)
    {
        var yColumns = y?.Columns ?? 1;
        var ofX = x.Part < 0 ? x.ColumnOf : null;
        var ofY = y is { Part: < 0 } ? y.ColumnOf : null;
        if ((ofX ?? ofY) is not { } some) return null;
        var values = x.Columns * yColumns;
        var valueOf = some.Select((_, row) => ((ofX?[row] ?? 0) * yColumns) + (ofY?[row] ?? 0)).ToArray();
        return new Variable(new Query(-1, values, valueOf), new int[values], [.. Enumerable.Range(0, values)]);
    }

    // A part that is read is asked about by state, since the clue may see more than the class.
    Variable OfPart(int part, Outcomes x, Outcomes? y)
    {
        var states = _scene.Table.States[part];
        var classes = _scene.Classes[part];
        var at = _parts.ToList().IndexOf(part);
        var stride = at < 0 ? 0 : _parts.Skip(at + 1).Aggregate(1, (product, p) => product * _scene.Classes[p].Count);
        if (x.Part != part && y?.Part != part)
            return new Variable(_scene.ClassQuery(part), [.. Enumerable.Range(0, classes.Count).Select(c => c * stride)], new int[classes.Count]);
        var yColumns = y?.Columns ?? 1;
        var column = states.Select((_, s) => ((x.Part == part ? x.ColumnOf[s] : 0) * yColumns) + (y?.Part == part ? y.ColumnOf[s] : 0));
        return new Variable(
            new Query(part, states.Count, [.. Enumerable.Range(0, states.Count)]), [.. states.Select(s => classes.ClassOfKind[s.Kind] * stride)], [.. column]);
    }

    /// <summary>A variable of the joint distribution, with what each value adds to the index of the combination and of the column.</summary>
    sealed record Variable(Query Query, int[] Combination, int[] Column);

    // Only combinations that the findings leave possible are gone through: all others weigh 0.
    Prospect Judge(double[][] weighed, double[][] xs, double[][]? ys)
    {
        var joint = _live.Select(c => weighed[c]).ToArray();
        var bits = 0.0;
        var settles = 0.0;
        var after = new double[_losses.Count];
        var prior = new double[_unsettledKeys];
        for (var c = 0; c < joint.Length; c++)
        {
            foreach (var w in joint[c]) prior[_unsettledKey[c]] += w / _total;
        }

        var weights = new double[joint.Length];
        var keyed = new double[_unsettledKeys];
        var yColumns = ys is null ? 1 : ys[0].Length;
        var filled = joint.Select(Filled).ToArray();
        foreach (var x in xs)
        {
            var partial = Contract(joint, filled, x, yColumns);
            var open = partial.Select(Filled).ToArray();
            foreach (var y in ys ?? [[1.0]])
            {
                var p = 0.0;
                Array.Clear(keyed);
                for (var c = 0; c < weights.Length; c++)
                {
                    weights[c] = Dot(partial[c], y, open[c]) / _total;
                    keyed[_unsettledKey[c]] += weights[c];
                    p += weights[c];
                }

                if (p < 1e-15) continue;
                bits += Information(keyed, prior, p);
                if (Settles(weights, p)) settles += p;
                for (var l = 0; l < after.Length; l++) after[l] += _losses[l].Least(weights);
            }
        }

        return new Prospect(Math.Max(0, bits), Math.Min(1, settles), after);
    }

    // Most kinds have few columns that are not 0, and what is 0 adds nothing.
    static int[] Filled(double[] row) => [.. Enumerable.Range(0, row.Length).Where(i => row[i] != 0)];

    static double[][] Contract(double[][] joint, int[][] filled, double[] x, int yColumns)
    {
        var result = new double[joint.Length][];
        for (var c = 0; c < joint.Length; c++)
        {
            result[c] = new double[yColumns];
            foreach (var at in filled[c]) result[c][at % yColumns] += x[at / yColumns] * joint[c][at];
        }

        return result;
    }

    static double Dot(double[] left, double[] right, int[] filled)
    {
        var sum = 0.0;
        foreach (var i in filled) sum += left[i] * right[i];
        return sum;
    }

    static double Information(double[] keyed, double[] prior, double p)
    {
        var bits = 0.0;
        for (var k = 0; k < keyed.Length; k++)
        {
            if (keyed[k] > 0) bits += keyed[k] * Real.Log2(keyed[k] / (prior[k] * p));
        }

        return bits;
    }

    bool Settles(double[] weights, double total)
    {
        for (var i = 0; i < _parts.Count; i++)
        {
            var classes = new double[_scene.Classes[_parts[i]].Count];
            var classOf = _classOf[i];
            for (var c = 0; c < weights.Length; c++) classes[classOf[c]] += weights[c];
            if (classes.Max() < _scene.SettleAt(_parts[i]) * total) return false;
        }

        return true;
    }
}

/// <summary>What a check would bring.</summary>
/// <param name="Bits">Mutual information with the unsettled parts.</param>
/// <param name="Settles">Probability that every part asked about is settled then.</param>
/// <param name="After">Expected least loss then, per order line, minutes not counted.</param>
sealed record Prospect(double Bits, double Settles, IReadOnlyList<double> After);
