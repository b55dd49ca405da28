using System.Diagnostics;

namespace Apprentice.Tests.Terminal;

/// <summary>The real program in a real terminal: keys sent, the screen read until a text is there.</summary>
sealed class Tmux : IDisposable
{
    static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    readonly string _socket = Path.Combine(Path.GetTempPath(), $"apprentice-{Environment.ProcessId}-{Stopwatch.GetTimestamp()}.sock");

    public Tmux(string command, int columns = 80, int rows = 24)
    {
        Do("-f", "/dev/null", "new-session", "-d", "-x", columns.ToString(), "-y", rows.ToString(), $"{command}; echo RC=$?; exec cat");
        Do("set-option", "-s", "escape-time", "0");
    }

    public string Screen => Do("capture-pane", "-p");

    /// <summary>Sends keys by tmux's names, or text.</summary>
    public Tmux Keys(params string[] keys)
    {
        foreach (var key in keys) Do("send-keys", key);
        return this;
    }

    /// <summary>Waits until the screen holds a text.</summary>
    public string Until(string text)
    {
        var clock = Stopwatch.StartNew();
        var screen = Screen;
        while (!screen.Contains(text, StringComparison.Ordinal))
        {
            Assert.True(clock.Elapsed < Longest, $"'{text}' did not come in {Longest.TotalSeconds} s. The screen:\n{screen}");
            screen = Screen;
        }
        return screen;
    }

    public void Dispose()
    {
        Do("kill-server");
        File.Delete(_socket);
    }

    string Do(params string[] arguments)
    {
        var start = new ProcessStartInfo("tmux", ["-S", _socket, .. arguments]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Start(start);
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }

    static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start) ?? throw new InvalidOperationException("tmux did not start.");
        }
        catch (System.ComponentModel.Win32Exception e)
        {
            throw new InvalidOperationException("This test needs tmux: install it (apt-get install tmux) and run it again.", e);
        }
    }
}
