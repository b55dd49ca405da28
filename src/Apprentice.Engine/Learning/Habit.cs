namespace Apprentice.Engine.Learning;

/// <summary>Named ways of going wrong again and again; each error stands beside its other side. The rules are in <see cref="HabitRules"/>.</summary>
public enum Habit
{
    /// <summary>Takes the number or date for the part, against the other checks.</summary>
    TrustsNumber,

    /// <summary>Does not use a number or date that would have settled it.</summary>
    IgnoresNumber,

    /// <summary>Counts parts that were changed as a set as so many separate votes.</summary>
    CountsSetApart,

    /// <summary>Leaves open what parts that belong together do settle.</summary>
    DistrustsSet,

    /// <summary>Forgets the line that kept the old part.</summary>
    ForgetsKeptOld,

    /// <summary>Sees a line that kept the old part where there is none.</summary>
    SeesKeptOld,

    /// <summary>Measures from the wrong point.</summary>
    WrongPoint,

    /// <summary>Measures again what was clear.</summary>
    MeasuresTwice,

    /// <summary>Takes the nearer of two sizes instead of measuring again.</summary>
    TakesNearer,

    /// <summary>Takes the marking for the size.</summary>
    TrustsMarking,

    /// <summary>Leaves open what a good marking settles.</summary>
    IgnoresMarking,

    /// <summary>Orders or names too soon.</summary>
    OrdersTooSoon,

    /// <summary>Waits or asks though it is settled.</summary>
    WaitsTooOften,

    /// <summary>Orders a part that can hurt on thin evidence.</summary>
    HurtsOnThin,

    /// <summary>Asks about a part that can hurt though it is settled.</summary>
    AsksThoughSafe,

    /// <summary>Forces a part that does not go.</summary>
    Forces,

    /// <summary>Orders without the safety look.</summary>
    SkipsSafetyLook,
}

/// <summary>What the log says of one habit of one person.</summary>
/// <param name="Habit">The habit.</param>
/// <param name="Relevant">Jobs in which it could show.</param>
/// <param name="Shown">Jobs in which it did.</param>
/// <param name="Evidence">Numbers of the jobs in which it showed, oldest first.</param>
/// <param name="Strength">Evidence value E against the limit; found at 1 or above at any look.</param>
/// <param name="State">Where it stands.</param>
/// <param name="FoundIn">Number of the job with which it was found, or null.</param>
/// <param name="GoneIn">Number of the job with which it was seen to be gone, or null.</param>
/// <param name="ForLead">True when the lead may see it: the learner was shown it and has had one aimed set.</param>
public sealed record HabitState(
    Habit Habit, int Relevant, int Shown, IReadOnlyList<int> Evidence, double Strength, HabitStanding State, int? FoundIn, int? GoneIn, bool ForLead);

/// <summary>Where a habit stands.</summary>
public enum HabitStanding
{
    /// <summary>Not told: no habit, or too few jobs to say.</summary>
    NotTold,

    /// <summary>A habit to look out for.</summary>
    LookOut,

    /// <summary>It was one, and is gone.</summary>
    Gone,
}
