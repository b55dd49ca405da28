namespace Apprentice.Engine.Assessing;

/// <summary>What travels back to the lead: looks and answers, no marks.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Candidate">Who sat it.</param>
/// <param name="Number">The candidate's how-manieth paper of this permission.</param>
/// <param name="Places">Jobs that had to be answered.</param>
/// <param name="Jobs">The jobs.</param>
/// <param name="Used">Time used.</param>
/// <param name="Ended">When it ended.</param>
/// <param name="Why">Why.</param>
/// <param name="Stops">Reasons for which the clock was stopped.</param>
public sealed record SatPaper(
    string Paper, string Candidate, int Number, int Places, IReadOnlyList<SittingJob> Jobs, TimeSpan Used, DateTimeOffset Ended, SittingEnd Why, IReadOnlyList<string> Stops)
{
    /// <summary>Who confirmed that it was the candidate; empty in results of before this was kept.</summary>
    public string ConfirmedBy { get; init; } = "";

    /// <summary>More time for those who need it; 1 for none.</summary>
    public double Multiplier { get; init; } = 1;

    /// <summary>True when it was sat in plain lines.</summary>
    public bool Plain { get; init; }

    /// <summary>Real bikes that were looked at; empty in results of before there were any.</summary>
    public IReadOnlyList<SittingReal> Real { get; init; } = [];

    /// <summary>The record of an ended sitting.</summary>
    /// <exception cref="ArgumentException">The sitting goes on.</exception>
    public static SatPaper Of(Sitting sitting) => sitting is { End: { } why, Ended: { } ended }
        ? new(sitting.Paper, sitting.Started.Candidate, sitting.Started.Number, sitting.Places, sitting.Jobs, sitting.Used, ended, why, [.. sitting.Stops.Select(s => s.Reason)])
        {
            ConfirmedBy = sitting.Started.ConfirmedBy,
            Multiplier = sitting.Started.Multiplier,
            Plain = sitting.Started.Plain,
            Real = sitting.Real,
        }
        : throw new ArgumentException("the sitting has not ended", nameof(sitting));

    /// <summary>The result: every job up to the last check marked, jobs without an answer not sound.</summary>
    /// <param name="paper">The opened paper.</param>
    /// <param name="benches">Its topics, in the paper's versions.</param>
    /// <exception cref="ArgumentException">It belongs to another paper, person or topic version.</exception>
    public PaperResult Mark(Paper paper, IReadOnlyList<Workbench> benches)
    {
        if (paper.Id != Paper || paper.Candidate != Candidate || paper.Number != Number)
            throw new ArgumentException($"this result is of paper {Paper}, {Candidate}; the paper is {paper.Id}, {paper.Candidate}", nameof(paper));
        return new PaperResult
        {
            Paper = Paper,
            Permission = paper.Permission,
            Candidate = Candidate,
            Number = Number,
            Rule = paper.Rule,
            Jobs = [.. Enumerable.Range(1, Places).Select(p => Recorded(paper, benches, Jobs.FirstOrDefault(j => j.Place == p) ?? new SittingJob(p)))],
            Real = [.. paper.Real.Select(j => RealMark.Of(j, Real.FirstOrDefault(r => r.Place == j.Place), benches))],
        };
    }

    /// <summary>The mark of one job with what it rests on: for when the paper is over.</summary>
    /// <exception cref="ArgumentException">The topic is not there or has another version.</exception>
    public static JobMark Recorded(Paper paper, IReadOnlyList<Workbench> benches, SittingJob job)
    {
        var planned = paper.At(job.Place);
        var bench = BenchOf(planned, benches);
        return Marker.Recorded(bench, paper.Make(bench, job.Place, job.Fresh), planned, job);
    }

    /// <summary>The mark of one job: also used while a staged paper is sat, to see whether more jobs are needed; nothing of it is shown then.</summary>
    public static JobMark MarkOf(Paper paper, IReadOnlyList<Workbench> benches, SittingJob job)
    {
        var planned = paper.At(job.Place);
        if (job.Given is not { } given) return Marker.NotAnswered(planned);
        var bench = BenchOf(planned, benches);
        return Marker.Mark(bench, paper.Make(bench, job.Place, job.Fresh), planned, given.With(job.Looks));
    }

    static Workbench BenchOf(PaperJob planned, IReadOnlyList<Workbench> benches) => benches.FirstOrDefault(b => b.Topic.Id == planned.Family.Topic)
        ?? throw new ArgumentException($"the topic {planned.Family.Topic} of the paper is not there", nameof(benches));
}
