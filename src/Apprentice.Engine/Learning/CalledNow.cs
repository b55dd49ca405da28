using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Apprentice.Engine.Learning;

/// <summary>What people are called now, whatever they were called when an entry was made. A name that was once somebody's stays theirs, so that a paper sealed under it still reaches them.</summary>
public sealed record CalledNow
{
    /// <summary>Nobody's name was corrected.</summary>
    public static CalledNow Empty { get; } = new();

    ImmutableDictionary<string, string> Now { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Former names, in no order.</summary>
    public IEnumerable<string> Former => Now.Keys;

    /// <summary>The name now; one that was never corrected is given back, and so is null.</summary>
    [return: NotNullIfNotNull(nameof(name))]
    public string? Of(string? name) => name is not null && Now.TryGetValue(name, out var now) ? now : name;

    /// <summary>The name now of what a person typed as theirs, in capitals or not.</summary>
    public string OfTyped(string typed) =>
        Now.FirstOrDefault(n => string.Equals(n.Key, typed.Trim(), StringComparison.OrdinalIgnoreCase)).Value ?? typed;

    /// <summary>This with one more correction.</summary>
    public CalledNow With(LogEntry.PersonRenamed renamed)
    {
        var person = Of(renamed.Person);
        return this with
        {
            Now = Now.Select(n => n.Value == person ? KeyValuePair.Create(n.Key, renamed.Name) : n).ToImmutableDictionary(StringComparer.Ordinal)
                .SetItem(person, renamed.Name).Remove(renamed.Name),
        };
    }

    /// <summary>An entry with the names now of the people it is about. Who signed, judged or answered keeps the name under which they did.</summary>
    public LogEntry Of(LogEntry entry) => Now.IsEmpty ? entry : entry switch
    {
        LogEntry.PersonAdded e => e with { Name = Of(e.Name) },
        LogEntry.PersonRenamed e => e with { Person = Of(e.Person) },
        LogEntry.SatDown e => e with { Name = Of(e.Name) },
        LogEntry.PinSet e => e with { Person = Of(e.Person) },
        LogEntry.SessionPlanned e => e with { Person = Of(e.Person) },
        LogEntry.JobStarted e => e with { Person = Of(e.Person) },
        LogEntry.HabitTold e => e with { Person = Of(e.Person) },
        LogEntry.AimedAt e => e with { Person = Of(e.Person) },
        LogEntry.PlacementAsked e => e with { Person = Of(e.Person) },
        LogEntry.LessonRead e => e with { Person = Of(e.Person) },
        LogEntry.LessonQuestioned e => e with { Person = Of(e.Person) },
        LogEntry.WorkshopSet e => e with { Lead = Of(e.Lead) },
        LogEntry.DrillStarted e => e with { Person = Of(e.Person) },
        LogEntry.RealPartRead e => e with { Person = Of(e.Person) },
        LogEntry.BikePut e => e with { Person = Of(e.Person) },
        LogEntry.BikeQuestioned e => e with { Person = Of(e.Person) },
        LogEntry.ReportShown e => e with { Person = Of(e.Person) },
        LogEntry.RealTried e => e with { Person = Of(e.Person) },
        _ => OfTests(entry),
    };

    /// <summary>An entry with its time and the names now of the people it is about.</summary>
    public Logged Of(Logged entry) => Now.IsEmpty ? entry : entry with { What = Of(entry.What) };

    LogEntry OfTests(LogEntry entry) => entry switch
    {
        LogEntry.DeskSet e => e with { Lead = Of(e.Lead) },
        LogEntry.PaperMade e => e with { Candidate = Of(e.Candidate) },
        LogEntry.SittingStarted e => e with { Candidate = Of(e.Candidate) },
        LogEntry.PaperMarked e => e with { Result = e.Result with { Candidate = Of(e.Result.Candidate) } },
        LogEntry.BenchDone e => e with { Person = Of(e.Person) },
        LogEntry.PermissionSigned e => e with { Signature = e.Signature with { Person = Of(e.Signature.Person) } },
        LogEntry.OrderCountersigned e => e with { Person = Of(e.Person) },
        LogEntry.PermissionTakenBack e => e with { Person = Of(e.Person) },
        LogEntry.KitEntered e => e with { Candidate = Of(e.Candidate) },
        _ => entry,
    };

    /// <summary>An entry of a known kind with the names now.</summary>
    public T Same<T>(T entry)
        where T : LogEntry => (T)Of(entry);
}
