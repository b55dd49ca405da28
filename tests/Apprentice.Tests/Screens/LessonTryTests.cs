using Apprentice.Engine.Learning;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>The question at the end of a lesson.</summary>
public sealed class LessonTryTests
{
    const string ToQuestion = "618{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}";

    [Theory]
    [InlineData("lesson-try", "{Enter}")]
    [InlineData("lesson-try-sure", "1")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Asked().Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void Enter_says_that_no_line_is_marked_and_takes_the_one_that_is()
    {
        var talk = Asked().Keys("{Enter}");
        Assert.Null(Assert.IsType<LessonTryScreen>(talk.Screen).Kind);
        Assert.Contains("No line is marked yet.", talk.Text, StringComparison.Ordinal);
        talk.Keys("{Down}{Enter}");
        Assert.Equal("tall", Assert.IsType<LessonTryScreen>(talk.Screen).Kind);
        Assert.DoesNotContain("No line is marked yet.", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_says_not_settled_is_not_asked_how_sure()
    {
        var talk = Asked().Keys("3");
        Assert.Contains("You said not settled.", talk.Text, StringComparison.Ordinal);
        Assert.IsType<LessonScreen>(talk.Keys("{Enter}").Screen);
    }

    static Talk Asked()
    {
        var topic = Corpus.Topic("folding-bar");
        return new Talk(plain: false, [topic], Corpus.Lessons([topic]), new LogEntry.PersonAdded("Sam", null), new LogEntry.SatDown("Sam")).Keys(ToQuestion);
    }
}
