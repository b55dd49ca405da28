using Apprentice.Content;
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
