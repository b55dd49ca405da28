using Apprentice.Engine.Learning;
using Apprentice.Screens;
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

    [Fact]
    public void See() => Golden.Same("see", string.Join("\n=====\n", new[] { Call, Call + "1", Call + "11", Call + "111" }.Select(k => Talk().Keys(k).Text)));

    static Talk Talk() => new([Corpus.Sample], Workshop);
}
