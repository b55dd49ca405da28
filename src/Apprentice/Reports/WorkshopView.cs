using System.Runtime.CompilerServices;
using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>What the lead of a workshop sees: skill tables and accepted habits, never single answers.</summary>
/// <param name="Needs">Per person: jobs that count, and the two weakest of the skills that need work.</param>
/// <param name="Nobody">Skills that were asked of several people and that nobody has nearly or safe; most asked first.</param>
/// <param name="Accepted">Habits that the learner knows and has had one aimed set for.</param>
sealed record WorkshopView(
    IReadOnlyList<(string Person, int Jobs, IReadOnlyList<SkillState> Skills)> Needs,
    IReadOnlyList<SharedNeed> Nobody,
    IReadOnlyList<(string Person, HabitState Habit)> Accepted)
{
    const int SkillsEach = 2;
    const int MostShared = 3;

    // A page asks for it several times; a history never changes.
    static readonly ConditionalWeakTable<History, Made> Known = [];

    /// <summary>The view of a history.</summary>
    /// <param name="history">The history.</param>
    /// <param name="now">The time.</param>
    public static WorkshopView Of(History history, DateTimeOffset now)
    {
        if (Known.TryGetValue(history, out var known) && known.Now == now) return known.View;
        var view = New(history, now);
        Known.AddOrUpdate(history, new Made(now, view));
        return view;
    }

    static WorkshopView New(History history, DateTimeOffset now)
    {
        var needs = WorkshopNeeds.Of(history, now);
        return new WorkshopView(
            [.. needs.People.Select(p => (p.Person, p.Jobs, (IReadOnlyList<SkillState>)[.. p.NeedsWork.Take(SkillsEach)]))],
            [.. needs.NobodyHas.Take(MostShared)],
            [.. needs.People.SelectMany(p => p.Habits.Where(h => h.State == HabitStanding.LookOut).Select(h => (p.Person, h)))]);
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

    sealed record Made(DateTimeOffset Now, WorkshopView View);
}
