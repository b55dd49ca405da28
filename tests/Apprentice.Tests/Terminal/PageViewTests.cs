using Apprentice.Engine;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Terminal;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace Apprentice.Tests.Terminal;

public sealed class PageViewTests : IDisposable
{
    readonly VirtualTimeProvider _time = new();
    readonly IApplication _app;
    readonly PageView _view;
    readonly SessionToken _session;

    public PageViewTests()
    {
        _app = Application.Create(_time);
        _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver?.SetScreenSize(80, 24);
        var world = new World([new Workbench(Corpus.Sample)], History.Empty.With(new Logged(default, new LogEntry.Began(17))));
        _view = new PageView(new Conversation(world, e => new Logged(default, e), (_, _) => ""));
        _session = _app.Begin(_view) ?? throw new InvalidOperationException();
        _app.LayoutAndDraw();
    }

    string Text => _app.Driver?.ToString() ?? "";

    public void Dispose()
    {
        _app.End(_session);
        _view.Dispose();
        _app.Dispose();
    }

    [Fact]
    public void The_first_screen_is_drawn_as_it_was_laid_out() =>
        Assert.Equal(Lines(new Screens.Talk([Corpus.Sample]).Text), Lines(Text));

    [Fact]
    public void A_digit_puts_the_first_job_on_the_screen()
    {
        Press(Key.D1);
        Assert.Contains("Job 1", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Escape_goes_back_and_does_not_end_the_program()
    {
        Press(Key.D1, Key.Esc);
        Assert.Contains("Real bike", Text, StringComparison.Ordinal);
        Assert.False(_view.StopRequested);
    }

    [Fact]
    public void Ctrl_Q_leaves_from_anywhere()
    {
        Press(Key.D1, Key.Q.WithCtrl);
        Assert.True(_view.StopRequested);
    }

    [Fact]
    public void Q_leaves_from_the_first_screen()
    {
        Press(new Key('q'));
        Assert.True(_view.StopRequested);
    }

    [Fact]
    public void Names_are_typed_with_capitals_and_spaces()
    {
        Press(Key.D3);
        foreach (var c in "Back Yard 7") Press(new Key(c));
        Assert.Contains("Name:  Back Yard 7_", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_minutes_without_a_key_put_the_job_aside()
    {
        Press(Key.D1);
        _time.Advance(PageView.Idle - TimeSpan.FromSeconds(1));
        _app.TimedEvents?.RunTimers();
        _app.LayoutAndDraw();
        Assert.Contains("Job 1", Text, StringComparison.Ordinal);
        _time.Advance(TimeSpan.FromSeconds(2));
        _app.TimedEvents?.RunTimers();
        _app.LayoutAndDraw();
        Assert.Contains("Paused", Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Job 1", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_size_is_laid_out_anew()
    {
        _app.Driver?.SetScreenSize(60, 20);
        _app.LayoutAndDraw();
        Assert.Equal(Lines(new Screens.Talk([Corpus.Sample]).TextAt(new PageSize(60, 20))), Lines(Text));
    }

    [Theory]
    [InlineData(40, 10)]
    [InlineData(5, 2)]
    [InlineData(1, 1)]
    public void A_tiny_window_does_no_harm(int columns, int rows)
    {
        _app.Driver?.SetScreenSize(columns, rows);
        _app.LayoutAndDraw();
        Press(Key.D1, Key.CursorDown);
        _app.Driver?.SetScreenSize(80, 24);
        _app.LayoutAndDraw();
        Assert.Contains("Job 1", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_colour_is_ever_sent()
    {
        Press(Key.D1, Key.CursorDown);
        Assert.DoesNotMatch(@"\x1b\[[0-9;]*(3[0-7]|4[0-7]|9[0-7]|10[0-7]|38;|48;)", _app.Driver?.ToAnsi());
    }

    void Press(params Key[] keys)
    {
        foreach (var key in keys) _app.InjectKey(key);
        _app.LayoutAndDraw();
    }

    static IEnumerable<string> Lines(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(l => l.TrimEnd());
}
