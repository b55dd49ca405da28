namespace Apprentice.Engine.Assessing;

/// <summary>The marks of a paper and what they amount to.</summary>
public sealed record PaperResult
{
    /// <summary>Number of the paper.</summary>
    public required string Paper { get; init; }

    /// <summary>The permission.</summary>
    public required string Permission { get; init; }

    /// <summary>Who sat it.</summary>
    public required string Candidate { get; init; }

    /// <summary>The candidate's how-manieth paper of this permission.</summary>
    public required int Number { get; init; }

    /// <summary>When it is passed.</summary>
    public required StagedRule Rule { get; init; }

    /// <summary>Marks in order of place.</summary>
    public required IReadOnlyList<JobMark> Jobs { get; init; }

    /// <summary>Marks of the six fresh safety jobs; empty until they are sat.</summary>
    public IReadOnlyList<JobMark> SafetyAgain { get; init; } = [];

    /// <summary>Marks of the new jobs of appeals, at places of their own; empty until one is sat.</summary>
    public IReadOnlyList<JobMark> NewJobs { get; init; } = [];

    /// <summary>Real bikes at the end: shown, and part of nothing that is counted here or anywhere.</summary>
    public IReadOnlyList<RealMark> Real { get; init; } = [];

    /// <summary>Every mark: the jobs, then the fresh safety jobs, then the new jobs of appeals.</summary>
    public IEnumerable<JobMark> AllJobs => Jobs.Concat(SafetyAgain).Concat(NewJobs);

    /// <summary>Jobs for which a new one is still to be sat.</summary>
    public IReadOnlyList<int> NewJobsDue => [.. Jobs.Where(j => j.Standing == Standing.NewJob).Select(j => j.Place)];

    /// <summary>The mark of the new job that stands for a job, or null.</summary>
    /// <param name="place">The job that was questioned.</param>
    public JobMark? NewJobFor(int place) => NewJobs.FirstOrDefault(j => j.Place == Engine.Assessing.Paper.NewJobPlaces + place);

    /// <summary>True once the talk about safety was held.</summary>
    public bool Talked { get; init; }

    /// <summary>The best outcome that was published, or null: a published result never falls.</summary>
    public Outcome? Published { get; init; }

    /// <summary>Sound jobs, as they count.</summary>
    public int Sound => Jobs.Count(j => j.CountsSound);

    /// <summary>Other jobs.</summary>
    public int Unsound => Jobs.Count - Sound;

    /// <summary>Safety errors that stand.</summary>
    public int SafetyErrors => Jobs.Count(j => j.SafetyError && j.Standing == Standing.Counted);

    /// <summary>Reading.</summary>
    public ReadingLine Reading => new(Jobs.Sum(j => j.ReadingsRight), Jobs.Sum(j => j.Readings));

    /// <summary>What these marks alone say.</summary>
    public Outcome Marked
    {
        get
        {
            if (SafetyErrors >= TooManySafetyErrors || SafetyAgain.Any(j => !j.CountsSound)) return Outcome.NotYet;
            var decision = Rule.Decide(Jobs.Count, Unsound);
            if (decision == StageDecision.NotYet) return Outcome.NotYet;
            if (SafetyErrors == 1 && !(Talked && SafetyAgain.Count >= FreshSafetyJobs)) return Outcome.SafetyFirst;
            return decision == StageDecision.Passed ? Outcome.Passed : Outcome.Open;
        }
    }

    /// <summary>What counts: the marks, but never less than what was published.</summary>
    public Outcome Outcome => Published == Outcome.Passed ? Outcome.Passed : Marked;

    /// <summary>Safety errors from which a paper is "not yet", whatever the count.</summary>
    public const int TooManySafetyErrors = 2;

    /// <summary>Safety jobs to be sat after a talk.</summary>
    public const int FreshSafetyJobs = 6;

    /// <summary>How often a second paper would be passed, by this record alone, under a prior.</summary>
    public double SecondPaper(Prior prior) => Rule.Again(prior, Sound, Unsound).Passed;
}

/// <summary>What became of a job in the count.</summary>
public enum Standing
{
    /// <summary>Counted as marked.</summary>
    Counted,

    /// <summary>Found unfair: counted as sound.</summary>
    CountedSound,

    /// <summary>Found unfair: taken out; in a staged paper it counts as sound, so that nobody loses by it.</summary>
    TakenOut,

    /// <summary>Found unfair: a new job takes its place; until it is sat it counts as sound.</summary>
    NewJob,
}

/// <summary>The mark of one job: sound or not, with its rule as one sentence.</summary>
public sealed record JobMark
{
    /// <summary>Place in the paper.</summary>
    public required int Place { get; init; }

    /// <summary>Key of its family.</summary>
    public required string Family { get; init; }

    /// <summary>Version of the topic.</summary>
    public required string Version { get; init; }

    /// <summary>True when it is sound.</summary>
    public required bool Sound { get; init; }

    /// <summary>True when somebody could have been hurt.</summary>
    public required bool SafetyError { get; init; }

    /// <summary>True when the job asks for something that can hurt.</summary>
    public required bool SafetyJob { get; init; }

    /// <summary>Key of the rule's sentence in the words file.</summary>
    public required string Rule { get; init; }

    /// <summary>The rule's figures by name, as text that can be recomputed by hand from the printout.</summary>
    public required IReadOnlyDictionary<string, string> Values { get; init; }

    /// <summary>Readings of the candidate's own.</summary>
    public required int Readings { get; init; }

    /// <summary>Of them right.</summary>
    public required int ReadingsRight { get; init; }

    /// <summary>What became of it.</summary>
    public Standing Standing { get; init; }

    /// <summary>What the mark rests on; null while the paper is sat.</summary>
    public JobRecord? Record { get; init; }

    /// <summary>True when it counts as sound.</summary>
    public bool CountsSound => Sound || Standing != Standing.Counted;
}

/// <summary>Reading of scales and plates: a line of its own, never part of the count.</summary>
/// <param name="Right">Right readings.</param>
/// <param name="Of">Readings.</param>
public sealed record ReadingLine(int Right, int Of)
{
    /// <summary>True from 8 of 10.</summary>
    public bool Enough => Of > 0 && Right * 10 >= Of * 8;
}

/// <summary>What a paper says.</summary>
public enum Outcome
{
    /// <summary>Not all jobs that are needed are marked.</summary>
    Open,

    /// <summary>Passed the jobs test.</summary>
    Passed,

    /// <summary>Not yet.</summary>
    NotYet,

    /// <summary>One safety error: no result until a talk and six fresh safety jobs, all sound.</summary>
    SafetyFirst,
}
