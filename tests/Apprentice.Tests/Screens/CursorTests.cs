using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

public sealed class CursorTests
{
    [Fact]
    public void A_digit_takes_its_line() => Assert.Equal(2, new Cursor(0).After(Input.Typed('3'), 4).Taken);

    [Fact]
    public void A_digit_beyond_the_list_takes_nothing() => Assert.Null(new Cursor(0).After(Input.Typed('5'), 4).Taken);

    [Fact]
    public void In_a_long_list_a_number_marks_and_only_Enter_takes()
    {
        var (cursor, taken) = new Cursor(5).After(Input.Typed('1'), 14);
        Assert.Null(taken);
        Assert.Equal(0, cursor.Marked);
        (cursor, taken) = cursor.After(Input.Typed('4'), 14);
        Assert.Null(taken);
        Assert.Equal(13, cursor.After(new Input(Press.Enter), 14).Taken);
        Assert.Equal(0, cursor.After(new Input(Press.Backspace), 14).Cursor.Marked);
    }

    [Fact]
    public void A_number_that_runs_past_a_long_list_begins_anew_with_its_last_digit()
    {
        var cursor = new Cursor(0).After(Input.Typed('1'), 12).Cursor.After(Input.Typed('9'), 12).Cursor;
        Assert.Equal(new Cursor(8, 9), cursor);
    }

    [Fact]
    public void Nothing_marked_is_not_taken_by_Enter()
    {
        Assert.Null(Cursor.None.After(new Input(Press.Enter), 4).Taken);
        Assert.Equal(0, Cursor.None.After(new Input(Press.Down), 4).Cursor.Marked);
        Assert.Equal(3, Cursor.None.After(new Input(Press.Up), 4).Cursor.Marked);
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
