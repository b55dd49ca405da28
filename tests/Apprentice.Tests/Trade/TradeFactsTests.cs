using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Trade;

/// <summary>Facts of the trade as check values: common practice, no source. The topic's sizes are these facts; its rates and spreads are model figures.</summary>
public class TradeFactsTests
{
    static readonly string[] BarAndStem = ["bar", "stem"];
    readonly Workbench _bench = new(Corpus.Sample);

    [Theory]
    [InlineData(310, 140, "older", "older")]
    [InlineData(335, 100, "newer", "newer")]
    [InlineData(310, 100, "older", "newer")]
    [InlineData(335, 140, "newer", "older")]
    public void Bar_and_stem_are_named_apart(double stem, double bar, string stemKind, string barKind)
    {
        var reasoning = Reason(BarAndStem, Mm("stem-length", stem), Mm("stem-length", stem + 1), Mm("bar-height", bar), Mm("bar-height", bar - 1));
        Assert.Equal((barKind, stemKind), (Leading(reasoning, 0), Leading(reasoning, 1)));
        Assert.All(reasoning.Parts, p => Assert.True(p.Settled, $"{p.Part} {p.Highest}"));
    }

    [Fact]
    public void A_basic_line_four_years_after_the_change_keeps_the_older_bar()
    {
        var reasoning = Reason(["bar"], Named("plate", "2021"), Mm("stem-length", 310), Mm("bar-height", 140));
        Assert.Equal("older", Leading(reasoning, 0));
        Assert.True(reasoning.Parts[0].Highest > 0.95, $"{reasoning.Parts[0].Highest}");
        Assert.True(reasoning.Conflict.Shown);
        Assert.Contains("line:basic", reasoning.Conflict.Explanations[0].Story);
    }

    [Fact]
    public void A_bike_numbered_the_year_before_the_change_can_carry_the_newer_bar()
    {
        var reasoning = Reason(["bar"], Named("plate", "2016"), Mm("stem-length", 335), Mm("bar-height", 100));
        Assert.Equal("newer", Leading(reasoning, 0));
        Assert.True(reasoning.Parts[0].Highest > 0.95, $"{reasoning.Parts[0].Highest}");
        Assert.Contains("change:bar", reasoning.Conflict.Explanations.SelectMany(e => e.Story));
    }

    [Fact]
    public void A_grip_alone_does_not_settle_the_bar()
    {
        var reasoning = Reason(["bar"], Mm("grip-length", 130));
        Assert.False(reasoning.Parts[0].Settled);
        Assert.Equal("newer", Leading(reasoning, 0));
        Assert.False(reasoning.Ripe);
        Assert.Equal("bar-height", reasoning.Next[0].Clue);
        Assert.True(reasoning.Next[0].Settles > 0.8, $"{reasoning.Next[0].Settles}");
    }

    [Fact]
    public void Between_the_sizes_is_odd_and_measured_again()
    {
        var reasoning = Reason(["stem"], Mm("stem-length", 322));
        Assert.Single(reasoning.Odd, o => o.Stands);
        Assert.False(reasoning.Parts[0].Settled);
        Assert.Equal(("stem-length", true), (reasoning.Next[0].Clue, reasoning.Next[0].Again));
    }

    [Fact]
    public void A_second_reading_settles_what_the_first_left_odd()
    {
        var reasoning = Reason(["stem"], Mm("stem-length", 322), Mm("stem-length", 335));
        Assert.True(reasoning.Parts[0].Settled, $"{reasoning.Parts[0].Highest}");
        Assert.Equal("newer", Leading(reasoning, 0));
        Assert.DoesNotContain(reasoning.Odd, o => o.Stands);
    }

    [Fact]
    public void Three_times_between_the_sizes_settles_neither()
    {
        var reasoning = Reason(["stem"], Mm("stem-length", 322), Mm("stem-length", 322), Mm("stem-length", 322));
        var stem = reasoning.Parts[0];
        Assert.True(stem.Classes[stem.ClassOf("older")].Belief < 0.5 && stem.Classes[stem.ClassOf("newer")].Belief < 0.5);
        Assert.DoesNotContain(reasoning.Next, n => n.Again);
    }

    [Fact]
    public void Two_fixing_holes_belong_to_the_newer_lever()
    {
        var reasoning = Reason(["lever"], Named("lever-holes", "two-holes"), Named("grip-fixing", "bolted"), Named("plate", "2020"));
        Assert.Equal("newer", Leading(reasoning, 0));
    }

    [Fact]
    public void An_electric_line_is_only_ever_newer()
    {
        var reasoning = Reason(["bar"], Named("motor", "motor"));
        Assert.True(reasoning.Parts[0].Classes[reasoning.Parts[0].ClassOf("older")].Belief < 0.01);
    }

    Reasoning Reason(IReadOnlyList<string> asks, params Finding[] findings) => _bench.Reason(
        new Enquiry("own", asks, asks is ["bar"] ? "grips" : null, Channel.Bench, ["plate", "stem-length", "bar-height", "grip-length", "grip-fixing", "lever-holes", "motor"]), findings);

    static string Leading(Reasoning reasoning, int part) => reasoning.Parts[part].Classes[reasoning.Parts[part].Leading].Kinds[0];

    static Finding Mm(string clue, double mm) => new(clue, Channel.Bench, new Seen.Reading(mm));

    static Finding Named(string clue, string finding) => new(clue, Channel.Bench, new Seen.Named(finding));
}
