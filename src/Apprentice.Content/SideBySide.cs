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
    /// <param name="before">What another processor does before it joins in; left out where there is only one.</param>
    /// <exception cref="AggregateException">What <paramref name="result"/> or <paramref name="before"/> threw.</exception>
    public static TResult[] Each<T, TResult>(IReadOnlyList<T> things, Func<T, TResult> result, Action? before = null)
    {
        var results = new TResult[things.Count];
        var last = -1;
        var others = new Task[Math.Max(0, Math.Min(Environment.ProcessorCount, things.Count) - 1)];
        for (var i = 0; i < others.Length; i++) others[i] = Task.Run(i == 0 && before is not null ? First : Work);
        var own = Task.CompletedTask;
        try
        {
            Work();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            own = Task.FromException(e);
        }

        Task.WaitAll([own, .. others]);
        return results;

        void First()
        {
            before?.Invoke();
            Work();
        }

        void Work()
        {
            for (var at = Interlocked.Increment(ref last); at < results.Length; at = Interlocked.Increment(ref last)) results[at] = result(things[at]);
        }
    }
}
