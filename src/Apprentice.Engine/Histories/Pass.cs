namespace Apprentice.Engine.Histories;

/// <summary>One run of message passing.</summary>
sealed class Pass
{
    readonly Model _model;
    readonly Likelihood _findings;
    readonly Query?[] _queryOf;
    readonly Query? _spine;
    readonly Belief.Story _story;
    readonly ulong[] _partTags;
    readonly int[] _combos;
    readonly ulong _borne;

    public Pass(Model model, Likelihood findings, IReadOnlyList<Query> queries, Belief.Story story)
    {
        (_model, _findings, _story) = (model, findings, story);
        _queryOf = new Query?[model.Parts.Count];
        foreach (var query in queries)
        {
            if (query.Part < 0) _spine = query;
            else _queryOf[query.Part] = query;
        }

        _partTags = story == Belief.Story.Any ? [] : [.. model.Parts.Select(TagsOf)];
        foreach (var tags in _partTags) _borne |= tags;
        _combos = new int[model.Parts.Count];
    }

    public double[] Run()
    {
        var messages = new double[_model.Parts.Count][][];
        for (var p = _model.Parts.Count - 1; p >= 0; p--)
        {
            var combos = _queryOf[p]?.Values ?? 1;
            foreach (var child in _model.Children[p]) combos *= _combos[child];
            _combos[p] = combos;
            messages[p] = Messages.Of(_model, p, _findings.Parts[p], _queryOf[p], AllowedEntries(p), messages, _combos);
        }

        return Ordered(OverRows(messages));
    }

    static ulong TagsOf(PartModel part)
    {
        var all = 0UL;
        foreach (var table in part.Tables)
        {
            foreach (var tags in table.Tags) all |= tags;
        }

        return all;
    }

    Func<ulong, bool>? AllowedEntries(int part)
    {
        if (_story == Belief.Story.Any) return null;
        var required = _story.Required & _partTags[part];
        var forbidden = _story.Forbidden;
        return tags => (required & ~tags) == 0 && (forbidden & tags) == 0;
    }

    double[] OverRows(double[][][] messages)
    {
        var combos = 1;
        foreach (var root in _model.Roots) combos *= _combos[root];
        var result = new double[combos * (_spine?.Values ?? 1)];
        for (var row = 0; row < _model.Weights.Length; row++)
        {
            var weight = _model.Weights[row] * (_findings.Rows is null ? 1 : _findings.Rows[row]);
            if (weight == 0 || !AllowedRow(_model.Tags[row])) continue;
            var at = _spine is null ? 0 : _spine.ValueOf[row] * combos;
            if (combos == 1) result[at] += weight * RowFactor(row, messages);
            else AddRow(result.AsSpan(at, combos), weight, row, messages);
        }

        return result;
    }

    double RowFactor(int row, double[][][] messages)
    {
        var factor = 1.0;
        foreach (var root in _model.Roots) factor *= messages[root][_model.Groups[root].GroupOfRow[row]][0];
        return factor;
    }

    void AddRow(Span<double> into, double weight, int row, double[][][] messages)
    {
        double[]? product = null;
        foreach (var root in _model.Roots)
        {
            var message = messages[root][_model.Groups[root].GroupOfRow[row]];
            if (message.Length == 1) weight *= message[0];
            else product = Messages.Outer(product, message);
        }

        if (product is null) return;
        for (var c = 0; c < product.Length; c++) into[c] += weight * product[c];
    }

    // Messages nest by the tree; the caller wants parts in ascending order.
    double[] Ordered(double[] nested)
    {
        var order = new List<int>();
        foreach (var root in _model.Roots) Visit(root, order);
        var sorted = order.Order().ToList();
        if (order.SequenceEqual(sorted)) return nested;
        var result = new double[nested.Length];
        var inner = order.Aggregate(1, (size, p) => size * ValuesOf(p));
        var values = new int[_model.Parts.Count];
        for (var i = 0; i < nested.Length; i++)
        {
            var rest = i % inner;
            for (var k = order.Count - 1; k >= 0; k--)
            {
                values[order[k]] = rest % ValuesOf(order[k]);
                rest /= ValuesOf(order[k]);
            }

            var target = sorted.Aggregate(i / inner, (index, p) => (index * ValuesOf(p)) + values[p]);
            result[target] += nested[i];
        }

        return result;
    }

    int ValuesOf(int part) => _queryOf[part]?.Values ?? 1;

    void Visit(int part, List<int> order)
    {
        if (_queryOf[part] is not null) order.Add(part);
        foreach (var child in _model.Children[part]) Visit(child, order);
    }

    bool AllowedRow(ulong tags)
    {
        if (_story == Belief.Story.Any) return true;
        return (_story.Required & ~_borne & ~tags) == 0 && (_story.Forbidden & tags) == 0;
    }
}
