using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;

namespace Apprentice.Engine.Learning;

/// <summary>What an answer shows: worked out once at hand-in and kept in the log, so that later pages need the log alone.</summary>
public static class Observations
{
    /// <summary>Everything that an answer shows.</summary>
    /// <param name="bench">The topic.</param>
    /// <param name="made">The case.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="grade">Its grade.</param>
    /// <param name="updates">How sure the learner was before and after a check, where that was asked; null for nowhere.</param>
    public static IReadOnlyList<Observed> Of(Workbench bench, Case made, Answer answer, Grade grade, IReadOnlyList<LogEntry.Updated>? updates = null)
    {
        var scene = new Watched(bench, made, answer, grade);
        return
        [
            .. SkillRules.Of(scene),
            .. FactRules.Of(scene),
            .. HabitRules.Of(scene),
            .. WeighedRules.Of(scene, updates ?? []),
        ];
    }
}
