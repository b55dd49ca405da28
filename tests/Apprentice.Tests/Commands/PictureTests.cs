using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Commands;

public sealed class PictureTests
{
    [Fact]
    public void A_picture_is_printed_with_its_points() => Golden.Same("picture", Out("picture", "folding-bar", "front", "--kind", "low", "--size", "60x12", "--points"));

    [Fact]
    public void A_picture_is_said_in_words() => Golden.Same("picture-words", Out("picture", "folding-bar", "lever", "--finding", "holes", "--words"));

    [Fact]
    public void Two_kinds_are_printed_at_one_scale() => Golden.Same("picture-with", Out("picture", "folding-bar", "bend", "--kind", "tall", "--with", "low"));

    [Theory]
    [InlineData("There is no drawing 'frnt'", "picture", "folding-bar", "frnt")]
    [InlineData("There is no kind 'lo'", "picture", "folding-bar", "front", "--kind", "lo")]
    [InlineData("There is no finding 'bent'", "picture", "folding-bar", "bend", "--finding", "bent")]
    [InlineData("There is no figure 'valv'", "picture", "figure", "valv")]
    [InlineData("--size '80' is no size", "picture", "folding-bar", "front", "--size", "80")]
    [InlineData("--seed 'x' is no seed", "picture", "folding-bar", "front", "--seed", "x")]
    [InlineData("The drawing sits shows findings", "picture", "rim-size", "sits")]
    public void What_is_written_wrongly_is_told(string sentence, params string[] args)
    {
        var said = Said.Bare(args);
        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith(sentence, said.Error, StringComparison.Ordinal);
        Assert.Equal("", said.Out);
    }

    static string Out(params string[] args)
    {
        var said = Said.Bare(args);
        Assert.Equal(("", 0), (said.Error, said.ExitCode));
        return said.Out;
    }
}
