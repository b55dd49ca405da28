using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;

namespace Apprentice.Engine.Assessing;

/// <summary>Marks jobs of a paper: sound or not, by one rule each.</summary>
public static class Marker
{
    const double SoundFrom = 0.5;
    const double RightReading = 1;

    /// <summary>The mark of an answer.</summary>
    /// <param name="bench">The topic.</param>
    /// <param name="made">The case.</param>
    /// <param name="job">The job of the paper.</param>
    /// <param name="answer">The answer with its looks.</param>
    /// <exception cref="ArgumentException">The answer does not belong to the case.</exception>
    public static JobMark Mark(Workbench bench, Case made, PaperJob job, Answer answer) => Mark(bench.Grade(made, answer), job);

    /// <summary>The mark of a job with what it rests on.</summary>
    /// <param name="bench">The topic.</param>
    /// <param name="made">The case.</param>
    /// <param name="job">The job of the paper.</param>
    /// <param name="sat">What was looked at and answered.</param>
    /// <exception cref="ArgumentException">The answer does not belong to the case.</exception>
    public static JobMark Recorded(Workbench bench, Case made, PaperJob job, SittingJob sat)
    {
        var grade = sat.Given is { } given ? bench.Grade(made, given.With(sat.Looks)) : null;
        var mark = grade is null ? NotAnswered(job) : Mark(grade, job);
        return mark with { Record = JobRecord.Of(bench, made, job.Family, sat, grade) };
    }

    /// <summary>A job that was not answered when the time was up: not sound.</summary>
    public static JobMark NotAnswered(PaperJob job) => Of(job, "paper.rule.unanswered", sound: false, safety: false, 0, 0);

    static JobMark Mark(Grade grade, PaperJob job)
    {
        var part = Lowest(grade, Aspect.Identification);
        var order = Lowest(grade, Aspect.Decision);
        var early = Lowest(grade, Aspect.Stopping) < SoundFrom || grade.Judged.Parts.Any(p => p.By == JudgedBy.TooEarly) || grade.Judged.Orders.Any(o => o.By == JudgedBy.TooEarly);
        var rule = grade.SafetyError ? "paper.rule.safety"
            : part < SoundFrom ? early ? "paper.rule.early" : "paper.rule.part"
            : order < SoundFrom ? early ? "paper.rule.early" : "paper.rule.order"
            : grade.OpenToArgument ? "paper.rule.argued" : "paper.rule.sound";
        var readings = grade.Readings.Count;
        var mark = Of(job, rule, grade.Sound, grade.SafetyError, readings, grade.Readings.Count(r => r.Part.Mark >= RightReading));
        return mark with { Values = new Dictionary<string, string>(StringComparer.Ordinal) { ["part"] = Figure(part), ["order"] = Figure(order), ["least"] = Figure(SoundFrom) } };
    }

    static double Lowest(Grade grade, Aspect aspect) => grade.Parts.Where(p => p.Aspect == aspect).Select(p => p.Mark).DefaultIfEmpty(1).Min();

    static string Figure(double mark) => (Math.Floor((mark * 100) + 0.5) / 100).ToString("0.00");

    static JobMark Of(PaperJob job, string rule, bool sound, bool safety, int readings, int right) => new()
    {
        Place = job.Place,
        Family = job.Family.Key,
        Version = job.Version,
        Sound = sound,
        SafetyError = safety,
        SafetyJob = job.Family.Safety,
        Rule = rule,
        Values = new Dictionary<string, string>(StringComparer.Ordinal),
        Readings = readings,
        ReadingsRight = right,
    };
}
