using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Evidence;

/// <summary>A table with everything worked out once for it: the order classes and the reader of its clues.</summary>
public sealed class Scene
{
    /// <summary>Makes a table ready.</summary>
    public Scene(HistoryTable table)
    {
        Table = table;
        Reader = new ClueReader(table);
        Classes = [.. table.Topic.Parts.Select(p => OrderClasses.Of(table.Topic, p))];
        Nothing = Likelihood.None(table.Topic.Parts.Count);
    }

    /// <summary>The histories.</summary>
    public HistoryTable Table { get; }

    /// <summary>The reader of clues.</summary>
    public ClueReader Reader { get; }

    /// <summary>Order classes per part.</summary>
    public IReadOnlyList<OrderClasses> Classes { get; }

    /// <summary>No findings.</summary>
    public Likelihood Nothing { get; }

    /// <summary>The class of a part as a variable.</summary>
    public Query ClassQuery(int part) => Classes[part].Query(part, Table.States[part]);

    /// <summary>P(findings and class) per class of a part.</summary>
    public double[] ClassWeights(int part, Likelihood findings) => Belief.Joint(Table.Model, findings, [ClassQuery(part)]);

    /// <summary>Belief per class of a part, or null when nothing allows the findings.</summary>
    public double[]? ClassBeliefs(int part, Likelihood findings) => Normal(ClassWeights(part, findings));

    /// <summary>Belief per class of each part, all in one pass; null when nothing allows the findings.</summary>
    public IReadOnlyList<double[]>? AllClassBeliefs(Likelihood findings)
    {
        var states = Marginals.Of(Table.Model, findings);
        var all = new List<double[]>();
        for (var part = 0; part < states.Length; part++)
        {
            var weights = new double[Classes[part].Count];
            for (var s = 0; s < states[part].Length; s++) weights[Classes[part].ClassOfKind[Table.States[part][s].Kind]] += states[part][s];
            if (Normal(weights) is not { } beliefs) return null;
            all.Add(beliefs);
        }

        return all;
    }

    static double[]? Normal(double[] weights)
    {
        var total = 0.0;
        foreach (var w in weights) total += w;
        if (!(total > 0)) return null;
        for (var i = 0; i < weights.Length; i++) weights[i] /= total;
        return weights;
    }

    /// <summary>Settle level of a part.</summary>
    public double SettleAt(int part) => Table.Topic.Parts[part].SettleAt;
}
