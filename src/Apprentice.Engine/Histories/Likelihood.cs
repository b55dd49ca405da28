namespace Apprentice.Engine.Histories;

/// <summary>How likely findings are: a factor per spine row, and one per state of each part.</summary>
/// <param name="Rows">P(findings | row) up to a common factor, or null when no finding reads the spine.</param>
/// <param name="Parts">Per part, P(findings | state), or null when no finding reads the part.</param>
public sealed record Likelihood(double[]? Rows, IReadOnlyList<double[]?> Parts)
{
    /// <summary>No finding at all.</summary>
    /// <param name="parts">Number of parts.</param>
    public static Likelihood None(int parts) => new(null, new double[]?[parts]);

    /// <summary>A finding that reads the spine.</summary>
    public static Likelihood OfRows(double[] rows, int parts) => new(rows, new double[]?[parts]);

    /// <summary>A finding that reads a part.</summary>
    public static Likelihood OfPart(int part, double[] states, int parts)
    {
        var all = new double[]?[parts];
        all[part] = states;
        return new Likelihood(null, all);
    }

    /// <summary>Both sets of findings, independent given the history.</summary>
    public Likelihood And(Likelihood other) =>
        new(Product(Rows, other.Rows), [.. Parts.Select((states, p) => Product(states, other.Parts[p]))]);

    static double[]? Product(double[]? left, double[]? right)
    {
        if (left is null || right is null) return left ?? right;
        var product = new double[left.Length];
        for (var i = 0; i < product.Length; i++) product[i] = left[i] * right[i];
        return product;
    }
}
