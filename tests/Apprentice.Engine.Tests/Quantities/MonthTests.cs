using Apprentice.Engine.Quantities;
using CsCheck;

namespace Apprentice.Engine.Tests.Quantities;

public sealed class MonthTests
{
    static readonly Gen<Month> Months = Gen.Select(Gen.Int[0, 9999], Gen.Int[1, 12], Month.Of);

    [Fact]
    public void A_month_keeps_its_year_and_its_place_in_it() => Check.Sample(
        Gen.Select(Gen.Int[0, 9999], Gen.Int[1, 12]), (year, month) => (Month.Of(year, month).Year, Month.Of(year, month).OfYear) == (year, month));

    [Fact]
    public void What_is_written_is_read_again() => Check.Sample(Months, m => Month.TryParse(m.ToString(), out var again) && again == m);

    [Fact]
    public void A_year_alone_is_its_January()
    {
        Assert.True(Month.TryParse(" 2017 ", out var month));
        Assert.Equal(Month.Of(2017, 1), month);
    }

    [Theory]
    [InlineData("")]
    [InlineData("17")]
    [InlineData("2017-0")]
    [InlineData("2017-13")]
    [InlineData("2017-")]
    [InlineData("2017-07-01")]
    [InlineData("07-2017")]
    [InlineData("July 2017")]
    [InlineData("+201")]
    [InlineData("2017-+7")]
    [InlineData("2017- 7")]
    public void What_is_no_month_is_not_read(string text) => Assert.False(Month.TryParse(text, out _));

    [Fact]
    public void Twelve_months_on_is_the_same_month_of_the_next_year() => Check.Sample(
        Months, m => m.Plus(12) == Month.Of(m.Year + 1, m.OfYear) && m.Plus(12).Plus(-12) == m);

    [Fact]
    public void Months_stand_in_the_order_of_the_calendar() => Check.Sample(Gen.Select(Months, Months), (a, b) =>
    {
        var order = (a.Year, a.OfYear).CompareTo((b.Year, b.OfYear));
        return Math.Sign(a.CompareTo(b)) == Math.Sign(order) && (a < b) == (order < 0) && (a > b) == (order > 0) && (a <= b) == (order <= 0) && (a >= b) == (order >= 0);
    });
}
