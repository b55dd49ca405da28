using System.Runtime.InteropServices;
using Apprentice.Screens;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Apprentice.Terminal;

/// <summary>Runs a conversation full screen. Refuses without a terminal; on signals and crashes the terminal is restored first.</summary>
static class TuiHost
{
    const int NoTerminal = 2;
    const int Crashed = 70;
    static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>Runs until the conversation ends.</summary>
    /// <param name="conversation">The conversation.</param>
    /// <param name="error">Where to say what went wrong, after the terminal is restored.</param>
    /// <returns>The exit code.</returns>
    public static int Run(Conversation conversation, TextWriter error)
    {
        if (Refusal() is { } refusal)
        {
            error.WriteLine(refusal);
            return NoTerminal;
        }
        Exception? crash = null;
        var code = 0;
        var app = Application.Create();
        try
        {
            code = Run(app, conversation);
        }
        catch (Exception e)
        {
            crash = e;
        }
        finally
        {
            app.Dispose();
        }
        if (crash is null) return code;
        error.WriteLine($"The program stopped by a fault of its own. What was confirmed on the screen is kept. {crash}");
        return Crashed;
    }

    static string? Refusal()
    {
        Driver.IsAttachedToTerminal(out var input, out var output);
        if (!input || !output) return "This needs a terminal for input and output. For lines that a pipe or a screen reader can follow: apprentice --plain. For scripts: apprentice --help";
        return string.Equals(Environment.GetEnvironmentVariable("TERM"), "dumb", StringComparison.Ordinal)
            ? "This terminal (TERM=dumb) cannot show whole pages. For lines in place of pages: apprentice --plain. For scripts: apprentice --help"
            : null;
    }

    static int Run(IApplication app, Conversation conversation)
    {
        var signal = 0;
        app.Init();
        void Stop(PosixSignalContext context)
        {
            context.Cancel = true;
            signal = (int)context.Signal;
            app.Invoke(a => a.RequestStop());
            // Where the terminal itself is gone the loop never gets to stop; every confirmed step is already on the disk.
            var code = ExitCode(signal);
            _ = Task.Delay(Patience).ContinueWith(_ => Environment.Exit(code), TaskScheduler.Default);
        }
        using var term = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, Stop);
        using var quit = PosixSignalRegistration.Create(PosixSignal.SIGQUIT, Stop);
        using var view = new PageView(conversation);
        app.Iteration += (_, _) =>
        {
            if (signal != 0) app.RequestStop();
        };
        app.Run(view);
        return ExitCode(signal);
    }

    static int ExitCode(int signal) => signal switch
    {
        0 => 0,
        (int)PosixSignal.SIGTERM => 143,
        (int)PosixSignal.SIGINT => 130,
        (int)PosixSignal.SIGHUP => 129,
        _ => 131,
    };
}
