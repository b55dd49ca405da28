using Apprentice.Engine.Evidence;
using Apprentice.Engine.Tests.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Cases;

public sealed class ZeroErrorTests
{
    const int Count = 12_000;

    [Fact]
    public void One_caliper_in_three_has_a_zero_error_of_whole_divisions_either_way_equally_often()
    {
        var errors = Enumerable.Range(0, Count).Select(s => ZeroErrorOf((ulong)s)).ToList();
        Assert.InRange(errors.Count(e => e != 0), (Count / 3) - 210, (Count / 3) + 210);
        foreach (var steps in (int[])[-4, -3, -2, -1, 1, 2, 3, 4])
            Assert.InRange(errors.Count(e => Math.Abs(e - (steps * 0.05)) < 1e-9), (Count / 24) - 90, (Count / 24) + 90);
        Assert.All(errors, e => Assert.InRange(Math.Abs(e), 0, 0.2 + 1e-9));
    }

    [Fact]
    public void Neighbouring_jobs_have_it_no_more_often_together_than_by_luck()
    {
        var both = Enumerable.Range(0, Count).Count(s => ZeroErrorOf((ulong)s) != 0 && ZeroErrorOf((ulong)s + 1) != 0);
        Assert.InRange(both, (Count / 9) - 150, (Count / 9) + 150);
    }

    [Fact]
    public void It_is_the_same_through_a_whole_job() => Assert.Equal(ZeroErrorOf(7), ZeroErrorOf(7));

    static double ZeroErrorOf(ulong seed)
    {
        var topic = JobTopic.Of(false, Some.Table("marking", new Node.OfPart("fork"), [0.9, 0.1], [0.2, 0.8]));
        var made = JobTopic.Made(topic, Channel.Bench, null, [], ("marking", new Seen.Named("f0")));
        return Workbench.ZeroErrorOf(made with { Job = made.Job with { Seed = seed } });
    }
}
