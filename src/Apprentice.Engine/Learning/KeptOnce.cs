using System.Diagnostics.CodeAnalysis;

namespace Apprentice.Engine.Learning;

/// <summary>Keeps like values once. A log says most things over and over; read from a file each would be there anew.</summary>
sealed class KeptOnce
{
    readonly HashSet<object> _known = [];

    /// <summary>The value that is kept for all that are like it.</summary>
    [return: NotNullIfNotNull(nameof(value))]
    public T? Of<T>(T? value)
        where T : class
    {
        if (value is null) return null;
        if (_known.TryGetValue(value, out var known)) return (T)known;
        _known.Add(value);
        return value;
    }

    /// <summary>The start of a job; its seed is its own.</summary>
    public LogEntry.JobStarted Of(LogEntry.JobStarted started) =>
        started with { Person = Of(started.Person), Topic = Of(started.Topic), Version = Of(started.Version), Request = Of(started.Request) };

    /// <summary>An answer.</summary>
    public Given Of(Given given) => new(
        [.. given.Parts.Select(p => Of(p))], [.. given.Orders.Select(o => Of(o))], Of(given.SettledBy), Of(given.SetAside), Of(given.Story), given.Forced);

    /// <summary>A grade in short.</summary>
    public Verdict Of(Verdict verdict) => verdict with { Marks = [.. verdict.Marks.Select(m => Of(m))] };

    /// <summary>What an answer showed. How a check was weighed is hardly ever alike.</summary>
    public Observed[] Of(IReadOnlyList<Observed> observed) => [.. observed.Select(o => o is Observed.Weighed ? o : Of(o))];
}
