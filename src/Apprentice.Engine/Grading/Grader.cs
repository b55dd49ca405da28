using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Grades answers to a case: the judgement, not the luck.</summary>
public sealed class Grader
{
    const double SoundFrom = 0.5;
    readonly Workbench _bench;
    readonly Case _case;
    readonly IReadOnlyList<Finding> _path;

    /// <summary>A grader for one case.</summary>
    public Grader(Workbench bench, Case made)
    {
        (_bench, _case) = (bench, made);
        _path = bench.PathOf(made);
    }

    Topic Topic => _bench.Topic;

    Clue ClueOf(string id) => Topic.Clues.First(c => c.Id == id);

    /// <summary>The grade of an answer. One slip is charged once: every part after the reading is marked on the shown findings or on the learner's own readings, whichever is better for the learner.</summary>
    /// <exception cref="ArgumentException">The answer names a clue, kind or choice that the case does not have, or leaves a part or order line out.</exception>
    public Grade Grade(Answer answer)
    {
        if (AnswerCheck.Faults(Topic, _case, answer) is [var fault, ..]) throw new ArgumentException(fault, nameof(answer));
        var shown = FindingsOf(answer, false);
        var judgement = new Judgement(_bench, _case, answer, shown);
        var own = answer.Looks.Any(l => l.OwnReading is not null || l.OwnFinding is not null) ? new Judgement(_bench, _case, answer, FindingsOf(answer, true)) : judgement;
        var safety = Judged.SafetyOf(judgement, own, answer, answer.Looks.All(IsRight));
        var unsafeOrder = safety is not SafetyFault.None;
        var left = _case.Job.Bench.Where(c => ClueOf(c).Safety && shown.All(f => f.Clue != c)).ToList();
        var remarks = new GradeRemarks(_bench, _case, answer, judgement, own, safety, left);
        var minutes = MinutesOf(answer.Looks.Where(l => l.Nth == 0).Select(l => l.Clue));
        var path = _path.Skip(_case.Job.Told.Count).Select(f => f.Clue).Distinct(StringComparer.Ordinal).ToList();
        var parts = remarks.Parts(minutes, MinutesOf(path));
        var sound = !unsafeOrder && parts.Where(p => p.Aspect is Aspect.Identification or Aspect.Decision).All(p => p.Mark >= SoundFrom);
        var inShort = remarks.InShort();
        return new Grade
        {
            InShort = inShort.Form,
            InShortRemark = inShort.Remark,
            Parts = parts,
            SafetyError = unsafeOrder,
            OpenToArgument = judgement.OpenToArgument,
            Sound = sound,
            Reasoning = judgement.Reasoning,
            Findings = shown,
            Minutes = minutes,
            PathMinutes = MinutesOf(path),
            Path = path,
            SafetyLeft = left,
            Readings = ReadingGrades.All(_bench, _case, answer),
            Judged = Judged.Of(judgement, own, answer, safety),
            Remarks = remarks.Chosen(parts),
        };
    }

    /// <summary>Bench minutes of first looks, safety looks left out, each access counted once.</summary>
    public double MinutesOf(IEnumerable<string> clues)
    {
        var its = clues.Select(ClueOf).Where(c => !c.Safety).ToList();
        var access = _case.Job.Request.Offer != Channel.Bench ? 0 : its.Select(c => c.Access).OfType<string>().Distinct(StringComparer.Ordinal)
            .Sum(a => Topic.Accesses.First(x => x.Id == a).Minutes);
        return its.Sum(c => c.Minutes) + access;
    }

    bool IsRight(Look look) => IsReadRight(look) && IsNamedRight(look);

    bool IsReadRight(Look look) => look.OwnReading is null || _case.Look(look.Clue, look.Nth).Seen is not Seen.Reading || ReadingGrades.IsRight(_bench, _case, look);

    bool IsNamedRight(Look look) =>
        look.OwnFinding is null || (look.Writing is null or 0 && (_bench.Shown(_case, look).Seen is not Seen.Named shown || shown.Id == look.OwnFinding));

    // An own reading or finding counts as the learner took it: that it came from the wrong point or the wrong number is charged under reading, and only there. From where
    // one that is right was taken is known.
    List<Finding> FindingsOf(Answer answer, bool own)
    {
        var findings = _case.Job.Told.ToList();
        foreach (var look in answer.Looks)
        {
            var finding = _bench.Shown(_case, look);
            if (own && look.OwnReading is { } mm && finding.Seen is Seen.Reading) finding = finding with { Seen = new Seen.Reading(mm), Datum = IsRight(look) ? finding.Datum : null };
            if (own && look.OwnFinding is { } id && _case.Look(look.Clue, look.Nth).Seen is Seen.Named) finding = finding with { Seen = new Seen.Named(id), Writing = IsRight(look) ? finding.Writing : null };
            findings.Add(finding);
        }

        return findings;
    }
}
