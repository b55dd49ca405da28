namespace Apprentice.Engine.Learning;

/// <summary>Entries of bikes and of the inbox when a person goes: bikes are the workshop's and stay, without the name.</summary>
static class StandEntries
{
    /// <summary>An entry without the name of who took the bike on or sent the line.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="isTheirs">Says which names are the person's.</param>
    public static LogEntry Without(LogEntry entry, Func<string?, bool> isTheirs) => entry switch
    {
        LogEntry.BikePut { Person: { } name } e when isTheirs(name) => e with { Person = null },
        LogEntry.BikeQuestioned { Person: { } name } e when isTheirs(name) => e with { Person = null },
        _ => entry,
    };
}

/// <summary>Numbers of reports when some are taken out: a log counts them without gaps.</summary>
sealed class ReportNumbers
{
    readonly Dictionary<int, int> _numbers = [];

    /// <summary>Numbers the reports that are kept.</summary>
    /// <param name="log">Entries, oldest first.</param>
    /// <param name="isKept">Says which entries stay.</param>
    public ReportNumbers(IReadOnlyList<Logged> log, Func<LogEntry, bool> isKept)
    {
        var before = 0;
        foreach (var entry in log.Select(e => e.What).Where(e => e is LogEntry.Questioned or LogEntry.LessonQuestioned or LogEntry.BikeQuestioned))
        {
            before++;
            if (isKept(entry)) _numbers[before] = _numbers.Count + 1;
        }
    }

    /// <summary>False for what speaks of a report that is gone.</summary>
    public bool IsKept(LogEntry entry) => ReportOf(entry) is not { } report || _numbers.ContainsKey(report);

    /// <summary>An entry with its report's new number.</summary>
    public LogEntry Numbered(LogEntry entry) => entry switch
    {
        LogEntry.ReportAnswered e => e with { Report = _numbers[e.Report] },
        LogEntry.ReportAdded e => e with { Report = _numbers[e.Report] },
        LogEntry.ReportShown e => e with { Report = _numbers[e.Report] },
        _ => entry,
    };

    static int? ReportOf(LogEntry entry) => entry switch
    {
        LogEntry.ReportAnswered e => e.Report,
        LogEntry.ReportAdded e => e.Report,
        LogEntry.ReportShown e => e.Report,
        _ => null,
    };
}
