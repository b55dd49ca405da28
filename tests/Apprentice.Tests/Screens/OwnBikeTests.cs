using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>A home mechanic's way: a walk of plain questions round a real bike.</summary>
public sealed class OwnBikeTests
{
    const string ToWalk = "2111";

    [Theory]
    [InlineData("own-want", "2")]
    [InlineData("own-path", "21")]
    [InlineData("own-from", "211")]
    [InlineData("own-tools", ToWalk)]
    [InlineData("own-reading", ToWalk + "2")]
    [InlineData("own-reading-wrong", ToWalk + "2two hands{Enter}")]
    [InlineData("own-end", ToWalk + "2100{Enter}140{Enter}")]
    [InlineData("own-saved", ToWalk + "2100{Enter}140{Enter}1")]
    [InlineData("own-go-on", ToWalk + "2100{Enter}140{Enter}2")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = new Talk([Corpus.Sample]).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void Only_eyes_never_meets_a_tape() => Assert.IsType<OwnPickScreen>(new Talk([Corpus.Sample]).Keys(ToWalk + "1").Screen);

    [Fact]
    public void What_cannot_be_seen_is_never_asked_again()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2");
        var asked = new List<string>();
        for (var n = 0; n < 12; n++)
        {
            if (talk.Screen is OwnReadScreen read) asked.Add(read.ClueId);
            if (talk.Screen is OwnPickScreen pick) asked.Add(pick.ClueId);
            talk.Keys(talk.Screen is OwnReadScreen ? "0{Enter}" : talk.Screen is OwnPickScreen ? "0" : "");
        }
        Assert.Equal(asked.Distinct(StringComparer.Ordinal), asked);
        Assert.IsType<OwnEndScreen>(talk.Screen);
    }

    [Fact]
    public void An_odd_reading_is_measured_once_more() =>
        Assert.Contains("Measure once more, from another start.", new Talk([Corpus.Sample]).Keys(ToWalk + "2115{Enter}").Text, StringComparison.Ordinal);

    [Fact]
    public void Enter_alone_never_says_that_a_part_is_sound()
    {
        var talk = new Talk([Corpus.Topic("rim-size")]).Keys(ToWalk + "2{Enter}{Enter}");
        Assert.Empty(Assert.IsType<OwnPickScreen>(talk.Screen).Bike.Findings);
        Assert.Contains("No line is marked yet.", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_safety_look_that_was_not_taken_stands_on_the_sheet()
    {
        var talk = new Talk([Corpus.Topic("rim-size")]).Keys(ToWalk + "1");
        for (var n = 0; n < 15 && talk.Screen is OwnPickScreen; n++) talk.Keys("0");
        var end = Assert.IsType<OwnEndScreen>(talk.Screen);
        Assert.Contains(end.Paragraphs, p => p.StartsWith("Not looked at: Safety look at the rim's side.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stop_sign_ends_it_without_guesses_or_an_order()
    {
        var end = Assert.IsType<OwnEndScreen>(new Talk([Corpus.Topic("rim-size")]).Keys(ToWalk + "22").Screen);
        Assert.Contains("First a qualified mechanic looks at it. Before that nothing is ordered, and nobody rides the bike.", end.Paragraphs);
        Assert.DoesNotContain(end.Paragraphs, p => p.Contains("not settled", StringComparison.Ordinal) || p.Contains("order now", StringComparison.Ordinal));
    }

    [Fact]
    public void A_creak_at_the_clamp_of_the_bar_ends_it()
    {
        var end = Assert.IsType<OwnEndScreen>(new Talk([Corpus.Topic("bar-sizes")]).Keys(ToWalk + "212").Screen);
        Assert.Equal("The bar creaks in the stem. Nobody rides it. A qualified mechanic finds out why before anything is ordered.", end.Paragraphs[0]);
    }

    [Fact]
    public void What_is_only_looked_at_has_no_from_and_to()
    {
        var talk = new Talk([Corpus.Topic("rim-size")]).Keys(ToWalk + "21");
        var said = new List<string>();
        for (var n = 0; n < 20 && talk.Screen is not OwnEndScreen; n++)
        {
            said.Add(talk.Text);
            Assert.Equal(talk.Screen is OwnReadScreen, talk.Text.Contains("From where to where:", StringComparison.Ordinal));
            talk.Keys(talk.Screen is OwnReadScreen ? "0{Enter}" : "0");
        }

        Assert.Contains(said, t => t.Contains("Look at: The whole bike", StringComparison.Ordinal));
    }

    [Fact]
    public void Enter_at_the_end_asks_once_whether_the_bike_is_kept()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2100{Enter}140{Enter}");
        var end = talk.Text;
        Assert.Contains("Keep this bike in the notebook?", talk.Keys("{Enter}").Text, StringComparison.Ordinal);
        Assert.Equal(end, talk.Keys("0").Text);
        talk.Keys("{Enter}2");
        Assert.Empty(talk.World.History.Notebook.Bikes);
        talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2100{Enter}140{Enter}{Enter}1");
        Assert.Single(talk.World.History.Notebook.Bikes);
        Assert.Contains("no job card", talk.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("puzzling", talk.Text, StringComparison.Ordinal);
    }

    // A window that closes in the middle leaves no more than the log.
    [Theory]
    [InlineData("2100{Enter}")]
    [InlineData("20{Enter}1")]
    [InlineData("2100{Enter}{Esc}0{Enter}")]
    [InlineData("2100{Enter}140{Enter}")]
    public void A_walk_that_broke_off_goes_on_with_every_answer(string answers)
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + answers);
        var (page, left) = (talk.Text, talk.World.History.Notebook.WalkOf(null)?.Findings);
        Assert.NotNull(left);
        var again = new Talk(talk.Entries, [Corpus.Sample]);
        Assert.Contains("you stopped in the middle: go on", again.Text, StringComparison.Ordinal);
        Assert.Contains($"Answers so far: {left.Count}.", again.Keys("2").Text, StringComparison.Ordinal);
        Assert.Equal(page, again.Keys("1").Text);
        Assert.Equal(left, again.World.History.Notebook.WalkOf(null)?.Findings);
    }

    [Theory]
    [InlineData("2100{Enter}140{Enter}{Enter}1")]
    [InlineData("2100{Enter}140{Enter}{Enter}2")]
    [InlineData("2100{Enter}140{Enter}4")]
    [InlineData("2100{Enter}140{Enter}23")]
    [InlineData("2100{Enter}140{Enter}22")]
    [InlineData("2100{Enter}{Esc}")]
    [InlineData("2")]
    public void A_walk_that_is_kept_let_go_or_without_an_answer_is_not_offered(string keys)
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + keys);
        Assert.Null(OwnBike.Open(talk.World));
        Assert.DoesNotContain("you stopped in the middle", new Talk(talk.Entries, [Corpus.Sample]).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_bike_at_the_end_loses_nothing()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2100{Enter}140{Enter}22");
        Assert.Equal(2, Assert.Single(talk.World.History.Notebook.Bikes).Findings.Count);
        Assert.Contains("What do you want to buy?", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_walk_in_a_topic_that_lost_its_clue_is_not_offered()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2100{Enter}");
        var asked = talk.World.History.Notebook.WalkOf(null)?.Findings[0].Clue;
        var changed = Corpus.Sample with { Clues = [.. Corpus.Sample.Clues.Where(c => c.Id != asked)] };
        Assert.IsType<OwnWantScreen>(new Talk(talk.Entries, [changed]).Keys("2").Screen);
    }

    [Fact]
    public void A_walk_is_its_persons_and_goes_with_them()
    {
        var talk = new Talk([Corpus.Sample], new LogEntry.PersonAdded("Sam", null), new LogEntry.PersonAdded("Kim", null), new LogEntry.SatDown("Sam"));
        talk.At(OwnGoOnScreen.Of(talk.World, new HomeScreen())).Keys("1112100{Enter}");
        Assert.NotNull(OwnBike.Open(talk.World));
        Assert.Null(talk.World.History.Notebook.WalkOf("Kim"));
        Assert.NotNull(History.Of(PersonEntries.Of(talk.Entries, "Sam")).Notebook.WalkOf("Sam"));
        Assert.DoesNotContain(PersonEntries.Without(talk.Entries, "Sam"), e => e.What is LogEntry.WalkBegun or LogEntry.WalkFound);
    }

    [Fact]
    public void A_pause_in_the_walk_speaks_of_no_job() =>
        Assert.Contains("A page is put aside.", new Talk([Corpus.Sample]).Keys(ToWalk + "1p").Text, StringComparison.Ordinal);

    [Fact]
    public void What_a_safety_look_found_without_stopping_is_told_before_the_order()
    {
        var talk = new Talk([Corpus.Topic("crank")]).Keys(ToWalk + "22");
        for (var n = 0; n < 20 && talk.Screen is not OwnEndScreen; n++) talk.Keys(talk.Screen is OwnReadScreen ? "0{Enter}" : "0");
        var end = Assert.IsType<OwnEndScreen>(talk.Screen);
        Assert.Contains("Safety look: rock the cranks: both move: bearing play. Let a qualified mechanic look at it before anybody rides.", end.Paragraphs);
    }

    [Fact]
    public void Not_settled_goes_on_asking_and_then_names_what_other_tools_would_tell()
    {
        var talk = new Talk([Corpus.Topic("seatpost")]).Keys(ToWalk + "21");
        Assert.IsType<OwnPickScreen>(talk.Screen);
        for (var n = 0; n < 20 && talk.Screen is not OwnEndScreen; n++) talk.Keys(talk.Screen is OwnReadScreen ? "0{Enter}" : "0");
        var end = Assert.IsType<OwnEndScreen>(talk.Screen);
        Assert.Contains("Seatpost: do not order yet. Ask at a shop, with the old part when you can.", end.Paragraphs);
        Assert.Contains(end.Paragraphs, p => p.StartsWith("With other tools these checks would tell more:", StringComparison.Ordinal) && p.Contains("(caliper)", StringComparison.Ordinal));
    }

    // The teeth tell nothing of the crank's fixing by themselves: the engine ranks them for the sake of the look under the cap.
    [Fact]
    public void A_left_crank_is_asked_for_the_end_of_its_axle_and_not_for_its_teeth()
    {
        var topic = Corpus.Topic("crank");
        var talk = new Talk([topic]);
        var bike = new OwnBike(new Workbench(topic), topic.Wants.First(w => w.Id == "left"), "own", 2, [], [], null).Found("rock", new Seen.Named("firm"));
        talk.At(bike.Found("sort", new Seen.Named("roadster")).Screen(new HomeScreen()));
        Assert.Equal("end-shape", Assert.IsType<OwnPickScreen>(talk.Screen).ClueId);
        var asked = new List<string>();
        for (var n = 0; n < 12 && talk.Screen is OwnPickScreen pick; n++)
        {
            asked.Add(pick.ClueId);
            talk.Keys("0");
        }

        Assert.IsType<OwnEndScreen>(talk.Screen);
        Assert.DoesNotContain("teeth", asked);
    }

    [Fact]
    public void A_tube_is_not_asked_about_its_spokes()
    {
        var topic = Corpus.Topic("spokes-valves");
        var bike = new OwnBike(new Workbench(topic), topic.Wants.First(w => w.Id == "tube"), "own", 2, [], [], null).Found("rim-look", new Seen.Named("sound"));
        var talk = new Talk([topic]).At(bike.Screen(new HomeScreen()));
        var asked = new List<string>();
        for (var n = 0; n < 12 && talk.Screen is OwnPickScreen pick; n++)
        {
            asked.Add(pick.ClueId);
            talk.Keys(pick.ClueId is "valve-look" ? "1" : "0");
        }

        Assert.IsType<OwnEndScreen>(talk.Screen);
        Assert.DoesNotContain(asked, c => c is "feel" or "said");
    }

    [Fact]
    public void A_check_behind_a_remover_is_not_asked_of_a_rule()
    {
        var topic = Corpus.Topic("freewheel");
        var under = Assert.Single(topic.Clues, c => c.Access is "sprockets-off" && ToolLevel.Of(c.Tool) == 1);
        Assert.Equal(ToolLevel.All, ToolLevel.Of(topic, under));
    }

    [Theory]
    [InlineData("bottom-bracket", "cup-mark")]
    [InlineData("bottom-bracket", "undoes")]
    [InlineData("crank", "pin")]
    [InlineData("chain", "laid")]
    public void A_check_that_needs_a_special_tool_is_not_asked_of_bare_hands(string topic, string clue) =>
        Assert.Equal(ToolLevel.All, ToolLevel.Of(Corpus.Topic(topic), Corpus.Topic(topic).Clues.First(c => c.Id == clue)));

    [Fact]
    public void Pedals_that_can_hurt_say_why_more_is_asked_at_98_of_100_and_leave_the_crank_on()
    {
        var bench = new Workbench(Corpus.Topic("bottom-bracket"));
        var bike = new OwnBike(bench, bench.Topic.Wants.First(w => w.Id == "pedals"), "own", 1, [], [], null)
            .Found("rock", new Seen.Named("firm")).Found("sort", new Seen.Named("racer")).Found("pedal-mark", new Seen.Named("no-mark")).Found("face", new Seen.Named("notches"));
        var reasoning = bike.Reasoning;
        Assert.False(reasoning.Parts[0].Settled);
        Assert.Contains("A wrong one can hurt, so more is asked.", OwnQuestion.SoFar(bike, reasoning), StringComparison.Ordinal);
        Assert.NotEqual("cup-mark", bike.Next(reasoning, further: false)?.Id);
        Assert.NotEmpty(bike.Beyond(reasoning));
    }

    [Fact]
    public void What_is_not_worth_its_minutes_is_asked_only_while_nothing_comes_off()
    {
        var bench = new Workbench(Corpus.Topic("bottom-bracket"));
        var bike = new OwnBike(bench, bench.Topic.Wants.First(w => w.Id == "pedals"), "own", ToolLevel.All, [], ["eye-core", "over-pedal", "pedal-turns", "width"], null)
            .Found("rock", new Seen.Named("firm")).Found("sort", new Seen.Named("cont")).Found("pedal-mark", new Seen.Named("s-12")).Found("face", new Seen.Named("lip"));
        var reasoning = bike.Reasoning;
        Assert.True(reasoning.Ripe);
        Assert.NotEmpty(reasoning.Next);
        Assert.Null(bike.Next(reasoning, further: false));
        Assert.NotNull(bike.Next(reasoning, further: true));
    }

    [Fact]
    public void Another_bike_loses_nothing()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2100{Enter}140{Enter}");
        var end = talk.Text;
        Assert.Equal(end, talk.Keys("20").Text);
        Assert.IsType<OwnReadScreen>(talk.Keys("0").Screen);
    }

    [Fact]
    public void It_is_kept_in_the_notebook_with_all_that_was_found()
    {
        var talk = new Talk([Corpus.Topic("rim-size")]).Keys(ToWalk + "21");
        for (var n = 0; n < 20 && talk.Screen is not OwnEndScreen; n++) talk.Keys(talk.Screen is OwnReadScreen read ? read.ClueId is "round" ? "1953{Enter}" : "0{Enter}" : "0");
        var walked = Assert.IsType<OwnEndScreen>(talk.Screen).Bike;
        Assert.NotEmpty(walked.Findings);
        Assert.NotEmpty(walked.Blind);
        Assert.IsType<BikeScreen>(talk.Keys("4").Screen);
        var kept = Assert.Single(talk.World.History.Notebook.Bikes);
        Assert.Equal(walked.Findings, kept.Findings.Where(f => f.Finding.Seen is not Seen.Hidden).Select(f => f.Finding));
        Assert.Equal(walked.Blind, kept.Findings.Where(f => f.Finding.Seen is Seen.Hidden).Select(f => f.Finding.Clue));
        Assert.Contains("in the notebook now", talk.Text, StringComparison.Ordinal);
        Assert.Contains("My own bike", talk.Keys("0").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_notebook_is_there_on_the_first_start() =>
        Assert.IsType<StandScreen>(new Talk([Corpus.Sample]).Keys("05").Screen);

    [Fact]
    public void Many_topics_are_asked_for_first_and_made_up_ones_are_left_out()
    {
        var topics = Directory.GetFiles(Path.Combine(Corpus.Root, "question-bank"), "*.md").Select(f => Corpus.Topic(Path.GetFileNameWithoutExtension(f))).ToList();
        var first = Assert.IsType<OwnTopicScreen>(new Talk(topics).Keys("2").Screen);
        Assert.Equal(topics.Where(t => t.State != TopicState.Draft).Select(t => t.Id), first.Benches.Select(b => b.Topic.Id));
        Assert.Contains("Nothing is marked", new Talk(topics).Keys("2?").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_notebook_leaves_made_up_topics_out_and_marks_them_where_there_is_nothing_else()
    {
        static Talk New(params string[] topics) => new Talk([.. topics.Select(t => Corpus.Topic(t))]).Keys("051blue{Enter}{Enter}1");
        Assert.DoesNotContain("draft", New("folding-bar", "seatpost", "crank").Text, StringComparison.Ordinal);
        Assert.Contains("draft", New("folding-bar", "serials").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Escape_takes_the_last_answer_back()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2");
        var first = talk.Text;
        Assert.Equal(first, talk.Keys("0{Enter}{Esc}").Text);
        Assert.IsType<OwnToolsScreen>(talk.Keys("{Esc}").Screen);
    }

    [Fact]
    public void The_sheet_says_what_the_screen_said()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToWalk + "2100{Enter}140{Enter}");
        var end = Assert.IsType<OwnEndScreen>(talk.Screen);
        talk.Keys("1");
        var (name, text) = Assert.Single(talk.Sheets);
        Assert.Equal("own-bike.txt", name);
        Assert.All(end.Paragraphs, p => Assert.Contains(p.Trim().Split(' ')[0], text, StringComparison.Ordinal));
        Assert.All(text.Split('\n'), l => Assert.InRange(l.Length, 0, 76));
    }

    [Fact]
    public void No_certainty_goes_above_99_of_100()
    {
        Assert.Equal("about 99 of 100", Spoken.Twentieths(0.99999));
        Assert.Equal("about 99 of 100", Spoken.Twentieths(1));
        Assert.Equal("about 17 of 20", Spoken.Twentieths(0.87));
        Assert.Equal("fewer than 1 of 20", Spoken.Twentieths(0));
        Assert.Equal("9 of 10", Spoken.Tenths(1));
        Assert.Equal("more than 9 of 10", Spoken.AboutTenths(1));
        Assert.Equal("about 4 of 10", Spoken.AboutTenths(0.4));
        Assert.Equal("fewer than 1 of 10", Spoken.AboutTenths(0));
    }

    [Theory]
    [InlineData("310", 310)]
    [InlineData("310 mm", 310)]
    [InlineData("31 cm", 310)]
    [InlineData("12 1/4 in", 311)]
    [InlineData("12.25\"", 311)]
    public void Readings_may_be_in_mm_or_inches(string text, double millimetres)
    {
        Assert.True(Reading.TryParse(text, Stem, out var reading, out var wrong), wrong);
        Assert.Equal(millimetres, reading);
    }

    [Theory]
    [InlineData("", "Type a number, for example 310 or 12.5 in, or 0 when you cannot see it.")]
    [InlineData("long", "\"long\" is not a length. Type a number, for example 310, 31 cm or 12 1/4 in.")]
    [InlineData("31", "31 mm cannot be read here. The tool reads from 260 to 370 mm. Look at the unit.")]
    [InlineData("-310", "-310 mm cannot be read here. The tool reads from 260 to 370 mm. Look at the unit.")]
    public void A_bad_reading_is_told_with_what_would_do(string text, string sentence)
    {
        Assert.False(Reading.TryParse(text, Stem, out _, out var wrong));
        Assert.Equal(sentence, wrong);
    }

    static Shows.Measured Stem => (Shows.Measured)Corpus.Sample.Clues.First(c => c.Id is "stem-length").Shows;
}
