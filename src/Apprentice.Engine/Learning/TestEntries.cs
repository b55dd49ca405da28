namespace Apprentice.Engine.Learning;

/// <summary>Which entries about tests and permissions are a person's. They are erased with the person, but do not go to another machine: a permission holds where it was signed.</summary>
sealed class TestEntries
{
    readonly string _person;
    readonly HashSet<string> _papers;

    public TestEntries(IReadOnlyList<Logged> log, string person)
    {
        _person = person;
        _papers = [.. log.Select(e => OfCandidate(e.What)).OfType<(string Paper, string Candidate)>().Where(p => Is(p.Candidate)).Select(p => p.Paper)];
    }

    public bool AreTheirs(LogEntry entry) => entry switch
    {
        LogEntry.BenchDone e => Is(e.Person),
        LogEntry.PermissionSigned e => Is(e.Signature.Person),
        LogEntry.OrderCountersigned e => Is(e.Person),
        LogEntry.PermissionTakenBack e => Is(e.Person),
        LogEntry.KitEntered e => Is(e.Candidate),
        _ => PaperOf(entry) is { } paper && _papers.Contains(paper),
    };

    bool Is(string name) => string.Equals(name, _person, StringComparison.Ordinal);

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
        LogEntry.SafetyTalked e => e.Paper,
        LogEntry.SafetyAgainMarked e => e.Paper,
        LogEntry.PaperQuestioned e => e.Paper,
        LogEntry.AppealDecided e => e.Paper,
        LogEntry.NewJobMarked e => e.Paper,
        _ => null,
    };
}
