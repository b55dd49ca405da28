using Apprentice.Content.Values;

namespace Apprentice.Tests.Content;

public sealed class ValueTextTests
{
    [Theory]
    [InlineData("1 in 20", 0.05)]
    [InlineData("3 in 10", 0.3)]
    [InlineData(" 0.05 ", 0.05)]
    [InlineData("rare", 0.02)]
    [InlineData("Sometimes", 0.1)]
    [InlineData("often", 1.0 / 3)]
    [InlineData("mostly", 0.8)]
    [InlineData("0", 0)]
    [InlineData("1", 1)]
    public void Shares_are_read(string text, double share)
    {
        Assert.True(ShareText.TryParse(text, out var read));
        Assert.Equal(share, read, 1e-15);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1 on 20")]
    [InlineData("3 in 2")]
    [InlineData("1 in 0")]
    [InlineData("0,05")]
    [InlineData("-0.1")]
    [InlineData("5%")]
    [InlineData("1e-3")]
    [InlineData("NaN")]
    [InlineData("rest")]
    public void Other_shares_are_refused(string text) => Assert.False(ShareText.TryParse(text, out _));

    [Theory]
    [InlineData("310 mm", 310)]
    [InlineData("12.7", 12.7)]
    [InlineData("1/2 in", 12.7)]
    [InlineData("27 1/4 in", 692.15)]
    [InlineData("27 1/4\"", 692.15)]
    [InlineData("2.5cm", 25)]
    [InlineData("-14 mm", -14)]
    [InlineData("− 14 mm", -14)]
    [InlineData("1 inch", 25.4)]
    [InlineData("2 inches", 50.8)]
    public void Lengths_are_read_in_millimetres(string text, double length)
    {
        Assert.True(LengthText.TryParse(text, out var read));
        Assert.Equal(length, read, 1e-12);
    }

    [Theory]
    [InlineData("")]
    [InlineData("mm")]
    [InlineData("12,7")]
    [InlineData("310 kg")]
    [InlineData("1/0 in")]
    [InlineData("1.5 1/2 in")]
    [InlineData("1 2 3")]
    [InlineData("1e400")]
    [InlineData("9999999999")]
    [InlineData("--3")]
    public void Other_lengths_are_refused(string text) => Assert.False(LengthText.TryParse(text, out _));

    // The decimal sign is a comma or a point on the line. Source: ISO 80000-1, decimal sign.
    [Theory]
    [InlineData("27,2", 27.2)]
    [InlineData("12,09 in", 307.086)]
    [InlineData("1,95cm", 19.5)]
    [InlineData("310", 310)]
    [InlineData("12 1/4 in", 311.15)]
    public void A_typed_reading_may_have_a_decimal_comma(string text, double length)
    {
        Assert.True(LengthText.TryParseTyped(text, out var read));
        Assert.Equal(length, read, 1e-9);
    }

    [Theory]
    [InlineData("1,953")]
    [InlineData("27,")]
    [InlineData("1,9,5")]
    [InlineData("27.2,5")]
    public void A_comma_that_may_part_thousands_is_refused(string text) => Assert.False(LengthText.TryParseTyped(text, out _));
}
