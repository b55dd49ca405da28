using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>Jobs aimed at a habit, made honestly: only where the bike comes from, what is told first and what the opening looks like are asked for.</summary>
public static class AimedSets
{
    /// <summary>Jobs aimed at a habit, from the topics in which it can show.</summary>
    /// <param name="history">The history.</param>
    /// <param name="topics">Topics at hand.</param>
    /// <param name="habit">The habit.</param>
    /// <returns>Six jobs, or none when the habit can show in none of the topics.</returns>
    public static IReadOnlyList<PlanItem> Of(History history, IReadOnlyList<Topic> topics, Habit habit) => throw new NotSupportedException();

    /// <summary>Key under which the words of a habit stand: <c>.name</c>, <c>.sentence</c> (evidence, with {shown} and {relevant}), <c>.card.1</c> to <c>.card.4</c> (for the lead), <c>.look</c> (one line for the learner).</summary>
    public static string KeyOf(Habit habit) => "habit." + string.Concat(habit.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));
}
