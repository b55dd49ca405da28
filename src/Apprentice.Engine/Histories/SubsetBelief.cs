using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Histories;

/// <summary>Beliefs for many subsets of the same findings: the message of a part is worked out once for each subset of the findings that it or the parts on it bear.</summary>
public sealed class SubsetBelief
{
    readonly Model _model;
    readonly FindingSet _findings;
    readonly Query? _query;
    readonly int[] _combos;
    readonly ulong[] _own;
    readonly ulong[] _subtree;
    readonly ulong _spine;
    readonly Dictionary<ulong, double[][]>[] _messages;
    readonly Dictionary<ulong, double[]> _rows = [];

    /// <summary>Beliefs about one variable, or about none.</summary>
    /// <param name="model">The model.</param>
    /// <param name="findings">The findings.</param>
    /// <param name="query">A variable of a part or of the spine, or null for P(findings) alone.</param>
    public SubsetBelief(Model model, FindingSet findings, Query? query)
    {
        (_model, _findings, _query) = (model, findings, query);
        var n = model.Parts.Count;
        (_combos, _own, _subtree) = (new int[n], new ulong[n], new ulong[n]);
        _messages = new Dictionary<ulong, double[][]>[n];
        _spine = findings.MembersReadingSpine;
        for (var p = n - 1; p >= 0; p--)
        {
            _messages[p] = [];
            _own[p] = _subtree[p] = findings.MembersReading(p);
            _combos[p] = query?.Part == p ? query.Values : 1;
            foreach (var child in model.Children[p])
            {
                _subtree[p] |= _subtree[child];
                _combos[p] *= _combos[child];
            }
        }
    }

    /// <summary>P(subset of the findings, value) per value of the variable; one number without a variable.</summary>
    /// <param name="subset">Findings as bits.</param>
    public double[] Joint(ulong subset)
    {
        var result = new double[_query?.Values ?? 1];
        var rows = Rows(subset & _spine);
        var roots = _model.Roots;
        var messages = new double[roots.Length][][];
        for (var r = 0; r < roots.Length; r++) messages[r] = Message(roots[r], subset & _subtree[roots[r]]);
        for (var row = 0; row < rows.Length; row++)
        {
            var weight = rows[row];
            double[]? vector = null;
            for (var r = 0; r < roots.Length; r++)
            {
                var message = messages[r][_model.Groups[roots[r]].GroupOfRow[row]];
                if (_combos[roots[r]] == 1) weight *= message[0];
                else vector = message;
            }

            if (vector is null) result[_query is { Part: < 0 } spine ? spine.ValueOf[row] : 0] += weight;
            else for (var v = 0; v < result.Length; v++) result[v] += weight * vector[v];
        }

        return result;
    }

    /// <summary>P(subset of the findings).</summary>
    public double Total(ulong subset)
    {
        var sum = 0.0;
        foreach (var p in Joint(subset)) sum += p;
        return sum;
    }

    double[] Rows(ulong subset)
    {
        if (_rows.TryGetValue(subset, out var known)) return known;
        var likely = subset == 0 ? null : _findings.Of(subset).Rows;
        var rows = new double[_model.Weights.Length];
        for (var i = 0; i < rows.Length; i++) rows[i] = _model.Weights[i] * (likely is null ? 1 : likely[i]);
        return _rows[subset] = rows;
    }

    double[][] Message(int part, ulong subset)
    {
        if (_messages[part].TryGetValue(subset, out var known)) return known;
        var below = new double[_model.Parts.Count][][];
        foreach (var child in _model.Children[part]) below[child] = Message(child, subset & _subtree[child]);
        var mine = subset & _own[part];
        var states = mine == 0 ? null : _findings.Of(mine).Parts[part];
        return _messages[part][subset] = Messages.Of(_model, part, states, _query?.Part == part ? _query : null, null, below, _combos);
    }
}
