using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

public sealed class StoppingTests
{
    static readonly Clue Marking = Some.Table("marking", new Node.OfPart("fork"), [0.98, 0.02], [0.02, 0.98]);
    static readonly Clue Noise = Some.Clue("noise", new Node.OfPart("fork"), new Shows.Table
    {
        Findings = [new TableFinding("quiet", "quiet"), new TableFinding("creaks", "it creaks", "A creak: do not ride.")],
        Rows = [[0.9, 0.1], [0.9, 0.1]],
    });

    static readonly Workbench Bench = new(JobTopic.Of(false, Marking, Noise));

    [Fact]
    public void A_check_that_stands_on_the_bench_untaken_is_never_an_answer()
    {
        var made = JobTopic.Made(Bench.Topic, Channel.Bench, null, [], ("marking", new Seen.Named("f1")));
        var grade = Bench.Grade(made, JobTopic.Answer("right", new Choice.Wait("marking")));
        Assert.Equal(0, JobTopic.Mark(grade, Aspect.Decision));
        Assert.Equal(InShort.StoppedTooEarly, grade.InShort);
    }

    [Fact]
    public void A_told_stop_sign_ends_the_job_for_the_engine_too()
    {
        Finding[] told = [Some.Saw("noise", "creaks", Channel.Phone)];
        var made = JobTopic.Made(Bench.Topic, Channel.Bench, null, told, ("marking", new Seen.Named("f1")));
        var reasoning = Bench.Reason(Bench.EnquiryOf(made.Job), told);
        Assert.True(reasoning.Ripe);
        Assert.Empty(reasoning.Next);
        Assert.Equal(told, Bench.PathOf(made));
    }

    [Fact]
    public void To_stop_and_ask_after_a_told_stop_sign_is_right_in_every_part()
    {
        var made = JobTopic.Made(Bench.Topic, Channel.Bench, null, [Some.Saw("noise", "creaks", Channel.Phone)], ("marking", new Seen.Named("f1")));
        var grade = Bench.Grade(made, JobTopic.Answer(null, new Choice.Ask()));
        Assert.All(new[] { Aspect.Stopping, Aspect.Identification, Aspect.Decision, Aspect.Economy }, a => Assert.Equal(1, JobTopic.Mark(grade, a)));
        Assert.Equal(InShort.RightToWait, grade.InShort);
        Assert.True(Bench.Grade(made, JobTopic.Answer("right", new Choice.Order("right"))).SafetyError);
    }
}
