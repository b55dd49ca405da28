using System.Diagnostics;
using Apprentice.Engine.Learning;
using Apprentice.Storage;

namespace Apprentice.Tests.Terminal;

public sealed class EndToEndTests : IDisposable
{
    readonly string _folder = Directory.CreateTempSubdirectory("end-to-end").FullName;

    string Data => Path.Combine(_folder, "log.db");

    /// <summary>Starts the program and leaves the number of its process in a file.</summary>
    string Program => $"sh -c 'echo $$ > {_folder}/pid; cd {_folder}; exec env -u DisableRealDriverIO {Executable} --data {Data}'";

    static string Executable => Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "apprentice.exe" : "apprentice");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_newcomer_gets_from_the_first_start_to_the_grade_and_a_killed_program_loses_nothing()
    {
        using (var terminal = new Tmux(Program))
        {
            terminal.Until("Try one job now");
            terminal.Keys("1").Until("Job 1");
            terminal.Keys("S").Until("> 12");
            terminal.Keys("3", "Enter").Until("bench time 1 min");
            Signal("-KILL");
            terminal.Until("RC=137");
        }
        using (var log = Log.Open(Data)) Assert.Equal(2, Assert.Single(History.Of(log.Read()).Jobs).Looks.Count);
        using var again = new Tmux(Program);
        again.Until("Go on with job 1");
        again.Keys("1").Until("A answer");
        again.Keys("A").Until("Which rim is it?");
        again.Keys("Down", "Enter").Until("How sure?");
        again.Keys("5").Until("What do you do?");
        again.Keys("Up", "Enter").Until("Hand in");
        again.Keys("Enter").Until("In short");
        again.Keys("Enter").Until("Your name");
        again.Keys("Sam", "Enter").Until("Three minutes");
        again.Keys("q").Until("RC=0");
    }

    [Fact]
    public void A_signal_restores_the_terminal_and_sets_the_exit_code()
    {
        using var terminal = new Tmux(Program);
        terminal.Until("Try one job now");
        Signal("-TERM");
        terminal.Until("RC=143");
        Assert.DoesNotContain("Try one job now", terminal.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_copy_on_the_same_file_says_so_and_leaves()
    {
        using var held = Log.Open(Data);
        using var terminal = new Tmux(Program, columns: 200);
        Assert.Contains("Another copy of this program is using", terminal.Until("RC=70"), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_terminal_it_says_so_and_does_not_hang()
    {
        var start = new ProcessStartInfo(Executable, ["--data", Data]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        start.Environment.Remove("DisableRealDriverIO");
        using var process = Process.Start(start) ?? throw new InvalidOperationException();
        var error = process.StandardError.ReadToEnd();
        Assert.True(process.WaitForExit(TimeSpan.FromSeconds(60)));
        Assert.Equal(2, process.ExitCode);
        Assert.StartsWith("This needs a terminal", error, StringComparison.Ordinal);
    }

    void Signal(string signal) => Process.Start("kill", [signal, File.ReadAllText(Path.Combine(_folder, "pid")).Trim()]).WaitForExit();
}
