using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Notebook;

/// <summary>What the lead's answers mean to one person: answers to their own lines, and changes of what they learned before.</summary>
/// <param name="Report">The report.</param>
/// <param name="Answer">The last answer.</param>
/// <param name="At">When it was given.</param>
/// <param name="IsOwn">True for a line that the person sent.</param>
/// <param name="IsSeen">True when the person has opened it.</param>
public sealed record News(Report Report, LogEntry.ReportAnswered Answer, DateTimeOffset At, bool IsOwn, bool IsSeen)
{
    /// <summary>A person's news, the newest first.</summary>
    /// <param name="history">The history.</param>
    /// <param name="person">A name.</param>
    public static IReadOnlyList<News> Of(History history, string person) =>
        [.. history.Notebook.Reports.Where(r => r.Answer is not null).Select(r => Of(history, person, r)).OfType<News>().OrderByDescending(n => n.At)];

    static News? Of(History history, string person, Report report)
    {
        var (answer, at) = report.Answers[^1];
        var own = report.PersonOf(history) == person;
        if (!own && (answer.Answer != ReportAnswer.Accepted || !Learned(history, person, answer.Topic, at))) return null;
        return new News(report, answer, at, own, history.Notebook.Shown.Contains((person, report.Number)));
    }

    // Those who learned the old version: they had answered a job of the topic, or opened a lesson of it, before.
    static bool Learned(History history, string person, string topic, DateTimeOffset at) =>
        topic.Length > 0 && (history.JobsOf(person).Any(j => j.Started.Topic == topic && j.Ended is { } ended && ended < at) || history.LessonsOf(person).Any(l => l.Lesson.StartsWith(topic + "/", StringComparison.Ordinal) && l.At < at));
}
