using System.Collections.Immutable;

namespace Apprentice.Engine.Learning;

public sealed partial record History
{
    /// <summary>What people are called now.</summary>
    public CalledNow Called { get; private init; } = CalledNow.Empty;

    /// <summary>Everybody whose name can be corrected: people who practise, then the lead and those who are known by papers, kits and permissions alone.</summary>
    public IReadOnlyList<string> Names =>
    [
        .. People
            .Concat(Workshop is { } workshop ? [workshop.Lead] : Array.Empty<string>())
            .Concat(Assessments.Names)
            .Distinct(StringComparer.Ordinal),
    ];

    /// <summary>Who has a name, or had it once; null when it is free. Capitals make no other name.</summary>
    /// <param name="name">The name.</param>
    public string? OwnerOf(string name) =>
        Names.FirstOrDefault(n => Same(n, name)) ?? (Called.Former.FirstOrDefault(n => Same(n, name)) is { } former ? Called.Of(former) : null);

    /// <summary>A person's name and those they had before.</summary>
    /// <param name="person">The name now.</param>
    public IReadOnlyList<string> NamesOf(string person) => [person, .. Called.Former.Where(n => Called.Of(n) == person)];

    History Renamed(LogEntry.PersonRenamed renamed)
    {
        if (OwnerOf(renamed.Name) is { } owner && owner != renamed.Person) throw new ArgumentException($"The name {renamed.Name} is taken.", nameof(renamed));
        var called = Called.With(renamed);
        string? Now(string? name) => called.Of(name);
        var jobs = NumbersOf(renamed.Person).Aggregate(AllJobs, (all, n) => all.SetItem(n - 1, Of(called, all[n - 1])));
        return this with
        {
            Called = called,
            People = [.. People.Select(p => called.Of(p))],
            Current = Now(Current),
            Workshop = Workshop is { } workshop ? called.Same(workshop) : null,
            LessonQuestions = [.. LessonQuestions.Select(called.Same)],
            Lessons = Lessons.Select(l => KeyValuePair.Create((called.Of(l.Key.Person), l.Key.Lesson), l.Value)).ToImmutableDictionary(),
            Aims = [.. Aims.Select(a => a with { Person = called.Of(a.Person) })],
            HabitsTold = [.. HabitsTold.Select(h => (called.Of(h.Person), h.Habit))],
            Placements = Moved(Placements, called.Of),
            Pins = Moved(Pins, called.Of),
            Sessions = Moved(Sessions, k => k == KeyOf(renamed.Person) ? KeyOf(renamed.Name) : k),
            Drills = [.. Drills.Select(d => d with { Started = called.Same(d.Started) })],
            RealParts = [.. RealParts.Select(s => s with { Person = Now(s.Person), Readings = [.. s.Readings.Select(called.Same)] })],
            ByPerson = Moved(ByPerson, k => k == KeyOf(renamed.Person) ? KeyOf(renamed.Name) : k),
            AllJobs = jobs,
            Assessments = Assessments.Renamed(called),
            Notebook = Notebook.Renamed(called),
            _book = null,
        };
    }

    static PastJob Of(CalledNow called, PastJob job) => job with { Started = called.Same(job.Started), Person = called.Of(job.Person) };

    static ImmutableDictionary<string, T> Moved<T>(ImmutableDictionary<string, T> all, Func<string, string> now) =>
        all.Select(a => KeyValuePair.Create(now(a.Key), a.Value)).ToImmutableDictionary(StringComparer.Ordinal);

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
