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
    [InlineData("real-sets", "5")]
    [InlineData("real-part", "51")]
    [InlineData("real-again", "5127.2{Enter}31.6 mm{Enter}1 in{Enter}")]
    [InlineData("real-wrong", "51272{Enter}")]
    [InlineData("real-end", "5127.2{Enter}31.6 mm{Enter}1 in{Enter}31.7{Enter}27.25{Enter}25.40{Enter}")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Talk(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Theory]
    [InlineData("drills-all", "folding-bar", "")]
    [InlineData("drill-tape", "folding-bar", "2")]
    [InlineData("drill-plates", "folding-bar", "4")]
    [InlineData("drill-plates-says", "folding-bar", "41")]
    [InlineData("drill-plates-said", "folding-bar", "411")]
    [InlineData("drill-plates-wall", "rim-size", "4")]
    [InlineData("drill-pitch", "folding-bar", "5")]
    [InlineData("drill-pitch-said", "folding-bar", "5{Enter}")]
    [InlineData("drill-glance", "folding-bar", "6")]
    [InlineData("drill-glance-words", "folding-bar", "6W")]
    [InlineData("drill-glance-said", "folding-bar", "61")]
    public void The_screen_on_a_shipped_topic_is_as_it_was_looked_at(string name, string topic, string keys)
    {
        var talk = On(topic, plain: false).Keys(ToDrills + keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Theory]
    [InlineData("4", "drill-plates-plain")]
    [InlineData("5", "drill-pitch-plain")]
    [InlineData("6", "drill-glance-plain")]
    public void A_drill_on_a_shipped_topic_reads_in_lines_as_it_was_looked_at(string drill, string name) =>
        Golden.Same(name, On("folding-bar", plain: true).Say(ToDrills, drill, ".", "1", drill is "4" ? "1" : "", "", ""));

    [Fact]
    public void A_pair_fades_to_one_alone_after_three_right_and_both_are_shown_after_the_answer()
    {
        var talk = On("folding-bar", plain: false).Keys(ToDrills + "6");
        talk.Pace = TimeSpan.FromSeconds(1);
        for (var n = 1; n <= 5; n++)
        {
            Assert.Equal(n > 3, string.Join(' ', talk.Text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)).Contains("Which of the two is it?", StringComparison.Ordinal));
            Assert.Equal(n <= 3, talk.Text.Contains("1  Picture 1", StringComparison.Ordinal));
            talk.Keys($"{Assert.IsType<DrillPickScreen>(talk.Screen).Item.Right + 1}");
            var said = Assert.IsType<DrillSaidScreen>(talk.Screen);
            Assert.True(said.Verdict.Right);
            Assert.NotNull(said.Verdict.Shown);
            if (n == 4) Golden.Same("drill-glance-alone-said-80x24", talk.Text);
            talk.Keys("{Enter}");
            if (n == 3) Golden.Same("drill-glance-alone-80x24", talk.Text);
        }
    }

    [Theory]
    [InlineData("6")]
    [InlineData("4")]
    public void What_was_missed_comes_back_the_same(string drill)
    {
        var talk = On("folding-bar", plain: false).Keys(ToDrills + drill);
        talk.Pace = TimeSpan.FromSeconds(1);
        for (var n = 1; n <= 4; n++) Answer(talk, right: n > 1);
        var asked = talk.World.History.Drills[0].Answers.Select(a => a.Item).ToList();
        if (asked.All(a => a.Back is null)) asked.Add(talk.Entries.Select(e => e.What).OfType<LogEntry.DrillAsked>().Last().Item);
        var back = asked.Single(a => a.Back is not null);
        Assert.Equal((1, asked[0].Family, asked[0].Seed), (back.Back, back.Family, back.Seed));
    }

    // Takes the first line, or what is right.
    static void Answer(Talk talk, bool right)
    {
        if (talk.Screen is DrillPickScreen pick)
        {
            talk.Keys($"{(pick.Item.Right == 0 == right ? 1 : 2)}{{Enter}}");
            return;
        }
        var task = Assert.IsType<PlateScreen>(talk.Screen).Task;
        var markings = (task.Plate ?? throw new InvalidOperationException()).Markings.ToList();
        var line = markings.FindIndex(m => m.Writing == 0 == right);
        if (line < 0)
        {
            talk.Keys($"{markings.Count + 1}{{Enter}}");
            return;
        }
        var finding = right ? DrillItemTests.ReadOff(task.Clue, markings[line]) : task.Findings[0].Id;
        var nth = task.Findings.ToList().FindIndex(f => f.Id == finding) + 1;
        talk.Keys($"{line + 1}{nth}{(task.Findings.Count > 9 ? "{Enter}" : "")}{{Enter}}");
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
        lines.Say(ToDrills, "1", "27.15", "", "31.20", "", "esc", "2", "0", "5", "2", "250", "251", "esc");
        var screens = Sam(plain: false);
        screens.Pace = lines.Pace;
        screens.Keys(ToDrills + "127.15{Enter}{Enter}31.20{Enter}{Enter}{Esc}2052250{Enter}251{Enter}{Esc}");
        Assert.Contains(lines.Entries, e => e.What is LogEntry.DrillAnswered);
        Assert.Contains(lines.Entries, e => e.What is LogEntry.RealPartRead);
        Assert.Equal(Records(screens), Records(lines));
    }

    [Fact]
    public void A_drill_reads_in_lines_as_it_was_looked_at() => Golden.Same("drill-plain", Sam(plain: true).Say(ToDrills, "1", "27.15", "", "W", "z", "31.20", "", "esc", "2", "0"));

    [Fact]
    public void Real_parts_read_in_lines_as_they_were_looked_at() => Golden.Same("real-plain", Sam(plain: true).Say(ToDrills, "5", "3", "305", "306", "305.5", "12 in", ""));

    [Fact]
    public void The_first_reading_is_not_shown_and_the_second_round_has_another_order()
    {
        var talk = Talk("5127.2{Enter}31.6{Enter}25.4{Enter}");
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
        talk.Keys("2").Keys(ToDrills + "51" + string.Concat(Enumerable.Repeat("27.15{Enter}", 6)));
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

    static Talk On(string topic, bool plain) => new(plain, [Corpus.Topic(topic)], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"));

    static Talk Talk(string keys) => Sam(plain: false).Keys(ToDrills + keys);

    static Talk Sam(bool plain) => new(plain, [Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"));

    static IEnumerable<string> Records(Talk talk) => talk.Entries.Select(e => EntryDocument.Of(e).ToString());
}
