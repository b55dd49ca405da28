using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Stand;

/// <summary>The lead's part: the inbox and what comes of it, prices, figures, changes; and what those who learned the old version are told.</summary>
public sealed class LeadScreensTests
{
    const string ToLead = Yard.ToLead;

    const string Accept = ToLead + "1" + "1" + "1The basic line kept the older bar until 2024.{Enter}";

    static readonly LogEntry[] Before =
    [
        new LogEntry.LessonRead("Sam", "older-newer-bar/overview.md"), new LogEntry.LessonQuestioned("Sam", "older-newer-bar/overview.md", "card", "mine has both"),
    ];

    [Theory]
    [InlineData(0, "no line waits for an answer")]
    [InlineData(1, "1 line waits for an answer")]
    [InlineData(2, "2 lines wait for an answer")]
    public void One_line_waits_and_two_lines_wait(int lines, string said)
    {
        LogEntry[] sent = [.. Enumerable.Range(1, lines).Select(n => new LogEntry.LessonQuestioned("Sam", "rim-size/overview.md", "top", $"line {n}"))];
        var talk = new Talk([Corpus.Sample], [new LogEntry.WorkshopSet("Yard", "Jo", [Corpus.Sample.Id]), .. sent]).At(new WorkshopScreen(new HomeScreen()));
        Assert.Contains(said, talk.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lead", ToLead)]
    [InlineData("inbox", ToLead + "1")]
    [InlineData("report", ToLead + "11")]
    [InlineData("accept-note", ToLead + "111")]
    [InlineData("accept-lesson", Accept)]
    [InlineData("accept-line", Accept + "1")]
    [InlineData("accept-rate", Accept + "1" + "2111")]
    [InlineData("accepted", Accept + "1" + "21112")]
    [InlineData("changes", Accept + "1" + "21112" + "06")]
    [InlineData("change", Accept + "1" + "21112" + "062")]
    [InlineData("prices", ToLead + "21")]
    [InlineData("price-wrong", ToLead + "211ten{Enter}")]
    [InlineData("rule", ToLead + "3")]
    [InlineData("standing-empty", ToLead + "4")]
    [InlineData("rates-empty", ToLead + "51")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Talk(Before).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"lead-{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Theory]
    [InlineData("standing", ToLead + "4")]
    [InlineData("rates", ToLead + "51")]
    [InlineData("rate", ToLead + "511")]
    public void Figures_are_as_they_were_looked_at(string name, string keys)
    {
        var talk = Talk([.. Before, .. Known()]).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"lead-{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Theory]
    [InlineData("12,50 4 3 14", 12.5)]
    [InlineData("1,000 4 3 14", null)]
    public void A_decimal_comma_is_taken_where_it_can_mean_one_thing_only(string text, double? price)
    {
        var talk = Talk(Before).Keys(ToLead + "211").Keys(text + "{Enter}");
        Assert.Equal(price, (talk.Entries[^1].What as LogEntry.PriceSet)?.Price);
        Assert.Equal(price is null, talk.Text.Contains("are not four numbers", StringComparison.Ordinal));
    }

    [Fact]
    public void A_price_may_have_a_decimal_comma() =>
        Assert.Equal(12.5, Assert.IsType<LogEntry.PriceSet>(Talk(Before).Keys(ToLead + "21112,50 4 3 14{Enter}").Entries[^1].What).Price);

    [Fact]
    public void An_accepted_line_becomes_a_note_a_line_of_the_topic_and_news()
    {
        var talk = Talk(Before).Keys(Accept + "1" + "21112");
        Assert.Equal([1, 2], talk.World.Copy.InForce.Select(c => c.Number));
        Assert.Contains("The basic line kept the older bar until 2024. (Jo, 25 November 2026.)", talk.World.Copy.Text("lessons/older-newer-bar/overview.md") ?? "", StringComparison.Ordinal);
        var happened = talk.World.Topics[0].Events[^1];
        Assert.Equal(("workshop-2", "the bar was changed to older bar", 0.1), (happened.Id, happened.Story, happened.Rates[0]));
        Assert.NotEqual(Corpus.Sample.Version, talk.World.Topics[0].Version);
        Assert.False(Assert.Single(News.Of(talk.World.History, "Sam")).IsSeen);
    }

    [Fact]
    public void News_is_told_on_the_start_page_and_leads_to_the_note()
    {
        var talk = Talk(Before).Keys(Accept + "1" + "21112" + "0000");
        Assert.Contains("1 new: answers from your lead", talk.Text, StringComparison.Ordinal);
        Golden.Same("news", talk.Keys("08").Text);
        Golden.Same("news-item", talk.Keys("1").Text);
        Assert.Contains(talk.Entries, e => e.What is LogEntry.ReportShown { Person: "Sam", Report: 1 });
        Assert.Contains("Note of the workshop", talk.Keys("1").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_back_is_answered_and_the_line_is_open_again()
    {
        var talk = Talk(Before).Keys(ToLead + "112Which year is it?{Enter}" + "0000" + "08" + "1" + "12014{Enter}");
        var report = Assert.Single(talk.World.History.Notebook.Reports);
        Assert.Equal(["2014"], report.More);
        Assert.True(report.IsOpen);
    }

    [Fact]
    public void A_change_is_taken_back_and_the_topic_is_the_shipped_one_again()
    {
        var talk = Talk(Before).Keys(Accept + "1" + "21112" + "06" + "2" + "1" + "3" + "1");
        Assert.Empty(talk.World.Copy.InForce);
        Assert.Equal(Corpus.Sample.Version, talk.World.Topics[0].Version);
        Assert.Equal(4, talk.World.Copy.Changes.Count);
    }

    [Fact]
    public void A_figure_counts_only_once_the_lead_lets_it()
    {
        var talk = Talk([.. Before, .. Known()]);
        Assert.Equal(Corpus.Sample.Events[0].Rates, talk.World.Topics[0].Events[0].Rates);
        talk.Keys(ToLead + "511");
        Assert.Equal(Corpus.Sample.Events[0].Rates, talk.World.Topics[0].Events[0].Rates);
        talk.Keys("1");
        Assert.Equal(LearnedRates.Share(0.05, LearnedRates.EventWeight, 4, 12).Mean, talk.World.Topics[0].Events[0].Rates[0], 0.0001);
        Assert.Equal("event bar-to-newer own", Assert.Single(talk.World.History.Notebook.Approved).What);
    }

    // Twelve routine bikes and one puzzling one, all of the standard line; on four of the twelve the bar was swapped.
    static IEnumerable<LogEntry> Known()
    {
        for (var n = 1; n <= 13; n++)
        {
            var swapped = n <= 4 || n == 13;
            yield return new LogEntry.BikePut(n, "Sam", $"bike {n}", 10 * n, n < 13, Engine.Topics.Channel.Bench, 3);
            yield return new LogEntry.BikeAsked(n, Corpus.Sample.Id, Corpus.Sample.Version, "grips", "own");
            yield return new LogEntry.BikeConfirmed(
                n, Corpus.Sample.Id, Corpus.Sample.Version, Bikes.Truth(swapped ? "newer" : "older", swapped ? ["bar-to-newer"] : []), [new HeldBelief("bar", [new("older".Split(','), 0.9), new("newer".Split(','), 0.1)], false)]);
        }
    }

    static Talk Talk(LogEntry[] before) => Yard.Talk(before);
}
