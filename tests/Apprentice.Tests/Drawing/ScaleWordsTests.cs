using System.Text.RegularExpressions;
using Apprentice.Drawing;
using Apprentice.Engine.Quantities;

namespace Apprentice.Tests.Drawing;

public sealed partial class ScaleWordsTests
{
    static readonly Scale Millimetres = new Scale.Ruled(Tape: false, Inches: false);
    static readonly Scale Inches = new Scale.Ruled(Tape: false, Inches: true);

    [Theory]
    [InlineData(27.2, "The edge of the part is past the 27 mark, under the 28 mark. It lies between the two, nearer to the first.")]
    [InlineData(27.5, "The edge of the part is past the 27 mark, under the 28 mark. It lies about half-way between the two.")]
    [InlineData(27.8, "The edge of the part is past the 27 mark, under the 28 mark. It lies between the two, nearer to the second.")]
    [InlineData(27, "The edge of the part meets a mark: mark 7 after the figure 20.")]
    [InlineData(30, "The edge of the part meets the long mark of the figure 30.")]
    public void A_rule_in_words(double value, string words) => Assert.Equal(words, ScaleWords.Of(Millimetres, value, closed: false)[1]);

    [Fact]
    public void A_rule_in_inches_names_its_marks_by_fractions() =>
        Assert.StartsWith("The edge of the part is past the 12 5/16 mark, under the 12 3/8 mark.", ScaleWords.Of(Inches, 25.4 * (12 + (11 / 32.0)), closed: false)[1], StringComparison.Ordinal);

    // Source of the reading: facts U7.1.
    [Fact]
    public void A_vernier_in_words() => Assert.Equal(
        ["The vernier's zero line is past the 27 mark, under the 28 mark.", "Line 4 after the zero line meets a mark of the main scale."],
        ScaleWords.Of(new Scale.Vernier(0.05), 27.15, closed: false).Skip(1));

    [Theory]
    [InlineData(0, "The vernier's zero line meets the long mark of the figure 0.")]
    [InlineData(0.05, "The vernier's zero line is past the 0 mark, under the 1 mark. Line 1 after the zero line meets a mark of the main scale.")]
    [InlineData(-0.05, "The vernier's zero line is left of the main scale's zero. Line 19 after the zero line meets a mark of the main scale.")]
    public void Closed_jaws_in_words(double zeroError, string words) =>
        Assert.Equal(words, string.Join(' ', ScaleWords.Of(new Scale.Vernier(zeroError), 27.15, closed: true).Skip(1)));

    [Fact]
    public void The_words_of_a_vernier_are_enough_to_read_it_and_never_say_the_reading()
    {
        var rng = new Rng(3);
        for (var n = 0; n < 2000; n++)
        {
            var value = 0.1 + (rng.Unit() * 140);
            var words = string.Join(' ', ScaleWords.Of(new Scale.Vernier(0), value, closed: false).Skip(1));
            var figures = Figures().Matches(words).Select(m => int.Parse(m.Value)).ToArray();
            var read = figures.Length switch { 3 => figures[0] + (figures[2] / 20.0), 2 => figures[0] + figures[1], _ => figures[0] };
            Assert.InRange(Math.Abs(read - value), 0, 0.025 + 1e-9);
            if (figures.Length == 3) Assert.DoesNotContain(read.ToString("0.0#"), words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_words_of_a_rule_are_enough_to_read_it_to_half_a_division()
    {
        var rng = new Rng(4);
        for (var n = 0; n < 2000; n++)
        {
            var value = 1 + (rng.Unit() * 500);
            var words = ScaleWords.Of(Millimetres, value, closed: false)[1];
            var figures = Figures().Matches(words).Select(m => int.Parse(m.Value)).ToArray();
            var read = words switch
            {
                _ when words.Contains("after", StringComparison.Ordinal) => figures[0] + figures[1],
                _ when words.Contains("meets", StringComparison.Ordinal) => figures[0],
                _ when words.EndsWith("first.", StringComparison.Ordinal) => figures[0] + 0.2,
                _ when words.EndsWith("second.", StringComparison.Ordinal) => figures[1] - 0.2,
                _ => figures[0] + 0.5,
            };
            Assert.InRange(Math.Abs(read - value), 0, 0.5);
        }
    }

    [Fact]
    public void The_words_of_a_rule_in_inches_are_enough_too()
    {
        var rng = new Rng(5);
        for (var n = 0; n < 2000; n++)
        {
            var inches = 0.2 + (rng.Unit() * 20);
            var words = ScaleWords.Of(Inches, inches * 25.4, closed: false)[1];
            var named = Named().Matches(words).Select(m => Inch(m.Groups["mark"].Value)).ToArray();
            if (named.Length == 0) continue;
            var into = words.EndsWith("first.", StringComparison.Ordinal) ? 0.2 : words.EndsWith("second.", StringComparison.Ordinal) ? 0.8 : 0.5;
            Assert.Equal(1 / 16.0, named[1] - named[0], 9);
            Assert.InRange(Math.Abs(named[0] + (into / 16) - inches), 0, 1 / 32.0);
        }
    }

    static double Inch(string mark) => mark.Split(' ').Sum(w => w.Split('/') is [var top, var bottom] ? double.Parse(top) / double.Parse(bottom) : double.Parse(w));

    [GeneratedRegex("the (?<mark>[0-9 /]+) mark", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Named();

    [GeneratedRegex("[0-9]+", RegexOptions.NonBacktracking)]
    private static partial Regex Figures();
}
