using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Notebook;

/// <summary>A line for the lead: something here is wrong.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">When it was sent.</param>
/// <param name="What">The entry that sent it: from a grade, a lesson or a bike.</param>
public sealed record Report(int Number, DateTimeOffset At, LogEntry What)
{
    /// <summary>The line.</summary>
    public string Text => What switch
    {
        LogEntry.Questioned e => e.Text,
        LogEntry.LessonQuestioned e => e.Text,
        LogEntry.BikeQuestioned e => e.Text,
        _ => "",
    };

    /// <summary>What else was said by who sent it.</summary>
    public IReadOnlyList<string> More { get; init; } = [];

    /// <summary>Answers, oldest first, with their time.</summary>
    public IReadOnlyList<(LogEntry.ReportAnswered What, DateTimeOffset At)> Answers { get; init; } = [];

    /// <summary>The last answer, or null.</summary>
    public LogEntry.ReportAnswered? Answer => Answers.Count == 0 ? null : Answers[^1].What;

    /// <summary>True while the lead has to look at it: not answered, or more was said since.</summary>
    public bool IsOpen => Answer is null || (Answer.Answer == ReportAnswer.AskedBack && More.Count >= Answers.Count(a => a.What.Answer == ReportAnswer.AskedBack));

    /// <summary>The topic it speaks of.</summary>
    /// <param name="history">The history, which knows the jobs.</param>
    public string TopicOf(History history) => What switch
    {
        LogEntry.Questioned e => history.Jobs[e.Job - 1].Started.Topic,
        LogEntry.LessonQuestioned e => e.Lesson.Split('/')[0],
        LogEntry.BikeQuestioned e => e.Topic,
        _ => "",
    };

    /// <summary>Who sent it, or null for nobody known.</summary>
    /// <param name="history">The history, which knows the jobs.</param>
    public string? PersonOf(History history) => What switch
    {
        LogEntry.Questioned e => history.Jobs[e.Job - 1].Person,
        LogEntry.LessonQuestioned e => e.Person,
        LogEntry.BikeQuestioned e => e.Person,
        _ => null,
    };
}
