using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Histories;

public sealed class RunningChangeTests
{
    static readonly Part Bar = Some.Part("bar", "older", "newer");

    public static TheoryData<int, double> Shares => new() { { 2, 0 }, { 3, 0.125 }, { 4, 0.375 }, { 5, 0.625 }, { 6, 0.875 }, { 7, 1 }, { 8, 1 } };

    [Theory]
    [MemberData(nameof(Shares))]
    public void The_share_of_the_new_grows_from_the_first_month_to_the_last(int month, double share) =>
        Assert.Equal(share, Builds(7, month).Where(b => b.Build == 1).Sum(b => b.Share), 1e-12);

    [Theory]
    [InlineData(5, 4, 1, true)]
    [InlineData(5, 5, 1, false)]
    [InlineData(5, 5, 0, true)]
    [InlineData(5, 4, 0, false)]
    public void A_bike_on_the_other_side_of_the_told_month_carries_the_pitfall(int told, int month, int build, bool off) =>
        Assert.Equal(off, Builds(told, month).Single(b => b.Build == build).OffDate);

    [Theory]
    [InlineData(10, 8, 1)]
    [InlineData(1, 2, 0)]
    public void So_does_one_where_people_tell_a_month_outside_of_the_change(int told, int month, int build) =>
        Assert.True(Builds(told, month).Single(b => b.Build == build).OffDate);

    static IReadOnlyList<BuildChance> Builds(int told, int month)
    {
        var window = new Window(Some.Month(2014, 3), Some.Month(2014, 7), Some.Month(2014, told), "change");
        var topic = Some.Topic([Some.Line("any", 1)], [Bar], [new Package("bar", ["bar"], [new Build([], null, ["older"], 1), new Build([], window, ["newer"], 1)])]);
        return MonthFacts.Of(topic, topic.Lines[0], Some.Month(2014, month)).Builds[0];
    }
}
