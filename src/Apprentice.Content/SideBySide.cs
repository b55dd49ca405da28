namespace Apprentice.Content;

/// <summary>Works many things out on all processors at once.</summary>
public static class SideBySide
{
    /// <summary>The result for each thing, in the order of the things.</summary>
    /// <remarks>Plain tasks: at the start of the program the library for parallel loops would take longer to load than the work takes.</remarks>
    /// <typeparam name="T">Kind of a thing.</typeparam>
    /// <typeparam name="TResult">Kind of a result.</typeparam>
    /// <param name="things">The things.</param>
    /// <param name="result">The result for one; called from several threads.</param>
    /// <exception cref="AggregateException">What <paramref name="result"/> threw.</exception>
    public static TResult[] Each<T, TResult>(IReadOnlyList<T> things, Func<T, TResult> result)
    {
        var results = new TResult[things.Count];
        var last = -1;
        var workers = new Task[Math.Min(Environment.ProcessorCount, things.Count)];
        for (var i = 0; i < workers.Length; i++) workers[i] = Task.Run(Work);
        Task.WaitAll(workers);
        return results;

        void Work()
        {
            for (var at = Interlocked.Increment(ref last); at < results.Length; at = Interlocked.Increment(ref last)) results[at] = result(things[at]);
        }
    }
}
