using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Judges what the learner says a marking, shape or sound is, once: the right number among the decoys, what it says, and what it tells.</summary>
public sealed class MarkingGrades(Workbench bench, Case made, Look look)
{
    const double Partly = 0.5;
    readonly Clue _clue = bench.Topic.Clues.First(c => c.Id == look.Clue);

    /// <summary>The mark of a look, or null when the learner did not say what it is.</summary>
    public static GradePart? Of(Workbench bench, Case made, Look look) =>
        look.OwnFinding is { } own && made.Look(look.Clue, look.Nth).Seen is Seen.Named ? new MarkingGrades(bench, made, look).Of(own) : null;

    /// <summary>The name of a writing: what it is.</summary>
    /// <param name="clue">The clue.</param>
    /// <param name="writing">0 for the true number, n for the n-th other writing.</param>
    public static string NameOf(Clue clue, int writing) =>
        clue.Plate is { } plate && writing < plate.Writings.Count ? plate.Writings[writing].Is
        : clue.Shows is Shows.Code code && writing >= 1 && writing <= code.Decoys.Count ? code.Decoys[writing - 1].Name
        : clue.Name;

    /// <summary>What a finding of a clue tells about a job.</summary>
    /// <param name="clue">A clue that is not measured.</param>
    /// <param name="finding">One of its findings.</param>
    /// <param name="want">What the customer wants.</param>
    public static Bearing BearingOf(Clue clue, string finding, Want want) => clue.Shows switch
    {
        Shows.Code code => code.Findings.First(f => f.Id == finding).Months.Count > 0 ? Bearing.Date : Bearing.Nothing,
        Shows.Table table when IsFlat(table, finding) || LooksOf(table, finding) is Plate.Worn or Plate.Nothing => Bearing.Nothing,
        _ => clue.Node is Node.OfPart part && want.Asks.Contains(part.Part) ? Bearing.Part : Bearing.OtherPart,
    };

    // A finding that is nearly as likely for every kind tells nothing: less than a factor of 2 (3 decibans, "says little").
    static bool IsFlat(Shows.Table table, string finding)
    {
        var at = table.Findings.ToList().FindIndex(f => f.Id == finding);
        var shares = table.Rows.Select(r => r[at] + table.Misread).ToList();
        return shares.Max() < 2 * shares.Min();
    }

    static string LooksOf(Shows.Table table, string finding) => table.Findings.First(f => f.Id == finding).LooksLike;

    GradePart Of(string own)
    {
        var written = made.Written(look.Clue, look.Nth, 0);
        var right = look.Writing is null || written is null ? ((Seen.Named)made.Look(look.Clue, look.Nth).Seen).Id : written;
        var values = new (string, Value)[]
        {
            ("check", new Value.OfClue(look.Clue)), ("read", new Value.Text(TextOf(own))), ("right", new Value.Text(TextOf(right))),
            ("taken", new Value.Text(NameOf(_clue, look.Writing ?? 0))), ("says", new Value.Text(SaysOf(look.Writing ?? 0))),
        };
        var (mark, key) = own == right && look.Writing is null or 0 ? Told(own) : (0, Missed(own, right));
        return new GradePart(Aspect.Reading, mark, Remark.Of(key, values), Remark.Of("grade.rule.marking", [.. values, ("mark", new Value.Mark(mark))]));
    }

    string Missed(string own, string right) => look.Writing switch
    {
        > 0 when _clue.Family == ClueFamily.SizeMarking => "grade.reading.not-size",
        > 0 => "grade.reading.other-number",
        _ when own == right => "grade.reading.marking",
        _ when IsWorn(right) => "grade.reading.worn",
        0 => "grade.reading.misread",
        _ => "grade.reading.seen-other",
    };

    // What it tells is a part of reading it: half of the mark.
    (double Mark, string Key) Told(string own)
    {
        if (look.OwnBearing is not { } said) return (1, "grade.reading.marking");
        var tells = BearingOf(_clue, own, bench.Topic.Wants.First(w => w.Id == made.Job.Request.Want));
        if (said == tells) return (1, "grade.reading.marking");
        return (Partly, tells switch
        {
            Bearing.Part => "grade.reading.tells-part",
            Bearing.OtherPart => "grade.reading.tells-other",
            Bearing.Date => "grade.reading.tells-date",
            _ => "grade.reading.tells-nothing",
        });
    }

    bool IsWorn(string finding) => _clue.Shows switch
    {
        Shows.Code code => code.Findings.First(f => f.Id == finding).Months.Count == 0,
        Shows.Table table => LooksOf(table, finding) is Plate.Worn or Plate.Nothing,
        _ => false,
    };

    string SaysOf(int writing) => _clue.Plate is { } plate && writing < plate.Writings.Count ? plate.Writings[writing].Says
        : _clue.Lies.Length > 0 ? _clue.Lies : NameOf(_clue, writing);

    string TextOf(string finding) => _clue.Shows switch
    {
        Shows.Code code => code.Findings.First(f => f.Id == finding).Text,
        Shows.Table table => table.Findings.First(f => f.Id == finding).Text,
        _ => finding,
    };
}
