using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>A small fact that an answer shows, worked out once at hand-in and kept in the log: see <see cref="Observations"/>.</summary>
public abstract record Observed
{
    Observed()
    {
    }

    /// <summary>A skill was shown, or was not.</summary>
    /// <param name="Skill">The skill.</param>
    /// <param name="Right">True when it was shown.</param>
    /// <param name="Guess">Chance of showing it by guessing, from 0 up to, not including, 1.</param>
    public sealed record Mark(SkillKey Skill, bool Right, double Guess) : Observed;

    /// <summary>How sure the learner was of the kind they named; a part left open says nothing.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Tenths">1 to 10 of ten.</param>
    /// <param name="Right">True when the bike had a kind of the named order class.</param>
    public sealed record Sure(string Part, int Tenths, bool Right) : Observed;

    /// <summary>A job in which a habit could show.</summary>
    /// <param name="Habit">The habit.</param>
    /// <param name="Shown">True when it showed.</param>
    public sealed record Pattern(Habit Habit, bool Shown) : Observed;

    /// <summary>Time on the bench.</summary>
    /// <param name="Minutes">Minutes spent, safety looks and second readings left out.</param>
    /// <param name="PathMinutes">Minutes of the engine's own path.</param>
    public sealed record Bench(double Minutes, double PathMinutes) : Observed;

    /// <summary>Something was ordered.</summary>
    /// <param name="Wrong">True when something ordered does not fit the bike, both kinds where two were ordered.</param>
    public sealed record Ordered(bool Wrong) : Observed;

    /// <summary>How far a check moved the learner, and how far it should have.</summary>
    /// <param name="Clue">The clue.</param>
    /// <param name="Family">Its family.</param>
    /// <param name="Linked">True when it was the second or a later clue that one and the same set event can explain.</param>
    /// <param name="Worth">Change of the engine's log odds, nats.</param>
    /// <param name="Taken">Change of the learner's log odds, nats.</param>
    public sealed record Weighed(string Clue, ClueFamily Family, bool Linked, double Worth, double Taken) : Observed;
}

/// <summary>A skill: something of a topic that can be shown in a job.</summary>
/// <param name="Sort">What sort of skill.</param>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Id">Short name of the clue or pitfall; empty for deciding and stopping.</param>
public sealed record SkillKey(SkillSort Sort, string Topic, string Id);

/// <summary>Sorts of skill.</summary>
public enum SkillSort
{
    /// <summary>Following what a clue says.</summary>
    Clue,

    /// <summary>Not being misled by a pitfall.</summary>
    Pitfall,

    /// <summary>Reading the scale or marking of a clue.</summary>
    Reading,

    /// <summary>Ordering what the checks support.</summary>
    Deciding,

    /// <summary>Going on until it is settled, or nothing more helps.</summary>
    Stopping,
}
