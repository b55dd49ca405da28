using Apprentice.Engine.Learning;

namespace Apprentice.Reports;

/// <summary>Wrong orders in a person's last twenty jobs, and in the twenty before.</summary>
/// <param name="Jobs">How many jobs the last ones are, 0 to 20.</param>
/// <param name="Wrong">In how many of them something ordered did not fit.</param>
/// <param name="JobsBefore">How many jobs there are before, 0 to 20.</param>
/// <param name="WrongBefore">In how many of those something ordered did not fit.</param>
sealed record WrongOrders(int Jobs, int Wrong, int JobsBefore, int WrongBefore)
{
    /// <summary>Jobs that are looked back on.</summary>
    public const int LookBack = 20;

    /// <summary>The wrong orders of a person; guided jobs are left out.</summary>
    public static WrongOrders Of(History history, string? person)
    {
        var jobs = history.JobsOf(person).Where(j => j.Counts).ToList();
        var last = jobs.TakeLast(LookBack).ToList();
        var before = jobs.SkipLast(LookBack).TakeLast(LookBack).ToList();
        return new WrongOrders(last.Count, last.Count(IsWrong), before.Count, before.Count(IsWrong));
    }

    static bool IsWrong(PastJob job) => job.Observed.OfType<Observed.Ordered>().Any(o => o.Wrong);
}
