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

    static readonly Workbench Careful = new(JobTopic.Of(true, ByPhone(Marking), ByPhone(Noise)));

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

    [Fact]
    public void Waiting_for_a_check_when_no_question_is_left_is_told_for_what_it_is()
    {
        var grade = AfterTheOnlyQuestion(new Choice.Wait("marking"));
        Assert.Equal(0, JobTopic.Mark(grade, Aspect.Decision));
        Assert.Equal("grade.order.no-question", grade.Parts.Single(p => p.Aspect == Aspect.Decision).Remark.Key);
        Assert.Equal("grade.stopping.no-question", grade.Parts.Single(p => p.Aspect == Aspect.Stopping).Remark.Key);
        Assert.Equal("grade.short.order-open", grade.InShortRemark.Key);
    }

    [Fact]
    public void Asking_when_no_question_is_left_is_right()
    {
        var grade = AfterTheOnlyQuestion(new Choice.Ask());
        Assert.Equal(1, JobTopic.Mark(grade, Aspect.Decision));
        Assert.Equal(InShort.RightToWait, grade.InShort);
    }

    static Clue ByPhone(Clue clue) => clue with { Channels = [.. clue.Channels, new ClueChannel(Channel.Phone, 0, 0)] };

    static Grade AfterTheOnlyQuestion(Choice order)
    {
        var made = JobTopic.Made(Careful.Topic, Channel.Phone, 1, [], ("marking", new Seen.Named("f1")), ("noise", new Seen.Named("quiet")));
        return Careful.Grade(made, JobTopic.Answer(null, order, new Look("noise", 0)));
    }
}
