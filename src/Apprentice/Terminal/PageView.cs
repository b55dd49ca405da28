using Apprentice.Content;
using Apprentice.Screens;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Apprentice.Terminal;

/// <summary>Draws the page of a conversation over the whole window and hands keys to it. Only the terminal's own colours: meaning is in words, <c>&gt;</c> and reverse video.</summary>
sealed class PageView : Runnable
{
    /// <summary>After so long without a key the job is put aside.</summary>
    public static readonly TimeSpan Idle = TimeSpan.FromMinutes(3);

    static readonly Attribute Plain = new(Color.None, Color.None);
    static readonly Attribute Reverse = new(Color.None, Color.None, TextStyle.Reverse);
    static readonly Attribute Bold = new(Color.None, Color.None, TextStyle.Bold);

    readonly Conversation _conversation;
    object? _timer;
    bool _busy;

    /// <summary>A view of a conversation.</summary>
    public PageView(Conversation conversation)
    {
        _conversation = conversation;
        CanFocus = true;
        Width = Dim.Fill();
        Height = Dim.Fill();
        SetScheme(new Scheme(Plain) { Focus = Plain, HotNormal = Plain, HotFocus = Plain, Active = Plain, HotActive = Plain, Disabled = Plain });
    }

    PageSize Size => new(Viewport.Width, Viewport.Height);

    /// <inheritdoc/>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (!newIsRunning) return;
        Rewind();
        App?.AddTimeout(Conversation.Pulse, Beat);
    }

    // The clock of a sitting: at other times nothing happens.
    bool Beat()
    {
        if (!_conversation.Beats) return true;
        _conversation.Beat();
        SetNeedsDraw();
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Q.WithCtrl || key == Key.C.WithCtrl) App?.RequestStop();
        else if (Keys.Of(key) is { Count: > 0 } inputs) foreach (var input in inputs) Take(input);
        else return base.OnKeyDown(key);
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        var lines = Screens.Layout.Of(_busy ? _conversation.Page with { Keys = [Words.Of("key.busy")] } : _conversation.Page, Size, _conversation.Scroll);
        for (var row = 0; row < lines.Count; row++)
        {
            SetAttribute(lines[row].Marked ? Reverse : row == 0 ? Bold : Plain);
            AddStr(0, row, Cells.PadRight(lines[row].Text, Viewport.Width));
        }
        return true;
    }

    void Take(Input input)
    {
        Rewind();
        if (_conversation.Screen.Slow && (!_conversation.Screen.Typing || input.Press == Press.Enter)) SayBusy();
        if (!_conversation.Press(input, Size)) App?.RequestStop();
        _busy = false;
        SetNeedsDraw();
    }

    void SayBusy()
    {
        _busy = true;
        SetNeedsDraw();
        App?.LayoutAndDraw();
    }

    void Rewind()
    {
        if (App is not { } app) return;
        if (_timer is not null) app.RemoveTimeout(_timer);
        _timer = app.AddTimeout(Idle, () =>
        {
            _timer = null;
            Take(new Input(Press.Tick));
            return false;
        });
    }
}
