using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

/// <summary>Of which part a check tells most: made-up topics whose answer is seen without a sum.</summary>
public sealed class ToldMostTests
{
    static readonly Part Fork = Some.Part("fork", "left", "right");
    static readonly Part Stem = Some.Part("stem", "long", "short");

    static readonly Workbench Bench = new(Some.Topic(
        [Some.Line("any", 1)], [Fork, Stem], [Some.Built(Fork, ("", [0.5, 0.5])), Some.Built(Stem, ("", [0.5, 0.5]))],
        Some.Table("of-fork", new Node.OfPart("fork"), [0.9, 0.1], [0.1, 0.9]),
        Some.Table("of-stem", new Node.OfPart("stem"), [0.9, 0.1], [0.1, 0.9]),
        Some.Table("of-none", new Node.OfPart("stem"), [0.5, 0.5], [0.5, 0.5])));

    [Theory]
    [InlineData("of-fork", null, "fork")]
    [InlineData("of-stem", null, "stem")]
    [InlineData("of-fork", "stem", "fork")]
    [InlineData("of-stem", "fork", "stem")]
    [InlineData("of-none", null, "fork")]
    [InlineData("of-none", "stem", "stem")]
    public void The_part_is_the_one_that_the_check_reads_and_stays_where_it_tells_nothing(string clue, string? otherwise, string part) =>
        Assert.Equal(part, Bench.PartToldMost(Some.Enquiry(["fork", "stem"], clue), [], clue, otherwise));

    // Fork and stem come as a set in 8 of 10 bikes, so that a look at the stem tells of the fork as well, but of the stem itself more.
    [Fact]
    public void Of_parts_that_hang_together_it_is_the_one_that_is_read()
    {
        Build Made(string fork, string stem, double share) => new([], null, [fork, stem], share);
        var set = new Workbench(Bench.Topic with
        {
            Packages = [new Package("set", ["fork", "stem"], [Made("left", "long", 0.4), Made("right", "short", 0.4), Made("left", "short", 0.1), Made("right", "long", 0.1)])],
        });
        Assert.Equal("stem", set.PartToldMost(Some.Enquiry(["fork", "stem"], "of-stem"), [], "of-stem", null));
        Assert.Equal("fork", set.PartToldMost(Some.Enquiry(["stem", "fork"], "of-fork"), [], "of-fork", null));
    }

    [Fact]
    public void One_part_asked_is_that_part() => Assert.Equal("stem", Bench.PartToldMost(Some.Enquiry(["stem"], "of-fork"), [], "of-fork", null));

    [Fact]
    public void Findings_that_nothing_allows_leave_the_part_as_it_was()
    {
        var sure = new Workbench(Bench.Topic with { Clues = [Some.Table("of-fork", new Node.OfPart("fork"), [1, 0], [1, 0]), Bench.Topic.Clues[1]] });
        Assert.Equal("fork", sure.PartToldMost(Some.Enquiry(["fork", "stem"], "of-stem"), [Some.Saw("of-fork", 1)], "of-stem", null));
    }
}
