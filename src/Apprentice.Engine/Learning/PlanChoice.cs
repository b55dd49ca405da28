namespace Apprentice.Engine.Learning;

/// <summary>Which skills a session is for, and why; knows nothing of topics and bikes.</summary>
/// <remarks>
/// Errors first, the weakest of them first, then what is due, longest overdue first; then a new one; then the weakest that can be learned now, by the lower end of the interval;
/// then the least safe of the others. What needs work comes up to three times in a session before what is known comes at all; what was missed and needs work, twice before what is due. A new skill comes in a short block of two, and once more
/// later, mixed with the rest. No skill follows itself outside a block. Source of the mixing: Rohrer, Taylor, The shuffling of mathematics problems improves learning, 2007; blocks of two,
/// "can be learned" from a chance of .2 and one new skill a session are judgement.
/// </remarks>
public static class PlanChoice
{
    /// <summary>A skill is learnable from this chance on.</summary>
    public const double Learnable = 0.2;

    const double SafeFrom = 0.6;
    const double Weak = 0.45;
    const int Block = 2;
    const int FewestForNew = 3;

    /// <summary>The skills of a session.</summary>
    /// <param name="known">Skills asked before.</param>
    /// <param name="fresh">Skills never asked, in the order in which they should come.</param>
    /// <param name="jobs">How many jobs, at least 1.</param>
    /// <param name="now">The time.</param>
    public static IReadOnlyList<PlannedSkill> Of(IReadOnlyList<SkillState> known, IReadOnlyList<SkillKey> fresh, int jobs, DateTimeOffset now)
    {
        var chosen = new List<PlannedSkill>();
        var isNew = fresh.Count > 0 && (jobs >= FewestForNew || known.Count == 0);
        var room = jobs - (isNew ? Math.Min(jobs, Block + (jobs > Block + 1 ? 1 : 0)) : 0);
        foreach (var skill in Ranked(known, now))
        {
            if (chosen.Count < room) chosen.Add(skill);
        }

        if (isNew) AddNew(chosen, fresh[0], jobs);
        for (var i = 1; isNew && chosen.Count < jobs && i < fresh.Count; i++) chosen.Add(new(fresh[i], PlanReason.New));
        for (var i = 0; chosen.Count < jobs && chosen.Count > 0; i++) chosen.Add(new(chosen[i].Skill, PlanReason.Mixed));
        return Apart(chosen);
    }

    static IEnumerable<PlannedSkill> Ranked(IReadOnlyList<SkillState> known, DateTimeOffset now)
    {
        var due = known.Where(s => s.Due <= now).OrderBy(s => s.LastRight).ThenBy(s => s.LastRight ? s.Due.UtcTicks : s.Low).ToList();
        var errors = due.Where(s => !s.LastRight).ToList();
        var rest = known.Where(s => s.Due > now).ToList();
        var weak = rest.Where(IsWeak).OrderBy(s => s.Chance < Learnable).ThenBy(s => s.Low).ToList();
        var again = errors.Concat(weak).Where(ComesAgain).ToList();
        return errors.Select(s => new PlannedSkill(s.Skill, PlanReason.Error))
            .Concat(errors.Where(ComesAgain).Select(s => new PlannedSkill(s.Skill, PlanReason.Mixed)))
            .Concat(due.Where(s => s.LastRight).Select(s => new PlannedSkill(s.Skill, PlanReason.Due)))
            .Concat(weak.Select(s => new PlannedSkill(s.Skill, PlanReason.Weakest)))
            .Concat(again.Concat(again).Select(s => new PlannedSkill(s.Skill, PlanReason.Mixed)))
            .Concat(rest.Where(s => !IsWeak(s)).OrderBy(s => s.Low).Select(s => new PlannedSkill(s.Skill, PlanReason.Next)));
    }

    static bool IsWeak(SkillState skill) => skill.Chance < SkillModel.DueAt || skill.Low <= SafeFrom;

    static bool ComesAgain(SkillState skill) => skill.Word is SkillWord.NeedsWork or SkillWord.TooFewYet || skill.Low <= Weak;

    // A short block after the first job, so that the session opens with something known; once more at the end.
    static void AddNew(List<PlannedSkill> chosen, SkillKey skill, int jobs)
    {
        var at = Math.Min(1, chosen.Count);
        for (var i = 0; i < Block && chosen.Count < jobs; i++) chosen.Insert(at, new(skill, PlanReason.New));
        if (chosen.Count >= Block + 1 && chosen.Count < jobs) chosen.Add(new(skill, PlanReason.Mixed));
    }

    // Whoever follows itself, a block of a new one left out, changes places with a later one.
    static List<PlannedSkill> Apart(List<PlannedSkill> chosen)
    {
        for (var i = 1; i < chosen.Count; i++)
        {
            if (chosen[i].Skill != chosen[i - 1].Skill || chosen[i].Reason == PlanReason.New) continue;
            var other = chosen.FindIndex(i + 1, c => c.Skill != chosen[i].Skill);
            if (other > 0) (chosen[i], chosen[other]) = (chosen[other], chosen[i]);
        }

        return chosen;
    }
}

/// <summary>A skill of a session.</summary>
/// <param name="Skill">The skill.</param>
/// <param name="Reason">Why it was chosen.</param>
public sealed record PlannedSkill(SkillKey Skill, PlanReason Reason);

/// <summary>Why a job is in a session.</summary>
public enum PlanReason
{
    /// <summary>It was missed last time.</summary>
    Error,

    /// <summary>It is due again.</summary>
    Due,

    /// <summary>It is new.</summary>
    New,

    /// <summary>It is the weakest that can be learned now.</summary>
    Weakest,

    /// <summary>Mixed in among others.</summary>
    Mixed,

    /// <summary>It is known: so that it stays so.</summary>
    Next,
}
