using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

public sealed class SafetyErrorTests
{
    static readonly Clue Marking = Some.Table("marking", new Node.OfPart("fork"), [0.6, 0.4], [0.4, 0.6]);
    static readonly Clue Length = Some.Clue("length", new Node.OfPart("fork"), Some.Measured(1, 1, 240, 400, new Slip("to the crown", 0.05, 1, -25, null)));

    [Fact]
    public void Two_kinds_of_a_part_that_can_hurt_are_not_the_best_order_in_doubt()
    {
        var bench = new Workbench(JobTopic.Of(true, Marking));
        var reasoning = bench.Reason(new Enquiry(Some.Provenance, ["fork"], "want", Channel.Bench, []), []);
        Assert.Equal(new Choice.Ask(), reasoning.Decisions[0].Best.Choice);
    }

    [Fact]
    public void Two_kinds_of_a_part_that_can_hurt_in_doubt_are_a_safety_error()
    {
        var bench = new Workbench(JobTopic.Of(true, Marking));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("marking", new Seen.Named("f1")));
        Assert.True(bench.Grade(made, JobTopic.Answer(null, new Choice.OrderTwo("left", "right"), new Look("marking", 0))).SafetyError);
    }

    [Fact]
    public void Two_kinds_of_a_harmless_part_are_no_safety_error()
    {
        var bench = new Workbench(JobTopic.Of(false, Marking));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("marking", new Seen.Named("f1")));
        var grade = bench.Grade(made, JobTopic.Answer(null, new Choice.OrderTwo("left", "right"), new Look("marking", 0)));
        Assert.False(grade.SafetyError);
        Assert.Equal(1, JobTopic.Mark(grade, Aspect.Decision));
    }

    [Fact]
    public void A_reading_of_ones_own_that_leaves_doubt_makes_the_order_a_safety_error_though_the_bench_showed_enough()
    {
        var bench = new Workbench(JobTopic.Of(true, Length));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("length", new Seen.Reading(335)));
        Assert.True(bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"), new Look("length", 0, 323))).SafetyError);
        Assert.False(bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"), new Look("length", 0, 335))).SafetyError);
    }

    [Fact]
    public void A_right_reading_from_the_right_datum_is_never_a_safety_error_where_the_bench_showed_enough()
    {
        // The other fork measured to the crown reads 335 too: only who knows from where it was taken is sure.
        var length = Some.Clue("length", new Node.OfPart("fork"), Some.Measured(1, 1, 240, 400, new Slip("to the crown", 0.05, 1, 25, null)));
        var bench = new Workbench(JobTopic.Of(true, length));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("length", new Seen.Reading(335)));
        Answer Ordering(double read, int datum) => JobTopic.Answer("right", new Choice.Order("right"), new Look("length", 0, read, datum));
        Assert.False(bench.Grade(made, Ordering(335, 0)).SafetyError);
        Assert.False(bench.Grade(made, Ordering(336, 0)).SafetyError);
        Assert.True(bench.Grade(made, Ordering(323, 0)).SafetyError);
        Assert.True(bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"), new Look("length", 0, 335))).SafetyError);
    }

    [Fact]
    public void A_wrong_datum_is_charged_under_reading_only()
    {
        // 335 measured to the crown reads 310: exactly what the other one measures.
        var bench = new Workbench(JobTopic.Of(false, Length));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("length", new Seen.Reading(335)));
        var grade = bench.Grade(made, JobTopic.Answer("left", new Choice.Order("left"), new Look("length", 0, 310, 1)));
        Assert.Equal(0, JobTopic.Mark(grade, Aspect.Reading));
        Assert.True(JobTopic.Mark(grade, Aspect.Identification) > 0.85);
        Assert.True(JobTopic.Mark(grade, Aspect.Decision) > 0.85);
    }

    [Fact]
    public void A_reading_of_something_that_cannot_be_seen_is_not_graded()
    {
        var bench = new Workbench(JobTopic.Of(false, Length));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("length", new Seen.Hidden()));
        var grade = bench.Grade(made, JobTopic.Answer(null, new Choice.Ask(), new Look("length", 0, 250)));
        Assert.DoesNotContain(grade.Parts, p => p.Aspect == Aspect.Reading);
    }
}
