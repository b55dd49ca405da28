using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

/// <summary>MODEL 6: a reading is graded once, the right number among the decoys; every other part on the shown findings or the learner's own, whichever is better. Cases made up.</summary>
public sealed class MarkingGradesTests
{
    static readonly Plate Stamp = new(Surface.CrankEnd,
    [
        new Writing("{text}", "stamp of the size", "It names the fork", "punched"),
        new Writing("{09}{09}", "number of the mould", "It names the mould", "raised"),
    ]);

    static readonly Clue Marking = Plated(Some.Table("marking", new Node.OfPart("fork"), [0.97, 0.02, 0.01], [0.02, 0.97, 0.01])) with { Family = ClueFamily.SizeMarking };
    static readonly Clue Feel = Some.Table("feel", new Node.OfPart("fork"), [0.97, 0.03], [0.03, 0.97]);
    static readonly Clue Noise = Some.Table("noise", new Node.OfPart("fork"), [0.5, 0.5], [0.5, 0.5]);

    [Theory]
    [InlineData("f1", 0, Bearing.Part, 1, "grade.reading.marking")]
    [InlineData("f1", 0, null, 1, "grade.reading.marking")]
    [InlineData("f1", 0, Bearing.Date, 0.5, "grade.reading.tells-part")]
    [InlineData("f0", 0, Bearing.Part, 0, "grade.reading.misread")]
    [InlineData("f1", 1, Bearing.Part, 0, "grade.reading.not-size")]
    [InlineData("f0", 1, Bearing.Nothing, 0, "grade.reading.not-size")]
    public void A_marking_is_marked_once(string own, int writing, Bearing? bearing, double mark, string key)
    {
        var part = Reading(Marking, "f1", new Look("marking", 0, OwnFinding: own, Writing: writing, OwnBearing: bearing));
        Assert.Equal(mark, part.Mark);
        Assert.Equal(key, part.Remark.Key);
    }

    [Fact]
    public void A_number_that_is_no_size_is_called_another_writing() =>
        Assert.Equal("grade.reading.other-number", Reading(Marking with { Family = ClueFamily.NumberOrDate }, "f1", new Look("marking", 0, OwnFinding: "f1", Writing: 1)).Remark.Key);

    [Theory]
    [InlineData("f2", Bearing.Nothing, 1, "grade.reading.marking")]
    [InlineData("f2", Bearing.Part, 0.5, "grade.reading.tells-nothing")]
    [InlineData("f0", Bearing.Part, 0, "grade.reading.worn")]
    public void A_worn_marking_tells_nothing_and_a_guess_is_no_reading(string own, Bearing bearing, double mark, string key)
    {
        var part = Reading(Marking, "f2", new Look("marking", 0, OwnFinding: own, Writing: 0, OwnBearing: bearing));
        Assert.Equal(mark, part.Mark);
        Assert.Equal(key, part.Remark.Key);
    }

    [Theory]
    [InlineData("f1", 1, "grade.reading.marking")]
    [InlineData("f0", 0, "grade.reading.seen-other")]
    public void What_is_seen_or_felt_is_marked_too(string own, double mark, string key)
    {
        var part = Reading(Feel, "f1", new Look("feel", 0, OwnFinding: own));
        Assert.Equal(mark, part.Mark);
        Assert.Equal(key, part.Remark.Key);
    }

    [Fact]
    public void What_a_writing_tells_follows_from_its_clue()
    {
        var want = new Want("want", "want", [], ["fork"], [], "");
        Assert.Equal(Bearing.Part, MarkingGrades.BearingOf(Marking, "f0", want));
        Assert.Equal(Bearing.Nothing, MarkingGrades.BearingOf(Marking, "f2", want));
        Assert.Equal(Bearing.OtherPart, MarkingGrades.BearingOf(Marking, "f0", want with { Asks = ["stem"] }));
        Assert.Equal(Bearing.Nothing, MarkingGrades.BearingOf(Noise, "f0", want));
        var plate = Handlebars.Topic.Clues.First(c => c.Id == "plate");
        Assert.Equal(Bearing.Date, MarkingGrades.BearingOf(plate, "11", want));
        Assert.Equal(Bearing.Nothing, MarkingGrades.BearingOf(plate, "worn", want));
    }

    [Fact]
    public void A_misread_marking_is_charged_under_reading_only()
    {
        var (bench, made) = Job(Marking, "f1");
        var grade = bench.Grade(made, JobTopic.Answer("left", new Choice.Order("left"), new Look("marking", 0, OwnFinding: "f0", Writing: 0)));
        Assert.Equal(0, JobTopic.Mark(grade, Aspect.Reading));
        Assert.True(JobTopic.Mark(grade, Aspect.Identification) > 0.85);
        Assert.True(JobTopic.Mark(grade, Aspect.Decision) > 0.85);
        var told = bench.Grade(made, JobTopic.Answer("left", new Choice.Order("left"), new Look("marking", 0)));
        Assert.True(JobTopic.Mark(told, Aspect.Identification) < 0.5);
    }

    [Fact]
    public void An_answer_that_follows_from_what_was_shown_is_as_good()
    {
        var (bench, made) = Job(Marking, "f1");
        var grade = bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"), new Look("marking", 0, OwnFinding: "f0", Writing: 0)));
        Assert.True(JobTopic.Mark(grade, Aspect.Identification) > 0.85);
    }

    [Fact]
    public void Safety_is_judged_on_the_own_finding_alone()
    {
        var sure = Plated(Some.Table("marking", new Node.OfPart("fork"), [0.999, 0.001, 0], [0.001, 0.999, 0]));
        var bench = new Workbench(JobTopic.Of(true, sure));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("marking", new Seen.Named("f1")));
        Assert.True(bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"), new Look("marking", 0, OwnFinding: "f2", Writing: 0))).SafetyError);
        Assert.False(bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"), new Look("marking", 0, OwnFinding: "f1", Writing: 0))).SafetyError);
    }

    [Fact]
    public void A_stop_sign_on_show_that_was_called_something_else_is_still_passed_over()
    {
        var crack = Feel with { Shows = new Shows.Table { Findings = [new TableFinding("f0", "firm"), new TableFinding("f1", "crack", "Do not ride.")], Rows = [[0.9, 0.1], [0.9, 0.1]] } };
        var (bench, made) = Job(crack, "f1");
        var look = new Look("feel", 0, OwnFinding: "f0");
        Assert.True(bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"), look)).SafetyError);
        Assert.False(bench.Grade(made, JobTopic.Answer(null, new Choice.Ask(), look)).SafetyError);
    }

    [Fact]
    public void Another_writing_is_shown_as_no_evidence()
    {
        var (bench, made) = Job(Marking, "f1");
        Assert.Equal(new Finding("marking", Channel.Bench, new Seen.Hidden(), Writing: 1), bench.Shown(made, new Look("marking", 0, Writing: 1)));
        Assert.Equal(new Seen.Named("f1"), bench.Shown(made, new Look("marking", 0, Writing: 0)).Seen);
    }

    [Theory]
    [InlineData("f9", null, "marking cannot show f9; it can show f0, f1, f2")]
    [InlineData("f1", 2, "marking has the writings 0 to 1, not 2")]
    public void A_finding_or_writing_that_the_clue_does_not_have_is_refused(string own, int? writing, string sentence)
    {
        var (bench, made) = Job(Marking, "f1");
        Assert.Equal([sentence], AnswerCheck.Faults(bench.Topic, made, JobTopic.Answer("left", new Choice.Ask(), new Look("marking", 0, OwnFinding: own, Writing: writing))));
    }

    [Fact]
    public void A_writing_of_a_clue_without_a_plate_is_refused()
    {
        var (bench, made) = Job(Feel, "f1");
        Assert.Equal(["feel is not read off a plate, so it has no writing"], AnswerCheck.Faults(bench.Topic, made, JobTopic.Answer("left", new Choice.Ask(), new Look("feel", 0, OwnFinding: "f1", Writing: 0))));
    }

    static GradePart Reading(Clue clue, string shown, Look look)
    {
        var (bench, made) = Job(clue, shown);
        return bench.Grade(made, JobTopic.Answer("right", new Choice.Ask(), look)).Parts.Single(p => p.Aspect == Aspect.Reading);
    }

    static (Workbench Bench, Case Made) Job(Clue clue, string shown)
    {
        var bench = new Workbench(JobTopic.Of(false, clue));
        return (bench, JobTopic.Made(bench.Topic, Channel.Bench, null, [], (clue.Id, new Seen.Named(shown))));
    }

    static Clue Plated(Clue clue)
    {
        var table = (Shows.Table)clue.Shows;
        string[] looks = ["25", "27", Plate.Worn];
        return clue with { Plate = Stamp, Shows = table with { Findings = [.. table.Findings.Select((f, i) => f with { LooksLike = looks[i] })] } };
    }
}
