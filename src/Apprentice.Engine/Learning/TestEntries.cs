namespace Apprentice.Engine.Learning;

/// <summary>Which entries about tests and permissions are a person's. They are erased with the person, but do not go to another machine: a permission holds where it was signed.</summary>
sealed class TestEntries
{
    readonly Func<string, bool> _is;
    readonly HashSet<string> _papers;

    /// <summary>Finds the papers of a person.</summary>
    /// <param name="log">Entries, oldest first.</param>
    /// <param name="isTheirs">Says which names are the person's.</param>
    public TestEntries(IReadOnlyList<Logged> log, Func<string, bool> isTheirs)
    {
        _is = isTheirs;
        _papers = [.. log.Select(e => OfCandidate(e.What)).OfType<(string Paper, string Candidate)>().Where(p => isTheirs(p.Candidate)).Select(p => p.Paper)];
    }

    public bool AreTheirs(LogEntry entry) => entry switch
    {
        LogEntry.BenchDone e => _is(e.Person),
        LogEntry.PermissionSigned e => _is(e.Signature.Person),
        LogEntry.OrderCountersigned e => _is(e.Person),
        LogEntry.PermissionTakenBack e => _is(e.Person),
        LogEntry.KitEntered e => _is(e.Candidate),
        _ => PaperOf(entry) is { } paper && _papers.Contains(paper),
    };

    static (string Paper, string Candidate)? OfCandidate(LogEntry entry) => entry switch
    {
        LogEntry.PaperMade e => (e.Paper, e.Candidate),
        LogEntry.SittingStarted e => (e.Paper, e.Candidate),
        LogEntry.PaperMarked e => (e.Result.Paper, e.Result.Candidate),
        _ => null,
    };

    static string? PaperOf(LogEntry entry) => entry switch
    {
        LogEntry.PaperMade e => e.Paper,
        LogEntry.SittingStarted e => e.Paper,
        LogEntry.SittingOpened e => e.Paper,
        LogEntry.SittingTicked e => e.Paper,
        LogEntry.SittingLooked e => e.Paper,
        LogEntry.SittingAnswered e => e.Paper,
        LogEntry.SittingSkipped e => e.Paper,
        LogEntry.SittingStopped e => e.Paper,
        LogEntry.SittingResumed e => e.Paper,
        LogEntry.SittingWidened e => e.Paper,
        LogEntry.SittingEnded e => e.Paper,
        LogEntry.SittingRealLooked e => e.Paper,
        LogEntry.SittingRealAnswered e => e.Paper,
        LogEntry.SittingRealEnded e => e.Paper,
        LogEntry.PaperMarked e => e.Result.Paper,
        LogEntry.ResultShown e => e.Paper,
        LogEntry.SafetyTalked e => e.Paper,
        LogEntry.SafetyAgainMarked e => e.Paper,
        LogEntry.PaperQuestioned e => e.Paper,
        LogEntry.AppealDecided e => e.Paper,
        LogEntry.NewJobMarked e => e.Paper,
        _ => null,
    };
}
