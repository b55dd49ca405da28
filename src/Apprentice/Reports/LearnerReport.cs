using System.Globalization;
using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>A learner's own records as tables.</summary>
static class LearnerReport
{
    /// <summary>The report of a person.</summary>
    /// <param name="history">The history.</param>
    /// <param name="topics">Topics at hand.</param>
    /// <param name="person">A name.</param>
    /// <param name="now">The time.</param>
    public static Report Of(History history, IReadOnlyList<Topic> topics, string person, DateTimeOffset now) => new(
        Words.Of("report.learner", ("name", person)), now, [Words.Of("report.own")],
        [
            Skills(history, topics, person, now),
            Sure(Sureness.Of(history, person)),
            new ReportTable("trust", Words.Of("report.trust"), ["evidence", "checks", "word"], [.. Trust.Of(history, person).Families.Select(f => (object?[])[Words.Of($"trust.family.{f.Family}"), f.Slope.Updates, Words.Of($"trust.word.{f.Slope.Word}")])]),
            new ReportTable("habits", Words.Of("report.habits"), ["habit", "shown", "could_show", "state"],
                [.. Habits.Of(history, person).Where(h => h.State != HabitStanding.NotTold).Select(h => (object?[])[Words.Of($"{AimedSets.KeyOf(h.Habit)}.name"), h.Shown, h.Relevant, Words.Of(h.State == HabitStanding.Gone ? "report.gone" : "report.look-out")])]),
            Orders(WrongOrders.Of(history, person)),
            new ReportTable("jobs", Words.Of("report.jobs"), ["job", "day", "topic", "guided", "sound", "minutes"],
                [.. history.JobsOf(person).Where(j => j.Given is not null).Select(j => (object?[])
                [
                    j.Started.Job, Day(j.Ended ?? j.At), SkillNames.Title(topics, j.Started.Topic), j.Started.Guided, j.Verdict?.Sound,
                    j.Observed.OfType<Observed.Bench>().FirstOrDefault()?.Minutes,
                ])]),
        ]);

    /// <summary>The skill table, which the lead may see too.</summary>
    public static ReportTable Skills(History history, IReadOnlyList<Topic> topics, string person, DateTimeOffset now) => new(
        "skills", Words.Of("skills.title"), ["topic", "skill", "asked", "right", "now", "again_on"],
        [.. history.Book.Of(person, now).Select(s => (object?[])[SkillNames.Title(topics, s.Skill.Topic), SkillNames.Short(topics, s.Skill), s.Asked, s.Right, Words.Of($"skills.word.{s.Word}"), Day(s.AgainOn(now))])]);

    static ReportTable Sure(SureReport report) => new(
        "sure", Words.Of("report.sure"), ["said_of_ten", "asked", "right"], [.. report.Levels.Select(l => (object?[])[l.Tenths >= 9.9 ? 10 : (int)Math.Round(l.Tenths), l.Asked, l.Right])]);

    static ReportTable Orders(WrongOrders orders) => new(
        "orders", Words.Of("report.orders"), ["jobs", "wrong"], [[orders.Jobs, orders.Wrong], .. orders.JobsBefore > 0 ? [[orders.JobsBefore, orders.WrongBefore]] : Array.Empty<object?[]>()]);

    static string Day(DateTimeOffset at) => at.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
