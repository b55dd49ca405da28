namespace Apprentice.Engine.Histories;

/// <summary>The message of a part to its host (or to the spine): per group of rows, per kind of the host, per combination of the values queried below.</summary>
static class Messages
{
    /// <summary>Messages of a part for all groups of rows.</summary>
    /// <param name="model">The model.</param>
    /// <param name="part">The part.</param>
    /// <param name="states">P(findings | state), or null without findings.</param>
    /// <param name="query">The variable asked about at this part, or null.</param>
    /// <param name="allowed">Which tags of an entry count, or null for all.</param>
    /// <param name="below">Messages of the parts that sit on it, by index of part.</param>
    /// <param name="combos">Number of combinations per part.</param>
    public static double[][] Of(
        Model model, int part, double[]? states, Query? query, Func<ulong, bool>? allowed, double[][]?[] below, int[] combos)
    {
        var it = model.Parts[part];
        var hostKinds = it.Host < 0 ? 1 : model.Parts[it.Host].Kinds;
        var first = model.Groups[part].FirstRow;
        var result = new double[first.Length][];
        var simple = model.Children[part].Length == 0 && query is null && allowed is null;
        for (var g = 0; g < result.Length; g++)
        {
            var table = it.Tables[it.TableOfRow[first[g]]];
            result[g] = simple ? Simple(table, states, hostKinds) : Full(model, part, first[g], states, query, allowed, below, combos, hostKinds);
        }

        return result;
    }

    static double[] Simple(PartTable table, double[]? states, int hostKinds)
    {
        var message = new double[hostKinds];
        if (table.Shares.Length == 1)
        {
            Array.Fill(message, Dot(table.Shares[0], table.State, states));
            return message;
        }

        for (var h = 0; h < hostKinds; h++) message[h] = Dot(table.Shares[h], table.State, states);
        return message;
    }

    static double Dot(double[] shares, int[] stateOf, double[]? states)
    {
        var sum = 0.0;
        for (var e = 0; e < shares.Length; e++) sum += states is null ? shares[e] : shares[e] * states[stateOf[e]];
        return sum;
    }

    static double[] Full(
        Model model, int part, int row, double[]? states, Query? query, Func<ulong, bool>? allowed, double[][]?[] below, int[] combos, int hostKinds)
    {
        var table = model.Parts[part].Tables[model.Parts[part].TableOfRow[row]];
        var size = combos[part];
        var message = new double[hostKinds * size];
        var inner = size / (query?.Values ?? 1);
        for (var e = 0; e < table.Kind.Length; e++)
        {
            var factor = states is null ? 1 : states[table.State[e]];
            if (factor == 0 || (allowed is not null && !allowed(table.Tags[e]))) continue;
            var branch = Branches(model, part, row, table.Kind[e], below, combos);
            var at = query is null ? 0 : query.ValueOf[table.State[e]] * inner;
            for (var h = 0; h < hostKinds; h++)
            {
                var share = factor * table.Given(h)[e];
                if (branch is null) message[(h * size) + at] += share;
                else for (var c = 0; c < inner; c++) message[(h * size) + at + c] += share * branch[c];
            }
        }

        return message;
    }

    // The product of what sits on a part, as a vector over the combinations below it; null for 1.
    static double[]? Branches(Model model, int part, int row, int kind, double[][]?[] below, int[] combos)
    {
        double[]? product = null;
        foreach (var child in model.Children[part])
        {
            if (below[child] is { } messages)
                product = Outer(product, messages[model.Groups[child].GroupOfRow[row]].AsSpan(kind * combos[child], combos[child]));
        }

        return product;
    }

    /// <summary>All products of two vectors, the right one changing fastest.</summary>
    public static double[] Outer(double[]? left, ReadOnlySpan<double> right)
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
