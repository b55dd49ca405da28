using Apprentice.Content;
using Apprentice.Screens;

namespace Apprentice.Plain;

/// <summary>Runs a conversation as lines in an ordinary terminal or through a pipe: a line in, lines out, and nothing that moves.</summary>
/// <param name="conversation">The conversation; its world is <see cref="World.Plain"/>.</param>
/// <param name="desk">Where lines come from and go to.</param>
sealed class PlainHost(Conversation conversation, PlainDesk desk)
{
    const string Again = ".";
    static readonly PageSize Size = new(80, 24);

    PlainPage _page = PlainPage.Of(conversation.Page);
    Type? _waited;

    /// <summary>Runs until the person leaves or the input ends; every step was kept by then.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(Conversation conversation, PlainDesk desk)
    {
        new PlainHost(conversation, desk).Go();
        return 0;
    }

    void Go()
    {
        Say(Words.Of("plain.hello"));
        SayAll(_page.Whole());
        while (Ask() is { } line)
        {
            if (!Take(line.Trim())) return;
        }
    }

    string? Ask()
    {
        desk.Out.Write("> ");
        desk.Out.Flush();
        var line = Line();
        if (line is null) desk.Out.WriteLine();
        else if (desk.Echo) Say(line);
        return line;
    }

    // While the clock of a sitting runs it is noted also when nobody types. A line that was typed for a page that is gone is not taken.
    string? Line()
    {
        if (!conversation.Beats) return desk.In.ReadLine();
        var typed = Task.Run(desk.In.ReadLine);
        var screen = conversation.Screen;
        while (!typed.Wait(Conversation.Pulse))
        {
            var before = conversation.Screen;
            conversation.Beat();
            if (!ReferenceEquals(before, conversation.Screen)) SayNew();
        }

        return ReferenceEquals(screen, conversation.Screen) ? typed.Result : typed.Result is null ? null : Again;
    }

    // The time was up while nobody typed.
    void SayNew()
    {
        _page = PlainPage.Of(conversation.Page);
        desk.Out.WriteLine();
        SayAll(_page.Whole());
        desk.Out.Write("> ");
        desk.Out.Flush();
    }

    /// <summary>Takes a line; false when the program is to end.</summary>
    bool Take(string line)
    {
        var word = line.ToLowerInvariant();
        if (word is "quit") return false;
        if (word is Again) SayAll(_page.Whole());
        else if (word is "?" && conversation.Screen.Typing) Say(Words.Of("plain.help"));
        else if (PlainKeys.Of(line, conversation.Screen, _page) is { } keys) return Press(keys, line);
        else Say(Words.Of("plain.unknown", ("text", line), ("keys", _page.Keys)));
        return true;
    }

    bool Press(IReadOnlyList<Input> keys, string line)
    {
        SayWait();
        var (screen, history) = (conversation.Screen, conversation.World.History);
        foreach (var key in keys)
        {
            if (!conversation.Press(key, Size)) return false;
        }
        var before = _page;
        _page = PlainPage.Of(conversation.Page);
        var isNew = screen.GetType() != conversation.Screen.GetType() || !Same(screen, conversation.Screen);
        var lines = (isNew ? _page.Whole() : _page.Since(before)).ToList();
        if (isNew) desk.Out.WriteLine();
        if (lines.Count == 0 && ReferenceEquals(history, conversation.World.History)) lines.Add(Words.Of("plain.nothing", ("text", line), ("keys", _page.Keys)));
        SayAll(lines);
        return true;
    }

    // Screens of one sort go on as one page while they are about the same thing.
    bool Same(Screen before, Screen now) => string.Equals(before.Show(conversation.World).Title, now.Show(conversation.World).Title, StringComparison.Ordinal);

    void SayWait()
    {
        if (!conversation.Screen.Slow || _waited == conversation.Screen.GetType()) return;
        _waited = conversation.Screen.GetType();
        Say(Words.Of("key.busy"));
        desk.Out.Flush();
    }

    void SayAll(IEnumerable<string> lines)
    {
        foreach (var line in lines) Say(line);
    }

    void Say(string line) => desk.Out.WriteLine(line);
}
