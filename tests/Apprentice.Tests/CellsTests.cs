using CsCheck;
using Terminal.Gui.Text;

namespace Apprentice.Tests;

/// <summary>Text counted in cells.</summary>
public sealed class CellsTests
{
    /// <summary>Names as people write them: letters of two cells, marks that stand on another letter, signs made of several.</summary>
    public static readonly string[] Names =
        ["Sam", "\u738B\u5C0F\u660E", "\u3055\u304F\u3089", "\uAE40\uBBFC\uC900", "Zoe\u0308", "Jose\u0301", "Ng\u0123\u0323", "\U0001F6B2 Sam", "\U0001F468\u200D\U0001F527", "\U0001F1F3\U0001F1F1 Jan", "\u0E2A\u0E21\u0E0A\u0E32\u0E22", "\u0928\u0947\u0939\u093E", "\U00020BB7\u7530", "\uFF21\uFF22", "\u0915\u094D\u0937\u093F", "\u2764\uFE0F Jo"];

    public static TheoryData<string> All => [.. Names];

    // Oracle: the toolkit that sets the text on the screen.
    [Theory]
    [MemberData(nameof(All))]
    public void A_name_takes_the_cells_that_the_toolkit_gives_it(string name) => Assert.Equal(name.GetColumns(), Cells.Width(name));

    // Oracle: Unicode Standard Annex 11, "W" and "F" take two cells; general category Mn takes none.
    [Theory]
    [InlineData("\u738B\u5C0F\u660E", 6)]
    [InlineData("\uFF21\uFF22", 4)]
    [InlineData("Zoe\u0308", 3)]
    [InlineData("Sam", 3)]
    [InlineData("", 0)]
    public void Wide_letters_take_two_cells_and_marks_none(string text, int cells) => Assert.Equal(cells, Cells.Width(text));

    [Fact]
    public void A_cut_never_splits_a_sign_and_never_goes_over() => Gen.Select(Gen.Int[0, Names.Length - 1].Select(i => Names[i]).Array[1, 4], Gen.Int[2, 30]).Sample((names, cells) =>
    {
        var text = string.Concat(names);
        var cut = Cells.Cut(text, cells);
        Assert.StartsWith(cut, text, StringComparison.Ordinal);
        Assert.InRange(Cells.Width(cut), 0, cells);
        Assert.Equal(text, string.Concat(cut, text[cut.Length..]));
        Assert.False(char.IsHighSurrogate(cut[^1]));
        Assert.Equal(cells, Cells.Width(Cells.PadLeft(cut, cells)));
        Assert.Equal(cells, Cells.Width(Cells.PadRight(cut, cells)));
    });

    [Theory]
    [InlineData("Zoe\u0308", "Zo")]
    [InlineData("a\U0001F468\u200D\U0001F527", "a")]
    [InlineData("a", "")]
    [InlineData("", "")]
    public void Backspace_takes_a_whole_sign(string text, string left) => Assert.Equal(left, Cells.WithoutLast(text));
}
