using System.Diagnostics;
using System.Runtime;
using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;
using Apprentice.Screens;
using Press = Apprentice.Screens.Press;

namespace Apprentice.Benchmarks;

/// <summary>The made-up log of 200 learners as a real file, opened by a program of its own: how long it takes until a page stands there for the first time, and how much memory that takes.</summary>
static class FirstPages
{
    const double Megabyte = 1048576;

    static readonly PageSize Size = new(80, 24);

    /// <summary>The topics of the question bank.</summary>
    public static IReadOnlyList<Topic> Topics() =>
    [
        .. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Data"), "*.md").Order(StringComparer.Ordinal)
            .Select(f => TopicReader.Read(f, File.ReadAllText(f)).Topic).OfType<Topic>(),
    ];

    /// <summary>Writes the file, then has a fresh program open it.</summary>
    public static void Print(IReadOnlyList<Topic> topics)
    {
        var file = Path.Combine(Path.GetTempPath(), $"apprentice-{Environment.ProcessId}.db");
        try
        {
            using (var log = Storage.Log.Open(file)) log.Rewrite([.. Log.Entries(topics)]);
            Console.WriteLine($"file of {new FileInfo(file).Length / Megabyte:0} MB");
            using var fresh = Process.Start(new ProcessStartInfo(Environment.ProcessPath ?? "", ["--pages", file]));
            fresh?.WaitForExit();
        }
        finally
        {
            foreach (var left in Directory.GetFiles(Path.GetTempPath(), $"apprentice-{Environment.ProcessId}*")) File.Delete(left);
        }
    }

    /// <summary>Opens the file, and shows both pages twice.</summary>
    public static void Open(string file)
    {
        var topics = Topics();
        var before = Environment.CpuUsage.TotalTime;
        using var log = Storage.Log.Open(file);
        var conversation = Shell.Converse(log, new ShellOptions(file, topics, TimeProvider.System, Console.Error));
        Console.WriteLine($"{(Environment.CpuUsage.TotalTime - before).TotalSeconds,8:0.0} s of processor time  opening the file");
        Time("the start page", () => { });
        Time("the list of names", () => conversation.Press(Input.Typed('7'), Size));
        Time("learner's page, for the first time (goal under 100 ms)", () => conversation.Press(new Input(Press.Enter), Size));
        conversation.Press(Input.Typed('7'), Size);
        Time("learner's page again", () => conversation.Press(Input.Typed('0'), Size));
        conversation.Press(Input.Typed('0'), Size);
        Time("workshop's page, for the first time (goal under 1,000 ms)", () => conversation.Press(Input.Typed('6'), Size));
        conversation.Press(Input.Typed('0'), Size);
        Time("workshop's page again", () => conversation.Press(Input.Typed('6'), Size));
        var held = GC.GetTotalMemory(forceFullCollection: true) / Megabyte;
        using var own = Process.GetCurrentProcess();
        Console.WriteLine($"{held,8:0} MB held by the open program (goal under 250 MB)");
        Console.WriteLine($"{own.PeakWorkingSet64 / Megabyte,8:0} MB at most in the whole process, from its start to here (goal under 250 MB)");
        GC.KeepAlive(conversation);

        void Time(string what, Action press)
        {
            var (start, methods, compiling) = (Environment.CpuUsage.TotalTime, JitInfo.GetCompiledMethodCount(), JitInfo.GetCompilationTime());
            press();
            var text = string.Join('\n', Layout.Of(conversation.Page, Size, conversation.Scroll).Select(l => l.Text));
            var took = Environment.CpuUsage.TotalTime - start;
            var (compiled, waited) = (JitInfo.GetCompiledMethodCount() - methods, JitInfo.GetCompilationTime() - compiling);
            Console.WriteLine($"{took.TotalMilliseconds,8:0.0} ms of processor time  {what}: {text.Split('\n')[0].Split("  ")[0]} ({compiled} methods compiled in {waited.TotalMilliseconds:0.0} ms)");
        }
    }
}
