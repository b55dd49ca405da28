using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>What the lead of a workshop sees: skill tables and accepted habits, never single answers.</summary>
/// <param name="Needs">Per person: jobs that count, and up to two skills that need work most.</param>
/// <param name="Nobody">Skills that were asked of several people and that nobody has nearly or safe; fewest right first.</param>
/// <param name="Accepted">Habits that the learner knows and has had one aimed set for.</param>
sealed record WorkshopView(
    IReadOnlyList<(string Person, int Jobs, IReadOnlyList<SkillState> Skills)> Needs,
    IReadOnlyList<(SkillKey Skill, int Asked, int Right, int People)> Nobody,
    IReadOnlyList<(string Person, HabitState Habit)> Accepted)
{
    const int SkillsEach = 2;
    const int MostShared = 3;
    const int FewestAnswers = 4;

    /// <summary>The view of a history.</summary>
    /// <param name="history">The history.</param>
    /// <param name="now">The time.</param>
    public static WorkshopView Of(History history, DateTimeOffset now)
    {
        var all = history.People.Select(p => (Person: p, Skills: history.Book.Of(p, now))).ToList();
        var jobs = history.Jobs.Where(j => j.Counts).CountBy(j => j.Person ?? "", StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var told = history.HabitsTold.Select(t => t.Person).ToHashSet(StringComparer.Ordinal);
        var fewest = Math.Min(2, all.Count(a => a.Skills.Count > 0));
        return new WorkshopView(
            [.. all.Select(a => (a.Person, jobs.GetValueOrDefault(a.Person), (IReadOnlyList<SkillState>)[.. a.Skills.Where(IsOpen).OrderBy(s => s.Word == SkillWord.TooFewYet).ThenBy(s => s.Chance).Take(SkillsEach)]))],
            [
                .. all.SelectMany(a => a.Skills).GroupBy(s => s.Skill)
                    .Where(g => g.Count() >= fewest && g.Sum(s => s.Asked) >= FewestAnswers && g.All(s => s.Word is SkillWord.NeedsWork or SkillWord.TooFewYet) && g.Sum(s => s.Right) < g.Sum(s => s.Asked))
                    .Select(g => (g.Key, Asked: g.Sum(s => s.Asked), Right: g.Sum(s => s.Right), People: g.Count()))
                    .OrderBy(g => (double)g.Right / g.Asked).ThenByDescending(g => g.Asked).Take(MostShared),
            ],
            [.. history.People.Where(told.Contains).SelectMany(p => Habits.Of(history, p).Where(h => h is { ForLead: true, State: HabitStanding.LookOut }).Select(h => (p, h)))]);
    }

    /// <summary>The view as a report.</summary>
    public static Report Report(History history, IReadOnlyList<Topic> topics, DateTimeOffset now)
    {
        var view = Of(history, now);
        return new Report(
            Words.Of("report.workshop", ("name", history.Workshop?.Name ?? "")), now, [Words.Of("report.lead")],
            [
                new ReportTable("needs", Words.Of("lead.needs"), ["person", "jobs", "skill", "asked", "right", "now"],
                    [.. view.Needs.SelectMany(n => n.Skills.Select(s => (object?[])[n.Person, n.Jobs, SkillNames.Of(topics, s.Skill), s.Asked, s.Right, Words.Of($"skills.word.{s.Word}")]))]),
                new ReportTable("nobody", Words.Of("lead.nobody"), ["skill", "people", "asked", "right"],
                    [.. view.Nobody.Select(n => (object?[])[SkillNames.Of(topics, n.Skill), n.People, n.Asked, n.Right])]),
                new ReportTable("habits", Words.Of("lead.habits"), ["person", "habit", "shown", "could_show"],
                    [.. view.Accepted.Select(a => (object?[])[a.Person, Words.Of($"{AimedSets.KeyOf(a.Habit.Habit)}.name"), a.Habit.Shown, a.Habit.Relevant])]),
                .. history.People.Select(p => LearnerReport.Skills(history, topics, p, now) with { Id = $"skills:{p}", Title = p }),
            ]);
    }

    static bool IsOpen(SkillState skill) => skill.Word == SkillWord.NeedsWork || (skill.Word == SkillWord.TooFewYet && !skill.LastRight);
}
