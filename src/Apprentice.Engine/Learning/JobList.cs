using System.Collections;

namespace Apprentice.Engine.Learning;

/// <summary>The jobs of a log. The list never changes; those that are made from it share what stayed. Answered jobs are packed: a workshop has hundreds of thousands, and looks at few.</summary>
sealed class JobList : IReadOnlyList<PastJob>
{
    readonly KeptOnce _kept;

    // A PastJob that is under way, or the bytes of an answered one.
    readonly ChunkList<object> _jobs;

    /// <summary>A list of nothing.</summary>
    public JobList()
        : this(new(), ChunkList<object>.Empty)
    {
    }

    JobList(KeptOnce kept, ChunkList<object> jobs) => (_kept, _jobs) = (kept, jobs);

    /// <inheritdoc/>
    public int Count => _jobs.Count;

    /// <inheritdoc/>
    public PastJob this[int index] => Opened(_jobs[index]);

    /// <summary>This list with one more at its end.</summary>
    public JobList Add(PastJob job) => new(_kept, _jobs.Add(Closed(job)));

    /// <summary>This list with another job in one place.</summary>
    public JobList SetItem(int index, PastJob job) => new(_kept, _jobs.SetItem(index, Closed(job)));

    /// <inheritdoc/>
    public IEnumerator<PastJob> GetEnumerator() => _jobs.Select(Opened).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    PastJob Opened(object job) => job as PastJob ?? PackedJob.Unpack((byte[])job, _kept);

    object Closed(PastJob job) => job is { Given: not null, Verdict: not null, Ended: not null }
        ? PackedJob.Pack(job, _kept)
        : job with { Started = Same(job.Started), Looks = [.. job.Looks.Select(l => _kept.Same(l))] };

    LogEntry.JobStarted Same(LogEntry.JobStarted started) => started with
    {
        Person = _kept.Same(started.Person),
        Topic = _kept.Same(started.Topic),
        Version = _kept.Same(started.Version),
        Request = _kept.Same(started.Request),
    };
}
