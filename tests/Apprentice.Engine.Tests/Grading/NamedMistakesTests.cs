using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

/// <summary>Each reading has one name for what went wrong, worked out by hand beside it.</summary>
public sealed class NamedMistakesTests
{
    const double Inch = 25.4;

    // Worked example: main 27, line 4 of a 1/20 vernier reads 27.20; with zero error +0.05 the part is 27.15. Source: facts U7.1 (S112, S112b).
    [Theory]
    [InlineData(27.15, Mistake.None)]
    [InlineData(27.35, Mistake.ZeroForgotten)]
    [InlineData(27.55, Mistake.ZeroWrongWay)]
    [InlineData(27.70, Mistake.VernierTenths)] // shown 27.35: line 7 taken for 0.7
    [InlineData(27.50, Mistake.VernierTenths)] // the same with the zero error taken off
    [InlineData(30.50, Mistake.VernierPlace)] // 0.35 as 3.5
    [InlineData(46.35, Mistake.VernierEnd)] // 27.35 + 19
    [InlineData(26.80, Mistake.VernierLeftOut)] // 27 less 0.20
    [InlineData(28.15, Mistake.MainDivision)]
    [InlineData(17.15, Mistake.Figure)]
    [InlineData(2.715, Mistake.CentimetresAsMillimetres)]
    [InlineData(271.5, Mistake.TenTimes)]
    [InlineData(27.15 / Inch, Mistake.InchesAsMillimetres)]
    [InlineData(27.15 * Math.PI, Mistake.RoundForAcross)]
    [InlineData(27.15 / Math.PI, Mistake.AcrossForRound)]
    [InlineData(33.33, Mistake.Off)]
    public void A_caliper_with_a_zero_error_of_plus_0_20(double read, Mistake mistake) => Assert.Equal(mistake, Caliper(27.15, 0.20, read).Mistake);

    [Theory]
    [InlineData(27.05, Mistake.VernierDivision)] // a line too low, past the tolerance of 0.065
    [InlineData(27.20, Mistake.None)] // within 2 u = 0.065 of 27.15
    [InlineData(27.00, Mistake.VernierLeftOut)]
    [InlineData(27.30, Mistake.VernierTenths)] // line 3 taken for 0.3
    public void A_caliper_without_a_zero_error(double read, Mistake mistake) => Assert.Equal(mistake, Caliper(27.15, 0, read, least: 0.03).Mistake);

    [Theory]
    [InlineData(310.4, Mistake.None)]
    [InlineData(300.4, Mistake.Figure)]
    [InlineData(12.2, Mistake.InchesAsMillimetres)] // 12.2 in = 309.9 mm
    [InlineData(31.0, Mistake.CentimetresAsMillimetres)]
    [InlineData(98.8, Mistake.AcrossForRound)] // 310.4 ÷ π
    [InlineData(345, Mistake.Off)]
    public void A_rule_in_millimetres(double read, Mistake mistake) => Assert.Equal(mistake, Ruled("rule", 310.4, read, 0).Mistake);

    [Fact]
    public void A_mark_of_a_rule_in_inches_is_a_sixteenth_and_a_figure_an_inch()
    {
        Assert.Equal(Mistake.MainDivision, Ruled("rule, inches", 12 * Inch, 12 * Inch + (Inch / 16), 0, uncertainty: 0.2).Mistake);
        Assert.Equal(Mistake.Figure, Ruled("rule, inches", 12 * Inch, 11 * Inch, 0, uncertainty: 0.2).Mistake);
    }

    [Fact]
    public void A_datum_chosen_wrong_is_named_and_so_is_one_that_the_reading_gives_away()
    {
        var chosen = Ruled("rule", 335, 310, datum: 1);
        Assert.Equal((Mistake.Datum, 1), (chosen.Mistake, chosen.Datum));
        Assert.Equal("grade.reading.datum", chosen.Part.Remark.Key);
        Assert.Equal((Mistake.Datum, 2), Ruled("rule", 335, 346, datum: null) is var told ? (told.Mistake, told.Datum) : default);
    }

    [Fact]
    public void A_wrong_datum_that_is_then_misread_keeps_the_name_of_what_was_misread() =>
        Assert.Equal(Mistake.Figure, Ruled("rule", 335, 320, datum: 1).Mistake);

    // 335 taken 25 short reads 310, which is what the other kind measures (JobTopic: 310 and 335).
    [Fact]
    public void A_remark_says_where_the_reading_would_have_led()
    {
        Assert.Equal("left", Ruled("rule", 335, 310, datum: 1).Leads);
        Assert.Equal("right", Ruled("rule", 335, 334, 0).Leads);
        Assert.Equal(Kind.NoneId, Ruled("rule", 335, 250, 0).Leads);
        Assert.Equal("grade.leads.other", Leads(Ruled("rule", 335, 310, datum: 1)).Key);
        Assert.Equal("grade.leads.none", Leads(Ruled("rule", 335, 250, 0)).Key);
        Assert.Equal("grade.leads.same", Leads(Ruled("rule", 335, 338, 0)).Key);
    }

    [Fact]
    public void A_right_reading_always_wins_and_the_tolerance_is_two_standard_uncertainties_at_least_a_step()
    {
        var rng = new Rng(20);
        for (var n = 0; n < 2000; n++)
        {
            var (size, u) = (100 + (rng.Unit() * 200), 0.2 + rng.Unit());
            var read = size + ((rng.Unit() * 2) - 1) * Math.Max(1, 2 * u);
            var grade = Ruled("rule", size, read, rng.Below(2) == 0 ? null : 0, u);
            Assert.Equal((Mistake.None, 1), (grade.Mistake, grade.Part.Mark));
        }
    }

    [Fact]
    public void What_the_scale_showed_is_right_even_where_the_part_lay_badly()
    {
        // The error of this look is five standard uncertainties: who reads the scale as it stands has read it right.
        var bench = Bench("rule", 1, 1, 200, 420);
        var made = Made(bench, 335, 0);
        made = made with { Errors = new Dictionary<string, IReadOnlyList<double>>(StringComparer.Ordinal) { ["length"] = [5, 0, 0, 0] } };
        Assert.Equal(Mistake.None, Only(bench, made, new Look("length", 0, 340, 0)).Mistake);
        Assert.Equal(340, Only(bench, made, new Look("length", 0, 340, 0)).Right, 1e-9);
        Assert.Equal(Mistake.None, Only(bench, made, new Look("length", 0, 335, 0)).Mistake);
    }

    static Remark Leads(ReadingGrade grade) => Assert.IsType<Value.Said>(grade.Part.Remark.Values["leads"]).Remark;

    // Limit and step 0.05 mm: u = √(0.05²/3 + 0.025²/3) = 0.0323, good to 0.065. Source: facts U7.3 (0.02887 and 0.01443, root sum of squares).
    static ReadingGrade Caliper(double size, double zeroError, double read, double least = 0.0323)
    {
        var bench = Bench("caliper", 0.05, least, 0, 400);
        return Only(bench, Made(bench, size, zeroError), new Look("length", 0, read, 0));
    }

    static ReadingGrade Ruled(string tool, double size, double read, int? datum, double uncertainty = 0.4)
    {
        var bench = Bench(tool, 1, uncertainty, 0, 420, new Slip("to the crown", 0.05, 1, -25, null), new Slip("from the lower edge", 0.05, 1, 11, null));
        return Only(bench, Made(bench, size, 0), new Look("length", 0, read, datum));
    }

    static Workbench Bench(string tool, double step, double uncertainty, double low, double high, params Slip[] slips) =>
        new(JobTopic.Of(false, Some.Clue("length", new Node.OfPart("fork"), Some.Measured(step, uncertainty, low, high, slips)) with { Tool = tool }));

    // The seed alone says which zero error the caliper of a job has.
    static Case Made(Workbench bench, double size, double zeroError)
    {
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("length", new Seen.Reading(size)));
        made = made with { Truth = made.Truth with { Sizes = [size] } };
        var seeds = Enumerable.Range(0, 1000).Select(s => made with { Job = made.Job with { Seed = (ulong)s } });
        return seeds.First(m => Math.Abs(Workbench.ZeroErrorOf(m) - zeroError) < 1e-9);
    }

    static ReadingGrade Only(Workbench bench, Case made, Look look) => Assert.Single(bench.Grade(made, JobTopic.Answer(null, new Choice.Ask(), look)).Readings);
}
