using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Storage;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Drills;

public sealed class DrillScreensTests
{
    const string ToDrills = "5";

    [Theory]
    [InlineData("drills", "")]
    [InlineData("drill-vernier", "1")]
    [InlineData("drill-said", "127.15{Enter}")]
    [InlineData("drill-leave", "1{Esc}")]
    [InlineData("drill-end", "127.15{Enter}{Enter}27.15{Enter}{Enter}")]
    [InlineData("drill-datum", "2")]
    [InlineData("drill-datum-said", "22300{Enter}")]
    [InlineData("drill-fractions", "3")]
    [InlineData("real-sets", "4")]
    [InlineData("real-part", "41")]
    [InlineData("real-again", "4127.2{Enter}31.6 mm{Enter}1 in{Enter}")]
    [InlineData("real-wrong", "41272{Enter}")]
    [InlineData("real-end", "4127.2{Enter}31.6 mm{Enter}1 in{Enter}31.7{Enter}27.25{Enter}25.40{Enter}")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Talk(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void A_drill_ends_after_three_minutes_of_the_log()
    {
        var talk = Talk("");
        talk.Pace = TimeSpan.FromSeconds(20);
        talk.Keys("1");
        for (var n = 0; n < 30 && talk.Screen is not DrillEndScreen; n++) talk.Keys("5{Enter}{Enter}");
        Assert.IsType<DrillEndScreen>(talk.Screen);
        var drill = Assert.Single(talk.World.History.Drills);
        Assert.True(drill.IsOver);
        Assert.Equal(180, drill.Spent.TotalSeconds);
        Assert.Equal(5, drill.Answers.Count);
    }

    [Fact]
    public void The_time_stands_beside_accuracy_once_it_is_good_and_help_fades()
    {
        var talk = Talk("");
        talk.Pace = TimeSpan.FromSeconds(1);
        talk.Keys("1");
        for (var n = 1; n <= 10; n++)
        {
            Assert.Equal(n <= 3, talk.Text.Contains("the last mark before the vernier's zero line", StringComparison.Ordinal));
            Solve(talk);
            Assert.Equal(n == 10, talk.Text.Contains("seconds each", StringComparison.Ordinal));
            talk.Keys("{Enter}");
        }
        Assert.Contains("10 of 10 right, 1 seconds each", talk.Keys("{Esc}0").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pause_in_an_item_leaves_its_time_out()
    {
        var talk = Talk("1P1");
        Solve(talk);
        Assert.Null(Assert.Single(talk.World.History.DrillAnswers("Sam", "vernier")).Time);
    }

    [Fact]
    public void A_scale_that_is_left_counts_for_nothing()
    {
        var talk = Talk("1{Esc}2");
        Assert.IsType<DrillEndScreen>(talk.Screen);
        Assert.Empty(talk.World.History.Drills[0].Answers);
        Assert.IsType<DrillsScreen>(talk.Keys("0").Screen);
    }

    [Fact]
    public void The_same_drill_by_screens_and_by_lines_leaves_the_same_record()
    {
        var lines = Sam(plain: true);
        lines.Pace = TimeSpan.FromSeconds(10);
        lines.Say(ToDrills, "1", "27.15", "", "31.20", "", "esc", "2", "0", "4", "2", "250", "251", "esc");
        var screens = Sam(plain: false);
        screens.Pace = lines.Pace;
        screens.Keys(ToDrills + "127.15{Enter}{Enter}31.20{Enter}{Enter}{Esc}2042250{Enter}251{Enter}{Esc}");
        Assert.Contains(lines.Entries, e => e.What is LogEntry.DrillAnswered);
        Assert.Contains(lines.Entries, e => e.What is LogEntry.RealPartRead);
        Assert.Equal(Records(screens), Records(lines));
    }

    [Fact]
    public void A_drill_reads_in_lines_as_it_was_looked_at() => Golden.Same("drill-plain", Sam(plain: true).Say(ToDrills, "1", "27.15", "", "W", "z", "31.20", "", "esc", "2", "0"));

    [Fact]
    public void Real_parts_read_in_lines_as_they_were_looked_at() => Golden.Same("real-plain", Sam(plain: true).Say(ToDrills, "4", "3", "305", "306", "305.5", "12 in", ""));

    [Fact]
    public void The_first_reading_is_not_shown_and_the_second_round_has_another_order()
    {
        var talk = Talk("4127.2{Enter}31.6{Enter}25.4{Enter}");
        Assert.DoesNotContain("27.2", talk.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("31.6", talk.Text, StringComparison.Ordinal);
        talk.Keys("30{Enter}30{Enter}30{Enter}");
        var read = talk.Entries.Select(e => e.What).OfType<LogEntry.RealPartRead>().ToList();
        Assert.Equal([1, 2, 3], read.Take(3).Select(r => r.Part));
        Assert.Equal([1, 2, 3], read.Skip(3).Select(r => r.Part).Order());
        Assert.NotEqual(3, read[3].Part);
    }

    [Fact]
    public void Every_series_has_an_order_of_its_own_in_the_second_round()
    {
        foreach (var series in Enumerable.Range(1, 60))
        {
            var world = new Talk([Corpus.Sample], [new LogEntry.RealPartRead(series, "Sam", "spokes", 1, 1, 288, "288")]).World;
            foreach (var set in RealSet.All)
            {
                var order = RealPartScreen.Start(world, set, new HomeScreen()).Order;
                var (first, second) = (order.Take(set.Parts).ToList(), order.Skip(set.Parts).ToList());
                Assert.Equal(first, second.Order());
                Assert.NotEqual(first[^1], second[0]);
                if (set.Parts > 2) Assert.NotEqual(first, second);
            }
        }
    }

    [Fact]
    public void A_second_person_sees_how_far_both_are_apart()
    {
        var talk = new Talk([Corpus.Sample], [.. Readings(1, "Kim", 27.25), new LogEntry.PersonAdded("Kim"), new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam")]);
        talk.Keys("2").Keys(ToDrills + "41" + string.Concat(Enumerable.Repeat("27.15{Enter}", 6)));
        // Facts U7.3: resolution 0.05 is 0.01443; 2 x 0.01443 x sqrt 2 = 0.041.
        Assert.Contains("by 0.1 mm. Your two spreads allow 0.041 mm.", talk.TextAt(new(120, 40)), StringComparison.Ordinal);
        Assert.Contains("Kim reads larger than you", talk.TextAt(new(120, 40)), StringComparison.Ordinal);
        Golden.Same("real-two-people", talk.Text);
    }

    static IEnumerable<LogEntry> Readings(int series, string person, double mm) =>
        Enumerable.Range(0, 6).Select(n => new LogEntry.RealPartRead(series, person, "seatposts", (n % 3) + 1, (n / 3) + 1, mm, $"{mm}"));

    // Types the true size of the caliper on the screen.
    static void Solve(Talk talk)
    {
        var scale = Assert.IsType<ScaleScreen>(talk.Screen);
        talk.Keys($"{scale.Task.ExactFor(0):0.00}{{Enter}}");
        Assert.True(Assert.IsType<DrillSaidScreen>(talk.Screen).Verdict.Right);
    }

    static Talk Talk(string keys) => Sam(plain: false).Keys(ToDrills + keys);

    static Talk Sam(bool plain) => new(plain, [Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"));

    static IEnumerable<string> Records(Talk talk) => talk.Entries.Select(e => EntryDocument.Of(e).ToString());
}
