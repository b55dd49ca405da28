using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

public sealed class AnswerCheckTests
{
    static readonly Clue Marking = Some.Table("marking", new Node.OfPart("fork"), [0.9, 0.1], [0.1, 0.9]);
    static readonly Clue Colour = Some.Table("colour", new Node.OfPart("fork"), [0.6, 0.4], [0.4, 0.6]);
    static readonly Topic Topic = JobTopic.Of(false, Marking, Colour);

    public static TheoryData<int[], string> Numbers => new()
    {
        { [0, 0], "numbered 0, 1, 2" },
        { [1], "numbered 0, 1, 2" },
        { [-1], "numbered 0, 1, 2" },
        { [1, 0], "numbered 0, 1, 2" },
        { [0, 1, 2, 3, 4], "4 times" },
    };

    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_same_look_does_not_count_twice(int[] numbers, string says)
    {
        var made = JobTopic.Made(Topic, Channel.Bench, null, [], ("marking", new Seen.Named("f1")));
        var faults = AnswerCheck.Faults(Topic, made, JobTopic.Answer(null, new Choice.Ask(), [.. numbers.Select(n => new Look("marking", n))]));
        Assert.Contains(says, Assert.Single(faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Four_looks_at_one_check_are_allowed()
    {
        var made = JobTopic.Made(Topic, Channel.Bench, null, [], ("marking", new Seen.Named("f1")), ("colour", new Seen.Named("f1")));
        Look[] looks = [new("marking", 0), new("colour", 0), new("marking", 1), new("marking", 2), new("marking", 3)];
        Assert.Empty(AnswerCheck.Faults(Topic, made, JobTopic.Answer(null, new Choice.Ask(), looks)));
    }

    [Fact]
    public void More_looks_than_the_job_allows_are_refused()
    {
        var made = JobTopic.Made(Topic, Channel.Bench, 1, [], ("marking", new Seen.Named("f1")), ("colour", new Seen.Named("f1")));
        var faults = AnswerCheck.Faults(Topic, made, JobTopic.Answer(null, new Choice.Ask(), new Look("marking", 0), new Look("colour", 0)));
        Assert.Equal("the answer took 2 looks, and this job allows no more than 1", Assert.Single(faults));
    }
}
