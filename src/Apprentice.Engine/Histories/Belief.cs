namespace Apprentice.Engine.Histories;

/// <summary>Message passing on a model: each part is summed out on its own per spine row; parts are never multiplied out.</summary>
public static class Belief
{
    /// <summary>Which histories count: those with all required tags and none of the forbidden ones.</summary>
    /// <param name="Required">Tags that must be there, anywhere in the history.</param>
    /// <param name="Forbidden">Tags that must not be there.</param>
    public sealed record Story(ulong Required, ulong Forbidden)
    {
        /// <summary>Every history.</summary>
        public static Story Any { get; } = new(0, 0);
    }

    /// <summary>P(findings), up to the common factor of the likelihoods; 0 when no history allows them.</summary>
    public static double Total(Model model, Likelihood findings) => Joint(model, findings, [])[0];

    /// <summary>P(findings and story).</summary>
    /// <remarks>Tags of different parts are required each at its own part; a tag is borne by the spine or by exactly one part.</remarks>
    public static double Total(Model model, Likelihood findings, Story story) => new Pass(model, findings, [], story).Run()[0];

    /// <summary>P(findings and values of the queried variables), the last variable changing fastest.</summary>
    /// <param name="model">The model.</param>
    /// <param name="findings">The findings.</param>
    /// <param name="queries">Variables: at most one of the spine, and at most one a part, the spine first, parts in ascending order.</param>
    /// <returns>As many numbers as there are combinations of values.</returns>
    public static double[] Joint(Model model, Likelihood findings, IReadOnlyList<Query> queries) =>
        new Pass(model, findings, queries, Story.Any).Run();
}

/// <summary>A variable asked about.</summary>
/// <param name="Part">Index of the part, or −1 for the spine.</param>
/// <param name="Values">Number of values.</param>
/// <param name="ValueOf">Value per state of the part, or per row of the spine.</param>
public sealed record Query(int Part, int Values, int[] ValueOf);

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
            messages[p] = Messages(p, messages);
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

    double[][] Messages(int part, double[][][] messages)
    {
        var groups = _model.Groups[part];
        var hostKinds = _model.Parts[part].Host < 0 ? 1 : _model.Parts[_model.Parts[part].Host].Kinds;
        var result = new double[groups.FirstRow.Length][];
        for (var g = 0; g < result.Length; g++) result[g] = Message(part, groups.FirstRow[g], hostKinds, messages);
        return result;
    }

    double[] Message(int part, int row, int hostKinds, double[][][] messages)
    {
        var model = _model.Parts[part];
        var table = model.Tables[model.TableOfRow[row]];
        var combos = _combos[part];
        var message = new double[hostKinds * combos];
        var query = _queryOf[part];
        var below = combos / (query?.Values ?? 1);
        var states = _findings.Parts[part];
        for (var e = 0; e < table.Kind.Length; e++)
        {
            var factor = states is null ? 1 : states[table.State[e]];
            if (factor == 0 || !Allowed(part, table.Tags[e])) continue;
            var branch = Branches(part, row, table.Kind[e], messages);
            var at = query is null ? 0 : query.ValueOf[table.State[e]] * below;
            for (var h = 0; h < hostKinds; h++)
            {
                var share = factor * table.Given(h)[e];
                if (share == 0) continue;
                if (branch is null) message[(h * combos) + at] += share;
                else for (var c = 0; c < below; c++) message[(h * combos) + at + c] += share * branch[c];
            }
        }

        return message;
    }

    // The product of what sits on a part, as a vector over the combinations below it; null for 1.
    double[]? Branches(int part, int row, int kind, double[][][] messages)
    {
        double[]? product = null;
        foreach (var child in _model.Children[part])
        {
            var message = messages[child][_model.Groups[child].GroupOfRow[row]];
            var size = _combos[child];
            product = Outer(product, message.AsSpan(kind * size, size));
        }

        return product;
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
            else product = Outer(product, message);
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

    bool Allowed(int part, ulong tags) =>
        _story == Belief.Story.Any || ((_story.Required & _partTags[part] & ~tags) == 0 && (_story.Forbidden & tags) == 0);

    bool AllowedRow(ulong tags)
    {
        if (_story == Belief.Story.Any) return true;
        var borne = 0UL;
        foreach (var part in _partTags) borne |= part;
        return (_story.Required & ~borne & ~tags) == 0 && (_story.Forbidden & tags) == 0;
    }

    static double[] Outer(double[]? left, ReadOnlySpan<double> right)
    {
        if (left is null) return right.ToArray();
        var product = new double[left.Length * right.Length];
        for (var i = 0; i < left.Length; i++)
        {
            for (var j = 0; j < right.Length; j++) product[(i * right.Length) + j] = left[i] * right[j];
        }

        return product;
    }
}
