using System.Collections;
using Apprentice.Engine.Grading;

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

    /// <summary>This list with one more job, which begins, at its end.</summary>
    public JobList Add(PastJob job) => new(_kept, _jobs.Add(job with { Started = Same(job.Started) }));

    /// <summary>This list with another job in one place.</summary>
    public JobList SetItem(int index, PastJob job) =>
        new(_kept, _jobs.SetItem(index, job is { Given: not null, Verdict: not null, Ended: not null } ? PackedJob.Pack(job, _kept) : job));

    /// <summary>The look that is kept for all that are like it.</summary>
    public Look Same(Look look) => _kept.Same(look);

    /// <inheritdoc/>
    public IEnumerator<PastJob> GetEnumerator() => _jobs.Select(Opened).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    PastJob Opened(object job) => job as PastJob ?? PackedJob.Unpack((byte[])job, _kept);

    LogEntry.JobStarted Same(LogEntry.JobStarted started) => started with
    {
        Person = _kept.Same(started.Person),
        Topic = _kept.Same(started.Topic),
        Version = _kept.Same(started.Version),
    };
}
