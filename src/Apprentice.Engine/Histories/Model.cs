namespace Apprentice.Engine.Histories;

/// <summary>The numbers of a set of histories: a spine of rows, and parts that are independent given the row and their host.</summary>
/// <remarks>A small published network is a spine without parts. A topic becomes a model in <see cref="HistoryTable"/>.</remarks>
public sealed class Model
{
    /// <summary>A model of the given rows and parts.</summary>
    /// <param name="weights">Weight per spine row, not negative, adding up to 1.</param>
    /// <param name="tags">Story tags per row as bits, or empty when there are none.</param>
    /// <param name="parts">Parts, hosts before the parts that sit on them.</param>
    public Model(double[] weights, ulong[] tags, IReadOnlyList<PartModel> parts)
    {
        Weights = weights;
        Tags = tags.Length == 0 ? new ulong[weights.Length] : tags;
        Parts = parts;
        Children = [.. parts.Select((_, p) => Enumerable.Range(0, parts.Count).Where(c => parts[c].Host == p).ToArray())];
        Roots = [.. Enumerable.Range(0, parts.Count).Where(p => parts[p].Host < 0)];
        Groups = new SubtreeGroups[parts.Count];
        for (var p = parts.Count - 1; p >= 0; p--) Groups[p] = SubtreeGroups.Of(this, p);
        Flat = [.. parts.Select((part, p) => FlatTables.Of(part, part.Host < 0 ? 1 : parts[part.Host].Kinds, Groups[p].FirstRow))];
    }

    /// <summary>Weight per spine row.</summary>
    public double[] Weights { get; }

    /// <summary>Story tags per spine row.</summary>
    public ulong[] Tags { get; }

    /// <summary>The parts, hosts first.</summary>
    public IReadOnlyList<PartModel> Parts { get; }

    internal int[][] Children { get; }

    internal int[] Roots { get; }

    internal SubtreeGroups[] Groups { get; }

    internal FlatTables[] Flat { get; }
}

/// <summary>One part: its table per spine row.</summary>
/// <param name="Host">Index of the host part, or −1.</param>
/// <param name="Kinds">Number of kinds.</param>
/// <param name="States">Number of states that its clues can tell apart.</param>
/// <param name="Tables">Distinct tables.</param>
/// <param name="TableOfRow">Index of the table per spine row.</param>
public sealed record PartModel(int Host, int Kinds, int States, IReadOnlyList<PartTable> Tables, int[] TableOfRow);

/// <summary>A distribution over entries: kind, state for clues, and own events.</summary>
/// <param name="Kind">Kind per entry.</param>
/// <param name="State">State per entry.</param>
/// <param name="Tags">Story tags per entry.</param>
/// <param name="Built">Kind as built per entry.</param>
/// <param name="Shares">Probability per kind of the host (one row without a host) and entry; each row adds up to 1.</param>
public sealed record PartTable(int[] Kind, int[] State, ulong[] Tags, int[] Built, double[][] Shares)
{
    /// <summary>The shares for a kind of the host.</summary>
    /// <param name="hostKind">Kind of the host; any number without a host.</param>
    public double[] Given(int hostKind) => Shares[Shares.Length == 1 ? 0 : hostKind];
}

/// <summary>Spine rows that agree in the tables of a part and of all that sits on it: they share its message.</summary>
sealed class SubtreeGroups
{
    SubtreeGroups(int[] groupOfRow, int[] firstRow) => (GroupOfRow, FirstRow) = (groupOfRow, firstRow);

    public int[] GroupOfRow { get; }

    public int[] FirstRow { get; }

    public static SubtreeGroups Of(Model model, int part)
    {
        var ids = new Dictionary<string, int>(StringComparer.Ordinal);
        var first = new List<int>();
        var groups = new int[model.Weights.Length];
        for (var row = 0; row < groups.Length; row++)
        {
            var key = string.Join(',', model.Children[part].Select(c => model.Groups[c].GroupOfRow[row]).Prepend(model.Parts[part].TableOfRow[row]));
            if (!ids.TryGetValue(key, out var id))
            {
                id = ids[key] = first.Count;
                first.Add(row);
            }

            groups[row] = id;
        }

        return new SubtreeGroups(groups, [.. first]);
    }
}

/// <summary>The tables of a part one after another in memory, by group of rows and kind of the host.</summary>
/// <param name="Starts">Where each table begins, and where the last one ends: groups × kinds of the host + 1.</param>
/// <param name="Shares">Probabilities.</param>
/// <param name="States">State of each.</param>
/// <param name="Kinds">Kind of each.</param>
sealed record FlatTables(int[] Starts, double[] Shares, int[] States, int[] Kinds)
{
    public static FlatTables Of(PartModel part, int hostKinds, int[] firstRow)
    {
        var starts = new List<int> { 0 };
        var shares = new List<double>();
        var states = new List<int>();
        var kinds = new List<int>();
        foreach (var row in firstRow)
        {
            var table = part.Tables[part.TableOfRow[row]];
            for (var h = 0; h < hostKinds; h++)
            {
                shares.AddRange(table.Given(h));
                states.AddRange(table.State);
                kinds.AddRange(table.Kind);
                starts.Add(shares.Count);
            }
        }

        return new FlatTables([.. starts], [.. shares], [.. states], [.. kinds]);
    }
}
