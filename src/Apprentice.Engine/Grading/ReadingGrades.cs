using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Judges the learner's own readings and findings, once: readings against the true size and what the tool is good for.</summary>
/// <remarks>Good to two standard uncertainties (coverage factor k = 2), at least a step. Source: JCGM 100:2008, 6.2 and 6.3.3.</remarks>
static class ReadingGrades
{
    const double Coverage = 2;

    /// <summary>The mark of the worst own reading or finding, or null when the learner read nothing themselves.</summary>
    public static GradePart? Of(Workbench bench, Case made, Answer answer) => answer.Looks
        .Select(l => made.Look(l.Clue, l.Nth).Seen is Seen.Reading ? Grade(bench, made, l)?.Part : MarkingGrades.Of(bench, made, l)).OfType<GradePart>().MinBy(g => g.Mark);

    /// <summary>Each own reading, in the order taken.</summary>
    public static IReadOnlyList<ReadingGrade> All(Workbench bench, Case made, Answer answer) =>
        [.. answer.Looks.Where(l => made.Look(l.Clue, l.Nth).Seen is Seen.Reading).Select(l => Grade(bench, made, l)).OfType<ReadingGrade>()];

    /// <summary>True when an own reading is right and was taken from the right datum, or from none that was chosen.</summary>
    public static bool IsRight(Workbench bench, Case made, Look look) => look.Datum is null or 0 && Grade(bench, made, look) is { Mistake: Mistake.None };

    static ReadingGrade? Grade(Workbench bench, Case made, Look look)
    {
        var scene = bench.SceneOf(made.Job.Request.Provenance);
        var clue = scene.Table.Names.ClueOf(look.Clue);
        if (clue.Shows is not Shows.Measured measured || look.OwnReading is not { } read) return null;
        var model = scene.Reader.ModelOf(look.Clue, made.Job.Request.Offer, null);
        var index = scene.Table.Names.Dimension(measured.Dimension);
        var way = model.Ways[0];
        var exact = (way.Slope * made.Truth.Sizes[index]) + way.Intercept;
        var allowed = Math.Max(model.Step, Coverage * way.Uncertainty);
        IReadOnlyList<double> edges = [.. model.Ways.Select((w, d) => look.Datum is null ? (w.Slope * made.Truth.Sizes[index]) + w.Intercept : bench.EdgeOf(made, look.Clue, look.Nth, d))];
        var tool = Instrument.Of(clue.Tool);
        var (mistake, datum) = new ReadingMistakes(tool, model.Step, allowed, exact, edges, look.Datum, Workbench.ZeroErrorOf(made)).Of(read);
        var dimension = bench.Topic.Dimensions[index];
        var (leads, should) = (Likeliest(bench.Topic, dimension, model, read), Likeliest(bench.Topic, dimension, model, edges[0]));
        var mark = mistake == Mistake.None ? 1 : Math.Abs(read - exact) <= 2 * allowed ? 0.5 : 0;
        var values = Values(look, tool, read, (edges[0], exact, allowed), Leads(dimension.Part, leads, should));
        var remark = Remark.Of(KeyOf(mistake), mistake == Mistake.Datum ? [.. values, ("datum", new Value.Text(measured.Slips[datum - 1].Name))] : values);
        return new ReadingGrade
        {
            Look = look,
            Read = read,
            Right = edges[0],
            Mistake = mistake,
            Datum = datum,
            Leads = leads,
            Part = new GradePart(Aspect.Reading, mark, remark, Remark.Of("grade.rule.reading", [.. values, ("mark", new Value.Mark(mark))])),
        };
    }

    static (string, Value)[] Values(Look look, Instrument? tool, double read, (double Right, double Exact, double Allowed) size, Remark leads)
    {
        Value Length(double mm) => new Value.Length(mm, tool?.Division ?? 1, tool?.Inches ?? false);
        return
        [
            ("check", new Value.OfClue(look.Clue)), ("read", Length(read)), ("shown", Length(size.Right)), ("right", Length(size.Exact)),
            ("good", new Value.Length(size.Allowed, tool?.Division ?? 1)), ("leads", new Value.Said(leads)),
        ];
    }

    static Remark Leads(string part, string leads, string should) => leads == Kind.NoneId
        ? Remark.Of("grade.leads.none")
        : Remark.Of(leads == should ? "grade.leads.same" : "grade.leads.other", ("kind", new Value.OfKind(part, leads)));

    // The kind under which the reading alone is likeliest, taken from the right datum; less likely than a blunder under all: none.
    static string Likeliest(Topic topic, Dimension dimension, MeasuredModel model, double read)
    {
        var half = model.Step / 2;
        var kinds = topic.Parts.First(p => p.Id == dimension.Part).Kinds.Select((k, i) => (k.Id, Chance: model.Between(
            read - half, read + half, new SizeSpread(dimension.Nominals[i], dimension.Spreads[i], dimension.Low, dimension.High), right: true))).ToList();
        var best = kinds.MaxBy(k => k.Chance);
        return best.Chance > model.FlatStep * model.Blunder ? best.Id : Kind.NoneId;
    }

    static string KeyOf(Mistake mistake) => mistake switch
    {
        Mistake.None => "grade.reading.good",
        Mistake.Datum => "grade.reading.datum",
        Mistake.ZeroForgotten => "grade.reading.zero",
        Mistake.ZeroWrongWay => "grade.reading.zero-way",
        Mistake.InchesAsMillimetres => "grade.reading.inches",
        Mistake.MillimetresAsInches => "grade.reading.millimetres",
        Mistake.CentimetresAsMillimetres => "grade.reading.centimetres",
        Mistake.TenTimes => "grade.reading.ten-times",
        Mistake.RoundForAcross => "grade.reading.round",
        Mistake.AcrossForRound => "grade.reading.across",
        Mistake.VernierTenths => "grade.reading.vernier-tenths",
        Mistake.VernierPlace => "grade.reading.vernier-place",
        Mistake.VernierEnd => "grade.reading.vernier-end",
        Mistake.VernierLeftOut => "grade.reading.vernier-left-out",
        Mistake.VernierDivision => "grade.reading.vernier-line",
        Mistake.MainDivision => "grade.reading.mark",
        Mistake.Figure => "grade.reading.figure",
        _ => "grade.reading.off",
    };
}
