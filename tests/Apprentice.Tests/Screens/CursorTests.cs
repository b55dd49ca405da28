using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

public sealed class CursorTests
{
    [Fact]
    public void A_digit_takes_its_line() => Assert.Equal(2, new Cursor(0).After(Input.Typed('3'), 4).Taken);

    [Fact]
    public void A_digit_beyond_the_list_takes_nothing() => Assert.Null(new Cursor(0).After(Input.Typed('5'), 4).Taken);

    [Fact]
    public void A_first_digit_of_two_waits_and_marks()
    {
        var (cursor, taken) = new Cursor(5).After(Input.Typed('1'), 14);
        Assert.Null(taken);
        Assert.Equal(0, cursor.Marked);
        Assert.Equal(13, cursor.After(Input.Typed('4'), 14).Taken);
        Assert.Equal(9, cursor.After(Input.Typed('0'), 14).Taken);
        Assert.Equal(0, cursor.After(new Input(Press.Enter), 14).Taken);
    }

    [Fact]
    public void The_arrows_go_round()
    {
        Assert.Equal(3, new Cursor(0).After(new Input(Press.Up), 4).Cursor.Marked);
        Assert.Equal(0, new Cursor(3).After(new Input(Press.Down), 4).Cursor.Marked);
    }

    [Fact]
    public void Enter_on_an_empty_list_takes_nothing() => Assert.Null(new Cursor(0).After(new Input(Press.Enter), 0).Taken);
}
