namespace Apprentice.Engine.Histories;

/// <summary>The states of all parts in one pass up and one down, where <see cref="Belief.Joint"/> would need a pass each.</summary>
public sealed class Marginals
{
    readonly Model _model;
    readonly Likelihood _findings;
    readonly double[][] _up;
    readonly double[][] _down;

    Marginals(Model model, Likelihood findings)
    {
        (_model, _findings) = (model, findings);
        _up = new double[model.Parts.Count][];
        _down = new double[model.Parts.Count][];
        for (var p = model.Parts.Count - 1; p >= 0; p--)
        {
            var hostKinds = HostKinds(model.Parts[p]);
            _up[p] = new double[model.Groups[p].FirstRow.Length * hostKinds];
            _down[p] = new double[_up[p].Length];
            Rise(p, hostKinds);
        }
    }

    /// <summary>P(findings and state), per part and state.</summary>
    /// <param name="model">The model.</param>
    /// <param name="findings">The findings.</param>
    /// <returns>Parts × states of the part; each part's numbers add up to P(findings).</returns>
    public static double[][] Of(Model model, Likelihood findings)
    {
        var it = new Marginals(model, findings);
        it.FromRows();
        var result = new double[model.Parts.Count][];
        for (var p = 0; p < result.Length; p++) result[p] = it.OfPart(p);
        return result;
    }

    int HostKinds(PartModel part) => part.Host < 0 ? 1 : _model.Parts[part.Host].Kinds;

    // P(findings on a part and on all that sits on it | group, kind of the host).
    void Rise(int part, int hostKinds)
    {
        var (starts, shares, states, kinds) = _model.Flat[part];
        var likely = _findings.Parts[part];
        var up = _up[part];
        var alone = _model.Children[part].Length == 0;
        for (var t = 0; t < up.Length; t++)
        {
            var sum = 0.0;
            for (var e = starts[t]; e < starts[t + 1]; e++)
            {
                var share = likely is null ? shares[e] : shares[e] * likely[states[e]];
                sum += alone ? share : share * Above(part, _model.Groups[part].FirstRow[t / hostKinds], kinds[e]);
            }

            up[t] = sum;
        }
    }

    // The product of what all that sits on a part says, given its kind.
    double Above(int part, int row, int kind)
    {
        var product = 1.0;
        foreach (var child in _model.Children[part]) product *= _up[child][At(child, row, kind)];
        return product;
    }

    int At(int child, int row, int kind) => (_model.Groups[child].GroupOfRow[row] * _model.Parts[_model.Parts[child].Host].Kinds) + kind;

    // What the rows and the other roots say, per group of each root: the products of those before and of those after it.
    void FromRows()
    {
        var roots = _model.Roots;
        var groups = new int[roots.Length][];
        var (up, down) = (new double[roots.Length][], new double[roots.Length][]);
        for (var r = 0; r < roots.Length; r++) (groups[r], up[r], down[r]) = (_model.Groups[roots[r]].GroupOfRow, _up[roots[r]], _down[roots[r]]);
        var after = new double[roots.Length];
        var (weights, likely) = (_model.Weights, _findings.Rows);
        for (var row = 0; row < weights.Length; row++)
        {
            var before = likely is null ? weights[row] : weights[row] * likely[row];
            if (before == 0) continue;
            var product = 1.0;
            for (var r = up.Length - 1; r >= 0; r--)
            {
                after[r] = product;
                product *= up[r][groups[r][row]];
            }

            for (var r = 0; r < up.Length; r++)
            {
                var group = groups[r][row];
                down[r][group] += before * after[r];
                before *= up[r][group];
            }
        }
    }

    // Adds up the states of a part, and passes on to the parts that sit on it what all the others say.
    double[] OfPart(int part)
    {
        var (starts, shares, stateOf, kinds) = _model.Flat[part];
        var states = new double[_model.Parts[part].States];
        var likely = _findings.Parts[part];
        var hostKinds = HostKinds(_model.Parts[part]);
        var alone = _model.Children[part].Length == 0;
        for (var t = 0; t < _down[part].Length; t++)
        {
            var weight = _down[part][t];
            if (weight == 0) continue;
            for (var e = starts[t]; e < starts[t + 1]; e++)
            {
                var share = weight * shares[e];
                states[stateOf[e]] += alone ? share : Descend(part, _model.Groups[part].FirstRow[t / hostKinds], kinds[e], share * (likely is null ? 1 : likely[stateOf[e]]));
            }
        }

        if (!alone || likely is null) return states;
        for (var s = 0; s < states.Length; s++) states[s] *= likely[s];
        return states;
    }

    double Descend(int part, int row, int kind, double share)
    {
        var children = _model.Children[part];
        foreach (var child in children)
        {
            var others = share;
            foreach (var other in children) others *= other == child ? 1 : _up[other][At(other, row, kind)];
            _down[child][At(child, row, kind)] += others;
        }

        return share * Above(part, row, kind);
    }
}
