namespace Apprentice.Engine.Learning;

/// <summary>What the log says of one skill of one person.</summary>
/// <param name="Skill">The skill.</param>
/// <param name="Asked">How often it was asked.</param>
/// <param name="Right">How often it was shown.</param>
/// <param name="Days">On how many different days.</param>
/// <param name="Chance">Chance of showing it now, 0 to 1.</param>
/// <param name="Low">Lower end of the interval, from 0 to 1; one time in twenty below.</param>
/// <param name="High">Upper end; one time in twenty above.</param>
/// <param name="Word">The word for it.</param>
/// <param name="Last">When it was last asked.</param>
/// <param name="LastRight">True when it was shown then.</param>
/// <param name="Due">When to practise it again.</param>
public sealed record SkillState(
    SkillKey Skill, int Asked, int Right, int Days, double Chance, double Low, double High, SkillWord Word,
    DateTimeOffset Last, bool LastRight, DateTimeOffset Due)
{
    /// <summary>When it comes again: plans take what is weak or hardly known before it is due.</summary>
    /// <param name="now">The time for which the state was worked out.</param>
    public DateTimeOffset AgainOn(DateTimeOffset now) => Due > now && (Word is SkillWord.NeedsWork or SkillWord.TooFewYet) ? now : Due;
}

/// <summary>The word for a skill of one person, with what it rests on.</summary>
/// <param name="Skill">The skill.</param>
/// <param name="Word">The word.</param>
/// <param name="Asked">How often it was asked.</param>
/// <param name="Right">How often it was shown.</param>
public readonly record struct SkillCount(SkillKey Skill, SkillWord Word, int Asked, int Right);

/// <summary>A skill that nobody in a workshop has safe or nearly.</summary>
/// <param name="Skill">The skill.</param>
/// <param name="People">How many people it was asked of.</param>
/// <param name="Asked">How often it was asked.</param>
/// <param name="Right">How often it was shown.</param>
public sealed record SharedNeed(SkillKey Skill, int People, int Asked, int Right);

/// <summary>Words for a skill.</summary>
public enum SkillWord
{
    /// <summary>Fewer than four answers.</summary>
    TooFewYet,

    /// <summary>Neither safe nor nearly.</summary>
    NeedsWork,

    /// <summary>Mean of the interval's distribution at least .65, yet not safe.</summary>
    Nearly,

    /// <summary>At least eight answers on at least three days, lower bound above .6.</summary>
    Safe,
}
