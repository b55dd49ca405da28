using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Storage;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Stand;

/// <summary>A real bike by keyboard: from the call to the order and to what it really was.</summary>
public sealed class StandScreensTests
{
    const string Call = "41red folder{Enter}4430{Enter}41";

    static readonly LogEntry[] Workshop =
    [
        new LogEntry.WorkshopSet("Back yard", "Jo", [Corpus.Sample.Id]), new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"),
    ];

    // The words that the workshop's page, a lead's name and a person need come before; 4 is "Real bikes".
    [Theory]
    [InlineData("list-empty", "4")]
    [InlineData("name", "41")]
    [InlineData("card-wrong", "41red folder{Enter}x1{Enter}")]
    [InlineData("seen", "41red folder{Enter}4430{Enter}")]
    [InlineData("bike", Call + "1")]
    [InlineData("checks", Call + "12")]
    [InlineData("check", Call + "11")]
    [InlineData("list", Call + "10")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Talk().Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    // From the call to the order and to what it really was: a photo or a call, then the bike on the stand.
    const string Asked = Call + "111" + "100{Enter}";

    [Theory]
    [InlineData("told", Asked)]
    [InlineData("order-open", Asked + "4")]
    [InlineData("decide", Asked + "41")]
    [InlineData("settled", Asked + OnTheStand)]
    [InlineData("order", Asked + OnTheStand + "4")]
    [InlineData("order-decided", Asked + OnTheStand + "411")]
    [InlineData("sheets", Asked + OnTheStand + "5")]
    [InlineData("truth", Asked + OnTheStand + "8")]
    [InlineData("truth-line", Asked + OnTheStand + "81")]
    [InlineData("truth-events", Asked + OnTheStand + "8112014-03{Enter}")]
    [InlineData("beside", Asked + OnTheStand + "8112014-03{Enter}1")]
    [InlineData("clash", Asked + "71" + "211100{Enter}" + "231101{Enter}")]
    [InlineData("findings", Asked + "3")]
    [InlineData("no-match", Asked + "9")]
    public void The_walk_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Talk().Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"walk-{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    // The bike is brought in; the first of the other checks, the bar, is measured: 140 mm.
    const string OnTheStand = "71" + "211140{Enter}";

    static readonly string[] Lines = ["4", "1", "red folder", "4430", "4", "1", "1", "1", "1", "100", "7", "1", "2", "1", "1", "140", "4", "1", "1", "0", "8", "1", "1", "2014-03", "1"];

    [Fact]
    public void The_walk_reads_in_lines_as_it_was_looked_at() => Golden.Same("walk-lines", Talk(plain: true).Say(Lines));

    [Fact]
    public void The_walk_leaves_the_same_record_by_screens_and_by_lines()
    {
        var lines = Talk(plain: true);
        lines.Say(Lines);
        var screens = Talk().Keys(Asked + OnTheStand + "411" + "0" + "8112014-03{Enter}1");
        Assert.Equal(Records(screens), Records(lines));
        var bike = Assert.Single(lines.World.History.Notebook.Bikes);
        Assert.True(bike.IsDone);
        Assert.Equal("grips-short", Assert.IsType<Choice.Order>(Assert.Single(bike.Decisions).What.Choice).Spare);
        Assert.True(Assert.Single(bike.Truths).Held[0].IsRight("older"));
    }

    [Fact]
    public void The_job_card_holds_readings_decision_what_is_open_and_three_sentences()
    {
        var talk = Talk().Keys(Asked + OnTheStand + "4110" + "53");
        var (name, text) = Assert.Single(talk.Sheets);
        Assert.Equal("job-card-1.txt", name);
        Golden.Same("job-card", text);
        Assert.All(text.Split('\n'), l => Assert.InRange(l.Length, 0, 76));
        Assert.Equal(3, StandSheets.Customer(new BikeScreen(1, new HomeScreen()).Views(talk.World)).Count);
    }

    [Fact]
    public void The_sheet_before_the_shop_is_rung_says_what_to_measure_best_first()
    {
        var talk = Talk().Keys(Asked + "5152");
        Golden.Same("before-you-ring", talk.Sheets[0].Text);
        Assert.StartsWith("<!doctype html>", talk.Sheets[1].Text, StringComparison.Ordinal);
        Assert.Equal("before-you-ring.html", talk.Sheets[1].Name);
    }

    [Fact]
    public void No_page_of_the_stand_says_more_than_99_of_100_and_each_says_that_the_list_may_be_short()
    {
        var talk = Talk().Keys(Asked + OnTheStand + "231140{Enter}" + "231140{Enter}");
        Assert.Contains("about 99 of 100", talk.Text, StringComparison.Ordinal);
        Assert.Contains("Something not on our list is always possible.", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_is_put_right_and_both_stay_in_the_log()
    {
        var talk = Talk().Keys(Asked + "312" + "1" + "130{Enter}");
        var bike = Assert.Single(talk.World.History.Notebook.Bikes);
        Assert.Equal([true, false], bike.Findings.Select(f => f.IsStruck));
        Assert.Equal(130, Assert.IsType<Seen.Reading>(bike.Findings[1].Finding.Seen).Millimetres);
    }

    [Fact]
    public void Once_it_is_known_what_it_was_no_order_waits() =>
        Assert.DoesNotContain("waiting for the end", Talk().Keys(Asked + OnTheStand + "411" + "0" + "8112014-03{Enter}1").Text, StringComparison.Ordinal);

    [Fact]
    public void At_home_a_line_that_did_not_match_speaks_of_no_lead()
    {
        var talk = new Talk([Corpus.Sample]).Keys("05" + Call[1..] + "19");
        Assert.Contains("One line, kept with the bike and its findings.", talk.Text, StringComparison.Ordinal);
        Assert.Contains("Kept with the bike.", talk.Keys("too long{Enter}").Text, StringComparison.Ordinal);
        Assert.IsType<LogEntry.BikeQuestioned>(talk.Entries[^1].What);
    }

    [Fact]
    public void A_correction_that_is_not_made_loses_nothing()
    {
        var talk = Talk().Keys(Asked + "312" + "{Esc}");
        Assert.False(Assert.Single(Assert.Single(talk.World.History.Notebook.Bikes).Findings).IsStruck);
        talk.Keys("313");
        Assert.True(Assert.Single(Assert.Single(talk.World.History.Notebook.Bikes).Findings).IsStruck);
    }

    [Fact]
    public void A_part_that_can_hurt_is_not_ordered_before_it_is_settled()
    {
        var talk = new Talk([Corpus.Topic("rim-size")], Workshop).Keys("41blue{Enter}{Enter}41" + "1" + "4" + "1");
        Assert.Contains("nothing is ordered here yet", talk.Text.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("Order now", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_sign_ends_the_order_and_says_whom_to_ask()
    {
        var talk = new Talk([Corpus.Topic("rim-size")], Workshop).Keys("41blue{Enter}{Enter}11" + "1" + "11" + "3");
        Assert.Contains("Stop.", talk.Text, StringComparison.Ordinal);
        Assert.Contains("Ask a qualified mechanic, in a workshop your lead, and the maker of the part.", talk.Keys("4").Text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        talk.Keys("1");
        Assert.DoesNotContain(talk.Entries, e => e.What is LogEntry.BikeDecided);
    }

    [Fact]
    public void A_confirmed_bike_is_there_to_practise_on_and_counts_for_nothing()
    {
        var talk = Talk().Keys(Asked + OnTheStand + "8112014-03{Enter}1" + "0" + "3" + "1" + "2" + "1" + "2" + "9");
        Golden.Same("real-end", talk.Text);
        Assert.False(Assert.IsType<LogEntry.RealTried>(talk.Entries[^1].What).Right);
        Assert.Empty(talk.World.History.Jobs);
    }

    static IEnumerable<string> Records(Talk talk) => talk.Entries.Select(e => EntryDocument.Of(e).ToString());

    static Talk Talk(bool plain = false) => new(plain, [Corpus.Sample], Workshop);
}
