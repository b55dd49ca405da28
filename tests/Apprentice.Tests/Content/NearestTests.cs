using Apprentice.Content;

namespace Apprentice.Tests.Content;

public sealed class NearestTests
{
    static readonly string[] Names = ["bar", "stem", "lever", "stem-length"];

    [Theory]
    [InlineData("stme", "stem")]
    [InlineData("LEVR", "lever")]
    [InlineData("stem-lenght", "stem-length")]
    [InlineData("b", "bar")]
    public void The_nearest_name_comes_first(string word, string nearest) => Assert.Equal(nearest, Nearest.Of(word, Names, 2)[0]);

    [Fact]
    public void No_more_names_are_told_than_asked_for_and_none_twice()
    {
        Assert.Equal(2, Nearest.Of("x", Names, 2).Count);
        Assert.Equal(4, Nearest.Of("x", [.. Names, .. Names], 9).Count);
        Assert.Empty(Nearest.Of("x", [], 3));
    }

    [Fact]
    public void Equally_near_names_keep_their_order() => Assert.Equal(["ba", "ca", "da"], Nearest.Of("xa", ["ba", "ca", "da"], 3));

    [Fact]
    public void Names_are_listed_as_in_a_sentence()
    {
        Assert.Equal("bar, stem or lever", Nearest.Or(["bar", "stem", "lever"]));
        Assert.Equal("bar or stem", Nearest.Or(["bar", "stem"]));
        Assert.Equal("bar", Nearest.Or(["bar"]));
        Assert.Equal("", Nearest.Or([]));
    }

    [Fact]
    public void A_very_long_word_is_answered_at_once() => Assert.Equal(3, Nearest.Of(new string('x', 1_000_000), Names, 3).Count);
}
