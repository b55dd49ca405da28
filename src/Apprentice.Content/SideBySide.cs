namespace Apprentice.Content;

/// <summary>Works many things out on all processors at once.</summary>
public static class SideBySide
{
    /// <summary>The result for each thing, in the order of the things.</summary>
    /// <typeparam name="T">Kind of a thing.</typeparam>
    /// <typeparam name="TResult">Kind of a result.</typeparam>
    /// <param name="things">The things.</param>
    /// <param name="result">The result for one; called from several threads.</param>
    /// <exception cref="AggregateException">What <paramref name="result"/> threw.</exception>
    public static TResult[] Each<T, TResult>(IReadOnlyList<T> things, Func<T, TResult> result)
    {
        var results = new TResult[things.Count];
        _ = Parallel.For(0, things.Count, at => results[at] = result(things[at]));
        return results;
    }
}
