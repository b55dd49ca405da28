using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

public sealed class EvidenceGradesTests
{
    static readonly Clue Length = Some.Clue("length", new Node.OfPart("fork"), Some.Measured(1, 1, 240, 400));
    static readonly Clue Marking = Some.Table("marking", new Node.OfPart("fork"), [0.9, 0.1], [0.2, 0.8]);

    [Fact]
    public void Reasons_are_marked_on_the_learners_own_reading_where_that_is_better()
    {
        // Shown 335 the marking f0 is to be set aside; read as 310 it agrees.
        var bench = new Workbench(JobTopic.Of(false, Length, Marking));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, null, [], ("length", new Seen.Reading(335)), ("marking", new Seen.Named("f0")));
        var answer = JobTopic.Answer("left", new Choice.Order("left"), new Look("length", 0, 310), new Look("marking", 0)) with { SetAside = "none" };
        Assert.Equal(1, JobTopic.Mark(bench.Grade(made, answer), Aspect.Evidence));
    }

    [Fact]
    public void A_part_that_was_settled_before_any_check_was_settled_by_none()
    {
        var topic = JobTopic.Of(false, Marking);
        topic = topic with { Packages = [Some.Built(topic.Parts[0], ("", [0.02, 0.98]))] };
        var bench = new Workbench(topic);
        var made = JobTopic.Made(topic, Channel.Bench, null, [], ("marking", new Seen.Named("f1")));
        var answer = JobTopic.Answer("right", new Choice.Order("right"), new Look("marking", 0)) with { SettledBy = "none" };
        Assert.Equal(1, JobTopic.Mark(bench.Grade(made, answer), Aspect.Evidence));
    }

    [Fact]
    public void The_check_that_settled_the_second_part_settled_it_too()
    {
        var topic = TwoParts();
        var bench = new Workbench(topic);
        var made = JobTopic.Made(topic, Channel.Bench, null, [], ("marking", new Seen.Named("f0")), ("crown", new Seen.Named("f1")));
        Look[] looks = [new("marking", 0), new("crown", 0)];
        var answer = new Answer
        {
            Looks = looks,
            Parts = [new PartAnswer("fork", null, 8), new PartAnswer("crown", "right", 9)],
            Orders = [new Choice.Ask()],
        };
        Assert.Equal(1, JobTopic.Mark(bench.Grade(made, answer with { SettledBy = "crown" }), Aspect.Evidence));
        Assert.True(JobTopic.Mark(bench.Grade(made, answer with { SettledBy = "none" }), Aspect.Evidence) < 0.5);
    }

    static Topic TwoParts()
    {
        var topic = JobTopic.Of(false, Marking, Some.Table("crown", new Node.OfPart("crown"), [0.999, 0.001], [0.001, 0.999]));
        var crown = Some.Part("crown", "left", "right");
        return topic with
        {
            Parts = [.. topic.Parts, crown],
            Packages = [.. topic.Packages, Some.Built(crown, ("", [0.5, 0.5]))],
            Wants = [topic.Wants[0] with { Asks = ["fork", "crown"] }],
        };
    }
}
