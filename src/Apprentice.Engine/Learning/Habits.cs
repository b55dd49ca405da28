namespace Apprentice.Engine.Learning;

/// <summary>Habits of going wrong, found in the log.</summary>
/// <remarks>
/// A habit is told when its evidence reaches (number of habits)/0.05 at any look. By Ville's inequality and the union bound at most 5 of 100 people who show each pattern in no more
/// than 1 of 10 jobs in which it could show are ever told of any. It is gone when a second test, begun when it was told, reaches 20: at most 5 of 100 of those who still show it in
/// 4 of 10 such jobs or more are ever told that it is gone. That 1 of 10 is no habit and 4 of 10 is one are judgement.
/// </remarks>
public static class Habits
{
    /// <summary>Share of jobs in which anybody may show a pattern without having the habit.</summary>
    public const double Free = 0.1;

    /// <summary>Share of jobs from which it is still a habit.</summary>
    public const double Still = 0.4;

    /// <summary>Largest share of people without habits that is ever told of any.</summary>
    public const double FalseShare = 0.05;

    /// <summary>Largest share of those who still have it that is ever told that it is gone.</summary>
    public const double FalseGone = 0.05;

    /// <summary>Jobs of an aimed set.</summary>
    public const int AimedJobs = 6;

    /// <summary>Evidence from which a habit is told.</summary>
    public static double Limit { get; } = Enum.GetValues<Habit>().Length / FalseShare;

    /// <summary>All habits of a person, in the order of the list; those without a job in which they could show as well.</summary>
    /// <param name="history">The history.</param>
    /// <param name="person">A name, or null for nobody known.</param>
    public static IReadOnlyList<HabitState> Of(History history, string? person)
    {
        var folds = Enum.GetValues<Habit>().Select(h => new HabitFold(h)).ToArray();
        var jobs = new List<int>();
        foreach (var job in history.JobsOf(person).Where(j => j.Counts).OrderBy(j => j.Ended).ThenBy(j => j.Started.Job))
        {
            jobs.Add(job.Started.Job);
            foreach (var observed in job.Observed)
            {
                if (observed is Observed.Pattern pattern) folds[(int)pattern.Habit].Take(job.Started.Job, pattern.Shown);
            }
        }

        return [.. folds.Select(f => f.State(ForLead(history, person, f, jobs)))];
    }

    /// <summary>Habits of a person that the lead may see. Whoever has not begun a set of jobs for any has none.</summary>
    public static IEnumerable<HabitState> ForLead(History history, string person) =>
        history.Aims.Any(a => string.Equals(a.Person, person, StringComparison.Ordinal)) ? Of(history, person).Where(h => h.ForLead) : [];

    // Shown to the learner first; the lead sees it after one aimed set was done.
    static bool ForLead(History history, string? person, HabitFold fold, List<int> jobs)
    {
        if (person is null || fold.FoundIn is null || !history.HabitsTold.Contains((person, fold.Habit))) return false;
        var aim = history.Aims.FirstOrDefault(a => a.Habit == fold.Habit && string.Equals(a.Person, person, StringComparison.Ordinal));
        return aim is not null && jobs.Count(j => j >= aim.From) >= AimedJobs;
    }
}

/// <summary>The fold of one habit of one person.</summary>
sealed class HabitFold(Habit habit)
{
    readonly List<int> _evidence = [];
    RunningTest _found = new(Habits.Free, above: true);
    RunningTest? _gone;
    int _relevant;
    int? _goneIn;

    public Habit Habit => habit;

    public int? FoundIn { get; private set; }

    public void Take(int job, bool shown)
    {
        _relevant++;
        if (shown) _evidence.Add(job);
        if (_gone is { } gone)
        {
            if (!gone.Take(shown) || gone.Value < 1 / Habits.FalseGone) return;
            (_gone, _goneIn, _found) = (null, job, new RunningTest(Habits.Free, above: true));
            return;
        }

        if (!_found.Take(shown) || _found.Value < Habits.Limit) return;
        (FoundIn, _gone, _goneIn) = (job, new RunningTest(Habits.Still, above: false), null);
    }

    public HabitState State(bool forLead) => new(
        habit, _relevant, _evidence.Count, _evidence, _gone is null ? _found.Value / Habits.Limit : 1,
        FoundIn is null ? HabitStanding.NotTold : _goneIn is null ? HabitStanding.LookOut : HabitStanding.Gone, FoundIn, _goneIn, forLead);
}
