using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Assessing;

/// <summary>One person and one permission: its evidence and where it stands.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Permission">Which.</param>
public sealed record Register(string Person, string Permission)
{
    /// <summary>Real bikes on the bench that a permission needs.</summary>
    public const int Bikes = 3;

    const int Days = 2;
    const int Whys = 3;

    /// <summary>Real orders that are countersigned before "alone".</summary>
    public const int Orders = 10;

    /// <summary>Results of the jobs test, oldest first.</summary>
    public IReadOnlyList<PaperResult> Results { get; init; } = [];

    /// <summary>Bikes done on the bench, oldest first.</summary>
    public IReadOnlyList<BenchForm> Bench { get; init; } = [];

    /// <summary>What was signed, oldest first.</summary>
    public IReadOnlyList<Signature> Signatures { get; init; } = [];

    /// <summary>Orders countersigned since the last signature.</summary>
    public IReadOnlyList<LogEntry.OrderCountersigned> Countersigned { get; init; } = [];

    /// <summary>How it was taken back since the last signature, or null.</summary>
    public LogEntry.PermissionTakenBack? TakenBack { get; init; }

    /// <summary>The last signature, or null.</summary>
    public Signature? Last => Signatures.Count == 0 ? null : Signatures[^1];

    /// <summary>This with the name of its person as it is now.</summary>
    internal Register Renamed(CalledNow called) => this with
    {
        Person = called.Of(Person),
        Results = [.. Results.Select(r => r with { Candidate = called.Of(r.Candidate) })],
        Signatures = [.. Signatures.Select(s => s with { Person = called.Of(s.Person) })],
        Countersigned = [.. Countersigned.Select(called.Same)],
        TakenBack = TakenBack is { } back ? called.Same(back) : null,
    };

    /// <summary>What is missing for a level; empty when it may be signed.</summary>
    public IReadOnlyList<Missing> MissingFor(PermissionLevel level)
    {
        var good = Bench.Where(b => b.Agreed).ToList();
        var missing = new List<Missing>();
        if (!Results.Any(r => r.Outcome == Outcome.Passed)) missing.Add(Missing.JobsTest);
        if (good.Count < Bikes) missing.Add(Missing.ThreeBikes);
        if (good.Select(b => b.Day).Distinct().Count() < Days) missing.Add(Missing.TwoDays);
        if (!good.Any(b => b.Odd)) missing.Add(Missing.OddBike);
        if (good.Count(b => b.WhysGood >= Whys) < Bikes) missing.Add(Missing.Whys);
        if (level != PermissionLevel.Alone) return missing;
        if (Last is null || TakenBack is not null) missing.Add(Missing.SecondLook);
        if (Last?.Level != PermissionLevel.Alone && RightInARow < Orders) missing.Add(Missing.TenOrders);
        return missing;
    }

    /// <summary>Countersigned orders that were right, since the last one that was not.</summary>
    public int RightInARow => Countersigned.Reverse().TakeWhile(o => o.Right).Count();

    /// <summary>Topics of the last signature that have another version now, or are no longer there.</summary>
    /// <param name="now">Topics with their versions today.</param>
    public IReadOnlyList<string> ToLookAtAgain(IReadOnlyList<PlanTopic> now) =>
        Last is not { } last ? [] : [.. last.Topics.Where(t => !now.Contains(t)).Select(t => t.Id)];

    /// <summary>Where it stands.</summary>
    /// <param name="today">The day; the last day of a permission still counts.</param>
    /// <param name="now">Topics with their versions today.</param>
    public PermissionState StateOn(DateOnly today, IReadOnlyList<PlanTopic> now)
    {
        if (Last is not { } last) return PermissionState.None;
        if (TakenBack is not null) return PermissionState.TakenBack;
        if (today > last.Expires) return PermissionState.Expired;
        if (ToLookAtAgain(now).Count > 0) return PermissionState.LookAgain;
        return last.Level == PermissionLevel.Alone ? PermissionState.Alone : PermissionState.WithSecondLook;
    }
}

/// <summary>A real bike done on the bench: the lead's reading is typed beside the candidate's before either is shown.</summary>
/// <param name="Day">The day.</param>
/// <param name="Bike">The bike in a few words.</param>
/// <param name="Odd">True when it is the odd one.</param>
/// <param name="By">Who looked on.</param>
/// <param name="Readings">What was read, by the lead and by the candidate.</param>
/// <param name="Agreed">True when part and order agree.</param>
/// <param name="WhysGood">How many of the three spoken "why" questions were answered well: 0 to 3.</param>
public sealed record BenchForm(DateOnly Day, string Bike, bool Odd, string By, IReadOnlyList<BenchReading> Readings, bool Agreed, int WhysGood);

/// <summary>One reading of two people.</summary>
/// <param name="What">What was read.</param>
/// <param name="Lead">The lead's reading as typed.</param>
/// <param name="Candidate">The candidate's reading as typed.</param>
public sealed record BenchReading(string What, string Lead, string Candidate);

/// <summary>How far a permission goes.</summary>
public enum PermissionLevel
{
    /// <summary>The next ten real orders are countersigned.</summary>
    WithSecondLook,

    /// <summary>Alone.</summary>
    Alone,
}

/// <summary>A signed permission.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Permission">"may order tyres and rims alone".</param>
/// <param name="Level">How far it goes.</param>
/// <param name="By">Who signed.</param>
/// <param name="Day">The day.</param>
/// <param name="Expires">The last day on which it holds.</param>
/// <param name="Paper">The paper that was passed.</param>
/// <param name="Topics">Its topics in the versions that were sat.</param>
/// <param name="SetByOnePerson">True when the pass line was set by one person.</param>
public sealed record Signature(
    string Person, string Permission, PermissionLevel Level, string By, DateOnly Day, DateOnly Expires, string Paper, IReadOnlyList<PlanTopic> Topics, bool SetByOnePerson);

/// <summary>What still stands between a person and a permission.</summary>
public enum Missing
{
    /// <summary>A passed jobs test.</summary>
    JobsTest,

    /// <summary>Three real bikes that agree.</summary>
    ThreeBikes,

    /// <summary>Bikes on at least two days.</summary>
    TwoDays,

    /// <summary>An odd bike among them.</summary>
    OddBike,

    /// <summary>The three spoken questions, answered well at each bike.</summary>
    Whys,

    /// <summary>"With a second look" first.</summary>
    SecondLook,

    /// <summary>Ten real orders countersigned, all right.</summary>
    TenOrders,
}

/// <summary>Where a permission stands on a day.</summary>
public enum PermissionState
{
    /// <summary>None was signed.</summary>
    None,

    /// <summary>It holds, with a second look.</summary>
    WithSecondLook,

    /// <summary>It holds.</summary>
    Alone,

    /// <summary>A fact of its topics has changed: to be looked at again.</summary>
    LookAgain,

    /// <summary>Its last day has passed.</summary>
    Expired,

    /// <summary>It was taken back.</summary>
    TakenBack,
}
